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

/// <summary>External static pressure against the plate; the total of the air handler and the distance from the design beside it.</summary>
internal sealed class StaticCheck : ICheck
{
    public string Id => "air.static";

    public string Phase => Phases.Air;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var reading = context.Get<StaticReading>();
        if (reading.Written is null)
            yield break;
        yield return Plate(context, reading);
        if (Design(context, reading) is { } design)
            yield return design;
        if (reading.Total is { } total)
            yield return Total(context, reading, total);
    }

    private Finding Plate(CheckContext context, StaticReading reading)
    {
        var finding = Begin(context, reading, null).Use(AirMessages.ReadingMaxStaticPlate, context.Job.Equipment.Nameplate?.MaxStatic);
        if (reading.External is not { } external)
            return finding.NotEvaluated(reading.WhyNot!, reading.Todo!, reading.InFile);
        var was = context.Present.InMessage(external, DisplayKind.StaticPressure);
        var limit = context.Limits.Require(LimitIds.AirStaticExternalMaximum);
        finding.Use(AirMessages.ReadingMaxStatic, context.Job.Equipment.Nameplate?.MaxStatic);
        var state = context.State(limit);
        if (reading.TooHigh is { } high && external.On(state).Value > state.UpperSi)
            return finding.Measure(external, DisplayKind.StaticPressure).Show(state).Say(AirMessages.StaticNotJudged(was, high)).NotEvaluated(high, AirMessages.StaticDropNext);
        finding.Judge(external.On(state), DisplayKind.StaticPressure, state).Remark(limit.Remark(context.Present.Units)).RemarkUnknown(reading.Readings);
        if (reading.TooLow is { } low)
            finding.Reserve(low).Next(AirMessages.StaticDropNext);
        if (reading.Unclear is { } unclear)
            finding.Reserve(unclear).Next(AirMessages.StaticPartsNext, "air: {static: {includes coil: no, includes filter: no}}");
        if (reading.TapsUnwritten)
            finding.Remark(AirMessages.StaticTapsNotWritten);
        return finding.Conclude(
            AirMessages.StaticWithin(was, new(state.Text)),
            AirMessages.StaticBeyond(was, new(state.Text)),
            this.WhenItFails());
    }

    private Finding? Design(CheckContext context, StaticReading reading)
    {
        if (context.Job.Limits?.ExternalStatic?.Target is not { } design || context.Limits.Find(LimitIds.AirStaticDesignTolerance) is not { Upper: { } share } limit)
            return null;
        var finding = Begin(context, reading, AirMessages.SubjectDesign).Use(AirMessages.ReadingDesignStatic, design);
        if (reading.External is not { } external)
            return finding.NotEvaluated(reading.WhyNot!, reading.Todo!, reading.InFile);
        var least = context.Limits.Find(LimitIds.AirStaticDesignToleranceMinimum)?.Upper?.Si ?? 0;
        var half = Math.Max(share.Si * design.Value.Si, least);
        var present = context.Present;
        finding.Step("Δ", AirMessages.StaticTolerance, AirMessages.StaticToleranceFormula, AirMessages.StaticToleranceNumbers(new(share.Text), new(design.Text), present.InMessage(least, DisplayKind.StaticPressure)), present.Text(half, DisplayKind.StaticPressure), limit.Source);
        var state = context.State(limit) with
        {
            Kind = LimitKind.Target,
            Text = $"{design.Text} ± {present.Text(half, DisplayKind.StaticPressure)}",
            LowerSi = design.Value.Si - half,
            UpperSi = design.Value.Si + half,
            TargetSi = design.Value.Si,
        };
        finding.Judge(external.On(state), DisplayKind.StaticPressure, state).RemarkUnknown(reading.Readings);
        if (reading.TooLow is { } low)
            finding.Reserve(low);
        if (reading.TooHigh is { } high)
            finding.Reserve(high);
        var was = present.InMessage(external, DisplayKind.StaticPressure);
        return finding.Conclude(
            AirMessages.StaticDesignWithin(was, new(state.Text)),
            AirMessages.StaticDesignOutside(was, new(state.Text)),
            AirMessages.StaticDesignNext);
    }

    private Finding Total(CheckContext context, StaticReading reading, Uncertain total)
    {
        var present = context.Present;
        var finding = Begin(context, reading, AirMessages.SubjectTotal).UseAll(new[] { reading.CoilDrop, reading.FilterDrop }.OfType<CorrectedReading>()).Measure(total, DisplayKind.StaticPressure);
        finding.Step("TSP", AirMessages.StaticTotal, AirMessages.StaticTotalFormula, "", present.Text(total, DisplayKind.StaticPressure), AirMessages.Definition);
        return finding.Information(AirMessages.StaticTotalWas(present.InMessage(total, DisplayKind.StaticPressure)), AirMessages.StaticTotalKind);
    }

    private FindingBuilder Begin(CheckContext context, StaticReading reading, Message? subject)
    {
        var finding = context.Finding(this, subject is null ? null : context.Present.Text(subject)).UseAll(reading.Readings);
        foreach (var use in reading.Uses)
            finding.Use(use);
        return finding.Use(AirMessages.ReadingStaticReturn, reading.Written!.Return).Use(AirMessages.ReadingStaticSupply, reading.Written.Supply).Add(reading.Steps);
    }
}

