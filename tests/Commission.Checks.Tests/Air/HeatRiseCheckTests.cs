using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Air;

/// <summary>Temperature rise in heating against the maker's range.</summary>
public sealed class HeatRiseCheckTests
{
    private const string Limits = "{heat rise: {minimum: 25 °F, maximum: 45 °F, from: rating plate}}";
    private const string Test = "{airflow: {method: heat rise, heat rise: {input: 9.6 kW, return: 70.0 °F, supply: 100.0 °F}}}";

    [Theory]
    [InlineData("supply dry bulb: 100.0", Verdict.Pass)]
    [InlineData("supply dry bulb: 118.0", Verdict.Fail)]
    public void A_heating_reading(string supply, Verdict verdict)
    {
        var f = AirJobs.One("air.heat-rise", readings: [$"mode: heating, return dry bulb: 70.0, {supply}"], limits: Limits);
        Assert.Equal(verdict, f.Verdict);
        Assert.Equal("10:30", f.Subject);
    }

    // 45 °F above 62 to 78 °F: on the limit in every digit written, whatever the kelvins do.
    [Fact]
    public void Exactly_on_the_limit_passes()
    {
        for (var t = 62; t < 79; t++)
            Assert.Equal(Verdict.PassWithinUncertainty, AirJobs.One("air.heat-rise", readings: [FormattableString.Invariant($"mode: heating, return dry bulb: {t}.0, supply dry bulb: {t + 45}.0")], limits: Limits).Verdict);
    }

    [Fact]
    public void A_heat_rise_test_counts_where_there_is_no_reading()
    {
        var f = AirJobs.One("air.heat-rise", Test, limits: Limits);
        Assert.Equal(Verdict.Pass, f.Verdict);
        Assert.Equal(30, f.Measured!.Value.Si * 1.8, 1e-6);
    }

    [Fact]
    public void Without_the_maker_it_is_information() => Assert.Equal(Verdict.Information, AirJobs.One("air.heat-rise", Test).Verdict);

    [Fact]
    public void Five_minutes_after_the_start_it_is_not_evaluated()
    {
        var yaml = AirJobs.Yaml(readings: ["mode: heating, return dry bulb: 70.0, supply dry bulb: 100.0"], limits: Limits).Replace("compressor started: \"10:00\"", "compressor started: \"10:25\"", StringComparison.Ordinal);
        Assert.Equal(Verdict.NotEvaluated, Assert.Single(JobText.Evaluate(yaml, "air.heat-rise")).Verdict);
    }

    [Fact]
    public void Cooling_has_no_rise() => Assert.Empty(AirJobs.All("air.heat-rise", readings: ["return dry bulb: 75.0, supply dry bulb: 57.0"]));
}
