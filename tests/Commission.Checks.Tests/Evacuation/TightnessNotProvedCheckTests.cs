using Commission.Measurement.Decisions;
using Xunit;
using static Commission.Checks.Tests.Evacuation.EvacuationJobs;

namespace Commission.Checks.Tests.Evacuation;

/// <summary>A vacuum proves no tightness: searched joints under pressure do (IEC/UL 60335-2-40, from memory).</summary>
public sealed class TightnessNotProvedCheckTests
{
    private const string Id = "evacuation.tightness-not-proved";

    private static string Tested(string joints) => $$$"""
        pressure test:
          gas: dry nitrogen
          tightness: {from: {at: "07:00", pressure: 440 psig, temperature: 70 °F}, to: {at: "08:10", pressure: 440 psig, temperature: 70 °F}}
        {{{joints}}}
        """;

    [Fact]
    public void It_asks_for_the_pressure_test()
    {
        var found = One(Id, Job(Placed));
        Assert.Equal(Verdict.Information, found.Verdict);
        Assert.Contains("no nitrogen hold is recorded", found.Statement, StringComparison.Ordinal);
        Assert.Contains("nitrogen", found.NextStep, StringComparison.Ordinal);
    }

    [Fact]
    public void It_asks_for_the_search_of_joints_and_for_nothing_where_both_were_done()
    {
        Assert.Contains("joint", One(Id, Job(Placed, more: Tested(""))).NextStep, StringComparison.Ordinal);
        Assert.Null(One(Id, Job(Placed, more: Tested("  joints: [{place: flares, method: bubble solution, result: none}]"))).NextStep);
    }
}
