using Commission.Checks.Limits;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Charge;

/// <summary>The least superheat at the service valve, whatever the target: below it liquid may reach the compressor.</summary>
internal sealed class SuperheatFloorCheck : ICheck
{
    public string Id => "charge.superheat-floor";

    public string Phase => Phases.Charge;

    public string Title => "Least superheat";

    public CheckHelp Help { get; } = new(
        "Is there enough superheat at the vapor service valve to keep liquid out of the compressor, whatever the target and its tolerance allow?",
        "SH = T_vapor line − T_dew(p_vapor, absolute), at least the floor",
        "Fixed orifice: 5 °F, generic installation manuals (published). Expansion valve: the maker's, else 4 °F, California Residential Appendix RA3.2, p. RA3-15 (published).",
        "Below the floor the compressor is in danger: stop it. Look at the pattern of both sides, the airflow, the filter and the valve's bulb before any refrigerant is removed.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var analysis = context.Get<ChargeAnalysis>();
        if (analysis.ByWeightOnly is not null || analysis.Spoken(OperatingMode.Cooling, r => r.Written is { VaporPressure: not null, VaporLine: not null }) is not { } row)
            yield break;
        var finding = context.Finding(this, row.Time).Use(row.Superheat);
        if (row.Superheat.Value is not { } superheat)
        {
            yield return finding.NotEvaluated(row.Superheat.WhyNot!, "Check the reading and the refrigerant's name.");
            yield break;
        }

        finding.Measure(superheat, DisplayKind.TemperatureDifference);
        var gates = new ChargeGates(row.Settling, RunningCondition.Of(context, row), VaporPort.Of(context));
        gates.NameIn(finding);
        if (gates.Blocked is var (why, todo))
        {
            yield return finding.NotEvaluated(why, todo);
            yield break;
        }

        if (context.Limits.Find("charge.superheat-floor") is not { } floor)
        {
            yield return finding.NotEvaluated("how the refrigerant is metered is not written", "Write the metering device or the maker's least superheat.");
            yield break;
        }

        var text = context.Present.Text(superheat, DisplayKind.TemperatureDifference);
        var limit = context.State(floor);
        var below = superheat.Value < limit.LowerSi;
        yield return finding.Remark(floor.Remark(context.Present.Units)).JudgeCharge(
            context, superheat, DisplayKind.TemperatureDifference, limit, row.Superheat.Readings, gates,
            below ? $"Superheat was {text} at {row.Time}, below the floor: liquid may reach the compressor." : $"Superheat was {text} at {row.Time}; {limit.Text} is asked for whatever the target.",
            "Do not leave it running. See the pattern of both sides, check airflow, filter and the valve's bulb, then read again.");
    }
}
