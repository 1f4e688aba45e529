using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Fluids;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.Charge;

/// <summary>Which saturation temperature was used for what, and what the other curve of a blend would have given.</summary>
internal sealed class SaturationCheck : ICheck
{
    public string Id => "charge.saturation";

    public string Phase => Phases.Charge;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var analysis = context.Get<ChargeAnalysis>();
        foreach (var mode in new[] { OperatingMode.Cooling, OperatingMode.Heating })
        {
            if (analysis.Spoken(mode, r => r.Written.VaporPressure is not null) is { VaporPressure: { } vapor } low)
                yield return Side(context, low, vapor, low.VaporDew!, low.VaporBubble!, mode == OperatingMode.Cooling ? low.Superheat : null, isVapor: true);
            if (analysis.Spoken(mode, r => r.Written.LiquidPressure is not null) is { LiquidPressure: { } liquid } high)
                yield return Side(context, high, liquid, high.LiquidDew!, high.LiquidBubble!, mode == OperatingMode.Cooling ? high.Subcooling : null, isVapor: false);
        }
    }

    private Finding Side(CheckContext context, ChargeRow row, CorrectedReading pressure, SaturationTemperature dew, SaturationTemperature bubble, RowNumber? number, bool isVapor)
    {
        var present = context.Present;
        var saturation = context.Get<CircuitSaturation>();
        var finding = context.Finding(this, ChargeMessages.SideAt(isVapor ? ChargeMessages.SideAtSide.Vapor : ChargeMessages.SideAtSide.Liquid, new(row.Time))).Use(pressure);
        var used = isVapor ? dew : bubble;
        if (used.Value is null || dew.Value is null || bubble.Value is null)
            return finding.NotEvaluated((used.WhyNot ?? dew.WhyNot ?? bubble.WhyNot)!, ChargeMessages.SaturationNoneNext);
        finding.Measure(used.Value, DisplayKind.Temperature);
        var p = present.InMessage(pressure.Value.Value, DisplayKind.AbsolutePressure);
        var at = present.Text(pressure.Value.Value, DisplayKind.AbsolutePressure);
        if (!saturation.IsBlend)
        {
            return finding.Step(Point("T_sat", CircuitMessages.SaturationAt(new(pressure.Name)), used)).Information(
                ChargeMessages.SaturationPure(isVapor ? ChargeMessages.SaturationPureSide.Vapor : ChargeMessages.SaturationPureSide.Liquid, new(row.Time), p, present.InMessage(used.Value, DisplayKind.Temperature)),
                ChargeMessages.SaturationWhy);
        }

        finding.Step(Point("T_dew", CircuitMessages.DewAt(new(pressure.Name)), dew)).Step(Point("T_bubble", CircuitMessages.BubbleAt(new(pressure.Name)), bubble));
        var glide = dew.Value.Value - bubble.Value.Value;
        var middle = (dew.Value.Value + bubble.Value.Value) / 2;
        finding.Step("glide", ChargeMessages.Glide, "T_dew − T_bubble", $"{Two(dew)} − {Two(bubble)}", present.Text(glide, DisplayKind.TemperatureDifference, 2), CircuitMessages.Definition);
        var sentence = ChargeMessages.SaturationBlend(
            isVapor ? ChargeMessages.SaturationBlendSide.Vapor : ChargeMessages.SaturationBlendSide.Liquid, new(row.Time), p, Short(dew), Short(bubble), present.InMessage(middle, DisplayKind.Temperature));
        if (number?.Value is { } judged)
        {
            // Superheat from the bubble point and subcooling from the dew point both come out larger, by the glide.
            finding.Name(number.Readings);
            var (wrong, tooHigh) = (present.InMessage(judged.Value + glide, DisplayKind.TemperatureDifference), present.InMessage(glide, DisplayKind.TemperatureDifference));
            sentence = CommonMessages.Several(new([sentence, isVapor ? ChargeMessages.SuperheatFromBubble(wrong, tooHigh) : ChargeMessages.SubcoolingFromDew(wrong, tooHigh)], ListJoin.Sentences));
        }

        return finding.Information(sentence, ChargeMessages.SaturationWhy);

        string Two(SaturationTemperature t) => present.Text(t.Value!.Value, DisplayKind.Temperature, 2);
        Messages.QuantityValue Short(SaturationTemperature t) => present.InMessage(t.Value!.Value, DisplayKind.Temperature);
        TraceStep Point(string symbol, Message name, SaturationTemperature t) =>
            new(symbol, present.Text(name), $"{symbol}(p_abs)", at, present.Text(t.Value!, DisplayKind.Temperature), saturation.Source);
    }
}

