using Commission.Jobs.Model;

namespace Commission.Jobs.Meaning;

/// <summary>The maker's figures: each says something, none is turned round, charts are complete.</summary>
internal static class LimitRules
{
    public static void Check(RuleContext context)
    {
        if (context.Job.Limits is not { } limits) return;
        foreach (var part in limits.Children())
        {
            if (part is not ILimitFigure figure)
                continue;
            if (!figure.HasFigure)
                context.Problems.Add(part.Origin, "This limit has no figure.", "", "Write target and tolerance, or minimum, or maximum.", "no-figure");
            else if (figure.IsBackward)
                context.Problems.Add(part.Origin, "The minimum is above the maximum.", "", "Check whether they are swapped.", "impossible");
        }

        foreach (var torque in limits.FlareTorque)
        {
            if (torque is { Minimum: { } low, Maximum: { } high } && low.Value.Si > high.Value.Si)
                context.Complain(low, $"The minimum {low.Text} is above the maximum {high.Text}.", "", "Check whether they are swapped.", "impossible");
        }

        foreach (var chart in limits.Charts) Check(context, chart);
    }

    private static void Check(RuleContext context, MakerChart chart)
    {
        if (chart.Across is not { } across) return;
        Rising(context, across);
        if (chart.Down is { } down) Rising(context, down);
        var rows = chart.Down?.At.Length ?? 1;
        if (chart.Values.Length != rows)
        {
            context.Problems.Add(chart.Origin, FormattableString.Invariant($"The chart has {chart.Values.Length} rows of values."),
                FormattableString.Invariant($"{rows} are expected: {(chart.Down is null ? "without down there is one" : "one for each value of down")}."), "Complete it, or delete what is too much.", "chart");
        }

        for (var row = 0; row < chart.Values.Length; row++)
        {
            if (chart.Values[row].Length == across.At.Length) continue;
            context.Problems.Add(chart.Origin, FormattableString.Invariant($"Row {row + 1} of the chart has {chart.Values[row].Length} values."),
                FormattableString.Invariant($"{across.At.Length} are expected, one for each value of across."), "Complete it; a dash of the maker's chart is written none.", "chart");
        }
    }

    private static void Rising(RuleContext context, ChartAxis axis)
    {
        for (var i = 1; i < axis.At.Length; i++)
        {
            if (axis.At[i].Value.Si <= axis.At[i - 1].Value.Si)
                context.Complain(axis.At[i], $"{axis.At[i].Text} does not come after {axis.At[i - 1].Text}.", "The values of an axis rise.", "Sort them, with their rows or columns.", "chart");
        }
    }
}
