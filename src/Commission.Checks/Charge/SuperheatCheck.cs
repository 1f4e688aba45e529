using Commission.Checks.Circuit;
using Commission.Checks.Formulas;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Charge;

/// <summary>Superheat of a system with a fixed orifice or a capillary, against the maker's chart or figure or the California table.</summary>
internal sealed class SuperheatCheck : ICheck
{
    public string Id => "charge.superheat";

    public string Phase => Phases.Charge;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var analysis = context.Get<ChargeAnalysis>();
        if (analysis.HasValve || analysis.HasReceiver)
            yield break;
        if (analysis.Spoken(OperatingMode.Cooling, r => r.Written is { VaporPressure: not null, VaporLine: not null }) is { } row)
            yield return Judge(context, analysis, row);
        else if (analysis.HasFixedMetering && analysis.ByWeightOnly is null && analysis.Last(OperatingMode.Cooling, r => r.HasCircuitReading) is { } incomplete)
            yield return context.Finding(this, incomplete.Time).NotEvaluated(incomplete.Superheat.WhyNot!, ChargeMessages.SuperheatReadTogetherNext);
    }

    private Finding Judge(CheckContext context, ChargeAnalysis analysis, ChargeRow row)
    {
        var present = context.Present;
        var finding = context.Finding(this, row.Time).Use(row.Superheat);
        if (row.Superheat.Value is not { } superheat)
            return finding.NotEvaluated(row.Superheat.WhyNot!, CommonMessages.ReadingAndGasNext);
        finding.Measure(superheat, DisplayKind.TemperatureDifference);
        var was = present.InMessage(superheat, DisplayKind.TemperatureDifference);
        var time = new TextValue(row.Time);
        if (analysis.ByWeightOnly is { } weight)
            return finding.Information(ChargeMessages.DifferenceWas(ChargeMessages.SuperheatName, was, time), weight);

        var target = ChargeTarget.Superheat(context, row);
        if (analysis.IsRefrigeration && target.Limit is null)
            return finding.Information(ChargeMessages.DifferenceWas(ChargeMessages.SuperheatName, was, time), ChargeMessages.SuperheatNoTarget);
        var gates = new ChargeGates(
            row.Settling,
            LogDrift.Of(context),
            target.IsMakersChart ? null : RunningCondition.Of(context, row),
            MethodValidity.Of(context, row, ChargeCriterion.Superheat, target.IsMakersChart),
            ChargePrerequisites.Of(context, row),
            VaporPort.Of(context),
            EquipmentMatch.Of(context));
        foreach (var reading in target.Readings)
            finding.Use(reading);
        finding.Add(target.Steps);
        gates.NameIn(finding);
        ShowFormula(context, finding, row);
        if (gates.Blocked is var (why, todo))
            return finding.Say(ChargeMessages.DifferenceNotJudged(ChargeMessages.SuperheatName, was, time, why)).NotEvaluated(why, todo);
        if (target.Limit is not { } limit)
            return finding.Say(ChargeMessages.DifferenceNotJudged(ChargeMessages.SuperheatName, was, time, target.WhyNot!)).NotEvaluated(target.WhyNot!, target.Todo!);
        var isHigh = superheat.Value > limit.UpperSi;
        return finding.Remark(target.Remark).JudgeCharge(
            context, new(superheat, DisplayKind.TemperatureDifference, [.. row.Superheat.Readings, .. target.Readings]) { Target = target.Target }, limit, gates,
            ChargeMessages.DifferenceAsked(ChargeMessages.SuperheatName, was, time, new(limit.Text)),
            isHigh ? ChargeMessages.SuperheatHighNext : ChargeMessages.SuperheatLowNext);
    }

    // Shown beside the table because crews know it; it never sets a verdict, least of all where the table gives no target.
    private static void ShowFormula(CheckContext context, FindingBuilder finding, ChargeRow row)
    {
        if (row.OutdoorDryBulb is not { } outdoor || row.ReturnWetBulb is not { } wet || context.Get<ChargeAnalysis>() is not { HasFixedMetering: true, IsRefrigeration: false })
            return;
        var value = SuperheatFormula.At(Temperature.FromSi(outdoor.Value.Value), Temperature.FromSi(wet.Value.Value));
        finding.Name([outdoor, wet]).Step(
            "SH_formula", ChargeMessages.SuperheatFieldFormula, SuperheatFormula.Formula,
            FormattableString.Invariant($"(3 · {Temperature.FromSi(wet.Value.Value).Fahrenheit:0.0} − 80 − {Temperature.FromSi(outdoor.Value.Value).Fahrenheit:0.0})/2"),
            context.Present.Text(value.Si, DisplayKind.TemperatureDifference), SuperheatFormula.Source);
    }
}

/// <summary>The least superheat at the service valve, whatever the target: below it liquid may reach the compressor.</summary>
internal sealed class SuperheatFloorCheck : ICheck
{
    public string Id => "charge.superheat-floor";

