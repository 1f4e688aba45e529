using System.Globalization;
using Commission.Checks.Charge;
using Commission.Checks.Findings;
using Commission.Checks.Readings;
using Commission.Fluids;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Decisions;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Air;

/// <summary>The heat the air gave up against the heat the refrigerant took up. Information with E_n.</summary>
internal sealed class EnergyBalanceCheck : ICheck
{
    public string Id => "air.energy-balance";

    public string Phase => Phases.Air;

    public string Title => "Energy balance of both sides";

    public CheckHelp Help { get; } = new(
        "Do air side and refrigerant side tell the same story? The refrigerant's flow is not measured: it follows from the unit's electrical input and the heat of compression, where the discharge line was read.",
        "air side Q = (V̇/v)·Δh; refrigerant side Q = s·P·(h₁ − h₃)/(h₂ − h₁), s the share of the input that reaches the refrigerant; E_n = |Q_air − Q_ref| / U(Q_air − Q_ref)",
        "Equations of state of the refrigerant (published); ASHRAE Handbook (from memory); the share s is a default of this program (common practice, no source).",
        "Nothing fails here. Where the two do not agree, look for the weakest reading: airflow, wet bulbs, the discharge clamp.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var air = context.Get<AirCapacity>();
        if (air is { Total: { } total, Row: { } row } && row.Mode == OperatingMode.Cooling && ChargeCycle.Has(row))
            yield return Balance(context, air, row, total);
    }

    private Finding Balance(CheckContext context, AirCapacity air, ChargeRow row, Uncertain total)
    {
        var present = context.Present;
        var finding = air.UseIn(context, context.Finding(this, row.Time));
        var cycle = ChargeCycle.Of(context, row);
        finding.UseAll(cycle.Readings);
        if (cycle.WhyNot is { } why)
            return finding.NotEvaluated(why, "Check the readings of the circuit.");
        var flow = total / cycle.Capacity;
        finding
            .Step("q", "heat taken up per mass", "h₁ − h₃", $"{present.Text(cycle.Suction.Enthalpy, DisplayKind.Enthalpy)} − {present.Text(cycle.Liquid.Enthalpy, DisplayKind.Enthalpy)}", present.Text(cycle.Capacity, DisplayKind.Enthalpy), context.Get<CircuitSaturation>().Source)
            .Step("ṁ_r", "refrigerant flow that balances the air side", "Q_air / q", $"{present.Text(total.Value, DisplayKind.Capacity)} / {present.Text(cycle.Capacity.Value, DisplayKind.Enthalpy)}", present.Text(flow, DisplayKind.MassFlow), "definition");
        if (RefrigerantSide(context, finding, row, cycle) is not { } other)
        {
            return finding.Measure(flow, DisplayKind.MassFlow).Information(
                $"The air gave up {present.Text(total, DisplayKind.Capacity)} at {row.Time}, which {present.Text(flow, DisplayKind.MassFlow)} of {context.Get<CircuitSaturation>().Designation} would take up.",
                "one side only: without the unit's electrical power and the discharge line the refrigerant's flow has no measure of its own");
        }

        var agreement = Agreement.Of(total, other);
        finding.Measure(agreement.Difference, DisplayKind.Capacity)
            .Step("E_n", "agreement of the two sides", "|Q_air − Q_ref| / U(Q_air − Q_ref)", $"{present.Text(agreement.Difference.Value, DisplayKind.Capacity)}, U {present.Text(agreement.Difference.Expanded, DisplayKind.Capacity)}", agreement.NormalizedError.ToString("0.00", CultureInfo.InvariantCulture), "ISO 13528 and ISO/IEC 17043 (from memory)");
        return finding.Information(
            string.Create(CultureInfo.InvariantCulture, $"Air side {present.Text(total, DisplayKind.Capacity)}, refrigerant side {present.Text(other, DisplayKind.Capacity)} at {row.Time}: the two {(agreement.Agrees ? "agree" : "do not agree")} within their uncertainty (E_n {agreement.NormalizedError:0.0})."),
            "compares two routes to one number");
    }

    private static Uncertain? RefrigerantSide(CheckContext context, FindingBuilder finding, ChargeRow row, ChargeCycle cycle)
    {
        if (row.Written.Power is not { } power || cycle.Discharge is not { } hot || row.DischargeLine is not { } line || context.Get<CircuitRefrigerant>().Fluid is not { } fluid
            || context.Limits.Find("assumption.compressor.heat-share") is not { Target: { } share } assumed || assumed.Companion("within") is not { } within)
            return null;
        var present = context.Present;
        var input = context.Readings.Plain($"power, {row.Time}", ReadingName.Electrical, power, DisplayKind.Power);
        var cause = context.Causes.Enter(RootCause.FromHalfWidth("share of the input that reaches the refrigerant", "fan, board and heat lost by the shell; common practice", within), DisplayKind.Percentage);
        var s = context.Scope.Reading(share.Si, 1.0 * cause);
        var (low, vapor, high, liquid) = (row.VaporPressure!.Value, row.VaporLine!.Value, row.LiquidPressure!.Value, row.LiquidLine!.Value);
        var top = (row.DischargePressure ?? row.LiquidPressure)!.Value;
        double Factor(double[] x) =>
            fluid.At(x[1], x[0], Fluids.Phase.Vapor) is { Ok: true, Value: var one }
            && fluid.At(x[3], x[2], Fluids.Phase.Liquid) is { Ok: true, Value: var three }
            && fluid.At(x[5], x[4], Fluids.Phase.Vapor) is { Ok: true, Value: var two } && two.Enthalpy > one.Enthalpy
                ? (one.Enthalpy - three.Enthalpy) / (two.Enthalpy - one.Enthalpy)
                : double.NaN;
        var factor = Uncertain.Apply(Factor, [low, vapor, high, liquid, top, line.Value]);
        if (!double.IsFinite(factor.Value) || !double.IsFinite(factor.StandardUncertainty))
            return null;
        var heat = s * input.Value * factor;
        finding.Use(input)
            .Step("w", "heat of compression per mass", "h₂ − h₁", $"{present.Text(hot.Enthalpy, DisplayKind.Enthalpy)} − {present.Text(cycle.Suction.Enthalpy, DisplayKind.Enthalpy)}", present.Text(hot.Enthalpy - cycle.Suction.Enthalpy, DisplayKind.Enthalpy), context.Get<CircuitSaturation>().Source)
            .Step("Q_ref", "capacity on the refrigerant side", "s · P · q / w", $"{share.Text} · {power.Text} · {present.Text(cycle.Capacity.Value, DisplayKind.Enthalpy)} / {present.Text(hot.Enthalpy - cycle.Suction.Enthalpy, DisplayKind.Enthalpy)}", present.Text(heat, DisplayKind.Capacity), assumed.Source);
        return heat;
    }
}
