using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Fluids;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Instruments;

/// <summary>What a pressure gauge shows with its hose open to the air.</summary>
internal sealed class ZeroPressureCheck : ICheck
{
    public string Id => "instrument.zero-pressure";

    public string Phase => Phases.Instruments;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        foreach (var instrument in context.Get<InstrumentKit>().All)
        {
            if (instrument is { Described.Checks.Zero: { } made, Zero: { } shown })
                yield return Judge(context, instrument, made, shown);
            else if (instrument.Described is { Kind.Value: InstrumentKind.PressureGauge, Reads.IsEmpty: false } gauge && gauge.Reference?.Value != GaugeReference.Absolute)
                yield return Unchecked(context, instrument);
        }
    }

    private Finding Unchecked(CheckContext context, UsedInstrument instrument)
    {
        var finding = context.Finding(this, instrument.Id).Use($"{instrument.Id}: zeroed at site", instrument.Described.ZeroedAtSite, instrument.Id);
        return instrument.Described.ZeroedAtSite?.Value == true
            ? finding.Information($"{instrument.Id} was zeroed on site; no offset is written, and none is removed.", "the offset after zeroing is not written")
            : finding.NotEvaluated("no reading with the hose open to air is written", "Open the gauge to the air and read what it shows.", "instruments: [{checks: {zero: 0.0 psig}}]");
    }

    private Finding Judge(CheckContext context, UsedInstrument instrument, ZeroCheck zero, Given<Commission.Jobs.Model.QuantityValue> shown)
    {
        var finding = context.Finding(this, instrument.Id).Use($"{instrument.Id}: open to air", zero.Read, instrument.Id).Use($"{instrument.Id}: after adjusting", zero.Adjusted, instrument.Id);
        var offset = shown.Value.Si;
        var text = context.Present.Text(offset, DisplayKind.Pressure);
        finding.Step("p₀", "reading open to air", "as read", shown.Text, text, "taken off every reading of this gauge");
        if (instrument.FullScaleSi is not { } scale || context.Limits.Find(LimitIds.InstrumentsZeroPressure) is not { } limit)
            return finding.Information($"{instrument.Id} shows {text} open to air; taken off its readings.", "no full scale is written, so the offset cannot be set against it");
        finding.Use($"{instrument.Id}: full scale", instrument.Described.FullScale, instrument.Id);
        var share = Uncertain.Abs(context.Scope.Reading(offset, 1.0 * instrument.ZeroCause) / scale);
        finding.Judge(share, DisplayKind.Percentage, context.State(limit));
        return finding.Remark(instrument.IsPointFailed ? InstrumentsMessages.DeviationStays : null).Conclude(
            $"{instrument.Id} shows {text} open to air; taken off its readings.",
            $"{instrument.Id} shows {text} open to air: far off for its range.",
            "Replace or repair the gauge; a bent one is wrong everywhere, not only at zero.");
    }
}

/// <summary>What a gauge shows at a pressure known from a better one.</summary>
internal sealed class KnownPressureCheck : ICheck
{
    public string Id => "instrument.known-pressure";