    public string Phase => Phases.Charge;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var analysis = context.Get<ChargeAnalysis>();
        if (analysis.ByWeightOnly is not null || analysis.Spoken(OperatingMode.Cooling, r => r.Written is { VaporPressure: not null, VaporLine: not null }) is not { } row)
            yield break;
        var finding = context.Finding(this, row.Time).Use(row.Superheat);
        if (row.Superheat.Value is not { } superheat)
        {
            yield return finding.NotEvaluated(row.Superheat.WhyNot!, CommonMessages.ReadingAndGasNext);
            yield break;
        }

        finding.Measure(superheat, DisplayKind.TemperatureDifference);
        var gates = new ChargeGates(row.Settling, LogDrift.Of(context), RunningCondition.Of(context, row), VaporPort.Of(context));
        gates.NameIn(finding);
        if (gates.Blocked is var (why, todo))
        {
            yield return finding.NotEvaluated(why, todo);
            yield break;
        }

        if (context.Limits.Find(LimitIds.ChargeSuperheatFloor) is not { } floor)
        {
            yield return finding.NotEvaluated(ChargeMessages.MeteringNotWritten, ChargeMessages.MeteringNotWrittenNext);
            yield break;
        }

        var was = context.Present.InMessage(superheat, DisplayKind.TemperatureDifference);
        var time = new TextValue(row.Time);
        var limit = context.State(floor);
        var below = superheat.Value < limit.LowerSi;
        yield return finding.Remark(floor.Remark(context.Present.Units)).JudgeCharge(
            context, new(superheat, DisplayKind.TemperatureDifference, row.Superheat.Readings), limit, gates,
            below ? ChargeMessages.SuperheatBelowFloor(was, time) : ChargeMessages.SuperheatAboveFloor(was, time, new(limit.Text)),
            ChargeMessages.SuperheatFloorNext);
    }
}

/// <summary>Whether an expansion valve holds its superheat.</summary>
internal sealed class MeteringSuperheatCheck : ICheck
{
    public string Id => "charge.metering-superheat";

    public string Phase => Phases.Charge;

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
    internal static Limit? LimitOf(CheckContext context)
    {
        var range = context.Limits.Find(LimitIds.ChargeMeteringSuperheatRange);
        if (range?.Tier == LimitTier.Maker)
            return range;
        return context.Limits.Find(LimitIds.ChargeSuperheat) is { Tier: LimitTier.Maker, Lower: not null, Upper: not null } target ? target : range;
    }

    private Finding Judge(CheckContext context, ChargeAnalysis analysis, ChargeRow row, Limit? limit)
    {
        var finding = context.Finding(this, row.Time).Use(row.Superheat);
        if (row.Superheat.Value is not { } superheat)
            return finding.NotEvaluated(row.Superheat.WhyNot!, CommonMessages.ReadingAndGasNext);
        finding.Measure(superheat, DisplayKind.TemperatureDifference);
        var was = context.Present.InMessage(superheat, DisplayKind.TemperatureDifference);
        var time = new TextValue(row.Time);
        if (analysis.ByWeightOnly is { } weight)
            return finding.Information(ChargeMessages.DifferenceWas(ChargeMessages.SuperheatName, was, time), weight);
        if (analysis.Metering == MeteringKind.EEV && limit?.Tier != LimitTier.Maker)
            return finding.Information(ChargeMessages.DifferenceWas(ChargeMessages.SuperheatName, was, time), ChargeMessages.ValveByBoard);
        if (limit is null)
            return finding.NotEvaluated(ChargeMessages.ValveNoRange, ChargeMessages.ValveNoRangeNext);
        var gates = new ChargeGates(row.Settling, LogDrift.Of(context), RunningCondition.Of(context, row), ChargePrerequisites.Of(context, row), VaporPort.Of(context));
        gates.NameIn(finding);
        if (gates.Blocked is var (why, todo))
            return finding.Say(ChargeMessages.DifferenceNotJudged(ChargeMessages.SuperheatName, was, time, why)).NotEvaluated(why, todo);
        var state = context.State(limit);
        Hunting.NameIn(context, finding);
        if (Hunting.In(context) is { } swing)
        {
            var swung = swing.Said(context);
            return finding.Judge(superheat, DisplayKind.TemperatureDifference, state).Fail(swung)
                .Say(ChargeMessages.ValveHunts(was, time, swung)).Next(DiagnosisMessages.HuntingNext).Build();
        }

        var isHigh = superheat.Value > state.UpperSi;
        return finding.Remark(limit.Remark(context.Present.Units)).JudgeCharge(
            context, new(superheat, DisplayKind.TemperatureDifference, row.Superheat.Readings), state, gates,
            ChargeMessages.ValveHeld(was, time, new(state.Text)),
            isHigh ? ChargeMessages.ValveStarvesNext : ChargeMessages.ValveOverfeedsNext);
    }
}
