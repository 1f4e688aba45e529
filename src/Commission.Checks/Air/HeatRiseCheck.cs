using Commission.Checks.Charge;
using Commission.Checks.Findings;
using Commission.Checks.Limits;
using Commission.Checks.Readings;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Air;

/// <summary>Supply over return dry bulb in heating against the maker's range.</summary>
internal sealed class HeatRiseCheck : ICheck
{
    public string Id => "air.heat-rise";

    public string Phase => Phases.Air;

    public string Title => "Temperature rise in heating";

    public CheckHelp Help { get; } = new(
        "Does the air warm by as much as the maker prints for heating? Too much means that too little air is moving.",
        "rise = T_supply − T_return, dry bulbs",
        "The maker's range; there is no common figure.",
        "Above the range: clean filter and coil, open registers and dampers, raise the blower. Below it: lower the blower or look for a heater that does not heat.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Get<ChargeAnalysis>().Spoken(OperatingMode.Heating, r => r.Written is { ReturnDryBulb: not null, SupplyDryBulb: not null }) is { } row)
            yield return Judge(context, row.Time, row.ReturnDryBulb!, row.SupplyDryBulb!, new ChargeGates(row.Settling));
        else if (context.Get<AirflowRoutes>().HeatRiseAir is var (entering, leaving))
            yield return Judge(context, "heat-rise test", entering, leaving, new ChargeGates());
    }

    private Finding Judge(CheckContext context, string subject, CorrectedReading entering, CorrectedReading leaving, ChargeGates gates)
    {
        var present = context.Present;
        Uncertain rise = leaving.Value - entering.Value;
        var text = present.Text(rise, DisplayKind.TemperatureDifference);
        var finding = context.Finding(this, subject).Use(entering).Use(leaving)
            .Step("ΔT", "temperature rise", "T_supply − T_return", $"{present.Text(leaving.Value.Value, DisplayKind.Temperature)} − {present.Text(entering.Value.Value, DisplayKind.Temperature)}", text)
            .Measure(rise, DisplayKind.TemperatureDifference);
        gates.NameIn(finding);
        if (gates.Blocked is var (why, todo))
            return finding.Say($"The air warmed by {text}; this is not judged: {why}.").NotEvaluated(why, todo);
        if (context.Limits.Find("air.heat-rise") is not { } limit || (limit.Lower is null && limit.Upper is null))
            return finding.Information($"The air warmed by {text}.", "the maker's range is not written");
        var state = context.State(limit);
        return finding.Remark(limit.Remark(present.Units)).JudgeCharge(
            context, rise.On(state), DisplayKind.TemperatureDifference, state, [entering, leaving], gates, $"The air warmed by {text}; {state.Text} is asked for.", Help.WhenItFails);
    }
}
