using Commission.Measurement.Decisions;
using Xunit;
using static Commission.Checks.Tests.Evacuation.EvacuationJobs;

namespace Commission.Checks.Tests.Evacuation;

/// <summary>The rise itself: US guide specification 15182/15652A, at most 500 micron in an hour (published).</summary>
public sealed class VacuumRiseCheckTests
{
    private const string Id = "evacuation.rise";
    private const double Micron = 0.133322387415;

    private static readonly string Logged = $"{Placed}\nseries: {{file: log.csv}}\nevents:\n  - {{at: 20 min, what: isolated}}";

    private static string Held(double minutes, double perMinute) =>
        Log(10, (int)(1200 + (minutes * 60)), t => t <= 1200 ? (20_000 * Math.Exp(-t / 120)) + 199 : 200 + (perMinute * (t - 1200) / 60));

    private static string Spec(string evacuation) => Job(evacuation, more: "limits: {packs: [us-guide-spec]}");

    [Fact]
    public void A_rise_of_300_in_an_hour_passes_and_one_of_600_fails()
    {
        // 5 micron a minute over 60 min: 300 micron. Gain of 10 % of the difference only: 30/√3·2 = 34.6 micron.
        var passes = One(Id, Spec(Logged), Held(62, 5));
        Assert.Equal(Verdict.Pass, passes.Verdict);
        Assert.Equal(300 * Micron, passes.Measured!.Value.Si, 0.15);
        Assert.Equal(34.6 * Micron, passes.Measured.ExpandedSi!.Value, 0.3);
        Assert.Equal(Verdict.Fail, One(Id, Spec(Logged), Held(62, 10)).Verdict);
    }

    [Fact]
    public void A_short_hold_is_not_evaluated()
    {
        var found = One(Id, Spec(Logged), Held(20, 5));
        Assert.Equal(Verdict.NotEvaluated, found.Verdict);
        Assert.Contains("60 min", found.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_pack_that_limits_the_rise_nothing_is_said() => Assert.Empty(All(Id, Job(Logged), Held(62, 5)));

    [Fact]
    public void A_zero_error_of_the_gauge_drops_out_of_the_rise()
    {
        var job = Job(Logged, gauge: "accuracy: 50 micron, resolution: 1 micron", more: "limits: {packs: [us-guide-spec]}");
        Assert.InRange(One(Id, job, Held(62, 5)).Measured!.ExpandedSi!.Value / Micron, 0.5, 1.2);
    }
}
