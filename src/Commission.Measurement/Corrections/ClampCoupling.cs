using Commission.Measurement.Uncertainty;

namespace Commission.Measurement.Corrections;

/// <summary>A clamp on a pipe reads toward the air around it, by a part f of the difference. The mean of f is corrected, half its range stays as doubt. Made once for a clamp.</summary>
public sealed class ClampCoupling
{
    /// <summary>Largest f of a bare clamp. Common practice, no source.</summary>
    public const double BareLimit = 0.03;

    /// <summary>Largest f of an insulated clamp. Common practice, no source.</summary>
    public const double InsulatedLimit = 0.01;

    private readonly string name;
    private readonly Uncertain coupling;

    /// <summary>The coupling of a clamp.</summary>
    /// <param name="name">The clamp, for the budget.</param>
    /// <param name="insulated">Whether it is wrapped.</param>
    public ClampCoupling(string name, bool insulated)
        : this(name, 0, insulated ? InsulatedLimit : BareLimit, insulated ? "insulated clamp, common practice" : "bare clamp, common practice")
    {
    }

    /// <summary>The coupling of a clamp with limits of a pack.</summary>
    /// <param name="name">The clamp, for the budget.</param>
    /// <param name="least">Least f, zero or above.</param>
    /// <param name="most">Largest f, below one.</param>
    /// <param name="source">Where the limits come from.</param>
    public ClampCoupling(string name, double least, double most, string source)
    {
        if (!(least >= 0 && most >= least && most < 1))
            throw new ArgumentOutOfRangeException(nameof(most), most, "The coupling lies between zero and one.");
        this.name = name;
        coupling = Uncertain.From((least + most) / 2, RootCause.FromHalfWidth($"{name}: air around the clamp", source, (most - least) / 2, kind: CauseKind.ShareOfDistance));
    }

    /// <summary>Corrects a reading by f·(T_ambient − T_pipe), T_pipe taken as read: that it is off by f itself changes the correction by a part f, which the range of f covers.</summary>
    /// <param name="scope">The scope of the computation.</param>
    /// <param name="reading">The clamp's reading, K.</param>
    /// <param name="ambient">The air around it, K.</param>
    /// <param name="print">How numbers are written.</param>
    public Corrected Correct(IUncertaintyScope scope, Uncertain reading, Uncertain ambient, CorrectionPrinter print)
    {
        var after = reading - (scope.Input(coupling) * (ambient - reading));
        var text = $"{name} in air of {print.Value(ambient.Value)} reads {print.Difference(reading.Value - after.Value)} toward it: {print.Value(reading.Value)} becomes {print.Value(after.Value)}.";
        return Corrected.Of(reading, after, CorrectionKind.Clamp, text);
    }
}
