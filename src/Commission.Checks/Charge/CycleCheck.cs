using System.Globalization;
using Commission.Checks.Findings;
using Commission.Fluids;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Charge;

/// <summary>The cycle through the measured states: enthalpies, heat per mass, ratio, ideal discharge temperature. Information.</summary>
internal sealed class CycleCheck : ICheck
{
    public string Id => "charge.cycle";

    public string Phase => Phases.Charge;

    public string Title => "Cycle through the measured states";

    public CheckHelp Help { get; } = new(
        "What cycle do the measured states make: how much heat does each pound or kilogram take up, at which ratio, and how hot would an ideal compressor discharge?",
        "q = h(T_vapor, p_vapor) − h(T_liquid, p_liquid); ratio = p_high / p_low, absolute; ideal discharge at s = s(suction)",
        "Equations of state of the refrigerant, with their papers under sources (published).",
        "Nothing fails here. A discharge line cooler than the ideal one means liquid in the suction or a clamp that does not touch.");

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
        var sentence = $"At {row.Time} {context.Get<CircuitSaturation>().Designation} took up {present.Text(cycle.Capacity, DisplayKind.Enthalpy)} at a compression ratio of {present.Text(cycle.Ratio, DisplayKind.Number)}; an ideal compressor would discharge at {present.Text(cycle.Isentropic.Temperature, DisplayKind.Temperature)}.";
        if (cycle.Discharge is { } measured)
        {
            var efficiency = (cycle.Isentropic.Enthalpy - cycle.Suction.Enthalpy) / (measured.Enthalpy - cycle.Suction.Enthalpy);
            sentence += string.Create(CultureInfo.InvariantCulture, $" The discharge line was at {present.Text(measured.Temperature, DisplayKind.Temperature)}, an apparent isentropic efficiency of {100 * efficiency:0} %.");
        }

        return finding.Information(sentence, "computed from the measured states, not judged");
    }

    private static void State(CheckContext context, FindingBuilder finding, string symbol, string name, string formula, FluidState state, string source) => finding.Step(
        "h" + symbol, name, formula,
        $"{context.Present.Text(state.Temperature, DisplayKind.Temperature)}, {context.Present.Text(state.Pressure, DisplayKind.AbsolutePressure)}",
        context.Present.Text(state.Enthalpy, DisplayKind.Enthalpy), source);
}