    public string Phase => Phases.Instruments;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        foreach (var instrument in context.Get<InstrumentKit>().All)
        {
            if (instrument.Described.Checks?.KnownPressure is { } check)
                yield return Judge(context, instrument, check);
        }
    }

    private Finding Judge(CheckContext context, UsedInstrument instrument, ReferenceCheck check)
    {
        var present = context.Present;
        var shown = check.Adjusted ?? check.Read;
        var zero = instrument.Zero;
        var finding = context.Finding(this, instrument.Id)
            .Use($"{instrument.Id}: applied", check.Applied, instrument.Id)
            .Use($"{instrument.Id}: read", shown, instrument.Id)
            .Use($"{instrument.Id}: open to air", zero, instrument.Id);
        var applied = check.Applied.Value.Si;
        if (instrument.KnownPressureError is not { } off)
            return finding.NotEvaluated("the applied pressure is not above zero", "Apply a pressure near those that are read on the job.");
        var terms = new List<RootTerm>();
        if (check.Applied.Stated is { } stated)
            terms.Add(-1.0 * context.Causes.Enter(RootCause.FromExpanded($"{instrument.Id}: known pressure", "stated with the applied pressure", stated.HalfWidthSi, stated.CoverageFactor), DisplayKind.PressureDifference));
        if (instrument.ResolutionAt(shown.Value.Si) is { } step)
            terms.Add(1.0 * context.Causes.Enter(RootCause.FromResolution($"{instrument.Id}: reading of the known pressure", "smallest step of the indication", step), DisplayKind.PressureDifference));
        if (zero is not null)
            terms.Add(-1.0 * instrument.ZeroCause);
        var error = context.Scope.Reading(off, [.. terms]);
        finding.Step(
            "e", "error at the known pressure", "p_read − p_zero − p_applied",
            $"{shown.Text} − ({zero?.Text ?? "0"}) − {check.Applied.Text}", present.Text(error, DisplayKind.PressureDifference));
        var limit = context.Limits.Require(LimitIds.InstrumentsKnownPressure);
        finding.Judge(Uncertain.Abs(error / applied), DisplayKind.Percentage, context.State(limit));
        finding.Remark(instrument.IsPointFailed ? InstrumentsMessages.DeviationStays : null);
        if (check.Applied.Stated is null)
            finding.Reserve("the reference has no stated uncertainty, so the error is reported and not corrected").Next("State the reference's uncertainty with the applied pressure.");
        var words = present.Text(off, DisplayKind.PressureDifference);
        return finding.Conclude(
            $"{instrument.Id} is off by {words} at {check.Applied.Text}{(check.Applied.Stated is null ? "" : "; readings are corrected in proportion")}.",
            $"{instrument.Id} is off by {words} at {check.Applied.Text}: beyond what a service gauge may be.",
            "Recalibrate or replace the gauge and repeat the readings taken on it.");
    }
}

/// <summary>A gauge against the saturation pressure of a rested cylinder: shows gross error only.</summary>
internal sealed class RestedCylinderCheck : ICheck
{
    public string Id => "instrument.cylinder";

    public string Phase => Phases.Instruments;

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
                    : RootCause.FromHalfWidth($"{instrument.Id}: cylinder temperature", "± 1 °F around a rested cylinder, common practice", ConversionFactors.FahrenheitDegree),
                DisplayKind.TemperatureDifference));
        var bubble = fluid.BubbleAtTemperature(temperature.Value);
        if (!bubble.Ok)
            return finding.NotEvaluated(bubble.Reason!, "Check the cylinder's temperature.");
        var model = context.Causes.Enter(new RootCause($"{info.Designation}: equation of state", "share of the pressure", context.Assume(info.IsBlend ? LimitIds.AssumptionRefrigerantBlend : LimitIds.AssumptionRefrigerantPure) * bubble.Value.Pressure), DisplayKind.PressureDifference);
        var expected = Uncertain.WithPartials(bubble.Value.Pressure, (temperature, bubble.Value.PressureSlope)) + context.Scope.Reading(0, 1.0 * model);
        var difference = (reading.Value - expected) / expected.Value;
        var present = context.Present;
        var atmosphere = context.Get<SiteAtmosphere>().Value.Value;
        finding
            .Step("p_b", "bubble pressure at the cylinder's temperature", "p_bubble(T)", check.Temperature.Text, present.Text(bubble.Value.Pressure - atmosphere, DisplayKind.Pressure), fluid.Papers[0].Citation)
            .Step("e", "difference as a share of it", "(p − p_b)/p_b", $"{present.Text(reading.Value.Value - atmosphere, DisplayKind.Pressure)} against {present.Text(bubble.Value.Pressure - atmosphere, DisplayKind.Pressure)}", present.Text(difference, DisplayKind.Percentage));
        var limit = context.Limits.Require(LimitIds.InstrumentsCylinder);
        finding.Judge(Uncertain.Abs(difference), DisplayKind.Percentage, context.State(limit));
        if (context.Limits.Find(LimitIds.InstrumentsCylinderRest) is { Lower: { } rest } && !(check.Rested?.Value.Si >= rest.Si))
            finding.Reserve($"the cylinder is not shown to have rested {rest.Text}").Next("Let the cylinder rest longer out of the sun, or check against nitrogen on a test gauge.");
        if (check.Virgin?.Value == false)
            finding.Reserve("a cylinder of recovered refrigerant may hold air or another blend").Next("Use a cylinder of virgin refrigerant, or check against nitrogen on a test gauge.");
        return finding.Conclude(
            $"{instrument.Id} agrees with the rested cylinder: no gross error.",
            $"{instrument.Id} disagrees with the rested cylinder by {present.Text(difference.Value, DisplayKind.Percentage)}.",
            "Make sure that the cylinder is rested, virgin and holds liquid; else check the gauge against nitrogen on a test gauge.");
    }
}
