using System.Globalization;
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
        var side = isVapor ? "vapor side" : "liquid side";
        var finding = context.Finding(this, $"{side}, {row.Time}").Use(pressure);
        var used = isVapor ? dew : bubble;
        if (used.Value is null || dew.Value is null || bubble.Value is null)
            return finding.NotEvaluated((used.WhyNot ?? dew.WhyNot ?? bubble.WhyNot)!.TrimEnd('.'), "Check the pressure and the refrigerant's name; a transcritical circuit has no saturation on its high side.");
        finding.Measure(used.Value, DisplayKind.Temperature);
        var p = present.Text(pressure.Value.Value, DisplayKind.AbsolutePressure);
        if (!saturation.IsBlend)
            return finding.Step(Point("T_sat", "saturation", p, used)).Information($"At {row.Time} {p} on the {side} is a saturation temperature of {present.Text(used.Value, DisplayKind.Temperature)}.", "shows which temperature the charge is counted from");

        finding.Step(Point("T_dew", "dew point", p, dew)).Step(Point("T_bubble", "bubble point", p, bubble));
        var glide = dew.Value.Value - bubble.Value.Value;
        var middle = (dew.Value.Value + bubble.Value.Value) / 2;
        finding.Step("glide", "glide at this pressure", "T_dew − T_bubble", $"{Two(dew)} − {Two(bubble)}", present.Text(glide, DisplayKind.TemperatureDifference, 2), "definition");
        var sentence = $"At {row.Time} {p} on the {side} is a dew point of {Short(dew)}, a bubble point of {Short(bubble)}, middle {present.Text(middle, DisplayKind.Temperature)}.";
        if (number?.Value is { } judged)
        {
            // Superheat from the bubble point and subcooling from the dew point both come out larger, by the glide.
            finding.Name(number.Readings);
            sentence += isVapor
                ? $" Superheat counts from the dew point; from the bubble point it would have read {present.Text(judged.Value + glide, DisplayKind.TemperatureDifference)}, {present.Text(glide, DisplayKind.TemperatureDifference)} too high."
                : $" Subcooling counts from the bubble point; from the dew point it would have read {present.Text(judged.Value + glide, DisplayKind.TemperatureDifference)}, {present.Text(glide, DisplayKind.TemperatureDifference)} too high.";
        }

        return finding.Information(sentence, "shows which temperature the charge is counted from");

        string Two(SaturationTemperature t) => present.Text(t.Value!.Value, DisplayKind.Temperature, 2);
        string Short(SaturationTemperature t) => present.Text(t.Value!.Value, DisplayKind.Temperature);
        TraceStep Point(string symbol, string name, string at, SaturationTemperature t) =>
            new(symbol, $"{name} at {pressure.Name}", $"{symbol}(p_abs)", at, present.Text(t.Value!, DisplayKind.Temperature), saturation.Source);
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
            return finding.NotEvaluated(why, "Check the readings; a state in the dome needs more than pressure and temperature.");
        var source = context.Get<CircuitSaturation>().Source;
        State(context, finding, "1", "vapor at the service valve", "h(T_vapor, p_vapor)", cycle.Suction, source);
        State(context, finding, "2s", "end of an ideal compression", "h(p_high, s₁)", cycle.Isentropic, source);
        if (cycle.Discharge is { } hot)
            State(context, finding, "2", "measured discharge", "h(T_discharge, p_high)", hot, source);
        State(context, finding, "3", "liquid at the service valve", "h(T_liquid, p_liquid)", cycle.Liquid, source);
        finding
            .Step("x₄", "vapor after the throttle, by mass", "at p_vapor with h₃", present.Text(cycle.Throttled.Enthalpy, DisplayKind.Enthalpy), present.Text(cycle.Throttled.VaporFraction, DisplayKind.Percentage), source)
            .Step("r", "compression ratio", "p_high / p_low, both absolute", $"{present.Text(cycle.Isentropic.Pressure, DisplayKind.AbsolutePressure)} / {present.Text(cycle.Suction.Pressure, DisplayKind.AbsolutePressure)}", present.Text(cycle.Ratio, DisplayKind.Number), "definition")
            .Step("q", "heat taken up per mass", "h₁ − h₃", $"{present.Text(cycle.Suction.Enthalpy, DisplayKind.Enthalpy)} − {present.Text(cycle.Liquid.Enthalpy, DisplayKind.Enthalpy)}", present.Text(cycle.Capacity, DisplayKind.Enthalpy), "definition")
            .Measure(cycle.Capacity, DisplayKind.Enthalpy);
        if (cycle.Discharge is { } measured)
        {
            var efficiency = (cycle.Isentropic.Enthalpy - cycle.Suction.Enthalpy) / (measured.Enthalpy - cycle.Suction.Enthalpy);
            finding.Remark(string.Create(CultureInfo.InvariantCulture, $"The discharge line was at {present.Text(measured.Temperature, DisplayKind.Temperature)}, an apparent isentropic efficiency of {100 * efficiency:0} %."));
        }

        return finding.Information(
            ChargeMessages.Cycle(
                new TextValue(row.Time), new NameValue(context.Get<CircuitSaturation>().Designation), present.InMessage(cycle.Capacity, DisplayKind.Enthalpy), present.InMessage(cycle.Ratio, DisplayKind.Number),
                row.DischargePressure is null ? ChargeMessages.CycleHigh.LiquidValve : ChargeMessages.CycleHigh.Discharge, present.InMessage(cycle.Isentropic.Temperature, DisplayKind.Temperature)),
            "computed from the measured states, not judged");
    }

    private static void State(CheckContext context, FindingBuilder finding, string symbol, string name, string formula, FluidState state, string source) => finding.Step(
        "h" + symbol, name, formula,
        $"{context.Present.Text(state.Temperature, DisplayKind.Temperature)}, {context.Present.Text(state.Pressure, DisplayKind.AbsolutePressure)}",
        context.Present.Text(state.Enthalpy, DisplayKind.Enthalpy), source);
}
