using Commission.Measurement.Uncertainty;

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

    internal static Corrected Unchanged(Uncertain value, CorrectionKind kind, string text) =>
        new(value, [new CorrectionStep(kind, text, value.Value, 0, false)]);

    internal static Corrected Of(Uncertain before, Uncertain after, CorrectionKind kind, string text) =>
        new(after, [new CorrectionStep(kind, text, before.Value, after.Value - before.Value, true)]);
}
