using Commission.Checks.Readings;
using Commission.Fluids;
using Commission.Jobs.Model;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Instruments;

/// <summary>A gauge against the saturation pressure of a rested cylinder: shows gross error only.</summary>
internal sealed class RestedCylinderCheck : ICheck
{
    public string Id => "instrument.cylinder";

    public string Phase => Phases.Instruments;

    public string Title => "Gauge against a rested cylinder";

    public CheckHelp Help { get; } = new(
        "Does the gauge show the saturation pressure of a cylinder that has come to one temperature? A degree of error in the temperature is several psi, so this finds gross error only.",
        "difference = corrected reading − bubble pressure at the cylinder's temperature, as a share of that pressure",
        "Rest of 4 h: California RA3.2, p. RA3-12 (published). Bubble pressure: the published equation of state of the refrigerant. Bound: RA3.2.2.2.3 (from memory).",
        "Use a virgin cylinder with liquid in it, out of the sun, rested at least four hours. If the gauge still disagrees, check it against nitrogen on a test gauge.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        foreach (var instrument in context.Get<InstrumentKit>().All)
        {
            if (instrument.Described.Checks?.Cylinder is { } check)
                yield return Judge(context, instrument, check);
        }
    }

    private Finding Judge(CheckContext context, UsedInstrument instrument, CylinderCheck check)
    {
        var finding = context.Finding(this, instrument.Id)
            .Use($"{instrument.Id}: refrigerant in the cylinder", check.Refrigerant, instrument.Id)
            .Use($"{instrument.Id}: cylinder temperature", check.Temperature, instrument.Id)
            .Use($"{instrument.Id}: rested", check.Rested, instrument.Id)
            .Use($"{instrument.Id}: virgin refrigerant", check.Virgin, instrument.Id)
            .Use($"{instrument.Id}: liquid present", check.LiquidPresent, instrument.Id);
        if (check.LiquidPresent?.Value == false)
            return finding.NotEvaluated("without liquid in the cylinder there is no saturation pressure", "Use a cylinder that still holds liquid.");
        if (RefrigerantCatalogue.Find(check.Refrigerant.Value) is not { IsComputable: true } info)
            return finding.NotEvaluated($"no equation of state for {check.Refrigerant.Value}", "Use a cylinder of another refrigerant.");
        var fluid = Refrigerant.Load(info.Designation);
        var reading = context.Readings.Pressure($"{instrument.Id}: on the cylinder", Commission.Jobs.Model.Words.ReadingName.VaporPressure, check.Read, [instrument.Described.Id]);
        finding.Use(reading);
        var temperature = context.Scope.Reading(
            check.Temperature.Value.Si,
            1.0 * context.Causes.Enter(
                check.Temperature.Stated is { } stated
                    ? RootCause.FromExpanded($"{instrument.Id}: cylinder temperature", "stated with the reading", stated.HalfWidthSi, stated.CoverageFactor)
                    : RootCause.FromHalfWidth($"{instrument.Id}: cylinder temperature", "± 1 °F around a rested cylinder, common practice", 5.0 / 9.0),
                DisplayKind.TemperatureDifference));
        var bubble = fluid.BubbleAtTemperature(temperature.Value);
        if (!bubble.Ok)
            return finding.NotEvaluated(bubble.Reason!, "Check the cylinder's temperature.");
        var model = context.Causes.Enter(new RootCause($"{info.Designation}: equation of state", "share of the pressure", context.Assume(info.IsBlend ? "assumption.refrigerant.blend" : "assumption.refrigerant.pure") * bubble.Value.Pressure), DisplayKind.PressureDifference);
        var expected = Uncertain.WithPartials(bubble.Value.Pressure, (temperature, bubble.Value.PressureSlope)) + context.Scope.Reading(0, 1.0 * model);
        var difference = (reading.Value - expected) / expected.Value;
        var present = context.Present;
        var atmosphere = context.Get<SiteAtmosphere>().Value.Value;
        finding
            .Step("p_b", "bubble pressure at the cylinder's temperature", "p_bubble(T)", check.Temperature.Text, present.Text(bubble.Value.Pressure - atmosphere, DisplayKind.Pressure), fluid.Papers[0].Citation)
            .Step("e", "difference as a share of it", "(p − p_b)/p_b", $"{present.Text(reading.Value.Value - atmosphere, DisplayKind.Pressure)} against {present.Text(bubble.Value.Pressure - atmosphere, DisplayKind.Pressure)}", present.Text(difference, DisplayKind.Percentage));
        if (context.Limits.Find("instruments.cylinder") is not { } limit)
            return finding.NotEvaluated("no pack sets a limit", "Name a limits pack.");
        finding.Judge(Uncertain.Abs(difference), DisplayKind.Percentage, context.State(limit));
        if (context.Limits.Find("instruments.cylinder.rest") is { Lower: { } rest } && !(check.Rested?.Value.Si >= rest.Si))
            finding.Reserve($"the cylinder is not shown to have rested {rest.Text}").Next("Let the cylinder rest longer out of the sun, or check against nitrogen on a test gauge.");
        if (check.Virgin?.Value == false)
            finding.Reserve("a cylinder of recovered refrigerant may hold air or another blend").Next("Use a cylinder of virgin refrigerant, or check against nitrogen on a test gauge.");
        return finding.Passes
            ? finding.Say($"{instrument.Id} agrees with the rested cylinder: no gross error.").Build()
            : finding.Say($"{instrument.Id} disagrees with the rested cylinder by {present.Text(difference.Value, DisplayKind.Percentage)}.").Next("Make sure that the cylinder is rested, virgin and holds liquid; else check the gauge against nitrogen on a test gauge.").Build();
    }
}
