using System.Collections.Immutable;
using Commission.Measurement.Decisions;
using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.Compressors;

/// <summary>12 h before the first start where a heater is fitted (common practice).</summary>
public sealed class CrankcaseHeaterCheckTests
{
    private static ImmutableArray<Finding> All(string charging, string accessories = ", accessories: [crankcase heater]", string work = "new installation", string limits = "") => JobText.Evaluate(
        $$$"""
        commission: 1
        units: us
        job: {id: CO-2, work: {{{work}}}, date: 2026-07-02, zone: "+00:00", site: {name: "Fen Row 7", elevation: 0 ft}}
        equipment: {system: split, refrigerant: R-410A{{{accessories}}}}
        {{{limits}}}
        charging: {unit arrived: charged{{{charging}}}}
        """,
        "compressor.crankcase-heater");

    [Theory]
    [InlineData("2026-07-01 18:00", Verdict.Pass)]
    [InlineData("2026-07-02 08:00", Verdict.Conditional)]
    public void Since_when(string on, Verdict verdict)
    {
        // To 11:00: 17 h and 3 h.
        var f = Assert.Single(All($", crankcase heater on since: \"{on}\", compressor started: \"11:00\""));
        Assert.Equal(verdict, f.Verdict);
        Assert.Equal(verdict == Verdict.Pass, f.NextStep is null);
    }

    [Fact]
    public void Short_of_the_makers_time_it_fails() => Assert.Equal(
        Verdict.Fail,
        Assert.Single(All(", crankcase heater on since: \"2026-07-01 18:00\", compressor started: \"11:00\"", limits: "limits: {crankcase heater before start: {minimum: 24 h, from: manual p. 4}}")).Verdict);

    [Theory]
    [InlineData(", compressor started: \"11:00\"")]
    [InlineData(", crankcase heater on since: \"2026-07-01 18:00\"")]
    public void A_time_that_is_missing_is_asked_for(string charging) => Assert.Equal(Verdict.NotEvaluated, Assert.Single(All(charging)).Verdict);

    [Fact]
    public void No_heater_no_finding() => Assert.Empty(All(", compressor started: \"11:00\"", accessories: ""));

    [Fact]
    public void A_seasonal_check_asks_for_nothing() => Assert.Empty(All(", compressor started: \"11:00\"", work: "seasonal check"));
}
