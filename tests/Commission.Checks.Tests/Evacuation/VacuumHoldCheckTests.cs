using Commission.Measurement.Decisions;
using Xunit;
using static Commission.Checks.Tests.Evacuation.EvacuationJobs;

namespace Commission.Checks.Tests.Evacuation;

/// <summary>The hold against the decay limit: 1000 micron after 10 minutes for a split (common practice, no source).</summary>
public sealed class VacuumHoldCheckTests
{
    private const string Id = "evacuation.hold";
    private const double Micron = 0.133322387415;

    private static string Logged(string end = "", string more = "") =>
        $"{Placed}\nseries: {{file: log.csv}}\n{more}events:\n  - {{at: 20 min, what: isolated}}{(end.Length == 0 ? "" : $"\n  - {{at: {end}, what: end}}")}";

    // Pumped to 300 micron in 20 min, then the given rise.
    private static string Held(double minutes, Func<double, double> rise, int step = 5, Func<double, bool>? skip = null) =>
        Log(step, (int)(1200 + (minutes * 60)), t => t <= 1200 ? (20_000 * Math.Exp(-t / 120)) + 299 : 300 + rise((t - 1200) / 60), skip);

    [Fact]
    public void A_longer_hold_is_never_punished()
    {
        // 50 micron a minute: 800 at 10 min, past 1000 at 14 min, 1300 at 20 min. Only the first ten minutes are judged.
        var found = One(Id, Job(Logged()), Held(20, m => 50 * m));
        Assert.Equal(Verdict.Pass, found.Verdict);
        Assert.Equal(800 * Micron, found.Measured!.Value.Si, 0.05);
        Assert.Contains("after 10 min", found.Statement, StringComparison.Ordinal);
        Assert.Contains("After 20 min, at its end, it stood at 1300 micron", found.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_reading_until_the_stated_time_counts()
    {
        // 1020 micron at 8 min, back to 960 at 10 min.
        var found = One(Id, Job(Logged()), Held(12, m => m <= 8 ? 90 * m : Math.Max(660, 720 - (30 * (m - 8)))));
        Assert.Equal(Verdict.Fail, found.Verdict);
        Assert.Equal(1020 * Micron, found.Measured!.Value.Si, 0.05);
        Assert.Contains("past 1000 micron after 7.", found.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void A_short_hold_is_not_evaluated_and_a_short_hold_above_the_limit_fails()
    {
        var brief = One(Id, Job(Logged()), Held(6, m => 10 * m));
        Assert.Equal(Verdict.NotEvaluated, brief.Verdict);
        Assert.Contains("6 min", brief.Reason, StringComparison.Ordinal);
        Assert.Contains("10 min", brief.NextStep, StringComparison.Ordinal);
        Assert.Equal(Verdict.Fail, One(Id, Job(Logged()), Held(6, m => 200 * m)).Verdict);
    }

    [Fact]
    public void A_log_that_stops_one_row_early_has_lasted()
    {
        Assert.Equal(Verdict.Pass, One(Id, Job(Logged()), Log(5, 1795, t => t <= 1200 ? (20_000 * Math.Exp(-t / 120)) + 299 : 300 + (t % 20 == 0 ? 1 : 0))).Verdict);
        Assert.Equal(Verdict.NotEvaluated, One(Id, Job(Logged()), Log(5, 1785, t => t <= 1200 ? (20_000 * Math.Exp(-t / 120)) + 299 : 300 + (t % 20 == 0 ? 1 : 0))).Verdict);
    }

    [Fact]
    public void A_gap_at_the_stated_time_is_bounded_by_the_next_reading_and_said()
    {
        bool Gap(double t) => t is > 1700 and < 1900;
        var found = One(Id, Job(Logged()), Held(15, m => 10 * m, skip: Gap));
        Assert.Equal(Verdict.Conditional, found.Verdict);
        Assert.Contains("gap", found.Reservation, StringComparison.Ordinal);
        // After the gap the pressure is above the limit: whether it was so at ten minutes nobody knows.
        Assert.Equal(Verdict.NotEvaluated, One(Id, Job(Logged()), Held(15, m => m < 9 ? 10 * m : 900, skip: Gap)).Verdict);
    }

    [Fact]
    public void Above_the_range_of_a_gauge_that_has_shown_the_limit_is_above_the_limit()
    {
        var found = One(Id, Job(Logged()), Held(15, m => m < 4 ? 100 * m : double.NaN));
        Assert.Equal(Verdict.Fail, found.Verdict);
        Assert.Contains("above the gauge's range", found.Statement, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("at the pump", "valve on the service port", Verdict.NotEvaluated)]
    [InlineData("at the pump", "manifold", Verdict.NotEvaluated)]
    [InlineData("at the pump", "pump valve", Verdict.Pass)]
    [InlineData("on the manifold", "valve on the service port", Verdict.NotEvaluated)]
    [InlineData("on the manifold", "manifold", Verdict.Pass)]
    [InlineData("at the system", "pump valve", Verdict.Pass)]
    public void A_gauge_cut_off_from_the_system_says_nothing_of_it(string gauge, string closed, Verdict verdict)
    {
        var yaml = Job(Logged().Replace("gauge: at the system", $"gauge: {gauge}", StringComparison.Ordinal).Replace("valve on the service port", closed, StringComparison.Ordinal));
        var found = One(Id, yaml, Held(12, m => 10 * m));
        Assert.Equal(verdict, found.Verdict);
        if (verdict == Verdict.Pass)
            Assert.Contains("inside the hold", found.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_levels_by_hand_are_read_on_the_straight_line_between_them()
    {
        // 320 at 0 and 410 at 11 min: 320 + 90·10/11 = 401.8 micron at 10 min.
        var found = One(Id, Job($"{Placed}\nlevels:\n  - {{at: \"10:25\", pressure: 320 micron, isolated: yes}}\n  - {{at: \"10:36\", pressure: 410 micron}}"));
        Assert.Equal(Verdict.Pass, found.Verdict);
        Assert.Equal(401.8 * Micron, found.Measured!.Value.Si, 0.01);
        Assert.Equal(["10:25", "10:36"], found.Readings.Where(r => r.Name.StartsWith("vacuum at", StringComparison.Ordinal)).Select(r => r.Name[^5..]));
    }

    [Fact]
    public void Far_apart_levels_that_end_above_the_limit_pass_on_a_condition_only()
    {
        // 320 at 0, 1100 at 25 min: 632 at 10 min on the straight line, but a rise that slows down passes 1000 before.
        var found = One(Id, Job($"{Placed}\nlevels:\n  - {{at: \"10:25\", pressure: 320 micron, isolated: yes}}\n  - {{at: \"10:50\", pressure: 1100 micron}}"));
        Assert.Equal(Verdict.Conditional, found.Verdict);
        Assert.Contains("above the limit", found.Reservation, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("multi-split", 20)]
    [InlineData("VRF", 60)]
    public void The_time_grows_with_the_system(string system, int minutes)
    {
        // Common practice, no source: a leak raises a large volume slowly.
        var found = One(Id, Job(Logged(), system: system), Held(15, m => 5 * m));
        Assert.Equal(Verdict.NotEvaluated, found.Verdict);
        Assert.Contains($"{minutes} min", found.Reason, StringComparison.Ordinal);
        Assert.Equal(Verdict.Pass, One(Id, Job(Logged(), system: system), Held(61, m => 5 * m)).Verdict);
    }

    [Fact]
    public void The_makers_limit_comes_first_and_a_looser_one_is_remarked_upon()
    {
        var yaml = Job(Logged(), more: "limits: {decay limit: {level: 2000 micron, after: 10 min, from: manual p. 9}}");
        var found = One(Id, yaml, Held(12, m => 100 * m));
        Assert.Equal(Verdict.Pass, found.Verdict);
        Assert.Contains("manual p. 9", found.Statement, StringComparison.Ordinal);
        Assert.Contains("asks less", found.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void A_failed_hold_asks_for_the_rig_first_where_nobody_tested_it()
    {
        var log = Held(15, m => 900 * (1 - Math.Exp(-m / 4)));
        Assert.Equal("evacuation.rig-alone-next", One(Id, Job(Logged()), log).Messages!.NextStep!.Id);
        var tested = Job(Logged(more: "rig check: {pump alone: 40 micron, blanked off: 60 micron, rise: 5 micron, after: 5 min}\n"));
        Assert.NotEqual("evacuation.rig-alone-next", One(Id, tested, log).Messages!.NextStep!.Id);
    }

    // With the gauge on the circuit's side of the closed valve, what of the rig is in the hold is the gauge and its tee; shutting the valve once more would show the circuit and call it the rig.
    [Theory]
    [InlineData("valve on the service port", "gauge")]
    [InlineData("manifold", "hoses")]
    public void The_rig_that_is_to_be_watched_alone_is_what_lies_inside_the_hold(string closed, string inside)
    {
        var log = Held(15, m => 900 * (1 - Math.Exp(-m / 4)));
        var found = One(Id, Job(Logged()).Replace("isolated at: valve on the service port", $"isolated at: {closed}", StringComparison.Ordinal), log);
        Assert.Contains(inside, HoldJobs.Next(found), StringComparison.Ordinal);
    }

    [Fact]
    public void Only_the_last_isolation_is_judged()
    {
        var yaml = Job($"{Placed}\nseries: {{file: log.csv}}\nevents:\n  - {{at: 10 min, what: isolated}}\n  - {{at: 14 min, what: pump on}}\n  - {{at: 20 min, what: isolated}}");
        var log = Log(5, 1900, t => t switch { <= 600 => (20_000 * Math.Exp(-t / 80)) + 299, <= 840 => 300 + (10 * (t - 600)), <= 1200 => 300 + (2400 * Math.Exp(-(t - 840) / 40)), _ => 310 });
        Assert.Equal(Verdict.Pass, One(Id, yaml, log).Verdict);
    }

    [Fact]
    public void Neither_log_nor_levels_is_said()
    {
        var found = One(Id, Job(Placed));
        Assert.Equal(Verdict.NotEvaluated, found.Verdict);
        Assert.Contains("neither a log nor levels", found.Reason, StringComparison.Ordinal);
    }
}
