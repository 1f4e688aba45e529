using Commission.Jobs.Model.Words;
using Commission.Records.Findings;

namespace Commission.Checks.Charge;

/// <summary>Liquid line over outdoor air, which some makers charge by.</summary>
internal sealed class ApproachCheck : ICheck
{
    public string Id => "charge.approach";

    public string Phase => Phases.Charge;

    public string Title => "Approach";

    public CheckHelp Help { get; } = new(
        "How far is the liquid line above the outdoor air? Some makers charge by it.",
        "approach = T_liquid line − T_outdoor dry bulb",
        "The maker's figure; without one it is information.",
        "A high approach means too little refrigerant or a dirty condenser, a low one too much refrigerant: look at the pattern of both sides first.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var analysis = context.Get<ChargeAnalysis>();
        if (analysis.Spoken(OperatingMode.Cooling, r => r.Written is { LiquidLine: not null, OutdoorDryBulb: not null }) is not { } row)
            yield break;
        var limit = context.Limits.Find("charge.approach");
        var gates = limit is null || analysis.ByWeightOnly is not null
            ? new ChargeGates(row.Settling)
            : new ChargeGates(row.Settling, RunningCondition.Of(context, row), MethodValidity.Of(context, row, ChargeCriterion.Subcooling), ChargePrerequisites.Of(context, row));
        yield return RowDifference.Judge(
            context, this, row, row.Approach, analysis.ByWeightOnly is null ? limit : null, "The approach", gates,
            "See the pattern of both sides; clean the condenser before refrigerant is added.", "See the pattern of both sides before refrigerant is removed.",
            unlimited: analysis.ByWeightOnly ?? "no maker's figure is written");
    }
}
