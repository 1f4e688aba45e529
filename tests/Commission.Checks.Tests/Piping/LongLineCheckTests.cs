using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Piping;

/// <summary>Long-line rules begin at 50 ft and at 20 ft of height (common practice); what they ask for is the maker's.</summary>
public sealed class LongLineCheckTests
{
    private const string Asked = "{long line accessories: [crankcase heater, liquid solenoid, TXV]}";

    private static string Line(string length, string rise = "2 m", string accessories = "") =>
        $"piping: {{liquid: {{od: 3/8 in, length: {length}, rise: {rise}}}}}{(accessories.Length == 0 ? "" : $", accessories: [{accessories}]")}";

    // 50 ft are 15.24 m, 20 ft are 6.10 m.
    [Fact]
    public void A_short_line_asks_for_nothing()
    {
        var f = PipingJob.One("piping.long-line", Line("15.2 m"));
        Assert.Equal(Verdict.Information, f.Verdict);
        Assert.Equal(2, f.Limits.Length);
    }

    [Theory]
    [InlineData("crankcase heater, liquid solenoid", Verdict.Pass)]
    [InlineData("crankcase heater", Verdict.Fail)]
    public void A_long_line_has_what_the_maker_asks_for(string fitted, Verdict verdict)
    {
        // The expansion valve is the metering device of this system.
        var f = PipingJob.One("piping.long-line", Line("20 m", accessories: fitted), limits: Asked);
        Assert.Equal(verdict, f.Verdict);
        Assert.Equal(verdict == Verdict.Fail, f.Statement.Contains("liquid solenoid missing", StringComparison.Ordinal));
    }

    [Fact]
    public void Height_alone_is_enough() => Assert.Equal(Verdict.NotEvaluated, PipingJob.One("piping.long-line", Line("12 m", "-7 m")).Verdict);

    [Fact]
    public void The_makers_threshold_comes_first() =>
        Assert.Equal(Verdict.Information, PipingJob.One("piping.long-line", Line("20 m"), limits: "{long line over: {minimum: 24 m, from: p. 9}}").Verdict);

    [Fact]
    public void Traps_in_the_riser_are_fitted_traps() => Assert.Equal(
        Verdict.Pass, PipingJob.One("piping.long-line", Line("20 m"), checks: "{riser traps: 2}", limits: "{long line accessories: [oil traps]}").Verdict);

    [Theory]
    [InlineData("VRF")]
    [InlineData("refrigeration")]
    public void Systems_with_other_rules_have_no_finding(string system) => Assert.Empty(PipingJob.All("piping.long-line", Line("40 m"), system: system));
}
