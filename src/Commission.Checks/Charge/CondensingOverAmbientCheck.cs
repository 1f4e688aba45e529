using Commission.Jobs.Model.Words;
using Commission.Records.Findings;

namespace Commission.Checks.Charge;

/// <summary>Mid-point condensing temperature over outdoor air.</summary>
internal sealed class CondensingOverAmbientCheck : ICheck
{
    public string Id => "charge.condensing-over-ambient";

    public string Phase => Phases.Charge;

    public string Title => "Condensing over ambient";

    public CheckHelp Help { get; } = new(
        "How far does the refrigerant condense above the outdoor air? It shows a dirty condenser, a weak fan, air in the circuit or too much refrigerant.",
        "CTOA = T_mid(p_liquid, absolute) − T_outdoor dry bulb; T_mid is the middle of bubble and dew point",
        "10 to 30 °F by efficiency class: common practice, no source; the maker's range comes first.",
        "High: clean the condenser, check fan and recirculation, then make the standing test for non-condensables. Low: low charge, low load or cold weather.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var analysis = context.Get<ChargeAnalysis>();
        if (analysis.Spoken(OperatingMode.Cooling, r => r.Written is { LiquidPressure: not null, OutdoorDryBulb: not null }) is not { } row)
            yield break;
        // What a modulating compressor condenses at says how hard it works, not whether it is right.
        var judged = analysis.ByWeightOnly is null && !analysis.HasReceiver;
        var gates = judged ? new ChargeGates(row.Settling, RunningCondition.Of(context, row)) : new ChargeGates(row.Settling);
        yield return RowDifference.Judge(
            context, this, row, row.CondensingOverAmbient, judged ? context.Limits.Find("charge.condensing-over-ambient.range") : null, "Condensing over ambient", gates,
            "Clean the condenser, check its fan and that hot air does not come back; then make the standing test for non-condensables.",
            "See the pattern of both sides: low charge, low load and cold weather look alike here.",
            unlimited: analysis.ByWeightOnly ?? (analysis.HasReceiver ? "head-pressure control decides where a receiver system condenses" : null));
    }
}
