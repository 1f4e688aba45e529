using Commission.Checks.Air;
using Commission.Checks.AirReadings;
using Commission.Checks.Kernel;
using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Air;

/// <summary>Airflow by fan table, heat rise, traverse and hood, against the maker, the design and 300 cfm/ton (published, RA3-15).</summary>
public sealed class AirflowCheckTests
{
    private const double CubicFootPerMinute = 0.028316846592 / 60;

    private const string FanTable = "fan table: {setting: tap 4, from: manual p. 8, points: [{static: 0.2 inwc, airflow: 1300 cfm}, {static: 0.4 inwc, airflow: 1200 cfm}, {static: 0.6 inwc, airflow: 1050 cfm}]}";

    private static double Cfm(string air, string site = "station pressure: 14.696 psia +/- 0.005") =>
        JobText.Context(AirJobs.Yaml(air, site: site)).Get<AirflowRoutes>().Chosen!.Value!.Value / CubicFootPerMinute;

    [Fact]
    public void Airflow_by_electric_heat_and_the_heat_of_the_blower()
    {
        // 240 V · 40 A · 3.412 / (1.08 · 30 °F) = 1011 cfm [computed], in standard air: 70 °F return at 14.696 psia; the blower brings 0.365 W for each cfm
        // (AHRI 210/240, from memory), 1.2454 Btu/h of the 32.4: 1051.4 cfm. Where its 400 W were read: 10 000 W · 3.412 / 32.4 = 1053.1 cfm.
        Assert.Equal(1053.1, Cfm("{blower power: 400 W, airflow: {method: heat rise, heat rise: {volts: 240 V, amps: 40 A, return: 70.0 °F, supply: 100.0 °F}}}"), 0.5);
        Assert.Equal(1051.4, Cfm("{airflow: {method: heat rise, heat rise: {volts: 240 V, amps: 40 A, return: 70.0 °F, supply: 100.0 °F}}}"), 0.5);
    }

    [Fact]
    public void The_same_rise_in_thin_air_takes_more_of_it()
    {
        // At 5280 ft the factor 1.08 becomes 0.8892 [computed]: 9600 · 3.412 / (0.8892 · 30 − 1.2454) = 1288 cfm.
        Assert.Equal(9600 * 3.412142 / ((0.8892 * 30) - 1.2454), Cfm("{airflow: {method: heat rise, heat rise: {volts: 240 V, amps: 40 A, return: 70.0 °F, supply: 100.0 °F}}}", "elevation: 5280 ft"), 0.8);
    }

    [Theory]
    [InlineData("input: 9.6 kW")]
    [InlineData("output: 32756.6 Btu/h")]
    public void Input_and_output_are_the_same_heat(string heat) =>
        Assert.Equal(1051.4, Cfm($"{{airflow: {{method: heat rise, heat rise: {{{heat}, return: 70.0 °F, supply: 100.0 °F}}}}}}"), 0.6);

    [Fact]
    public void The_fan_table_is_read_between_its_points()
    {
        // 0.40 inwc: 1200 cfm. 0.45 inwc: 1200 − 0.25 · 150 = 1162.5 cfm.
        Assert.Equal(1200, Cfm($"{{static: {{return: -0.21 inwc, supply: 0.19 inwc}}, {FanTable}}}"), 1e-6);
        Assert.Equal(1162.5, Cfm($"{{static: {{return: -0.21 inwc, supply: 0.24 inwc}}, {FanTable}}}"), 1e-6);
    }

    [Fact]
    public void A_traverse_is_mean_velocity_times_area()
    {
        // (620 + 655 + 640)/3 = 638.33 fpm · 1.8 ft² = 1149 cfm.
        Assert.Equal(1149, Cfm("{airflow: {method: traverse, traverse: {area: 1.8 ft2, velocities: [620 fpm, 655 fpm, 640 fpm]}}}"), 0.01);
    }

