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
        var finding = context.Finding(this, instrument.Id).Use(InstrumentsMessages.Of(new(instrument.Id), InstrumentsMessages.ZeroedAtSite), instrument.Described.ZeroedAtSite, instrument.Id);
        return instrument.Described.ZeroedAtSite?.Value == true
            ? finding.Information(InstrumentsMessages.ZeroedOnSite(new(instrument.Id)), InstrumentsMessages.ZeroedOnSiteKind)
            : finding.NotEvaluated(InstrumentsMessages.NotOpened, InstrumentsMessages.NotOpenedNext, "instruments: [{checks: {zero: 0.0 psig}}]");
    }

    private Finding Judge(CheckContext context, UsedInstrument instrument, ZeroCheck zero, Given<Commission.Jobs.Model.QuantityValue> shown)
    {
        var finding = context.Finding(this, instrument.Id).Use(InstrumentsMessages.Of(new(instrument.Id), InstrumentsMessages.OpenToAir), zero.Read, instrument.Id).Use(InstrumentsMessages.Of(new(instrument.Id), InstrumentsMessages.AfterAdjusting), zero.Adjusted, instrument.Id);
        var offset = shown.Value.Si;
        var off = context.Present.InMessage(offset, DisplayKind.Pressure);
        finding.Step("p₀", InstrumentsMessages.ReadingOpen, InstrumentsMessages.AsRead, shown.Text, context.Present.Text(off), InstrumentsMessages.TakenOffGauge);
        if (instrument.FullScaleSi is not { } scale || context.Limits.Find(LimitIds.InstrumentsZeroPressure) is not { } limit)
            return finding.Information(InstrumentsMessages.ZeroTakenOff(new(instrument.Id), off), InstrumentsMessages.NoFullScale);
        finding.Use(InstrumentsMessages.Of(new(instrument.Id), InstrumentsMessages.FullScale), instrument.Described.FullScale, instrument.Id);
        var share = Uncertain.Abs(context.Scope.Reading(offset, 1.0 * instrument.ZeroCause) / scale);
        finding.Judge(share, DisplayKind.Percentage, context.State(limit));
        return finding.Remark(instrument.IsPointFailed ? InstrumentsMessages.DeviationStays : null).Conclude(
            InstrumentsMessages.ZeroTakenOff(new(instrument.Id), off), InstrumentsMessages.ZeroFarOff(new(instrument.Id), off), InstrumentsMessages.ZeroFarOffNext);
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
            .Use(InstrumentsMessages.Of(new(instrument.Id), InstrumentsMessages.Applied), check.Applied, instrument.Id)
            .Use(InstrumentsMessages.Of(new(instrument.Id), InstrumentsMessages.Read), shown, instrument.Id)
            .Use(InstrumentsMessages.Of(new(instrument.Id), InstrumentsMessages.OpenToAir), zero, instrument.Id);
        var applied = check.Applied.Value.Si;
        if (instrument.KnownPressureError is not { } off)
            return finding.NotEvaluated(InstrumentsMessages.AppliedNothing, InstrumentsMessages.AppliedNothingNext);
        var terms = new List<RootTerm>();
        if (check.Applied.Stated is { } stated)
            terms.Add(-1.0 * context.Causes.Enter(RootCause.FromExpanded(InstrumentsMessages.Of(new(instrument.Id), InstrumentsMessages.KnownPressure), InstrumentsMessages.StatedWithPressure, stated.HalfWidthSi, stated.CoverageFactor), DisplayKind.PressureDifference));
        if (instrument.ResolutionAt(shown.Value.Si) is { } step)
            terms.Add(1.0 * context.Causes.Enter(RootCause.FromResolution(InstrumentsMessages.Of(new(instrument.Id), InstrumentsMessages.ReadingKnownPressure), InstrumentsMessages.SmallestStep, step), DisplayKind.PressureDifference));
        if (zero is not null)
            terms.Add(-1.0 * instrument.ZeroCause);
        var error = context.Scope.Reading(off, [.. terms]);
        finding.Step(
            "e", InstrumentsMessages.ErrorAtPressure, "p_read − p_zero − p_applied",
            $"{shown.Text} − ({zero?.Text ?? "0"}) − {check.Applied.Text}", present.Text(error, DisplayKind.PressureDifference));
        var limit = context.Limits.Require(LimitIds.InstrumentsKnownPressure);
        finding.Judge(Uncertain.Abs(error / applied), DisplayKind.Percentage, context.State(limit));
        finding.Remark(instrument.IsPointFailed ? InstrumentsMessages.DeviationStays : null);
        if (check.Applied.Stated is null)
            finding.Reserve(InstrumentsMessages.ReferenceUnknownNotCorrected).Next(InstrumentsMessages.ReferenceUnknownNotCorrectedNext);
        var by = present.InMessage(off, DisplayKind.PressureDifference);
        return finding.Conclude(
            by.Value == 0 ? InstrumentsMessages.GaugeRight(new(instrument.Id), new(check.Applied.Text))
                : InstrumentsMessages.GaugeOff(new(instrument.Id), by, new(check.Applied.Text), check.Applied.Stated is null ? InstrumentsMessages.GaugeOffReadings.AsTheyAre : InstrumentsMessages.GaugeOffReadings.Corrected),
            InstrumentsMessages.GaugeTooFarOff(new(instrument.Id), by, new(check.Applied.Text)),
            InstrumentsMessages.GaugeTooFarOffNext);
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
            .Use(InstrumentsMessages.Of(new(instrument.Id), InstrumentsMessages.CylinderRefrigerant), check.Refrigerant, instrument.Id)
            .Use(InstrumentsMessages.Of(new(instrument.Id), InstrumentsMessages.CylinderTemperature), check.Temperature, instrument.Id)
            .Use(InstrumentsMessages.Of(new(instrument.Id), InstrumentsMessages.CylinderRested), check.Rested, instrument.Id)
            .Use(InstrumentsMessages.Of(new(instrument.Id), InstrumentsMessages.CylinderVirgin), check.Virgin, instrument.Id)
            .Use(InstrumentsMessages.Of(new(instrument.Id), InstrumentsMessages.CylinderLiquid), check.LiquidPresent, instrument.Id);
        if (check.LiquidPresent?.Value == false)
            return finding.NotEvaluated(InstrumentsMessages.CylinderEmpty, InstrumentsMessages.CylinderEmptyNext);
        if (RefrigerantCatalogue.Find(check.Refrigerant.Value) is not { IsComputable: true } info)
            return finding.NotEvaluated(InstrumentsMessages.CylinderUnknown(new(check.Refrigerant.Value)), InstrumentsMessages.CylinderUnknownNext);
        var fluid = Refrigerant.Load(info.Designation);
        var reading = context.Readings.Pressure(context.Present.Text(InstrumentsMessages.Of(new(instrument.Id), InstrumentsMessages.OnTheCylinder)), Commission.Jobs.Model.Words.ReadingName.VaporPressure, check.Read, [instrument.Described.Id]);
        finding.Use(reading);
        var temperature = context.Scope.Reading(
            check.Temperature.Value.Si,
            1.0 * context.Causes.Enter(
                check.Temperature.Stated is { } stated
                    ? RootCause.FromExpanded(InstrumentsMessages.Of(new(instrument.Id), InstrumentsMessages.CylinderTemperature), InstrumentsMessages.StatedWithReading, stated.HalfWidthSi, stated.CoverageFactor)
                    : RootCause.FromHalfWidth(InstrumentsMessages.Of(new(instrument.Id), InstrumentsMessages.CylinderTemperature), InstrumentsMessages.AroundCylinder, ConversionFactors.FahrenheitDegree),
                DisplayKind.TemperatureDifference));
        var bubble = fluid.BubbleAtTemperature(temperature.Value);
        if (!bubble.Ok)
            return finding.NotEvaluated(bubble.Reason!, InstrumentsMessages.CylinderTemperatureNext);
        var model = context.Causes.Enter(new RootCause(InstrumentsMessages.EquationOfState(new(info.Designation)), InstrumentsMessages.ShareOfPressure, context.Assume(info.IsBlend ? LimitIds.AssumptionRefrigerantBlend : LimitIds.AssumptionRefrigerantPure) * bubble.Value.Pressure), DisplayKind.PressureDifference);
        var expected = Uncertain.WithPartials(bubble.Value.Pressure, (temperature, bubble.Value.PressureSlope)) + context.Scope.Reading(0, 1.0 * model);
        var difference = (reading.Value - expected) / expected.Value;
        var present = context.Present;
        var atmosphere = context.Get<SiteAtmosphere>().Value.Value;
        finding
            .Step("p_b", InstrumentsMessages.CylinderBubble, "p_bubble(T)", check.Temperature.Text, present.Text(bubble.Value.Pressure - atmosphere, DisplayKind.Pressure), fluid.Papers[0].Citation)
            .Step("e", InstrumentsMessages.DifferenceOfIt, "(p − p_b)/p_b", InstrumentsMessages.Against(new(present.Text(reading.Value.Value - atmosphere, DisplayKind.Pressure)), new(present.Text(bubble.Value.Pressure - atmosphere, DisplayKind.Pressure))), present.Text(difference, DisplayKind.Percentage));
        var limit = context.Limits.Require(LimitIds.InstrumentsCylinder);
        finding.Judge(Uncertain.Abs(difference), DisplayKind.Percentage, context.State(limit));
        if (context.Limits.Find(LimitIds.InstrumentsCylinderRest) is { Lower: { } rest } && !(check.Rested?.Value.Si >= rest.Si))
            finding.Reserve(InstrumentsMessages.NotRested(new(rest.Text))).Next(InstrumentsMessages.NotRestedNext);
        if (check.Virgin?.Value == false)
            finding.Reserve(InstrumentsMessages.NotVirgin).Next(InstrumentsMessages.NotVirginNext);
        return finding.Conclude(
            InstrumentsMessages.CylinderAgrees(new(instrument.Id)), InstrumentsMessages.CylinderDisagrees(new(instrument.Id), present.InMessage(difference.Value, DisplayKind.Percentage)), InstrumentsMessages.CylinderDisagreesNext);
    }
}
