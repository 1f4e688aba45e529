using Commission.Checks.Limits;
using Commission.Checks.Readings;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Charge;

/// <summary>Pressures and line temperatures the maker states for cooling, as figures or as charts.</summary>
internal sealed class MakerChartCheck : ICheck
{
    public string Id => "charge.maker-chart";

    public string Phase => Phases.Charge;

    public string Title => "Maker's pressures and charts";

    public CheckHelp Help { get; } = new(
        "Do pressures and line temperatures lie where the maker's figures or charts put them in this weather?",
        "the reading against the maker's figure, or against the chart read between its places and not beyond",
        "The maker's, with its page.",
        "Check the conditions the chart is entered with and the running condition, then follow the maker's instructions.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var analysis = context.Get<ChargeAnalysis>();
        if (analysis.Spoken(OperatingMode.Cooling, _ => true) is not { } row)
            yield break;
        foreach (var chart in context.Job.Limits?.Charts ?? [])
        {
            if ((chart.Mode?.Value ?? OperatingMode.Cooling) != OperatingMode.Cooling || chart.For.Value is ChartQuantity.Superheat or ChartQuantity.Subcooling or ChartQuantity.TemperatureSplit)
                continue;
            yield return ChartJudgement.Judge(
                context, this, chart, row, new ChargeGates(row.Settling, MethodValidity.Of(context, row, ChargeCriterion.Subcooling, makersChart: true), ChargePrerequisites.Of(context, row)));
        }

        if (context.Limits.Find("charge.vapor-pressure") is { } vapor && row.VaporPressure is { } low)
            yield return Judge(context, row, "vapor pressure", low, vapor);
        if (context.Limits.Find("charge.liquid-pressure") is { } liquid && row.LiquidPressure is { } high)
            yield return Judge(context, row, "liquid pressure", high, liquid);
    }

    private Finding Judge(CheckContext context, ChargeRow row, string what, CorrectedReading pressure, Limit limit)
    {
        // Stated as the maker states it: above the atmosphere or absolute.
        var isGauge = (limit.Target ?? limit.Lower ?? limit.Upper)?.Reference == PressureReference.Gauge;
        var (y, kind) = isGauge ? (pressure.Value - context.Get<SiteAtmosphere>().Value, DisplayKind.Pressure) : (pressure.Value, DisplayKind.AbsolutePressure);
        var finding = context.Finding(this, $"{what}, {row.Time}").Use(pressure).Measure(y, kind);
        var gates = new ChargeGates(
            row.Settling, RunningCondition.Of(context, row), MethodValidity.Of(context, row, ChargeCriterion.Subcooling), ChargePrerequisites.Of(context, row));
        gates.NameIn(finding);
        var text = context.Present.Text(y, kind);
        var words = $"{char.ToUpperInvariant(what[0])}{what[1..]} was {text} at {row.Time}";
        if (gates.Blocked is var (why, todo))
            return finding.Say($"{words} and is not judged: {why}.").NotEvaluated(why, todo);
        var state = limit.ToStatement(context.Present.Units);
        return state is { LowerSi: null, UpperSi: null }
            ? finding.Show(state).Information($"{words}; the maker's figure is {state.Text}.", "the maker gives no tolerance")
            : finding.JudgeCharge(context, y, kind, state, [pressure], gates, $"{words}; {state.Text} is asked for.", "See the pattern of both sides before refrigerant is added or removed.");
    }
}
