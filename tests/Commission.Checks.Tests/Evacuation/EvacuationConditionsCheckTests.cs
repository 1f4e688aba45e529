using Commission.Measurement.Decisions;
using Xunit;
using static Commission.Checks.Tests.Evacuation.EvacuationJobs;

namespace Commission.Checks.Tests.Evacuation;

/// <summary>Ambient above 35 °F: US guide specification 15182 (published). Vapour pressure of ice at −10 °C 259.87 Pa, 1949 micron (IAPWS R14-08).</summary>
public sealed class EvacuationConditionsCheckTests
{
    private const string Id = "evacuation.conditions";

    [Theory]
    [InlineData("ambient: 72 °F", Verdict.Pass)]
    [InlineData("ambient: 31 °F", Verdict.Fail)]
    [InlineData("ambient: 60 °F\ncoldest part: 20 °F", Verdict.Fail)]
    [InlineData("ambient: 30 °F\ncoldest part: 50 °F", Verdict.Fail)]
    [InlineData("coldest part: 50 °F\ncoldest part at end: 33 °F", Verdict.Fail)]
    public void The_coldest_of_what_is_written_is_judged(string written, Verdict verdict) =>
        Assert.Equal(verdict, One(Id, Job($"{Placed}\n{written}")).Verdict);

    [Fact]
    public void Ice_is_told_with_its_vapour_pressure()
    {
        var found = One(Id, Job($"{Placed}\nambient: -10 °C"));
        Assert.Contains("ice", found.Statement, StringComparison.Ordinal);
        Assert.Contains(found.Trace, s => s.Result == "1949 micron");
    }

    [Fact]
    public void Without_a_temperature_it_is_not_evaluated() => Assert.Equal(Verdict.NotEvaluated, One(Id, Job(Placed)).Verdict);
}