    [Fact]
    public void The_scatter_of_three_points_counts_with_two_degrees_of_freedom()
    {
        // s = 17.56 fpm, s/√3 = 10.14 fpm; anemometer 2 % rectangular common to all: 638.3·0.02/√3 = 7.37 fpm; written to 1 fpm: 1/√12/√3 = 0.17 fpm.
        // Area written to 0.1 ft²: 0.1/√12 = 0.0289 ft² of 1.8, which is 638.3·0.0289/1.8 = 10.24 fpm.
        // u = 16.19 fpm, ν_eff = 2·(16.19/10.14)⁴ = 13.0, t95.45(13) = 2.21; U = 35.8 fpm · 1.8 ft² = 64.4 cfm.
        var f = AirJobs.All("air.airflow", "{airflow: {method: traverse, traverse: {area: 1.8 ft2, velocities: [620 fpm, 655 fpm, 640 fpm]}}}", equipment: "receiver: no");
        Assert.Equal(64.4, f[0].Measured!.ExpandedSi!.Value / CubicFootPerMinute, 0.8);
        Assert.Equal(13.0, f[0].Measured!.DegreesOfFreedom!.Value, 0.05);
    }

    [Fact]
    public void A_hood_sums_its_grilles_and_its_gain_does_not_average_out()
    {
        // 410 + 395 + 370 = 1175 cfm; 3 % of the sum, rectangular: U = 2·0.03·1175/√3 = 40.7 cfm and three steps of 1 cfm beside it.
        var f = AirJobs.One("air.airflow", "{airflow: {method: hood, hood: [410 cfm, 395 cfm, 370 cfm]}}", equipment: "receiver: no");
        Assert.Equal(1175, f.Measured!.Value.Si / CubicFootPerMinute, 1e-6);
        Assert.Equal(40.7, f.Measured.ExpandedSi!.Value / CubicFootPerMinute, 0.1);
        Assert.Equal(Verdict.Information, f.Verdict);
    }

    // 3 ton: 900 cfm are 300 cfm/ton.
    [Theory]
    [InlineData("1175 cfm", Verdict.Pass)]
    [InlineData("870 cfm", Verdict.Fail)]
    public void At_least_300_cfm_for_each_ton(string flow, Verdict verdict)
    {
        var f = AirJobs.One("air.airflow", $"{{airflow: {{method: unit display, value: {flow}}}}}");
        Assert.Equal(verdict, f.Verdict);
        Assert.Equal("for its capacity", f.Subject);
        Assert.Equal("published", f.Limits[0].Mark);
    }

    [Fact]
    public void California_asks_350_of_new_ducted_systems()
    {
        var yaml = AirJobs.Yaml("{airflow: {method: unit display, value: 1000 cfm}}", limits: "{packs: [california-title-24]}").Replace("work: seasonal check", "work: new installation", StringComparison.Ordinal);
        Assert.Equal(Verdict.Fail, Assert.Single(JobText.Evaluate(yaml, "air.airflow")).Verdict);
    }

    [Theory]
    [InlineData("{airflow: {minimum: 1100 cfm, maximum: 1300 cfm, from: manual p. 8}}", Verdict.Pass)]
    [InlineData("{airflow: {minimum: 1200 cfm, from: manual p. 8}}", Verdict.Fail)]
    [InlineData("{airflow: {maximum: 1100 cfm, from: manual p. 8}}", Verdict.Fail)]
    public void Against_the_makers_figure(string limits, Verdict verdict)
    {
        var all = AirJobs.All("air.airflow", "{airflow: {method: hood, hood: [410 cfm, 395 cfm, 370 cfm]}}", limits: limits);
        Assert.Equal(verdict, Assert.Single(all, f => f.Subject == "maker's figure").Verdict);
    }

    // ± 15 % of 1200 cfm is 1020 to 1380 cfm (ACCA 5, from memory); 1000 cfm is 16.7 % short, within 25 % of the second grade (Standard 310, from memory).
    [Theory]
    [InlineData("acca-quality-installation", "1175 cfm", Verdict.Pass, false)]
    [InlineData("acca-quality-installation", "1000 cfm", Verdict.Fail, false)]
    [InlineData("resnet-310", "1000 cfm", Verdict.Fail, true)]
    [InlineData("resnet-310", "850 cfm", Verdict.Fail, false)]
    public void Against_the_design(string pack, string flow, Verdict verdict, bool second)
    {
        var all = AirJobs.All("air.airflow", $"{{design airflow: 1200 cfm, airflow: {{method: unit display, value: {flow}}}}}", limits: $"{{packs: [{pack}]}}");
        var f = Assert.Single(all, f => f.Subject == "design");
        Assert.Equal(verdict, f.Verdict);
        Assert.Equal(second, f.Statement.Contains("second grade", StringComparison.Ordinal));
    }

