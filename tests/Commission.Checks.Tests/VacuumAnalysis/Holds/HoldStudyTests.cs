using Commission.Checks.VacuumAnalysis;
using Xunit;

namespace Commission.Checks.Tests.VacuumAnalysis.Holds;

/// <summary>
/// A small fixed part of the studies of <see cref="HoldStudies"/>, of another seed.
/// </summary>
public sealed class HoldStudyTests(ITestOutputHelper output)
{
    private const int Seed = 20261230;
    private const int Series = 200;

    private static readonly Lazy<(OwnSeries Series, HoldResult Said)[]> Own = new(() =>
        [.. Enumerable.Range(0, Series).Select(i => (Series: OwnSeries.Draw(Seed, i), i)).Select(s => (s.Series, s.Series.Hold.Analyze(HoldDraws.Of(Seed + 1, s.i), s.Series.Limit)))]);

    public static TheoryData<string> Kinds() => [.. FooledKinds.All.Select(k => k.Name)];

    [Fact]
    public void No_leak_is_called_tight_and_no_tight_hold_leaking()
    {
        Assert.Equal(0, Own.Value.Count(s => s.Series.IsCalledTight(s.Said)));
        Assert.Equal(0, Own.Value.Count(s => s.Series.IsCalledLeaking(s.Said)));
    }

    [Fact]
    public void No_leak_is_called_merely_wet() => Assert.Equal(0, Own.Value.Count(s => s.Series.IsCalledWet(s.Said)));

    [Fact]
    public void Of_the_clear_holds_97_in_100_are_told_right()
    {
        var clear = Own.Value.Where(s => s.Series.IsClear).ToArray();
        var right = clear.Count(s => s.Series.IsRight(s.Said));
        output.WriteLine($"{right} of {clear.Length}");
        Assert.True(clear.Length >= 80, "the draw must hold enough that is clear");

        // 97 % with three standard deviations of a binomial count; the study itself is held to 97 %.
        Assert.True(right >= clear.Length * (0.97 - (3 * Math.Sqrt(0.97 * 0.03 / clear.Length))), $"{right} of {clear.Length}");
    }

    [Fact]
    public void What_is_called_tight_or_steady_holds_the_true_inflow_within_its_bounds()
    {
        var bounded = Own.Value.Where(s => s.Said is { Slope: not null, Conclusion: HoldConclusion.Held or HoldConclusion.SteadyRise } && s.Series.Kind is HoldTruthKind.Flat or HoldTruthKind.Leak).ToArray();
        var covered = bounded.Count(s => s.Said.Slope!.Value.Covers(s.Series.Leak));
        output.WriteLine($"{covered} of {bounded.Length}");
        Assert.True(bounded.Length >= 50);

        // 95 % with three standard deviations of a binomial count.
        Assert.True(covered >= bounded.Length * (0.95 - 3 * Math.Sqrt(0.95 * 0.05 / bounded.Length)), $"{covered} of {bounded.Length}");
    }

    [Fact]
    public void Outgassing_is_named_a_leak_in_two_of_a_hundred_at_most()
    {
        const int Holds = 160;
        var named = Enumerable.Range(0, Holds).Count(i => HoldTold.NamesLeakFirst(Outgassing.Draw(Seed + 2, i).Hold.Analyze(HoldDraws.Of(Seed + 3, i), OwnSeries.DecayLimit)));
        Assert.True(named <= 0.02 * Holds, $"{named} of {Holds}");
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Nothing_wrong_is_said_of(string kind)
    {
        foreach (var outcome in FooledKinds.All.Single(k => k.Name == kind).Run(2))
            Assert.True(outcome.Wrong.Length == 0, $"{outcome.Number}: {string.Join(", ", outcome.Wrong)}; {outcome.Told}; may say: {outcome.Fooled.May}");
    }

    [Fact]
    public void Honest_logs_are_left_alone_and_their_holds_judged()
    {
        const int Logs = 126;
        var told = Enumerable.Range(0, Logs).Select(i => HonestLog.Draw(Seed + 6, i)).Select(log => HoldTold.Of(log.Yaml, ("log.csv", log.Csv))).ToArray();
        Assert.All(told, t => Assert.Null(t.Refused));
        Assert.All(told, t => Assert.True(t.Makes(HoldClaim.Passed, 0, 0), t.ToString()));

        // Half a percent of them is less than one; one is left for chance.
        var suspected = told.Count(t => t.Suspects(null));
        Assert.True(suspected <= 1, $"{suspected} of {Logs}");
    }

    [Fact]
    public void The_same_seed_draws_the_same_holds_and_every_kind_its_own()
    {
        Assert.Equal(HonestLog.Draw(Seed, 3).Csv, HonestLog.Draw(Seed, 3).Csv);
        Assert.NotEqual(HonestLog.Draw(Seed, 3).Csv, HonestLog.Draw(Seed, 12).Csv);
        Assert.Equal(FooledKinds.All.Length, FooledKinds.All.Select(k => k.Number).Distinct().Count());
        Assert.Equal(FooledKinds.All.Length, FooledKinds.All.Select(k => k.Name).Distinct(StringComparer.Ordinal).Count());
        Assert.True(FooledKinds.All.Length >= 60);
    }
}
