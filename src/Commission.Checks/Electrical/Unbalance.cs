using System.Collections.Immutable;
using Commission.Checks.Findings;
using Commission.Checks.Limits;
using Commission.Checks.Readings;
using Commission.Checks.Tables;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Electrical;

/// <summary>Judges the unbalance of three phases, voltages or currents, by one limit.</summary>
internal static class Unbalance
{
    /// <summary>Judges it.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="check">The check that speaks.</param>
    /// <param name="readings">The three readings.</param>
    /// <param name="limitId">Id of the limit.</param>
    /// <param name="what">Voltages or currents.</param>
    /// <param name="more">What the check adds to a judged finding, from the unbalance; null for nothing.</param>
    public static Finding Judge(
        CheckContext context, ICheck check, ImmutableArray<CorrectedReading> readings, string limitId, string what, Action<FindingBuilder, double>? more = null)
    {
        var finding = context.Finding(check);
        foreach (var reading in readings)
            finding.Use(reading);
        var mean = readings.Average(r => r.Value.Value);
        if (!(mean > 0))
            return finding.NotEvaluated($"the {what} are zero", "Read them with the compressor running.");
        var unbalance = Uncertain.Apply(x => PhaseUnbalance.Of(x), [.. readings.Select(r => r.Value)]);
        finding.Step(
            "u", $"unbalance of the {what}", PhaseUnbalance.Formula,
            string.Join(", ", readings.Select(r => r.Uses[0].Text)), context.Present.Text(unbalance, DisplayKind.Percentage), PhaseUnbalance.Source);
        if (context.Limits.Find(limitId) is not { } limit)
            return finding.NotEvaluated("no pack sets a limit", "Name a limits pack.");
        var state = context.State(limit);
        finding.Judge(unbalance.On(state), DisplayKind.Percentage, state).Remark(limit.Remark(context.Present.Units));
        var text = context.Present.Text(unbalance.Value, DisplayKind.Percentage);
        finding.Say(finding.Passes
            ? $"The {what} are unbalanced by {text}."
            : $"The {what} are unbalanced by {text}: more than the limit.");
        if (!finding.Passes)
            finding.Next(check.Help.WhenItFails);
        more?.Invoke(finding, unbalance.Value);
        return finding.Build();
    }
}
