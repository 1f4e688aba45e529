using Commission.Measurement.Decisions;
using Xunit;
using static Commission.Checks.Tests.Evacuation.EvacuationJobs;

namespace Commission.Checks.Tests.Evacuation;

/// <summary>The level at isolation. 500 micron is the usual target (common practice, no source); 1 micron = 0.1333224 Pa (NIST SP 811, from memory).</summary>
public sealed class VacuumLevelCheckTests
{
    private const string Id = "evacuation.level";
    private const double Micron = 0.133322387415;

    private static string Isolated(string at = "610 s", string more = "") =>
        $"{Placed}\nseries: {{file: log.csv}}\n{more}events:\n  - {{at: {at}, what: isolated}}";

    // 20 micron lost in each row of 20 s down to 610 s, where the valve is closed between two rows; then a slow rise.
    private static string Falling(double at600) => Log(20, 1500, t => t <= 620 ? at600 + (600 - t) : at600 - 20 + ((t - 620) * 0.05));

    [Fact]
    public void The_level_is_read_on_a_straight_line_between_the_rows_around_isolation()
    {
        // 480 micron at 600 s and 460 at 620 s: 470 at 610 s by hand. U: 10 % of reading as a rectangle, 47/√3 = 27.1; the step of 1 micron adds nothing to be seen; k = 2.
        var found = One(Id, Job(Isolated()), Falling(480));
        Assert.Equal(Verdict.PassWithinUncertainty, found.Verdict);
        Assert.Equal(470 * Micron, found.Measured!.Value.Si, 0.02);
        Assert.Equal(2 * 27.14 * Micron, found.Measured.ExpandedSi!.Value, 0.1);
        // 30 micron below the limit are 1.105 standard uncertainties: 0.866 by the table of the normal distribution.
        Assert.Equal(0.866, found.ProbabilityOfConformity!.Value, 0.004);
        Assert.Contains(found.Readings, r => r.At.File == "log.csv" && r.At.Line == 32 && r.Text == "480 micron");
    }

    [Fact]
    public void Above_the_target_it_fails_and_says_what_to_look_at()
    {
        var found = One(Id, Job(Isolated()), Falling(640));
        Assert.Equal(Verdict.Fail, found.Verdict);
        Assert.Contains("630 micron", found.Statement, StringComparison.Ordinal);
        Assert.Contains("rig", found.NextStep, StringComparison.Ordinal);
    }

