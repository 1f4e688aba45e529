using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Air;

/// <summary>Readings of a burner against the ranges of its plate; the ranges are invented, as a maker prints them.</summary>
public sealed class GasHeatCheckTests
{
    private const string Check = "air.gas-heat";

    [Theory]
    [InlineData("inlet pressure", "minimum: 5 inwc, maximum: 10.5 inwc", "4.2 inwc", "7 inwc")]
    [InlineData("rise", "minimum: 35 °F, maximum: 65 °F", "71 °F", "50 °F")]
    [InlineData("input", "target: 80000 Btu/h, tolerance: 1600 Btu/h", "84000 Btu/h", "80500 Btu/h")]
    [InlineData("CO2", "minimum: 7 %, maximum: 9 %", "5.5 %", "8.0 %")]
    [InlineData("O2", "minimum: 5 %, maximum: 9 %", "11 %", "7.0 %")]
    [InlineData("flue temperature", "maximum: 480 °F", "520 °F", "360 °F")]
    [InlineData("draft", "minimum: -0.05 inwc, maximum: -0.01 inwc", "0.02 inwc", "-0.03 inwc")]
    [InlineData("flame signal", "minimum: 1.0 µA", "0.6 µA", "3.8 µA")]
    public void Each_reading_has_its_range(string key, string range, string wrong, string right)
    {
        Assert.Equal(Verdict.Fail, Of(key, range, wrong));
        Assert.Contains(Of(key, range, right), new[] { Verdict.Pass, Verdict.PassWithinUncertainty });
        Assert.Equal(Verdict.Information, Of(key, null, wrong));
    }

    [Fact]
    public void The_rise_of_the_plate_is_one_limit_wherever_it_is_written()
    {
        const string Job = "limits: {{{0}}}\ngas heat: {{rise: 71 °F}}";
        foreach (var limits in new[] { "heat rise: {maximum: 65 °F, from: plate}", "gas heat: {rise: {maximum: 65 °F, from: plate}}", "heat rise: {maximum: 65 °F, from: plate}, gas heat: {rise: {maximum: 80 °F, from: plate}}" })
            Assert.Equal(Verdict.Fail, JobLines.Finding(JobLines.Of(Job.Replace("{{{0}}}", $"{{{limits}}}", StringComparison.Ordinal).Replace("{{rise: 71 °F}}", "{rise: 71 °F}", StringComparison.Ordinal)), Check, "rise").Verdict);
    }

    private static Verdict Of(string key, string? range, string read) => JobLines.Finding(
        JobLines.Of($"{(range is null ? "" : $"limits: {{gas heat: {{{key}: {{{range}, from: plate}}}}}}\n")}gas heat: {{{key}: {read}}}", "seasonal check", "packaged"), Check, key).Verdict;
}
