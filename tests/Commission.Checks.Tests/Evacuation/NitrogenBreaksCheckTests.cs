using Commission.Measurement.Decisions;
using Xunit;
using static Commission.Checks.Tests.Evacuation.EvacuationJobs;

namespace Commission.Checks.Tests.Evacuation;

/// <summary>Breaks: due for a wet circuit, by the maker or by a named pack; triple evacuation is two breaks between three pulls (common practice, no source).</summary>
public sealed class NitrogenBreaksCheckTests
{
    private const string Id = "evacuation.breaks";

    private static string Broken(params string[] breaks) => $"{Placed}\nevents:\n{string.Join('\n', breaks.Select(b => $"  - {{{b}}}"))}";

    private const string First = "at: 20 min, what: nitrogen break, to: 2 psig, held: 10 min";
    private const string Second = "at: 50 min, what: nitrogen break, to: 1 psig, held: 6 min";

    [Fact]
    public void Where_nobody_asks_they_are_information()
    {
        Assert.Equal(Verdict.Information, One(Id, Job(Broken(First))).Verdict);
        Assert.Equal(Verdict.Information, One(Id, Job(Placed)).Verdict);
    }

    [Fact]
    public void A_wet_circuit_asks_for_two()
    {
        Assert.Equal(Verdict.Pass, One(Id, Job(Broken(First, Second) + "\nwet: yes")).Verdict);
        var one = One(Id, Job(Broken(First) + "\nwet: yes"));
        Assert.Equal(Verdict.Fail, one.Verdict);
        Assert.Contains("asks for 2.", one.Statement, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("limits: {packs: [triple-evacuation]}", Verdict.Fail)]
    [InlineData("limits: {packs: [hold-at-level]}", Verdict.Pass)]
    [InlineData("limits: {nitrogen breaks: {minimum: 1, from: manual p. 4}}", Verdict.Pass)]
    [InlineData("limits: {nitrogen breaks: {minimum: 3, from: manual p. 4}}", Verdict.Fail)]
    public void A_pack_or_the_maker_asks_for_its_own_number(string limits, Verdict verdict) =>
        Assert.Equal(verdict, One(Id, Job(Broken(First), more: limits)).Verdict);

    [Theory]
    [InlineData("at: 20 min, what: nitrogen break, to: -3 psig, held: 10 min", "did not reach the atmosphere")]
    [InlineData("at: 20 min, what: nitrogen break, to: 30 psig, held: 10 min", "went above")]
    [InlineData("at: 20 min, what: nitrogen break, to: 2 psig, held: 1 min", "left in for 1 min")]
    public void A_break_done_badly_passes_on_a_condition(string first, string why)
    {
        var found = One(Id, Job(Broken(first, Second) + "\nwet: yes"));
        Assert.Equal(Verdict.Conditional, found.Verdict);
        Assert.Contains(why, found.Reservation, StringComparison.Ordinal);
    }

    [Fact]
    public void A_pull_that_never_came_down_before_the_break_is_told_and_a_break_that_nobody_wrote_is_seen()
    {
        // Two pulls to 4000 micron and back to the atmosphere: the second break is in the log alone.
        var log = Log(10, 4800, t => t switch
        {
            <= 1200 => (90_000 * Math.Exp(-t / 100)) + 4000,
            <= 1800 => double.NaN,
            <= 3000 => (90_000 * Math.Exp(-(t - 1800) / 100)) + 4000,
            <= 3600 => double.NaN,
            _ => (90_000 * Math.Exp(-(t - 3600) / 100)) + 300,
        });
        var found = One(Id, Job(Broken(First) + "\nwet: yes\nseries: {file: log.csv}"), log);
        Assert.Equal(Verdict.Conditional, found.Verdict);
        Assert.Contains("nobody wrote with what", found.Reservation, StringComparison.Ordinal);
        Assert.Contains("no lower than", found.Reservation, StringComparison.Ordinal);
    }
}
