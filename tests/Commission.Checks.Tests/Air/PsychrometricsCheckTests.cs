using System.Globalization;
using Commission.Checks.Air;
using Commission.Checks.AirReadings;
using Commission.Checks.Kernel;
using Commission.Measurement.Decisions;
using Commission.Measurement.Quantities;
using Xunit;

namespace Commission.Checks.Tests.Air;

/// <summary>
/// Moist air through the check. Expected values: perfect-gas relations of the ASHRAE Handbook computed by a program of its own [computed];
/// enthalpies of the I-P form (0.240·t + W·(1061 + 0.444·t)) differ from the SI form used here by up to 0.03 Btu/lb: 1.006 kJ/(kg K) is 0.2403 Btu/(lb °F).
/// </summary>
public sealed class PsychrometricsCheckTests
{
    private static AirState Return(string readings, string site = "elevation: 0 ft", string units = "us") =>
        JobText.Context(AirJobs.Yaml(readings: [readings], site: site, units: units)).Get<AirStates>().Return!;

    [Fact]
    public void The_handbooks_example_of_40_and_20_celsius()
    {
        // 101.325 kPa: W 0.0064008, h 56.725 kJ/kg, dew 7.434 °C, RH 13.98 %, v 0.89625 m³/kg [computed]; the chart reads 6.5 g/kg, 56.7, 7, 14, 0.896 [from memory].
        var air = Return("return dry bulb: 40 °C, return wet bulb: 20 °C", "elevation: 0 m", "si");
        Assert.Null(air.WhyNot);
        Assert.Equal(0.0064008, air.HumidityRatio.Value, 5e-8);
        Assert.Equal(56725, air.Enthalpy.Value, 0.6);
        Assert.Equal(7.434, Temperature.FromSi(air.DewPoint!.Value).Celsius, 0.0006);
        Assert.Equal(0.1398, air.RelativeHumidity.Value, 0.00006);
        Assert.Equal(0.89625, air.Volume.Value, 0.000006);
    }

    // 14.696 psia: W, RH %, h Btu/lb, v ft³/lb, dew °F [computed].
    [Theory]
    [InlineData(80, 67, 0.011166, 51.09, 31.444, 13.849, 60.31)]
    [InlineData(75, 63, 0.009529, 51.57, 28.428, 13.686, 55.97)]
    [InlineData(95, 75, 0.014060, 39.80, 38.311, 14.299, 66.75)]
    [InlineData(100, 65, 0.0051807, 12.78, 29.727, 14.227, 39.93)]
    public void States_of_the_trade(double dry, double wet, double ratio, double humidity, double enthalpy, double volume, double dew)
    {
        var air = Return(string.Create(CultureInfo.InvariantCulture, $"return dry bulb: {dry} °F, return wet bulb: {wet} °F"));
        Assert.Equal(ratio, air.HumidityRatio.Value, 1.1e-6);
        Assert.Equal(humidity, 100 * air.RelativeHumidity.Value, 0.006);
        // The charts' zero is dry air at 0 °F; the SI form's heat capacity makes up to 0.03 Btu/lb.
        Assert.Equal(enthalpy, (air.Enthalpy.Value / 2326) + (0.2403 * 32), 0.035);
        Assert.Equal(volume, air.Volume.Value * 0.45359237 / 0.028316846592, 0.0006);
        Assert.Equal(dew, Temperature.FromSi(air.DewPoint!.Value).Fahrenheit, 0.006);
    }

    // 14.696 psia: W, RH %, h Btu/lb [computed].
    [Theory]
    [InlineData(80, 66, 0.010446, 47.85, 30.654)]
    [InlineData(75, 62.5, 0.009197, 49.80, 28.065)]
    public void More_states_of_the_trade(double dry, double wet, double ratio, double humidity, double enthalpy)
    {
        var air = Return(string.Create(CultureInfo.InvariantCulture, $"return dry bulb: {dry} °F, return wet bulb: {wet} °F"));
        Assert.Equal(ratio, air.HumidityRatio.Value, 1.1e-6);
        Assert.Equal(humidity, 100 * air.RelativeHumidity.Value, 0.006);
        Assert.Equal(enthalpy, (air.Enthalpy.Value / 2326) + (0.2403 * 32), 0.035);
    }

    [Fact]
    public void The_finding_is_information_with_U_and_names_what_it_rests_on()
    {
        var f = AirJobs.One("air.psychrometrics", readings: ["return dry bulb: 75.0, return wet bulb: 63.0"]);
        Assert.Equal(Verdict.Information, f.Verdict);
        Assert.Equal(28.428, f.Measured!.Value.Value, 0.05);
        Assert.Contains(f.Readings, r => r.Text.Contains("psia", StringComparison.Ordinal));
        Assert.Contains(f.Budget, b => b.Cause.Contains("form", StringComparison.Ordinal));
        Assert.Contains(f.Trace, s => s.Symbol == "W");
    }

