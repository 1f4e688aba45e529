using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Air;

/// <summary>Blower power for its airflow: 0.45 W/cfm grade I, 0.58 W/cfm grade II of Standard 310 (from memory), when that pack is named.</summary>
public sealed class FanPowerCheckTests
{
    private const string Pack = "{packs: [resnet-310]}";

    private static string Air(string power) => $"{{blower power: {power}, airflow: {{method: unit display, value: 1200 cfm}}}}";

    // 480/1200 = 0.40; 600/1200 = 0.50; 780/1200 = 0.65 W/cfm.
    [Theory]
    [InlineData("480 W", 0.40, Verdict.Pass, false)]
    [InlineData("600 W", 0.50, Verdict.Fail, true)]
    [InlineData("780 W", 0.65, Verdict.Fail, false)]
    public void Against_standard_310(string power, double wattsPerCfm, Verdict verdict, bool second)
    {
        var f = AirJobs.One("air.fan-power", Air(power), limits: Pack);
        Assert.Equal(verdict, f.Verdict);
        Assert.Equal(wattsPerCfm, f.Measured!.Value.Value, 0.006);
        Assert.Equal(second, f.Statement.Contains("second grade", StringComparison.Ordinal));
    }

    [Fact]
    public void The_maker_comes_first() =>
        Assert.Equal("maker", AirJobs.One("air.fan-power", Air("480 W"), limits: "{fan power: {maximum: 0.42 W/cfm, from: manual p. 8}}").Limits[0].Basis);

    [Fact]
    public void Without_a_limit_it_is_information() => Assert.Equal(Verdict.Information, AirJobs.One("air.fan-power", Air("480 W")).Verdict);

    [Theory]
    [InlineData("{blower power: 480 W}")]
    [InlineData("{blower power: 480 W, airflow: {method: unit display, value: 0 cfm}}")]
    public void Without_airflow_it_is_not_evaluated(string air) => Assert.Equal(Verdict.NotEvaluated, AirJobs.One("air.fan-power", air, limits: Pack).Verdict);

    [Fact]
    public void Without_power_there_is_no_finding() => Assert.Empty(AirJobs.All("air.fan-power", "{airflow: {method: unit display, value: 1200 cfm}}"));
}
