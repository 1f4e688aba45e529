using System.Collections.Immutable;
using System.Globalization;
using Commission.Measurement.Decisions;
using Commission.Records.Findings;
using Commission.Records.Series;

namespace Commission.Checks.Recording;

/// <summary>The strip chart of page 1: every judged number on the scale of its own limit.</summary>
internal static class StripFigure
{
    // A value far outside its limit is drawn at the edge of the strip; the text beside it tells how far.
    private const double Edge = 2;

    public static FigureData? Make(IReadOnlyList<Finding> findings)
    {
        var rows = findings.Where(f => f is { Strip: not null, Measured: not null } && f.Phase != Phases.Evidence).Select(Row).ToImmutableArray();
        if (rows.Length == 0)
            return null;
        var fails = rows.Count(r => r.Verdict is Verdict.Fail or Verdict.ConditionalFail);
        return new FigureData
        {
            Id = "strip",
            Plot = "strip",
            Phase = "summary",
            Title = "All judged numbers",
            Caption = "Each value with its U on the scale of its own limit: the shaded part is what the limit allows.",
            AltText = string.Create(CultureInfo.InvariantCulture, $"Strip chart of {rows.Length} judged numbers, {fails} of them outside their limit."),
            X = new FigureAxis("position within the limit", "", AxisScale.Linear, -Edge / 2, 1 + (Edge / 2)),
            Y = new FigureAxis("", "", AxisScale.Linear),
            Rows = rows,
        };
    }

    private static FigureBar Row(Finding f)
    {
        var strip = f.Strip!;
        var label = f.Subject is null ? f.Title : $"{f.Title}, {f.Subject}";
        return new FigureBar(label, Clamp(strip.Value), Clamp(strip.Low), Clamp(strip.High), f.Verdict, $"{f.Measured!.Text}; {f.Limits[0].Text}", strip.LowerIsLimit, strip.UpperIsLimit);
    }

    private static double Clamp(double x) => Math.Clamp(x, -Edge, 1 + Edge);

    private static double? Clamp(double? x) => x is { } value ? Clamp(value) : null;
}
