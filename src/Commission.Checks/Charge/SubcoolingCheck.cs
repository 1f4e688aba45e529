using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Charge;

/// <summary>Subcooling of a system whose superheat is held by a valve, against the maker's figure or chart.</summary>
internal sealed class SubcoolingCheck : ICheck
{
    public string Id => "charge.subcooling";

    public string Phase => Phases.Charge;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var analysis = context.Get<ChargeAnalysis>();
        if (analysis.Spoken(OperatingMode.Cooling, r => r.Written is { LiquidPressure: not null, LiquidLine: not null }) is { } row)
        {
            yield return Judge(context, analysis, row);
        }
        else if (analysis.HasValve && !analysis.HasReceiver && analysis.ByWeightOnly is null && analysis.Last(OperatingMode.Cooling, r => r.HasCircuitReading) is { } incomplete)
        {
            yield return context.Finding(this, incomplete.Time).NotEvaluated(incomplete.Subcooling.WhyNot!, ChargeMessages.SubcoolingReadTogetherNext);
        }
    }

    private Finding Judge(CheckContext context, ChargeAnalysis analysis, ChargeRow row)
    {
        var finding = context.Finding(this, row.Time).Use(row.Subcooling);
        if (row.Subcooling.Value is not { } subcooling)
            return finding.NotEvaluated(row.Subcooling.WhyNot!, ChargeMessages.SubcoolingNoneNext);
        finding.Measure(subcooling, DisplayKind.TemperatureDifference);
        var was = context.Present.InMessage(subcooling, DisplayKind.TemperatureDifference);
        var time = new TextValue(row.Time);
        if (Elsewhere(analysis, context) is { } why)
            return finding.Information(ChargeMessages.DifferenceWas(ChargeMessages.SubcoolingName, was, time), why);

        var target = ChargeTarget.Subcooling(context, row);
        var gates = new ChargeGates(
            row.Settling,
            LogDrift.Of(context),
            target.IsMakersChart ? null : RunningCondition.Of(context, row),
            MethodValidity.Of(context, row, ChargeCriterion.Subcooling, target.IsMakersChart),
            ChargePrerequisites.Of(context, row),
            LiquidPort.Of(context),
            EquipmentMatch.Of(context));
        foreach (var reading in target.Readings)
            finding.Use(reading);
        finding.Add(target.Steps);
        gates.NameIn(finding);
        if (gates.Blocked is var (reason, todo))
            return finding.Say(ChargeMessages.DifferenceNotJudged(ChargeMessages.SubcoolingName, was, time, reason)).NotEvaluated(reason, todo);
        if (target.Limit is not { } limit)
            return finding.Say(ChargeMessages.DifferenceNotJudged(ChargeMessages.SubcoolingName, was, time, target.WhyNot!)).NotEvaluated(target.WhyNot!, target.Todo!);
        var isHigh = subcooling.Value > limit.UpperSi;
        return finding.Remark(target.Remark).JudgeCharge(
            context, new(subcooling, DisplayKind.TemperatureDifference, [.. row.Subcooling.Readings, .. target.Readings]) { Target = target.Target }, limit, gates,
            ChargeMessages.DifferenceAsked(ChargeMessages.SubcoolingName, was, time, new(limit.Text)),
            isHigh ? ChargeMessages.SubcoolingHighNext : ChargeMessages.SubcoolingLowNext);
    }

    // Where subcooling does not show the charge it is still worth knowing.
    private static Message? Elsewhere(ChargeAnalysis analysis, CheckContext context) =>
        analysis.ByWeightOnly
        ?? (analysis.HasReceiver ? ChargeMessages.ReceiverNoSubcooling
            : analysis.HasFixedMetering && context.Job.Limits?.Subcooling is null ? ChargeMessages.OrificeNoSubcooling
            : null);
}

/// <summary>Liquid line over outdoor air, which some makers charge by.</summary>
internal sealed class ApproachCheck : ICheck
{
    public string Id => "charge.approach";

    public string Phase => Phases.Charge;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var analysis = context.Get<ChargeAnalysis>();
        if (analysis.Spoken(OperatingMode.Cooling, r => r.Written is { LiquidLine: not null, OutdoorDryBulb: not null }) is not { } row)
            yield break;
        var limit = context.Limits.Find(LimitIds.ChargeApproach);
        var gates = limit is null || analysis.ByWeightOnly is not null
            ? new ChargeGates(row.Settling, LogDrift.Of(context))
            : new ChargeGates(row.Settling, LogDrift.Of(context), RunningCondition.Of(context, row), MethodValidity.Of(context, row, ChargeCriterion.Subcooling), ChargePrerequisites.Of(context, row));
        yield return RowDifference.Judge(
            context, this, row, row.Approach, analysis.ByWeightOnly is null ? limit : null, gates,
            new(
                ChargeMessages.Approach,
                ChargeMessages.ApproachHighNext,
                ChargeMessages.ApproachLowNext,
                Unlimited: analysis.ByWeightOnly ?? ChargeMessages.ApproachNoLimit));
    }
}
