using System.Collections.Immutable;
using Commission.Checks.AirReadings;
using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.Wording;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Air;

/// <summary>Return over supply dry bulb in cooling against its target: above it the airflow is low, below it the capacity probably is.</summary>
internal sealed class TemperatureSplitCheck : ICheck
{
    public string Id => "air.temperature-split";

    public string Phase => Phases.Air;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var analysis = context.Get<ChargeAnalysis>();
        if (analysis.Spoken(OperatingMode.Cooling, HasBoth) is not { } row)
            yield break;
        if (analysis.IsRefrigeration && context.Limits.Find(LimitIds.AirTemperatureSplit) is null)
            yield break;
        yield return Judge(context, analysis, row);
    }

    private static bool HasBoth(ChargeRow row) => row.Written is { ReturnDryBulb: not null, SupplyDryBulb: not null };

    private Finding Judge(CheckContext context, ChargeAnalysis analysis, ChargeRow row)
    {
        var present = context.Present;
        var split = row.ReturnDryBulb!.Value - row.SupplyDryBulb!.Value;
        var finding = context.Finding(this, row.Time).Use(row.ReturnDryBulb).Use(row.SupplyDryBulb)
            .Step("ΔT", AirMessages.SplitName, "T_return − T_supply", $"{present.Text(row.ReturnDryBulb.Value.Value, DisplayKind.Temperature)} − {present.Text(row.SupplyDryBulb.Value.Value, DisplayKind.Temperature)}", present.Text(split, DisplayKind.TemperatureDifference))
            .Measure(split, DisplayKind.TemperatureDifference);
        var (was, time) = (present.InMessage(split, DisplayKind.TemperatureDifference), new TextValue(row.Time));
        var target = SplitTarget.Of(context, row);
        if (target.IsTable && analysis.ByWeightOnly is { } weight)
            return finding.Information(AirMessages.SplitWas(was, time), AirMessages.SplitByWeight(weight));
        var gates = new ChargeGates(row.Settling, target.IsTable ? RunningCondition.Of(context, row) : null);
        foreach (var reading in target.Readings)
            finding.Use(reading);
        finding.Add(target.Steps);
        gates.NameIn(finding);
        if (gates.Blocked is var (why, todo))
            return finding.Say(AirMessages.SplitNotJudged(was, time, why)).NotEvaluated(why, todo);
        if (target.Limit is not { } limit)
            return finding.Say(AirMessages.SplitNotJudged(was, time, target.WhyNot!)).NotEvaluated(target.WhyNot!, target.Todo!);

        var y = split.On(limit);
        ImmutableArray<CorrectedReading> readings = [row.ReturnDryBulb, row.SupplyDryBulb, .. target.Readings];
        finding.Remark(target.Remark);
        return y.Value < limit.LowerSi
            ? Low(context, row, finding, new(y, DisplayKind.TemperatureDifference, readings) { Target = target.Target }, limit, gates)
            : finding.JudgeCharge(
                context, new(y, DisplayKind.TemperatureDifference, readings) { Target = target.Target }, limit, gates,
                y.Value > limit.UpperSi ? AirMessages.SplitHigh(was, time, new TextValue(limit.Text)) : AirMessages.SplitAsked(was, time, new TextValue(limit.Text)),
                AirMessages.SplitHighNext);
    }

    // Below the target the regulation lets the system pass once the reading is repeated: the airflow is not what is wrong.
    private static Finding Low(
        CheckContext context, ChargeRow row, FindingBuilder finding, JudgedNumber number, LimitStatement limit, ChargeGates gates)
    {
        var (y, kind, readings) = number;
        var present = context.Present;
        var (was, time, asked) = (present.InMessage(y, DisplayKind.TemperatureDifference), new TextValue(row.Time), new TextValue(limit.Text));
        if (limit.UpperSi is not { } upper)
            return finding.JudgeCharge(context, number, limit, gates, AirMessages.SplitBelowMaker(was, time, asked), AirMessages.SplitBelowMakerNext);
        var oneSided = limit with { Kind = LimitKind.AtMost, Text = present.Text(AirMessages.SplitOneSided(present.InMessage(upper, DisplayKind.TemperatureDifference), asked)), LowerSi = null };
        finding.Judge(y, kind, oneSided, number.Target);
        gates.ReserveIn(finding);
        if (ChargeFindings.Unknown(readings) is { } unknown)
            finding.Reserve(unknown);
        // Whether the reading was repeated depends on the other rows, so they are named.
        var others = context.Get<ChargeAnalysis>().Rows.Where(other => !ReferenceEquals(other, row) && other.Mode == OperatingMode.Cooling && other.Settling.Block is null && HasBoth(other)).ToImmutableArray();
        foreach (var other in others)
            finding.Name([other.ReturnDryBulb!, other.SupplyDryBulb!, .. SplitTarget.Of(context, other).Readings]);
        if (others.LastOrDefault(other => IsLow(context, other)) is { } again)
        {
            // The regulation passes it, because the airflow is not low; to a technician it is an alarm.
            return finding.Remark(AirMessages.SplitLowTwiceRemark).Information(AirMessages.SplitLowTwice(was, time, new TextValue(again.Time), asked), AirMessages.SplitLowTwiceWhy);
        }

        return finding.Reserve(AirMessages.SplitLowOnceWhy(present.InMessage(limit.TargetSi ?? upper, DisplayKind.TemperatureDifference)))
            .Say(AirMessages.SplitLowOnce(was, time, asked)).Next(AirMessages.SplitLowOnceNext).Build();
    }

    private static bool IsLow(CheckContext context, ChargeRow row) =>
        SplitTarget.Of(context, row) is { Limit.LowerSi: { } lower } && row.ReturnDryBulb!.Value.Value - row.SupplyDryBulb!.Value.Value < lower;
}
