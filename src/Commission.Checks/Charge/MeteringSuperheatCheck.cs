using Commission.Checks.Limits;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Charge;

/// <summary>Whether an expansion valve holds its superheat.</summary>
internal sealed class MeteringSuperheatCheck : ICheck
{
    public string Id => "charge.metering-superheat";

    public string Phase => Phases.Charge;

    public string Title => "Superheat held by the valve";

    public CheckHelp Help { get; } = new(
        "Does the expansion valve hold its superheat? Only then does the subcooling show the charge.",
        "SH = T_vapor line − T_dew(p_vapor, absolute), inside the maker's range",
        "The maker's range; else 4 to 25 °F, California Residential Appendix RA3.2, p. RA3-15 (published). An electronic valve's superheat is its board's: information unless the maker gives a range.",
        "Too high: starved valve, restricted drier, low charge or lost bulb charge. Too low: bulb loose or uninsulated, valve stuck open, low airflow. See the pattern of both sides before touching the charge.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var analysis = context.Get<ChargeAnalysis>();
        if (!analysis.HasValve || analysis.Spoken(OperatingMode.Cooling, r => r.Written is { VaporPressure: not null, VaporLine: not null }) is not { } row)
            yield break;
        var limit = LimitOf(context);
        if (analysis.IsRefrigeration && limit?.Tier != LimitTier.Maker)
            yield break;
        yield return Judge(context, analysis, row, limit);
    }

    /// <summary>The range in force: the maker's range or target, else that of the packs.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    internal static Limit? LimitOf(CheckContext context)
    {
        var range = context.Limits.Find("charge.metering-superheat.range");
        if (range?.Tier == LimitTier.Maker)
            return range;
        return context.Limits.Find("charge.superheat") is { Tier: LimitTier.Maker, Lower: not null, Upper: not null } target ? target : range;
    }

    private Finding Judge(CheckContext context, ChargeAnalysis analysis, ChargeRow row, Limit? limit)
    {
        var finding = context.Finding(this, row.Time).Use(row.Superheat);
        if (row.Superheat.Value is not { } superheat)
            return finding.NotEvaluated(row.Superheat.WhyNot!, "Check the reading and the refrigerant's name.");
        finding.Measure(superheat, DisplayKind.TemperatureDifference);
        var text = context.Present.Text(superheat, DisplayKind.TemperatureDifference);
        if (analysis.ByWeightOnly is { } weight)
            return finding.Information($"Superheat was {text} at {row.Time}.", weight);
        if (analysis.Metering == MeteringKind.EEV && limit?.Tier != LimitTier.Maker)
            return finding.Information($"Superheat was {text} at {row.Time}.", "an electronic valve's superheat is set by its board; the maker gives no range");
        if (limit is null)
            return finding.NotEvaluated("nobody sets a range", "Write the maker's range.");
        var gates = new ChargeGates(row.Settling, RunningCondition.Of(context, row), ChargePrerequisites.Of(context, row), VaporPort.Of(context));
        gates.NameIn(finding);
        if (gates.Blocked is var (why, todo))
            return finding.Say($"Superheat was {text} at {row.Time} and is not judged: {why}.").NotEvaluated(why, todo);
        var state = context.State(limit);
        var isHigh = superheat.Value > state.UpperSi;
        return finding.Remark(limit.Remark(context.Present.Units)).JudgeCharge(
            context, superheat, DisplayKind.TemperatureDifference, state, row.Superheat.Readings, gates,
            $"The valve held {text} of superheat at {row.Time}; {state.Text} is asked for.",
            isHigh
                ? "The evaporator is starved. See the pattern of both sides; check drier, strainer and the valve's bulb before adding refrigerant."
                : "The valve overfeeds. Check that its bulb is tight and insulated and that the airflow is right.");
    }
}
