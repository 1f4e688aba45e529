using Commission.Checks.Limits;
using Commission.Checks.Readings;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Charge;

/// <summary>Judges a reading by a chart of the maker that gives it directly: a pressure or a line temperature.</summary>
internal static class ChartJudgement
{
    /// <summary>Judges it.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="check">The check that speaks.</param>
    /// <param name="chart">The chart.</param>
    /// <param name="row">The readings.</param>
    /// <param name="gates">What the judgement rests on besides.</param>
    public static Finding Judge(CheckContext context, ICheck check, MakerChart chart, ChargeRow row, ChargeGates gates)
    {
        var finding = context.Finding(check, $"{chart.For.Text}, {row.Time}");
        var readout = ChartReadout.Read(context, chart, row);
        foreach (var reading in readout.Readings)
            finding.Use(reading);
        if (Read(chart.For.Value, row) is not { } judged)
            return finding.NotEvaluated($"{chart.For.Text} was not read", "Read it beside what the chart is entered with.");
        finding.Use(judged);
        var kind = ChartReadout.KindOf(chart.For.Value);
        // Pressures of a chart are those a gauge shows.
        var y = kind == DisplayKind.Pressure ? judged.Value - context.Get<SiteAtmosphere>().Value : judged.Value;
        finding.Measure(y, kind);
        gates.NameIn(finding);
        var text = context.Present.Text(y, kind);
        if (gates.Blocked is var (why, todo))
            return finding.Say($"{Capital(chart.For.Text)} was {text} at {row.Time} and is not judged: {why}.").NotEvaluated(why, todo);
        if (readout.Value is not { } target)
            return finding.NotEvaluated(readout.WhyNot!, "Wait for conditions the chart covers, or weigh the charge in.");
        finding.Step(readout.Step!);
        var asked = context.Present.Text(target.Value, kind);
        if (chart.Tolerance is not { } tolerance)
            return finding.Information($"{Capital(chart.For.Text)} was {text} at {row.Time}; the maker's chart says {asked}.", "the chart states no tolerance");
        var half = tolerance.Value.Si;
        var limit = new LimitStatement(
            LimitKind.Target, $"{asked} ± {tolerance.Text}", target.Value - half, target.Value + half, target.Value, LimitStatements.Word(LimitTier.Maker), "", chart.From.Value, "job", RuleOf(context))
        { Quantity = chart.For.Text };
        return finding.JudgeCharge(
            context, y - (target - target.Value), kind, limit, [judged, .. readout.Readings], gates,
            $"{Capital(chart.For.Text)} was {text} at {row.Time}; the maker's chart says {limit.Text}.",
            "Check the conditions the chart is entered with, then follow the maker's instructions for a reading off the chart.");
    }

    private static CorrectedReading? Read(ChartQuantity quantity, ChargeRow row) => quantity switch
    {
        ChartQuantity.VaporPressure => row.VaporPressure,
        ChartQuantity.LiquidPressure => row.LiquidPressure,
        ChartQuantity.DischargePressure => row.DischargePressure,
        ChartQuantity.DischargeLine => row.DischargeLine,
        ChartQuantity.VaporLine => row.VaporLine,
        ChartQuantity.LiquidLine => row.LiquidLine,
        _ => null,
    };

    // A chart has no rule of its own: it takes that of the charge's tolerances, which a job may ask to be guarded.
    private static Measurement.Decisions.DecisionRule RuleOf(CheckContext context) =>
        context.Limits.Find("charge.subcooling.tolerance")?.Rule ?? Measurement.Decisions.DecisionRule.Simple;

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
