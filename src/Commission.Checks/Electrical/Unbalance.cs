using System.Collections.Immutable;
using Commission.Checks.Limits;
using Commission.Checks.Readings;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Electrical;

/// <summary>Unbalance of three phases by the NEMA definition: the largest deviation from the mean over the mean.</summary>
internal static class Unbalance
{
    public static double Of(IReadOnlyList<double> values)
    {
        var mean = values.Average();
        return values.Max(v => Math.Abs(v - mean)) / mean;
    }

    public static Finding Judge(CheckContext context, ICheck check, ImmutableArray<CorrectedReading> readings, string limitId, string what)
    {
        var finding = context.Finding(check);
        foreach (var reading in readings)
            finding.Use(reading);
        var mean = readings.Average(r => r.Value.Value);
        if (!(mean > 0))
            return finding.NotEvaluated($"the {what} are zero", "Read them with the compressor running.");
        var unbalance = Uncertain.Apply(Of, [.. readings.Select(r => r.Value)]);
        finding.Step(
            "u", $"unbalance of the {what}", "max|x − x̄|/x̄",
            string.Join(", ", readings.Select(r => r.Uses[0].Text)), context.Present.Text(unbalance, DisplayKind.Percentage), "NEMA MG-1 (definition; clause from memory)");
        if (context.Limits.Find(limitId) is not { } limit)
            return finding.NotEvaluated("no pack sets a limit", "Name a limits pack.");
        finding.Judge(unbalance, DisplayKind.Percentage, context.State(limit)).Remark(limit.Remark(context.Present.Units));
        var text = context.Present.Text(unbalance.Value, DisplayKind.Percentage);
        return finding.Passes
            ? finding.Say($"The {what} are unbalanced by {text}.").Build()
            : finding.Say($"The {what} are unbalanced by {text}: more than the limit.").Next(check.Help.WhenItFails).Build();
    }
}