    [Fact]
    public void The_perfect_gas_form_is_part_of_U()
    {
        // Exact readings leave the form alone: 0.65 kJ/kg and 0.55 % of W·(2501 + 1.86·t), both rectangular, k = 2:
        // W 0.0064008, 1.86·40 = 74.4: 0.0055·0.0064008·2575.4 = 0.09067 kJ/kg; U = 2·√(0.65² + 0.09067²)/√3 = 0.7578 kJ/kg.
        var air = Return("return dry bulb: 40 °C +/- 0.0000001, return wet bulb: 20 °C +/- 0.0000001", "station pressure: 101.325 kPa +/- 0.0000001", "si");
        Assert.Equal(757.8, air.Enthalpy.Expanded, 0.4);
        Assert.Equal(2 * 0.0055 * 0.0064008 / Math.Sqrt(3), air.HumidityRatio.Expanded, 2e-8);
    }

    [Fact]
    public void The_form_mostly_cancels_between_two_states()
    {
        var states = JobText.Context(AirJobs.Yaml(readings: ["return dry bulb: 75.0 +/- 0.00001, return wet bulb: 63.0 +/- 0.00001, supply dry bulb: 57.0 +/- 0.00001, supply wet bulb: 55.0 +/- 0.00001"], site: "station pressure: 14.696 psia +/- 0.000001")).Get<AirStates>();
        var difference = states.Return!.Enthalpy - states.Supply!.Enthalpy;
        Assert.True(difference.Expanded < 0.05 * states.Return.Enthalpy.Expanded);
    }

    [Fact]
    public void Thin_air_holds_more_water_for_the_same_bulbs()
    {
        // 75/63 at 12.100 psia: W_s(63 °F) grows as 0.621945·p_s/(p − p_s). p_s(63 °F) = 0.28488 psi: at 14.696 0.012294, at 12.100 0.014996.
        // W = ((2501 − 2.326·17.222)·W_s − 1.006·6.667)/(2501 + 1.86·23.889 − 4.186·17.222) with 2460.94·W_s − 6.7067 over 2473.34.
        var high = Return("return dry bulb: 75, return wet bulb: 63", "elevation: 5280 ft");
        Assert.Equal(((2460.94 * 0.014996) - 6.7067) / 2473.34, high.HumidityRatio.Value, 1e-5);
    }

    [Fact]
    public void Relative_humidity_serves_as_well_as_a_wet_bulb()
    {
        var air = Return("return dry bulb: 75, return humidity: 51.57 %");
        Assert.Equal(0.009529, air.HumidityRatio.Value, 2e-6);
    }

    [Fact]
    public void Air_of_which_only_the_dry_bulb_was_read_has_no_state() =>
        Assert.Equal("return air, 10:30", AirJobs.One("air.psychrometrics", readings: ["return dry bulb: 75.0, return wet bulb: 63.0, supply dry bulb: 57.0"]).Subject);

    [Fact]
    public void A_wet_bulb_without_its_dry_bulb_is_not_evaluated()
    {
        var f = AirJobs.One("air.psychrometrics", readings: ["return wet bulb: 63.0"]);
        Assert.Equal(Verdict.NotEvaluated, f.Verdict);
        Assert.Contains("dry bulb", f.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wet_bulb_a_little_above_the_dry_bulb_is_saturated_air()
    {
        var f = AirJobs.One("air.psychrometrics", readings: ["supply dry bulb: 55.0, supply wet bulb: 55.2"]);
        Assert.Equal(Verdict.Information, f.Verdict);
        Assert.Contains("saturated", f.Statement, StringComparison.Ordinal);
        var state = JobText.Context(AirJobs.Yaml(readings: ["supply dry bulb: 55.0, supply wet bulb: 55.2"])).Get<AirStates>().Supply!;
        Assert.Equal(1, state.RelativeHumidity.Value, 1e-9);
    }

    [Fact]
    public void Air_drier_than_air_can_be_is_not_evaluated()
    {
        var f = AirJobs.One("air.psychrometrics", readings: ["return dry bulb: 110.0, return wet bulb: 40.0"]);
        Assert.Equal(Verdict.NotEvaluated, f.Verdict);
    }

    [Fact]
    public void Without_readings_of_the_air_there_is_no_finding() => Assert.Empty(AirJobs.All("air.psychrometrics", air: "{filter: clean}"));
}
