using Commission.Measurement.Uncertainty;

namespace Commission.Measurement.Corrections;

/// <summary>What an instrument showed where it should show zero. The offset is always removed. Made once for an instrument, so that all its readings share the doubt of the zero.</summary>
/// <remarks>The reading and the zero each carry one step of the indication as a rectangle: their difference is the triangle of d/√6, without anything to add.</remarks>
public sealed class ZeroCheck
{
    private readonly string name;

    /// <summary>A zero check.</summary>
    /// <param name="name">The instrument, for the budget.</param>
    /// <param name="shown">What it showed, SI difference from zero.</param>
    /// <param name="resolution">One step of its indication, SI; nothing when unknown.</param>
    public ZeroCheck(string name, double shown, double? resolution)
    {
        this.name = name;
        Zero = resolution is { } step
            ? Uncertain.From(shown, RootCause.FromResolution($"{name}: zero reading", "smallest step of the indication", step))
            : Uncertain.Exact(shown);
    }

    /// <summary>The zero as it was shown.</summary>
    public Uncertain Zero { get; }

    /// <summary>Removes the zero from a reading.</summary>
    /// <param name="scope">The scope of the computation.</param>
    /// <param name="reading">The reading, SI.</param>
    /// <param name="print">How numbers are written.</param>
    public Corrected Correct(IUncertaintyScope scope, Uncertain reading, CorrectionPrinter print)
    {
        var after = reading - scope.Input(Zero);
        var text = $"{name} showed {print.Difference(Zero.Value)} at zero: {print.Value(reading.Value)} becomes {print.Value(after.Value)}.";
        return Corrected.Of(reading, after, CorrectionKind.Zero, text);
    }
}
