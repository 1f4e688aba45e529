using Commission.Checks.AirReadings;
using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
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
        var finding = Begin(context, reading, null).Use("max static on the plate", context.Job.Equipment.Nameplate?.MaxStatic);
        if (reading.External is not { } external)
            return finding.NotEvaluated(reading.WhyNot!, reading.Todo!, reading.InFile);
        var text = context.Present.Text(external, DisplayKind.StaticPressure);
        var limit = context.Limits.Require(LimitIds.AirStaticExternalMaximum);
        finding.Use("max static", context.Job.Equipment.Nameplate?.MaxStatic);
        var state = context.State(limit);
        if (reading.TooHigh is { } high && external.On(state).Value > state.UpperSi)
            return finding.Measure(external, DisplayKind.StaticPressure).Show(state).Say($"External static pressure at most {text}; this is not judged: {high}.").NotEvaluated(high, "Write the drop of that part, or read again on its other side.");
        finding.Judge(external.On(state), DisplayKind.StaticPressure, state).Remark(limit.Remark(context.Present.Units)).RemarkUnknown(reading.Readings);
        if (reading.TooLow is { } low)
            finding.Reserve(low).Next("Write the drop of that part, or read again on its other side.");
        if (reading.Unclear is { } unclear)
            finding.Reserve(unclear).Next(AirMessages.StaticPartsNext, "air: {static: {includes coil: no, includes filter: no}}");
        if (reading.TapsUnwritten)
            finding.Remark("The taps are not written: the reading counts as taken where the plate means it.");
        return finding.Conclude(
            $"External static pressure {text}, {state.Text} allowed.",
            $"External static pressure {text}, more than the {state.Text} allowed.",
            this.WhenItFails());
    }

    private Finding? Design(CheckContext context, StaticReading reading)
    {
        if (context.Job.Limits?.ExternalStatic?.Target is not { } design || context.Limits.Find(LimitIds.AirStaticDesignTolerance) is not { Upper: { } share } limit)
            return null;
        var finding = Begin(context, reading, "design").Use("design external static pressure", design);
        if (reading.External is not { } external)
            return finding.NotEvaluated(reading.WhyNot!, reading.Todo!, reading.InFile);
        var least = context.Limits.Find(LimitIds.AirStaticDesignToleranceMinimum)?.Upper?.Si ?? 0;
        var half = Math.Max(share.Si * design.Value.Si, least);
        var present = context.Present;
        finding.Step("Δ", "tolerance around the design", "the larger of the share and the least", $"{share.Text} of {design.Text}, {present.Text(least, DisplayKind.StaticPressure)}", present.Text(half, DisplayKind.StaticPressure), limit.Source);
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
        var text = present.Text(external, DisplayKind.StaticPressure);
        return finding.Conclude(
            $"External static pressure {text}, {state.Text} by design.",
            $"External static pressure {text}, outside the {state.Text} of the design.",
            "Compare ducts, filter and registers with the design; too little resistance can mean a duct that came apart.");
    }

    private Finding Total(CheckContext context, StaticReading reading, Uncertain total)
    {
        var present = context.Present;
        var finding = Begin(context, reading, "total").UseAll(new[] { reading.CoilDrop, reading.FilterDrop }.OfType<CorrectedReading>()).Measure(total, DisplayKind.StaticPressure);
        var text = present.Text(total, DisplayKind.StaticPressure);
        finding.Step("TSP", "total static pressure", "ESP between the taps, with the drops of coil and filter that it leaves out", "", text, "definition");
        return finding.Information($"Total static pressure of the air handler, filter and coil included: {text}.", "no limit of its own; the external static pressure is what the plate limits");
    }

    private FindingBuilder Begin(CheckContext context, StaticReading reading, string? subject)
    {
        var finding = context.Finding(this, subject).UseAll(reading.Readings);
        foreach (var use in reading.Uses)
            finding.Use(use);
        return finding.Use("static pressure, return", reading.Written!.Return).Use("static pressure, supply", reading.Written.Supply).Add(reading.Steps);
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
    public static Finding Judge(CheckContext context, ICheck check, CorrectedReading drop, Limit? limit, string part, Action<FindingBuilder>? before = null)
    {
        var finding = context.Finding(check).Use(drop);
        var text = context.Present.Text(drop.Value, DisplayKind.StaticPressure);
        if (drop.Value.Value < 0)
            return finding.Measure(drop.Value, DisplayKind.StaticPressure).NotEvaluated($"a drop of the {part} below zero cannot be", "Swap the hoses of the manometer, or write the drop without its sign.");
        if (limit is not { Upper: not null })
        {
            before?.Invoke(finding.Measure(drop.Value, DisplayKind.StaticPressure));
            return finding.Information($"The {part} takes {text}.", "the maker's figure is not written");
        }

        var state = context.State(limit);
        finding.Judge(drop.Value.On(state), DisplayKind.StaticPressure, state).RemarkUnknown([drop]);
        before?.Invoke(finding);
        return finding.Conclude(
            $"The {part} takes {text}, {state.Text} allowed.",
            $"The {part} takes {text}, more than the {state.Text} allowed.",
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
        yield return PartDrop.Judge(context, this, drop, context.Limits.Find(LimitIds.AirCoilDrop), "coil", finding =>
        {
            finding.Use("wet coil", wet).Use("coil", context.Job.Air.Coil);
            if (wet is null && finding.Passes)
                finding.Reserve(AirMessages.CoilWetNotWritten).Next(AirMessages.CoilWetNotWrittenNext, "air: {wet coil: yes}");
            else if (wet is not null)
                finding.Remark(wet.Value ? "The coil was wet." : "The coil was dry.");
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
            yield return PartDrop.Judge(context, this, drop, context.Limits.Find(LimitIds.AirFilterDrop), "filter", finding => finding.Use("filter", context.Job.Air!.Filter));
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
        var reading = context.Readings.Plain("blower power", ReadingName.Electrical, power, DisplayKind.Power, air.With);
        var finding = context.Finding(this).Use(reading);
        if (context.Get<AirflowRoutes>().Chosen is not { } route)
        {
            yield return finding.NotEvaluated("the airflow is not known", "Measure the airflow, or write the maker's fan table and the static pressure.");
            yield break;
        }

        route.UseIn(finding);
        if (route.Value is not { Value: > 0 } flow)
        {
            yield return finding.NotEvaluated($"the airflow is not known: {route.WhyNot ?? "it is zero"}", route.Todo ?? "Read the airflow with the blower running.", route.InFile);
            yield break;
        }

        var present = context.Present;
        var per = reading.Value / flow;
        var text = present.Text(per, DisplayKind.FanPower);
        finding.Step("P/q_V", "blower power for each airflow", "P / q_V", $"{power.Text} / {present.Text(flow.Value, DisplayKind.AirFlow)}", text, "definition");
        if (context.Limits.Find(LimitIds.AirFanPower) is not { } limit)
        {
            yield return finding.Measure(per, DisplayKind.FanPower).RemarkUnknown([reading, .. route.Readings]).Information($"The blower takes {text}.", "neither the maker nor a pack in use sets a limit");
            yield break;
        }

        var state = context.State(limit);
        finding.Judge(per.On(state), DisplayKind.FanPower, state).Remark(limit.Remark(present.Units)).RemarkUnknown([reading, .. route.Readings]);
        if (route.Reservation is { } open && finding.Passes)
            finding.Reserve(open).Next("Write what is missing, or measure the airflow another way.");
        if (!finding.Passes && context.Limits.Find(LimitIds.AirFanPowerGradeTwo) is { Upper: { } second } grade && per.Value <= second.Si)
            finding.Show(context.State(grade)).Remark($"It is within the second grade ({second.Text}, {grade.Source}).");
        yield return finding.Conclude(
            $"The blower takes {text}; {state.Text} allowed.",
            $"The blower takes {text}, more than the {state.Text} allowed.",
            this.WhenItFails());
    }
}
