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

    public string Title => "Condenser split";

    public CheckHelp Help { get; } = new(
        "How far does the refrigerant condense above the outdoor air? It shows a dirty condenser, a weak fan, air in the circuit or too much refrigerant.",
        "condenser split = T_mid(p_liquid, absolute) − T_outdoor dry bulb; T_mid is the middle of bubble and dew point",
        "Usual 10 to 30 °F by efficiency class: common practice, no source, and no limit; the maker's range judges.",
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

    public string Title => "Evaporator split";

    public CheckHelp Help { get; } = new(
        "How far does the refrigerant evaporate below the air that comes onto the coil?",
        "evaporator split = T_return or box − T_mid(p_vapor, absolute); T_mid is the middle of bubble and dew point",
        "Comfort cooling 35 ± 5 °F at 400 cfm/ton, walk-in coils 8 to 12 °F, reach-in coils 20 to 35 °F: common practice, no source, and no limit; the maker's range judges.",
        "High: low airflow, dirty filter or coil, frost, low charge or a starved valve. Low: high airflow, overfeeding or a compressor that does not pump.");

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

    public string Title => "Drop across the drier";

    public CheckHelp Help { get; } = new(
        "Is the liquid line colder after the drier than before it? Liquid that flashes on the way shows a restricted drier.",
        "ΔT = T_liquid line − T_after the drier",
        "3 °F: common practice, no source; the maker's figure comes first.",
        "Replace the drier. Find out what filled it: an acid or moisture test of the oil tells more than a second drier does.");

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
