using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Air;

/// <summary>
/// Both sides of one balance. R-134a at the ideal cycle of the textbook: 0.14 and 0.8 MPa give 143.6 kJ/kg of cooling and 36.2 kJ/kg of compression
/// per kilogram (7.18 kW and 1.81 kW for 0.05 kg/s, from memory), with saturated vapor in and saturated liquid out. The readings here lie a
/// little inside, so that the states exist: 2 K of superheat, 1 K of subcooling, discharge at 40 °C.
/// </summary>
public sealed class EnergyBalanceCheckTests
{
    private const string Circuit = "vapor pressure: 1.40 bar(a), liquid pressure: 8.00 bar(a), vapor line: -16.8 °C, liquid line: 30.3 °C";
    private const string Bulbs = "return dry bulb: 24.0 °C, return wet bulb: 17.2 °C, supply dry bulb: 14.0 °C, supply wet bulb: 12.8 °C";

    private static string Yaml(string more, string air = "{airflow: {method: unit display, value: 2000 m3/h}}") =>
        AirJobs.Yaml(air, [$"{Circuit}, {Bulbs}{more}"], site: "station pressure: 101.325 kPa +/- 0.05", units: "si", equipment: "capacity: 7 kW").Replace("R-410A", "R-134a", StringComparison.Ordinal);

    [Fact]
    public void Without_power_it_tells_the_flow_that_balances()
    {
        // 143.6 kJ/kg, 2 K of vapor at 0.8 and 1 K of liquid at 1.4 kJ/(kg K) more: about 146.6, good to 0.8 %.
        var f = Assert.Single(JobText.Evaluate(Yaml(""), "air.energy-balance"));
        Assert.Equal(Verdict.Information, f.Verdict);
        var air = Assert.Single(JobText.Evaluate(Yaml(""), "air.capacity")).Measured!.Value.Si;
        Assert.Equal(1, f.Measured!.Value.Si / (air / 146.6e3), 0.008);
    }

    [Fact]
    public void With_power_and_discharge_the_two_sides_are_compared()
    {
        var f = Assert.Single(JobText.Evaluate(Yaml(", discharge line: 40.0 °C, power: 2.4 kW"), "air.energy-balance"));
        Assert.Equal(Verdict.Information, f.Verdict);
        Assert.Contains(f.Trace, s => s.Symbol == "E_n");
        Assert.Contains(f.Trace, s => s.Symbol == "Q_ref");
        Assert.Contains("agree", f.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void Half_the_power_does_not_agree()
    {
        var f = Assert.Single(JobText.Evaluate(Yaml(", discharge line: 40.0 °C, power: 0.8 kW"), "air.energy-balance"));
        Assert.True(f.IsToLookAt);
    }

    [Fact]
    public void Liquid_that_is_not_subcooled_is_not_evaluated()
    {
        var yaml = Yaml("").Replace("liquid line: 30.3 °C", "liquid line: 35.0 °C", StringComparison.Ordinal);
        Assert.Equal(Verdict.NotEvaluated, Assert.Single(JobText.Evaluate(yaml, "air.energy-balance")).Verdict);
    }

    [Fact]
    public void Without_airflow_there_is_no_balance() => Assert.Empty(JobText.Evaluate(Yaml("", "{filter: clean}"), "air.energy-balance"));
}
