using Commission.Measurement.Uncertainty;
using Commission.Messages;

namespace Commission.Measurement.Corrections;

/// <summary>A corrected reading and how it was reached.</summary>
/// <param name="Value">The corrected reading with everything that is still doubtful.</param>
/// <param name="Steps">The corrections in order.</param>
public sealed record Corrected(Uncertain Value, IReadOnlyList<CorrectionStep> Steps)
{
    /// <summary>This reading, corrected further.</summary>
    /// <param name="next">The next correction, from the value so far.</param>
    public Corrected Then(Func<Uncertain, Corrected> next)
    {
        var after = next(Value);
        return new Corrected(after.Value, [.. Steps, .. after.Steps]);
    }

    internal static Corrected Unchanged(Uncertain value, CorrectionKind kind, Message text) =>
        new(value, [new CorrectionStep(kind, text, value.Value, 0, false)]);

    internal static Corrected Of(Uncertain before, Uncertain after, CorrectionKind kind, Message text) =>
        new(after, [new CorrectionStep(kind, text, before.Value, after.Value - before.Value, true)]);
}

/// <summary>What a correction takes off.</summary>
public enum CorrectionKind
{
    /// <summary>What the instrument showed open to the air.</summary>
    Zero,

    /// <summary>The line through points where the instrument was checked.</summary>
    KnownPoints,

    /// <summary>What a thermometer showed too much in ice.</summary>
    IcePoint,

    /// <summary>The pull of the air on a pipe clamp.</summary>
    Clamp,
}

/// <summary>One correction of a reading, or why there is none.</summary>
/// <param name="Kind">What is corrected.</param>
/// <param name="Text">A plain sentence with its numbers.</param>
/// <param name="Before">Value before, SI.</param>
/// <param name="Correction">What was added, SI; zero when nothing was applied.</param>
/// <param name="Applied">Whether the value was changed by it.</param>
public sealed record CorrectionStep(CorrectionKind Kind, Message Text, double Before, double Correction, bool Applied)
{
    /// <summary>Value after, SI.</summary>
    public double After => Before + Correction;
}

/// <summary>How the numbers of a correction are written in its steps.</summary>
/// <param name="Value">Prints an SI value of the reading.</param>
/// <param name="Difference">Prints an SI difference of two readings.</param>
public sealed record CorrectionPrinter(Func<double, QuantityValue> Value, Func<double, QuantityValue> Difference);

/// <summary>A clamp on a pipe reads toward the air around it, by a part f of the difference. The mean of f is corrected, half its range stays as doubt. Made once for a clamp.</summary>
public sealed class ClampCoupling
{
    private readonly string _name;
    private readonly Uncertain _coupling;

    /// <summary>The coupling of a clamp with limits of a pack.</summary>
    /// <param name="name">The clamp, for the budget.</param>
    /// <param name="least">Least f, zero or above.</param>
    /// <param name="most">Largest f, below one.</param>
    /// <param name="source">Where the limits come from.</param>
    public ClampCoupling(string name, double least, double most, Message source)
    {
        if (!(least >= 0 && most >= least && most < 1))
            throw new ArgumentOutOfRangeException(nameof(most), most, "The coupling lies between zero and one.");
        _name = name;
        _coupling = Uncertain.From((least + most) / 2, RootCause.FromHalfWidth(CorrectionsMessages.AirAroundClamp(new(name)), source, (most - least) / 2, kind: CauseKind.ShareOfDistance));
    }

    /// <summary>Corrects a reading by f·(T_ambient − T_pipe), T_pipe taken as read: that it is off by f itself changes the correction by a part f, which the range of f covers.</summary>
    /// <param name="scope">The scope of the computation.</param>
    /// <param name="reading">The clamp's reading, K.</param>
    /// <param name="ambient">The air around it, K.</param>
    /// <param name="print">How numbers are written.</param>
    public Corrected Correct(IUncertaintyScope scope, Uncertain reading, Uncertain ambient, CorrectionPrinter print)
    {
        var after = reading - (scope.Input(_coupling) * (ambient - reading));
        var text = CorrectionsMessages.ClampCorrected(new(_name), print.Value(ambient.Value), print.Difference(reading.Value - after.Value), print.Value(reading.Value), print.Value(after.Value));
        return Corrected.Of(reading, after, CorrectionKind.Clamp, text);
    }
}
