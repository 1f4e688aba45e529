using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Fluids;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Charge;

/// <summary>How refrigerant left its cylinder and entered the circuit: zeotropes as liquid, carbon dioxide as vapor first, never a compressor in vacuum.</summary>
internal sealed class PhaseCheck : ICheck
{
    // The glide is taken at the pressure a cylinder has at this temperature.
    private const double CylinderKelvin = ConversionFactors.CelsiusZero + 20;

    public string Id => "charge.phase";

    public string Phase => Phases.Charge;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Charging is not { } charging)
            yield break;
        var put = context.Get<WeighedCharge>().Put;
        var drawn = charging.As ?? charging.FirstCharge?.As;
        if (drawn is not null || put is { Value.Value: > 0 })
            yield return Cylinder(context, charging, drawn);
        if (charging.FirstCharge is { } first)
        {
            if (first.VacuumBrokenTo is { } level)
                yield return Broken(context, first, level);
            if (first is { As.Value: RefrigerantPhase.Liquid, Into.Value: ChargePort.VaporSide or ChargePort.Both })
                yield return Throttled(context, first);
        }
    }

    private Finding Cylinder(CheckContext context, Charging charging, Given<RefrigerantPhase>? drawn)
    {
        var circuit = context.Get<CircuitRefrigerant>();
        var finding = context.Finding(this, OperatingStateMessages.PhaseOfCylinder).Use(ReadingsMessages.Refrigerant, context.Job.Equipment.Refrigerant).Use(OperatingStateMessages.ReadingDrawn, drawn);
        var limit = context.Limits.Find(LimitIds.ChargePhaseGlide);
        var glide = Glide(circuit.Fluid);
        var is400 = circuit.Designation.StartsWith("R-4", StringComparison.Ordinal);
        var zeotrope = circuit.Info is { IsBlend: true } && (is400 || (glide is { } g && limit?.Upper is { } most && g > most.Si));
        if (limit is not null)
            finding.Show(context.State(limit));
        if (glide is { } kelvin)
        {
            finding.Step(
                "glide", OperatingStateMessages.GlideInCylinder, "T_dew(p) − T_bubble(p), p = p_bubble(20 °C)", circuit.Designation, context.Present.Text(kelvin, DisplayKind.TemperatureDifference), context.Get<CircuitSaturation>().Source);
        }

        if (!zeotrope)
            return finding.Decide(true).Say(OperatingStateMessages.PhaseNoMatter(new(circuit.Designation))).Build();
        if (drawn is null)
            return finding.NotEvaluated(ChargeMessages.PhaseNotWritten(new NameValue(circuit.Designation)), ChargeMessages.PhaseNotWrittenNext, "charging: {as: liquid}");
        finding.Decide(drawn.Value == RefrigerantPhase.Liquid).Remark(TopUp(context, charging, glide, limit));
        return finding.Passes
            ? finding.Say(OperatingStateMessages.PhaseLiquid(new(circuit.Designation))).Build()
            : finding.Say(OperatingStateMessages.PhaseVapor(new(circuit.Designation)))
                .Next(OperatingStateMessages.PhaseVaporNext).Build();
    }

    private Finding Broken(CheckContext context, FirstCharge first, Given<Measurement.Quantities.StatedPressure> level)
    {
        var circuit = context.Get<CircuitRefrigerant>();
        var atmosphere = context.Get<SiteAtmosphere>();
        var finding = context.Finding(this, OperatingStateMessages.PhaseOfVacuum).Use(OperatingStateMessages.ReadingBrokenTo, level).Use(OperatingStateMessages.ReadingFirstCharge, first.As);
        var pressure = level.Value.ToAbsolute(atmosphere.Pressure);
        var text = new TextValue(level.Text);
        foreach (var use in atmosphere.Uses)
            finding.Use(use);
        if (circuit.Designation == "R-744" && context.Limits.Find(LimitIds.ChargeCarbonDioxideVaporFirst) is { Lower: { } least } vaporFirst)
        {
            var bound = context.State(vaporFirst);
            var holds = first.As?.Value == RefrigerantPhase.Vapor && pressure.Si >= least.ToAbsolute(atmosphere.Pressure).Si;
            finding.Decide(holds, bound);
            return holds
                ? finding.Say(OperatingStateMessages.CarbonDioxideVapor(text)).Build()
                : finding.Say(OperatingStateMessages.CarbonDioxideLiquid(new(bound.Text), text, Written(first.As?.Value)))
                    .Next(OperatingStateMessages.CarbonDioxideLiquidNext).Build();
        }

        finding.Decide(pressure.Si >= atmosphere.Pressure.Si);
        return finding.Conclude(
            OperatingStateMessages.VacuumBroken(text),
            OperatingStateMessages.VacuumNotBroken(text),
            OperatingStateMessages.VacuumNotBrokenNext);
    }

    private Finding Throttled(CheckContext context, FirstCharge first)
    {
        var finding = context.Finding(this, OperatingStateMessages.PhaseOfPort)
            .Use(OperatingStateMessages.ReadingInto, first.Into).Use(OperatingStateMessages.ReadingFirstCharge, first.As).Use(OperatingStateMessages.ReadingThrottled, first.Throttled);
        if (first.Throttled is not { } throttled)
            return finding.NotEvaluated(ChargeMessages.ThrottledNotWritten, ChargeMessages.ThrottledNotWrittenNext, "charging: {first charge: {throttled: yes}}");
        finding.Decide(throttled.Value);
        return finding.Conclude(OperatingStateMessages.LiquidThrottled, OperatingStateMessages.LiquidNotThrottled, OperatingStateMessages.LiquidNotThrottledNext);
    }

    private static OperatingStateMessages.CarbonDioxideLiquidPhase Written(RefrigerantPhase? phase) => phase switch
    {
        RefrigerantPhase.Liquid => OperatingStateMessages.CarbonDioxideLiquidPhase.Liquid,
        RefrigerantPhase.Vapor => OperatingStateMessages.CarbonDioxideLiquidPhase.Vapor,
        _ => OperatingStateMessages.CarbonDioxideLiquidPhase.NotWritten,
    };

    private static double? Glide(Refrigerant? fluid)
    {
        if (fluid is null || fluid.BubbleAtTemperature(CylinderKelvin) is not { Ok: true, Value: var bubble } || fluid.DewAtPressure(bubble.Pressure) is not { Ok: true, Value: var dew })
            return null;
        return dew.Temperature - bubble.Temperature;
    }

    // What leaked out of a blend with glide was not the blend: topping up leaves its composition in doubt.
    private static Message? TopUp(CheckContext context, Charging charging, double? glide, Limit? limit) =>
        glide > limit?.Upper?.Si && context.Job.Identity.Work.Value is (WorkKind.LeakRepair or WorkKind.ChargeAdjustment)
        && charging.UnitArrived?.Value is not (ArrivalCharge.RecoveredAndEvacuated or ArrivalCharge.NitrogenHoldingCharge)
        && context.Get<WeighedCharge>().Put is { Value.Value: > 0 }
            ? OperatingStateMessages.PhaseToppedUp
            : null;
}
