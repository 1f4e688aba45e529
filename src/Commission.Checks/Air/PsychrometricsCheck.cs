using Commission.Checks.Charge;
using Commission.Checks.Readings;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Air;

/// <summary>Return and supply air at the pressure of the site: humidity ratio, enthalpy, relative humidity, dew point, volume. Information.</summary>
internal sealed class PsychrometricsCheck : ICheck
{
    public string Id => "air.psychrometrics";

    public string Phase => Phases.Air;

    public string Title => "State of the air";

    public CheckHelp Help { get; } = new(
        "What do dry and wet bulb say of the return and the supply air: how much water, how much heat, how near to the dew point? At altitude a chart for sea level is wrong; here the site's own pressure counts.",
        "W = ((2501 − 2.326·t_wb)·W_s(t_wb) − 1.006·(t − t_wb)) / (2501 + 1.86·t − 4.186·t_wb); h = 1.006·t + W·(2501 + 1.86·t); v = 0.287042·(t + 273.15)·(1 + 1.607858·W)/p; t in °C, h in kJ/kg, p in kPa",
        "ASHRAE Handbook — Fundamentals, chapter 1, SI form (from memory). Real moist air differs from it by up to 0.55 % in W and 0.65 kJ/kg (computed): part of U.",
        "Nothing fails here. A wet bulb above the dry bulb, or air drier than air can be, means a dry wick or swapped readings.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var states = context.Get<AirStates>();
        if (states is { Row.Written: { ReturnWetBulb: not null } or { ReturnHumidity: not null }, Return: { } entering })
            yield return Tell(context, states.Row, entering);
        if (states is { Row.Written: { SupplyWetBulb: not null } or { SupplyHumidity: not null }, Supply: { } leaving })
            yield return Tell(context, states.Row, leaving);
    }

    private Finding Tell(CheckContext context, ChargeRow row, AirState state)
    {
        var present = context.Present;
        var finding = context.Finding(this, $"{state.Name}, {row.Time}").Use("time of the reading", row.Written.At);
        foreach (var reading in state.Readings)
            finding.Use(reading);
        if (state.WhyNot is { } why)
            return finding.NotEvaluated(why, state.Todo!);
        var atmosphere = context.Get<SiteAtmosphere>();
        foreach (var use in atmosphere.Uses)
            finding.Use(use);
        var enthalpy = AirText.Enthalpy(present, state.Enthalpy);
        var at = $"{present.Text(state.DryBulb.Value, DisplayKind.Temperature)}, {present.Text(state.WetBulb.Value, DisplayKind.Temperature)} wet bulb, {present.Text(atmosphere.Value.Value, DisplayKind.AbsolutePressure, 3)}";
        finding
            .Step(atmosphere.Step)
            .Step("W", "humidity ratio", "((2501 − 2.326·t_wb)·W_s(t_wb) − 1.006·(t − t_wb)) / (2501 + 1.86·t − 4.186·t_wb)", at, AirText.Ratio(present, state.HumidityRatio), AirState.Source)
            .Step("h", $"enthalpy, {AirText.EnthalpyZero(present)}", "1.006·t + W·(2501 + 1.86·t), kJ for each kg of dry air", $"{present.Text(state.DryBulb.Value, DisplayKind.Temperature)}, {AirText.Ratio(present, Measurement.Uncertainty.Uncertain.Exact(state.HumidityRatio.Value))}", present.Text(enthalpy, DisplayKind.Enthalpy), AirState.Source)
            .Step("φ", "relative humidity", "p_v/p_s(t), p_v = p·W/(0.621945 + W)", at, present.Text(state.RelativeHumidity, DisplayKind.Percentage), AirState.Source);
        if (state.DewPoint is { } dew)
            finding.Step("t_d", "dew point", "p_s(t_d) = p_v", at, present.Text(dew, DisplayKind.Temperature), AirState.Source);
        finding.Step("v", "volume of a mass of dry air", "0.287042·(t + 273.15)·(1 + 1.607858·W)/p", at, VolumeText(context, state), AirState.Source);
        finding.Measure(enthalpy, DisplayKind.Enthalpy);
        if (state.IsTakenAsSaturated)
            finding.Remark("The wet bulb was read above the dry bulb, by no more than U: the air is taken as saturated.");
        var point = state.DewPoint is { } d ? $", dew point {present.Text(d.Value, DisplayKind.Temperature)}" : "";
        return finding.Information(
            $"The {state.Name} held {AirText.Ratio(present, state.HumidityRatio)} of water at {row.Time}: {present.Text(state.RelativeHumidity, DisplayKind.Percentage)} relative humidity{point}; enthalpy {present.Text(enthalpy, DisplayKind.Enthalpy)} {AirText.EnthalpyZero(present)}.",
            "state of the air, not judged");
    }

    // The trade's ft³/lb has no display kind of its own: the inverse of the density's unit.
    private static string VolumeText(CheckContext context, AirState state)
    {
        var unit = context.Present.Units[DisplayKind.Density].Unit;
        var value = QuantityFormat.Number(state.Volume.Value * unit.Factor, context.Present.Preset == "us" ? 3 : 4);
        return $"{value} {(context.Present.Preset == "us" ? "ft³/lb" : "m³/kg")}";
    }
}