/// <summary>The cycle through the measured states: enthalpies, heat per mass, ratio, ideal discharge temperature. Information.</summary>
internal sealed class CycleCheck : ICheck
{
    public string Id => "charge.cycle";

    public string Phase => Phases.Charge;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Get<ChargeAnalysis>().Spoken(OperatingMode.Cooling, ChargeCycle.Has) is { } row)
            yield return Tell(context, row);
    }

    private Finding Tell(CheckContext context, ChargeRow row)
    {
        var cycle = ChargeCycle.Of(context, row);
        var present = context.Present;
        var finding = context.Finding(this, row.Time);
        foreach (var reading in cycle.Readings)
            finding.Use(reading);
        if (cycle.WhyNot is { } why)
            return finding.NotEvaluated(why, ChargeMessages.CycleNext);
        var source = context.Get<CircuitSaturation>().Source;
        State(context, finding, "1", ChargeMessages.CycleSuction, "h(T_vapor, p_vapor)", cycle.Suction, source);
        State(context, finding, "2s", ChargeMessages.CycleIsentropic, "h(p_high, s₁)", cycle.Isentropic, source);
        if (cycle.Discharge is { } hot)
            State(context, finding, "2", ChargeMessages.CycleDischarge, "h(T_discharge, p_high)", hot, source);
        State(context, finding, "3", ChargeMessages.CycleLiquid, "h(T_liquid, p_liquid)", cycle.Liquid, source);
        finding
            .Step("x₄", ChargeMessages.CycleThrottled, ChargeMessages.CycleThrottledFormula, present.Text(cycle.Throttled.Enthalpy, DisplayKind.Enthalpy), present.Text(cycle.Throttled.VaporFraction, DisplayKind.Percentage), source)
            .Step("r", CompressorMessages.StepRatio, ChargeMessages.CycleRatioFormula, $"{present.Text(cycle.Isentropic.Pressure, DisplayKind.AbsolutePressure)} / {present.Text(cycle.Suction.Pressure, DisplayKind.AbsolutePressure)}", present.Text(cycle.Ratio, DisplayKind.Number), CircuitMessages.Definition)
            .Step("q", PipingMessages.StepHeat, "h₁ − h₃", $"{present.Text(cycle.Suction.Enthalpy, DisplayKind.Enthalpy)} − {present.Text(cycle.Liquid.Enthalpy, DisplayKind.Enthalpy)}", present.Text(cycle.Capacity, DisplayKind.Enthalpy), CircuitMessages.Definition)
            .Measure(cycle.Capacity, DisplayKind.Enthalpy);
        if (cycle.Discharge is { } measured)
        {
            var efficiency = (cycle.Isentropic.Enthalpy - cycle.Suction.Enthalpy) / (measured.Enthalpy - cycle.Suction.Enthalpy);
            finding.Remark(ChargeMessages.CycleEfficiency(present.InMessage(measured.Temperature, DisplayKind.Temperature), QuantityWriter.Of(efficiency, present.Units[DisplayKind.Percentage].Unit, 0)));
        }

        return finding.Information(
            ChargeMessages.Cycle(
                new TextValue(row.Time), new NameValue(context.Get<CircuitSaturation>().Designation), present.InMessage(cycle.Capacity, DisplayKind.Enthalpy), present.InMessage(cycle.Ratio, DisplayKind.Number),
                row.DischargePressure is null ? ChargeMessages.CycleHigh.LiquidValve : ChargeMessages.CycleHigh.Discharge, present.InMessage(cycle.Isentropic.Temperature, DisplayKind.Temperature)),
            ChargeMessages.CycleWhy);
    }

    private static void State(CheckContext context, FindingBuilder finding, string symbol, Message name, string formula, FluidState state, string source) => finding.Step(
        "h" + symbol, name, formula,
        $"{context.Present.Text(state.Temperature, DisplayKind.Temperature)}, {context.Present.Text(state.Pressure, DisplayKind.AbsolutePressure)}",
        context.Present.Text(state.Enthalpy, DisplayKind.Enthalpy), source);
}
