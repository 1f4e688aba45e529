using Commission.Measurement.Decisions;
using Xunit;
using static Commission.Checks.Tests.Evacuation.EvacuationJobs;

namespace Commission.Checks.Tests.Evacuation;

/// <summary>Ambient above 35 °F: US guide specification 15182 (published). Vapour pressure of ice at −10 °C 259.87 Pa, 1949 micron (IAPWS R14-08): a level held below it leaves no ice.</summary>
public sealed class EvacuationConditionsCheckTests
{
    private const string Id = "evacuation.conditions";

    [Theory]
    [InlineData("ambient: 72 °F", Verdict.Pass)]
    [InlineData("ambient: 31 °F", Verdict.Conditional)]
    [InlineData("ambient: 60 °F\ncoldest part: 20 °F", Verdict.Conditional)]
    [InlineData("ambient: 30 °F\ncoldest part: 50 °F", Verdict.Conditional)]
    [InlineData("coldest part: 50 °F\ncoldest part at end: 33 °F", Verdict.Conditional)]
    public void The_coldest_of_what_is_written_is_judged_and_cold_is_a_reservation(string written, Verdict verdict)
    {
        var found = One(Id, Job($"{Placed}\n{written}"));
        Assert.Equal(verdict, found.Verdict);
        Assert.Equal(verdict == Verdict.Conditional, found.Reservation is not null);
    }

    // Vapour pressure of ice at −10 °C: 1949 micron. The gauge is good for 10 % of reading: 1700 micron lie below it by more, 1900 by less.
    [Theory]
    [InlineData("500 micron", Verdict.Pass)]
    [InlineData("1700 micron", Verdict.Pass)]
    [InlineData("1900 micron", Verdict.Conditional)]
    [InlineData("2400 micron", Verdict.Conditional)]
    public void A_level_held_below_the_vapour_pressure_of_ice_lifts_the_reservation(string held, Verdict verdict)
    {
        var found = One(Id, Job($"{Placed}\nambient: -10 °C\nlevels: [{{at: \"10:00\", pressure: 300 micron, isolated: yes}}, {{at: \"10:15\", pressure: {held}}}]"));
        Assert.Equal(verdict, found.Verdict);
        Assert.Equal(verdict == Verdict.Conditional, found.Reservation is not null);
    }

    [Fact]
    public void A_level_that_was_not_held_lifts_nothing() =>
        Assert.Equal(Verdict.Conditional, One(Id, Job($"{Placed}\nambient: -10 °C\nlevels: [{{at: \"10:00\", pressure: 300 micron}}]")).Verdict);

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
