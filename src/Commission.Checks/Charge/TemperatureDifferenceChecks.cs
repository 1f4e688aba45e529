using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model.Words;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Charge;

/// <summary>Mid-point condensing temperature over outdoor air.</summary>
internal sealed class CondensingOverAmbientCheck : ICheck
{
    public string Id => "charge.condensing-over-ambient";

    public string Phase => Phases.Charge;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var analysis = context.Get<ChargeAnalysis>();
        if (analysis.Spoken(OperatingMode.Cooling, r => r.Written is { LiquidPressure: not null, OutdoorDryBulb: not null }) is not { } row)
            yield break;
        // What a modulating compressor condenses at says how hard it works, not whether it is right.
        var judged = analysis.ByWeightOnly is null && !analysis.HasReceiver;
        var gates = judged ? new ChargeGates(row.Settling, RunningCondition.Of(context, row)) : new ChargeGates(row.Settling);
        yield return RowDifference.Judge(
            context, this, row, row.CondensingOverAmbient, judged ? UsualBand.Judging(context, LimitIds.ChargeCondensingOverAmbientRange) : null, gates,
            new(
                ChargeMessages.CondenserSplit,
                ChargeMessages.CondenserSplitHighNext,
                ChargeMessages.CondenserSplitLowNext,
                Unlimited: analysis.ByWeightOnly ?? (analysis.HasReceiver ? ChargeMessages.CondenserSplitReceiver : UsualBand.Words(context, LimitIds.ChargeCondensingOverAmbientRange))));
    }
}

/// <summary>Air onto the evaporator over the mid-point evaporating temperature.</summary>
internal sealed class EvaporatorDifferenceCheck : ICheck
{
    public string Id => "charge.evaporator-difference";

    public string Phase => Phases.Charge;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var analysis = context.Get<ChargeAnalysis>();
        if (analysis.Spoken(OperatingMode.Cooling, r => r.Written.VaporPressure is not null && r.EvaporatorAir is not null) is not { } row)
            yield break;
        var judged = analysis.ByWeightOnly is null;
        var gates = judged ? new ChargeGates(row.Settling, RunningCondition.Of(context, row)) : new ChargeGates(row.Settling);
        yield return RowDifference.Judge(
            context, this, row, row.EvaporatorDifference, judged ? UsualBand.Judging(context, LimitIds.ChargeEvaporatorDifferenceRange) : null, gates,
            new(
                ChargeMessages.EvaporatorSplit,
                ChargeMessages.EvaporatorSplitHighNext,
                ChargeMessages.EvaporatorSplitLowNext,
                Unlimited: analysis.ByWeightOnly ?? UsualBand.Words(context, LimitIds.ChargeEvaporatorDifferenceRange)));
    }
}

/// <summary>A band of common practice: it is printed and weighed in the diagnosis; only a maker's figure judges.</summary>
internal static class UsualBand
{
    /// <summary>The maker's limit; null where only common practice has a band.</summary>
    public static Limit? Judging(CheckContext context, string id) => context.Limits.Find(id) is { Tier: LimitTier.Maker } limit ? limit : null;

    /// <summary>The band in words; null where nobody has one.</summary>
    public static Message? Words(CheckContext context, string id) =>
        context.Limits.Find(id) is { } usual ? ChargeMessages.UsualBand(new TextValue(context.State(usual).Text), new TextValue(usual.Source), new TextValue(usual.Mark)) : null;
}

/// <summary>Temperature drop across the liquid-line drier: a drop means pressure is lost in it.</summary>
internal sealed class DrierDropCheck : ICheck
{
    public string Id => "charge.drier-drop";

    public string Phase => Phases.Charge;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Get<ChargeAnalysis>().Spoken(OperatingMode.Cooling, r => r.Written is { LiquidLine: not null, LiquidAfterDrier: not null }) is not { } row)
            yield break;
        yield return RowDifference.Judge(
            context, this, row, row.DrierDrop, context.Limits.Find(LimitIds.ChargeDrierDrop), new ChargeGates(row.Settling),
            new(
                ChargeMessages.DrierDrop,
                ChargeMessages.DrierDropHighNext,
                ChargeMessages.DrierDropLowNext));
    }
}