/// <summary>The way of a check that judges the pressure drop of one part of the air handler by the maker's figure.</summary>
internal static class PartDrop
{
    /// <summary>Judges it.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="check">The check that speaks.</param>
    /// <param name="drop">The drop.</param>
    /// <param name="limit">The maker's figure; null when it is not written.</param>
    /// <param name="part">Filter or coil.</param>
    /// <param name="before">What is added to the finding before it ends; null for nothing.</param>
    public static Finding Judge(CheckContext context, ICheck check, CorrectedReading drop, Limit? limit, Message part, Action<FindingBuilder>? before = null)
    {
        var finding = context.Finding(check).Use(drop);
        var was = context.Present.InMessage(drop.Value, DisplayKind.StaticPressure);
        if (drop.Value.Value < 0)
            return finding.Measure(drop.Value, DisplayKind.StaticPressure).NotEvaluated(AirMessages.DropBelowZero(part), AirMessages.DropBelowZeroNext);
        if (limit is not { Upper: not null })
        {
            before?.Invoke(finding.Measure(drop.Value, DisplayKind.StaticPressure));
            return finding.Information(AirMessages.DropWas(part, was), CommonMessages.FigureNotWritten);
        }

        var state = context.State(limit);
        finding.Judge(drop.Value.On(state), DisplayKind.StaticPressure, state).RemarkUnknown([drop]);
        before?.Invoke(finding);
        return finding.Conclude(
            AirMessages.DropWithin(part, was, new(state.Text)),
            AirMessages.DropBeyond(part, was, new(state.Text)),
            check.WhenItFails());
    }
}

/// <summary>Pressure drop of the indoor coil.</summary>
internal sealed class CoilDropCheck : ICheck
{
    public string Id => "air.coil-drop";

    public string Phase => Phases.Air;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Get<StaticReading>().CoilDrop is not { } drop)
            yield break;
        var wet = context.Job.Air!.WetCoil;
        yield return PartDrop.Judge(context, this, drop, context.Limits.Find(LimitIds.AirCoilDrop), AirMessages.PartCoil, finding =>
        {
            finding.Use(AirMessages.ReadingWetCoil, wet).Use(AirMessages.PartCoil, context.Job.Air.Coil);
            if (wet is null && finding.Passes)
                finding.Reserve(AirMessages.CoilWetNotWritten).Next(AirMessages.CoilWetNotWrittenNext, "air: {wet coil: yes}");
            else if (wet is not null)
                finding.Remark(wet.Value ? AirMessages.CoilWasWet : AirMessages.CoilWasDry);
        });
    }
}

/// <summary>Pressure drop of the filter.</summary>
internal sealed class FilterDropCheck : ICheck
{
    public string Id => "air.filter-drop";

    public string Phase => Phases.Air;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Get<StaticReading>().FilterDrop is { } drop)
            yield return PartDrop.Judge(context, this, drop, context.Limits.Find(LimitIds.AirFilterDrop), AirMessages.PartFilter, finding => finding.Use(AirMessages.PartFilter, context.Job.Air!.Filter));
    }
}

/// <summary>Electric power of the blower for each airflow.</summary>
internal sealed class FanPowerCheck : ICheck
{
    public string Id => "air.fan-power";

    public string Phase => Phases.Air;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Air is not { BlowerPower: { } power } air)
            yield break;
        var reading = context.Readings.Plain(context.Present.Text(AirMessages.ReadingBlowerPower), ReadingName.Electrical, power, DisplayKind.Power, air.With);
        var finding = context.Finding(this).Use(reading);
        if (context.Get<AirflowRoutes>().Chosen is not { } route)
        {
            yield return finding.NotEvaluated(AirMessages.AirflowUnknown, AirMessages.AirflowUnknownNext);
            yield break;
        }

        route.UseIn(finding);
        if (route.Value is not { Value: > 0 } flow)
        {
            yield return finding.NotEvaluated(AirMessages.AirflowUnknownWhy(route.WhyNot is { } why ? why! : AirMessages.AirflowZero), route.Todo ?? AirMessages.AirflowZeroNext, route.InFile);
            yield break;
        }

        var present = context.Present;
        var per = reading.Value / flow;
        var was = present.InMessage(per, DisplayKind.FanPower);
        finding.Step("P/q_V", AirMessages.FanPowerName, "P / q_V", $"{power.Text} / {present.Text(flow.Value, DisplayKind.AirFlow)}", present.Text(per, DisplayKind.FanPower), AirMessages.Definition);
        if (context.Limits.Find(LimitIds.AirFanPower) is not { } limit)
        {
            yield return finding.Measure(per, DisplayKind.FanPower).RemarkUnknown([reading, .. route.Readings]).Information(AirMessages.FanPowerWas(was), AirMessages.FanPowerNoLimit);
            yield break;
        }

        var state = context.State(limit);
        finding.Judge(per.On(state), DisplayKind.FanPower, state).Remark(limit.Remark(present.Units)).RemarkUnknown([reading, .. route.Readings]);
        if (route.Reservation is { } open && finding.Passes)
            finding.Reserve(open).Next(AirMessages.AirflowReservedNext);
        if (!finding.Passes && context.Limits.Find(LimitIds.AirFanPowerGradeTwo) is { Upper: { } second } grade && per.Value <= second.Si)
            finding.Show(context.State(grade)).Remark(AirMessages.FanPowerGradeTwo(new(second.Text), new(grade.Source)));
        yield return finding.Conclude(
            AirMessages.FanPowerWithin(was, new(state.Text)),
            AirMessages.FanPowerBeyond(was, new(state.Text)),
            this.WhenItFails());
    }
}