    [Fact]
    public void A_design_without_a_pack_is_information() =>
        Assert.Equal(Verdict.Information, Assert.Single(AirJobs.All("air.airflow", "{design airflow: 1200 cfm, airflow: {method: unit display, value: 1175 cfm}}"), f => f.Subject == "design").Verdict);

    [Theory]
    [InlineData("{static: {return: -0.41 inwc, supply: 0.39 inwc}, " + FanTable + "}", "outside the fan table")]
    [InlineData("{" + FanTable + "}", "static pressure")]
    [InlineData("{static: {return: -0.21 inwc, supply: 0.19 inwc}, blower setting: tap 3, " + FanTable + "}", "tap 3")]
    [InlineData("{airflow: {method: heat rise, heat rise: {volts: 240 V, amps: 40 A, return: 100.0 °F, supply: 70.0 °F}}}", "no warmer")]
    public void A_route_that_leads_nowhere_says_why(string air, string why)
    {
        var f = AirJobs.One("air.airflow", air);
        Assert.Equal(Verdict.NotEvaluated, f.Verdict);
        Assert.Contains(why, f.Reason, StringComparison.Ordinal);
        Assert.NotNull(f.NextStep);
    }

    [Fact]
    public void Volts_times_amperes_are_not_the_power_of_three_phases() => Assert.Equal(
        Verdict.NotEvaluated,
        AirJobs.One("air.airflow", "{airflow: {method: heat rise, heat rise: {volts: 400 V, amps: 14 A, return: 70.0 °F, supply: 100.0 °F}}}", equipment: "nameplate: {phases: 3}").Verdict);

    [Fact]
    public void One_velocity_is_no_traverse() => Assert.Equal(
        Verdict.Conditional, AirJobs.One("air.airflow", "{airflow: {method: traverse, traverse: {area: 1.8 ft2, velocities: [640 fpm]}}}").Verdict);

    [Fact]
    public void Two_routes_are_compared()
    {
        // Fan table 1200 cfm ± 5 % rectangular (U 69 cfm), hood 1175 ± 41 cfm: 25 cfm apart, E_n = 25/80 = 0.31.
        var all = AirJobs.All("air.airflow", $"{{static: {{return: -0.21 inwc, supply: 0.19 inwc}}, {FanTable}, airflow: {{method: hood, hood: [410 cfm, 395 cfm, 370 cfm]}}}}");
        var f = Assert.Single(all, f => f.Subject == "hood against fan table");
        Assert.Equal(Verdict.Information, f.Verdict);
        Assert.Contains("agree within", f.Statement, StringComparison.Ordinal);
        Assert.Equal("0.31", Assert.Single(f.Trace, s => s.Symbol == "E_n").Result);
    }

    [Fact]
    public void Ten_percent_more_speed_takes_0_605_inwc_and_399_watts()
    {
        // Fan laws: flow ∝ n, static ∝ n², power ∝ n³: 1000 cfm, 0.5 inwc, 300 W become 1100 cfm, 0.605 inwc, 399 W [computed].
        var f = AirJobs.One(
            "air.airflow", "{static: {return: -0.25 inwc, supply: 0.25 inwc}, blower power: 300 W, airflow: {method: unit display, value: 1000 cfm}}",
            equipment: "receiver: no", limits: "{airflow: {minimum: 1100 cfm, from: manual p. 8}}");
        Assert.Equal(Verdict.Fail, f.Verdict);
        Assert.Contains("1.10 times the speed would bring it there, at static pressure 0.605 inwc and blower power 399 W", f.Statement, StringComparison.Ordinal);
        Assert.Contains(f.Readings, r => r.Name == "blower power");
    }

    [Fact]
    public void Without_any_airflow_there_is_no_finding() => Assert.Empty(AirJobs.All("air.airflow", "{filter: clean}"));
}
