using Commission.Measurement.Decisions;
using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.PressureTest;

/// <summary>
/// Length of the hold (pressure-test.time): 60 minutes by the codes of 2021 and later (from memory), 24 hours for multi-split and VRF systems (installation manuals,
/// published). Rest before it (pressure-test.settled): 10 minutes (common practice, no source).
/// </summary>
public sealed class HoldTimeAndSettledTests
{
    private static string Job(string from, string to, string system = "split", string started = "") => $$$"""
        commission: 1
        units: us
        job: {id: NH-2, work: new installation, date: 2026-06-18, site: {name: "Sedge Row 4", elevation: 0 ft}}
        equipment: {system: {{{system}}}, refrigerant: R-32}
        pressure test:
          gas: dry nitrogen
          {{{started}}}
          tightness: {from: { {{{from}}}, pressure: 450 psig, temperature: 70 °F}, to: { {{{to}}}, pressure: 450 psig, temperature: 70 °F} }
        """;

    private static Finding One(string check, string yaml) => Assert.Single(JobText.Evaluate(yaml, check));

    [Theory]
    [InlineData("09:00", "split", Verdict.Pass)]
    [InlineData("08:59", "split", Verdict.Fail)]
    [InlineData("09:30", "VRF", Verdict.Fail)]
    [InlineData("2026-06-19 08:00", "VRF", Verdict.Pass)]
    [InlineData("11:00", "multi-split", Verdict.Pass)]
    public void The_hold_lasts_as_long_as_the_system_asks(string end, string system, Verdict verdict) =>
        Assert.Equal(verdict, One("pressure-test.time", Job("at: \"08:00\"", $"at: \"{end}\"", system)).Verdict);

    [Theory]
    [InlineData("at: \"08:00\", settled: 10 min", "", Verdict.Pass)]
    [InlineData("at: \"08:00\", settled: 4 min", "", Verdict.Fail)]
    [InlineData("at: \"08:00\"", "started: \"07:40\"", Verdict.Pass)]
    [InlineData("at: \"08:00\"", "started: \"07:55\"", Verdict.Fail)]
    [InlineData("at: \"08:00\"", "", Verdict.NotEvaluated)]
    public void The_gas_rests_after_filling(string from, string started, Verdict verdict) =>
        Assert.Equal(verdict, One("pressure-test.settled", Job(from, "at: \"09:30\"", started: started)).Verdict);

    [Fact]
    public void Without_a_hold_neither_speaks()
    {
        var yaml = Job("at: \"08:00\"", "at: \"09:00\"").Split("  tightness:")[0];
        Assert.Empty(JobText.Evaluate(yaml, "pressure-test.time"));
        Assert.Empty(JobText.Evaluate(yaml, "pressure-test.settled"));
    }
}
