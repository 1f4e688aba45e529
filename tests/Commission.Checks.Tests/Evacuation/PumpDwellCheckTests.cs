using Commission.Measurement.Decisions;
using Xunit;
using static Commission.Checks.Tests.Evacuation.EvacuationJobs;

namespace Commission.Checks.Tests.Evacuation;

/// <summary>Two hours at 5 Torr with the pump on: a generic installation manual of air-to-water heat pumps (published).</summary>
public sealed class PumpDwellCheckTests
{
    private const string Id = "evacuation.dwell";

    private static string Logged(int minutes) => Job($"{Placed}\nseries: {{file: log.csv}}\nevents:\n  - {{at: {minutes} min, what: isolated}}", more: "limits: {packs: [air-to-water-heat-pump]}");

    // 5000 micron are reached when 90 000·e^(−t/100) = 4700: at 295 s, the row of 300 s.
    private static string Pull(int minutes) => Log(20, (minutes * 60) + 1200, t => t <= minutes * 60 ? (90_000 * Math.Exp(-t / 100)) + 300 : 320);

    [Fact]
    public void Long_enough_passes_and_too_short_fails()
    {
        var found = One(Id, Logged(130), Pull(130));
        Assert.Equal(Verdict.Pass, found.Verdict);
        Assert.Equal((130 * 60) - 300, found.Measured!.Value.Si, 1e-6);
        Assert.Equal(Verdict.Fail, One(Id, Logged(60), Pull(60)).Verdict);
    }

    [Fact]
    public void A_level_that_was_never_reached_is_not_evaluated() =>
        Assert.Equal(Verdict.NotEvaluated, One(Id, Logged(60), Log(20, 4800, _ => 9000)).Verdict);

    [Fact]
    public void Without_a_pack_that_asks_nothing_is_said() =>
        Assert.Empty(All(Id, Job($"{Placed}\nseries: {{file: log.csv}}"), Pull(60)));
}