    [Fact]
    public void A_gauge_at_the_pump_shows_the_pump()
    {
        var found = One(Id, Job(Isolated().Replace("gauge: at the system", "gauge: at the pump", StringComparison.Ordinal)), Falling(480));
        Assert.Equal(Verdict.NotEvaluated, found.Verdict);
        Assert.Contains("pump", found.Reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("gauge: on the manifold", "manifold")]
    [InlineData("notes: nothing", "not written")]
    public void Where_the_gauge_sat_has_to_be_shown(string written, string reservation)
    {
        var found = One(Id, Job(Isolated().Replace("gauge: at the system", written, StringComparison.Ordinal)), Falling(480));
        Assert.Equal(Verdict.Conditional, found.Verdict);
        Assert.Contains(reservation, found.Reservation, StringComparison.Ordinal);
        Assert.NotNull(found.NextStep);
    }

    [Fact]
    public void Without_isolation_there_is_no_level()
    {
        var found = One(Id, Job($"{Placed}\nseries: {{file: log.csv}}"), Log(20, 900, t => 9000 * Math.Exp(-t / 200) + 300));
        Assert.Equal(Verdict.NotEvaluated, found.Verdict);
        Assert.Contains("isolation", found.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Isolation_that_nobody_wrote_is_found_and_said()
    {
        var found = One(Id, Job($"{Placed}\nseries: {{file: log.csv}}"), Log(10, 1800, t => t <= 900 ? 9000 * Math.Exp(-t / 150) + 300 : 322 + ((t - 900) * 0.3)));
        Assert.Equal(Verdict.Pass, found.Verdict);
        Assert.Contains(found.Trace, s => s.Substitution.Contains("found from the readings", StringComparison.Ordinal));
        Assert.InRange(found.Measured!.Value.Si / Micron, 310, 345);
    }

    [Fact]
    public void A_level_by_hand_carries_the_uncertainty_written_with_it()
    {
        // ± 20 micron with k = 2, beside nothing else: 465 ± 20.
        var found = One(Id, Job($"{Placed}\nlevels:\n  - {{at: \"09:40\", pressure: 465 micron +/- 20, isolated: yes}}\n  - {{at: \"09:55\", pressure: 500 micron}}"));
        Assert.Equal(Verdict.Pass, found.Verdict);
        Assert.Equal(465 * Micron, found.Measured!.Value.Si, 1e-6);
        Assert.Equal(20 * Micron, found.Measured.ExpandedSi!.Value, 0.02);
        Assert.Equal(9.99e-1, found.ProbabilityOfConformity!.Value, 0.001);
    }

    [Fact]
    public void An_accuracy_nobody_states_is_a_reservation()
    {
        var found = One(Id, Job(Isolated(), gauge: "resolution: 1 micron"), Falling(480));
        Assert.Equal(Verdict.Conditional, found.Verdict);
        Assert.Contains("accuracy", found.Reservation, StringComparison.Ordinal);
    }

    [Fact]
    public void Readings_that_begin_long_after_isolation_are_no_level_at_isolation()
    {
        var yaml = Job($"{Placed}\nseries: {{file: log.csv, started: \"09:30\"}}\nevents:\n  - {{at: \"09:20\", what: isolated}}\n  - {{at: \"09:50\", what: end}}");
        var found = One(Id, yaml, Log(10, 1200, t => 400 + (t * 0.1)));
        Assert.Equal(Verdict.NotEvaluated, found.Verdict);
        Assert.Contains("10 min after isolation", found.Reason, StringComparison.Ordinal);
    }

    // A log that begins within a minute is read as if it had begun at isolation (default of the program): its first row is the level.
    [Theory]
    [InlineData("09:21:00", Verdict.Pass)]
    [InlineData("09:21:01", Verdict.NotEvaluated)]
    public void Readings_begin_within_a_minute_or_late(string started, Verdict verdict)
    {
        var yaml = Job($"{Placed}\nseries: {{file: log.csv, started: \"{started}\"}}\nevents:\n  - {{at: \"09:20\", what: isolated}}\n  - {{at: \"09:50\", what: end}}");
        var found = One(Id, yaml, Log(10, 1200, t => 400 + (t * 0.1)));
        Assert.Equal(verdict, found.Verdict);
        if (verdict == Verdict.Pass)
            Assert.Equal(400 * Micron, found.Measured!.Value.Si, 1e-6);
        else
            Assert.EndsWith("after isolation", found.Reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("610 s", 700, true)] // 480 to 700 s: more than two minutes
    [InlineData("610 s", 590, false)]
    public void A_gap_at_isolation_leaves_no_level(string isolated, double until, bool gap)
    {
        var found = One(Id, Job(Isolated(isolated)), Log(20, 1500, t => t <= 620 ? 480 + (600 - t) : 460, t => t > 480 && t < until));
        if (gap)
        {
            Assert.Equal((Verdict.NotEvaluated, "the log has a gap at isolation"), (found.Verdict, found.Reason));
            Assert.Single(found.Limits);
        }
        else
        {
            Assert.Equal(Verdict.PassWithinUncertainty, found.Verdict);
        }
    }

    [Fact]
    public void Without_readings_there_is_no_level()
    {
        var found = One(Id, Job(Placed));
        Assert.Equal((Verdict.NotEvaluated, "neither a log nor levels are written"), (found.Verdict, found.Reason));
        Assert.Contains("isolated: yes", found.InFile, StringComparison.Ordinal);
    }

    private const string WhereItSat = "evacuation.level-gauge-place-next";
    private const string HowGood = "evacuation.level-gauge-accuracy-next";

    [Theory]
    [InlineData("gauge: at the system", "accuracy: 10 % of reading, resolution: 1 micron", null)]
    [InlineData("gauge: on the manifold", "accuracy: 10 % of reading, resolution: 1 micron", WhereItSat)]
    [InlineData("gauge: at the system", "resolution: 1 micron", HowGood)]
    [InlineData("gauge: on the manifold", "resolution: 1 micron", WhereItSat)]
    public void A_condition_says_what_would_lift_it(string placed, string gauge, string? next)
    {
        var found = One(Id, Job(Isolated().Replace("gauge: at the system", placed, StringComparison.Ordinal), gauge: gauge), Falling(380));
        Assert.Equal(next is null ? Verdict.Pass : Verdict.Conditional, found.Verdict);
        Assert.Equal(next, found.Messages?.NextStep?.Id);
        Assert.Equal("370 micron in the system when the valve was closed at 10.2 min.", found.Statement.Replace("09:10:10", "10.2 min", StringComparison.Ordinal));
        Assert.EndsWith(", as written", found.Trace.Single(s => s.Symbol == "p_i").Substitution, StringComparison.Ordinal);
    }

    [Fact]
    public void A_makers_level_above_common_practice_is_remarked_upon()
    {
        var found = One(Id, Job(Isolated(), more: "limits: {vacuum: {maximum: 900 micron, from: manual p. 12}}"), Falling(640));
        Assert.Equal(Verdict.Pass, found.Verdict);
        Assert.Contains("asks less than common practice", found.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void An_over_range_gauge_at_isolation_says_so()
    {
        var found = One(Id, Job(Isolated("600 s")), Log(20, 1500, t => t < 500 ? 9000 : double.NaN));
        Assert.EndsWith("the gauge was over its range.", found.Statement, StringComparison.Ordinal);
        Assert.StartsWith("Pump on.", found.NextStep, StringComparison.Ordinal);
    }

    [Fact]
    public void An_over_range_gauge_at_isolation_fails()
    {
        var found = One(Id, Job(Isolated("600 s")), Log(20, 1500, t => t < 500 ? 9000 : double.NaN));
        Assert.Equal(Verdict.Fail, found.Verdict);
    }

    [Fact]
    public void A_named_pack_comes_before_common_practice()
    {
        // EN 378-2: below 270 Pa absolute, 2025 micron (from memory): 630 micron pass by it.
        var found = One(Id, Job(Isolated(), more: "limits: {packs: [en-378]}"), Falling(640));
        Assert.Equal(Verdict.Pass, found.Verdict);
        Assert.Equal(270, found.Limits[0].UpperSi);
    }

    [Fact]
    public void A_job_without_an_evacuation_gets_no_finding() =>
        Assert.Empty(All(Id, Job(Placed).Split("evacuation:")[0]));

    [Fact]
    public void What_the_level_rests_on_is_named()
    {
        var yaml = Job($"{Placed}\ntarget: 500 micron\nambient: 75 °F\nlevels:\n  - {{at: \"09:40\", pressure: 465 micron, isolated: yes}}\n  - {{at: \"09:55\", pressure: 500 micron}}");
        var keys = JobLines.Keys(yaml, JobLines.Finding(yaml, Id)).ToList();
        foreach (var key in new[] { "gauge", "target", "ambient", "pressure" })
            Assert.Contains(key, keys);
        Assert.Equal(["vacuum"], JobLines.Finding(yaml, Id).Instruments);
        Assert.Null(JobLines.Finding(yaml, Id).NextStep);
    }
}
