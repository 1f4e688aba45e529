using Commission.Checks.Charge;
using Commission.Checks.Findings;
using Commission.Checks.Limits;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Air;

/// <summary>External static pressure against the plate; the total of the air handler and the distance from the design beside it.</summary>
internal sealed class StaticCheck : ICheck
{
    public string Id => "air.static";

    public string Phase => Phases.Air;

    public string Title => "External static pressure";

    public CheckHelp Help { get; } = new(
        "How much resistance do the ducts put in front of the blower, and is it within what the plate allows? Taps: return after the filter and before the unit, supply after the coil, or before it where the maker counts the coil as external; say which.",
        "ESP = p_supply − p_return, both against the room (return negative), with the drops of coil and filter added or taken off so that it is counted as the maker counts it",
        "The plate or the maker's manual; without either 0.5 inwc (common practice, no source). Total static pressure up to 0.8 inwc is typical (common practice, no source).",
        "Change a dirty filter, open dampers and registers, look for crushed flex duct and closed coils; enlarge the return before the blower is turned up.");

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
            return finding.NotEvaluated(reading.WhyNot!, reading.Todo!);
        var text = context.Present.Text(external, DisplayKind.StaticPressure);
        if (context.Limits.Find("air.static.external-maximum") is not { } limit)
            return finding.Measure(external, DisplayKind.StaticPressure).NotEvaluated("no pack sets a limit", "Name a limits pack.");
        finding.Use("max static", context.Job.Equipment.Nameplate?.MaxStatic);
        var state = context.State(limit);
        if (reading.TooHigh is { } high && external.On(state).Value > state.UpperSi)
            return finding.Measure(external, DisplayKind.StaticPressure).Show(state).Say($"External static pressure at most {text}; this is not judged: {high}.").NotEvaluated(high, "Write the drop of that part, or read again on its other side.");
        finding.Judge(external.On(state), DisplayKind.StaticPressure, state).Remark(limit.Remark(context.Present.Units)).RemarkUnknown(reading.Readings);
        if (reading.TooLow is { } low)
            finding.Reserve(low).Next("Write the drop of that part, or read again on its other side.");
        if (reading.Unclear is { } unclear)
            finding.Reserve(unclear).Next("Look in the manual and write includes coil and includes filter.");
        if (reading.TapsUnwritten)
            finding.Remark("The taps are not written: the reading counts as taken where the plate means it.");
        return finding.Passes
            ? finding.Say($"External static pressure {text}, {state.Text} allowed.").Build()
            : finding.Say($"External static pressure {text}, more than the {state.Text} allowed.").Next(Help.WhenItFails).Build();
    }

    private Finding? Design(CheckContext context, StaticReading reading)
    {
        if (context.Job.Limits?.ExternalStatic?.Target is not { } design || context.Limits.Find("air.static.design-tolerance") is not { Upper: { } share } limit)
            return null;
        var finding = Begin(context, reading, "design").Use("design external static pressure", design);
        if (reading.External is not { } external)
            return finding.NotEvaluated(reading.WhyNot!, reading.Todo!);
        var least = context.Limits.Find("air.static.design-tolerance-minimum")?.Upper?.Si ?? 0;
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
        return finding.Passes
            ? finding.Say($"External static pressure {text}, {state.Text} by design.").Build()
            : finding.Say($"External static pressure {text}, outside the {state.Text} of the design.").Next("Compare ducts, filter and registers with the design; too little resistance can mean a duct that came apart.").Build();
    }

    private Finding Total(CheckContext context, StaticReading reading, Uncertain total)
    {
        var present = context.Present;
        var finding = Begin(context, reading, "total").UseAll(new[] { reading.CoilDrop, reading.FilterDrop }.OfType<Readings.CorrectedReading>()).Measure(total, DisplayKind.StaticPressure);
        var text = present.Text(total, DisplayKind.StaticPressure);
        finding.Step("TSP", "total static pressure", "ESP between the taps, with the drops of coil and filter that it leaves out", "", text, "definition");
        var limit = context.Limits.Find("air.static.total-maximum");
        if (limit is not null)
            finding.Show(context.State(limit));
        if (limit?.Upper is { } typical && total.Value > typical.Si)
            finding.Remark($"Air handlers are usually rated for {context.State(limit).Text}: here the blower moves less air than its rating, or draws more.");
        return finding.Information($"Total static pressure of the air handler, filter and coil included: {text}.", "typical figure, no limit of its own; the external static pressure is what the plate limits");
    }

    private FindingBuilder Begin(CheckContext context, StaticReading reading, string? subject)
    {
        var finding = context.Finding(this, subject).UseAll(reading.Readings);
        foreach (var use in reading.Uses)
            finding.Use(use);
        return finding.Use("static pressure, return", reading.Written!.Return).Use("static pressure, supply", reading.Written.Supply).Add(reading.Steps);
    }
}
