using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Evidence;

/// <summary>Nitrogen, vacuum, charge: EN 378-2 from memory, and what the steps are for.</summary>
public sealed class ChronologyCheckTests
{
    private const string Check = "evidence.chronology";
    private const string Order = "order of the steps";

    [Fact]
    public void In_order()
    {
        var finding = JobLines.Finding(Job("08:10", "09:15", "09:25", "10:58", "11:00"), Check, Order);
        Assert.Equal(Verdict.Pass, finding.Verdict);
        Assert.Equal("In order: pressure test 08:10 to 09:15, evacuation 09:25 to 10:58, charge 11:00 to 11:35.", finding.Statement);
    }

    [Theory]
    [InlineData("09:30", "10:40", "09:25", "10:58", "11:00", "evacuation begins at 09:25")]
    [InlineData("08:10", "09:15", "09:25", "11:20", "11:00", "charge begins at 11:00")]
    [InlineData("12:10", "13:15", "09:25", "10:58", "11:00", "charge begins at 11:00")]
    public void Out_of_order_names_both_lines(string testFrom, string testTo, string pump, string end, string start, string named)
    {
        var finding = JobLines.Finding(Job(testFrom, testTo, pump, end, start), Check, Order);
        Assert.Equal(Verdict.Fail, finding.Verdict);
        Assert.Contains(named, finding.Statement, StringComparison.Ordinal);
        Assert.True(finding.Statement.Split("(line ").Length > 2);
    }

    [Fact]
    public void Recovery_comes_before_all_else()
    {
        var finding = JobLines.Finding(JobLines.Of("recovery: {at: \"10:00\", to: 0 psig}\nevacuation: {started: \"09:00\", levels: [{at: \"09:40\", pressure: 400 micron}]}", "opened circuit"), Check, Order);
        Assert.Equal(Verdict.Fail, finding.Verdict);
        Assert.Contains("evacuation begins at 09:00", finding.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_times_of_day_nothing_is_said_of_the_order()
    {
        var finding = JobLines.Finding(JobLines.Of("recovery: {to: 0 psig}\ncharging: {added: 3 lb}", "opened circuit"), Check, Order);
        Assert.Equal(Verdict.NotEvaluated, finding.Verdict);
        Assert.Empty(JobLines.Findings(JobLines.Of("charging: {unit arrived: charged}"), Check));
    }

    [Theory]
    [InlineData("10:00", Verdict.Fail)]
    [InlineData("11:30", Verdict.Pass)]
    public void No_insulation_test_under_vacuum(string at, Verdict verdict)
    {
        var job = JobLines.Of($"evacuation: {{section: whole system, started: \"09:25\", levels: [{{at: \"10:58\", pressure: 400 micron}}]}}\nelectrical: {{insulation: {{read: 50 Mohm, at: \"{at}\"}}}}");
        var finding = JobLines.Finding(job, Check, "under vacuum");
        Assert.Equal(verdict, finding.Verdict);
        if (verdict == Verdict.Fail)
            Assert.StartsWith("DANGER", finding.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void With_the_service_valves_closed_the_compressor_is_not_in_the_vacuum() => Assert.DoesNotContain(
        JobLines.Findings(JobLines.Of("evacuation: {section: line set and indoor, started: \"09:25\", levels: [{at: \"10:58\", pressure: 400 micron}]}\nelectrical: {insulation: {read: 50 Mohm, at: \"10:00\"}}"), Check),
        f => f.Subject == "under vacuum");

    [Theory]
    [InlineData("10:30", true)]
    [InlineData("10:58", false)]
    [InlineData("11:05", false)]
    public void A_compressor_that_starts_while_the_lines_are_under_vacuum_is_a_danger_whichever_valve_is_closed(string start, bool danger)
    {
        // Common practice, no source: it draws from the vacuum, or against closed valves from nothing.
        var finding = JobLines.Finding(
            JobLines.Of($"evacuation: {{section: line set and indoor, started: \"09:25\", levels: [{{at: \"10:58\", pressure: 400 micron}}]}}\ncharging: {{unit arrived: charged, compressor started: \"{start}\"}}"), Check, "under vacuum");
        Assert.Equal(danger, finding.IsDanger);
        Assert.Equal(danger ? Verdict.Fail : Verdict.Pass, finding.Verdict);
    }

    [Fact]
    public void A_log_of_the_right_gauge_is_told_with_the_order()
    {
        const string Log = "instruments: [{id: vacuum, kind: vacuum gauge, serial: V-20, reads: [evacuation]}]\npressure test: {gas: dry nitrogen, started: \"08:00\"}\nevacuation: {started: \"09:25\", log: {gauge serial: V-20}, levels: [{at: \"10:58\", pressure: 400 micron}]}";
        Assert.EndsWith("The log is of the gauge named, serial V-20.", JobLines.Finding(JobLines.Of(Log), Check).Statement, StringComparison.Ordinal);
        Assert.Equal(Verdict.Fail, JobLines.Finding(JobLines.Of(Log.Replace("serial: V-20}, levels", "serial: V-21}, levels", StringComparison.Ordinal)), Check, "vacuum log").Verdict);
    }

    [Theory]
    [InlineData("leak check: {date: 2026-06-18, result: none, method: bubble solution}", Verdict.Pass)]
    [InlineData("leak check: {date: 2026-06-17, result: none, method: bubble solution}", Verdict.Fail)]
    [InlineData("label: {total: 3 lb, date: 2026-06-01}", Verdict.Fail)]
    public void Dates_do_not_lie_before_the_job(string lines, Verdict verdict) => Assert.Equal(verdict, JobLines.Finding(JobLines.Of(lines), Check, "dates").Verdict);

    [Theory]
    [InlineData("V-20", Verdict.Pass)]
    [InlineData("V-21", Verdict.Fail)]
    public void The_log_is_of_the_gauge_named(string serial, Verdict verdict)
    {
        var finding = JobLines.Finding(
            JobLines.Of($"instruments: [{{id: vacuum, kind: vacuum gauge, serial: V-20, reads: [evacuation]}}]\nevacuation: {{started: \"09:25\", log: {{gauge serial: {serial}, clock set: no}}, levels: [{{at: \"10:58\", pressure: 400 micron}}]}}"), Check, "vacuum log");
        Assert.Equal(verdict, finding.Verdict);
        Assert.Contains("clock of the gauge was not set", finding.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void The_order_inside_a_European_pressure_test()
    {
        string Of(string strength) => JobLines.Of($"limits: {{packs: [en-378]}}\npressure test: {{gas: dry nitrogen, strength: {{pressure: 500 psig, at: \"{strength}\"}}, tightness: {{from: {{at: \"08:10\", pressure: 440 psig}}, to: {{at: \"09:15\", pressure: 440 psig}}}}}}\nevacuation: {{started: \"12:00\", levels: [{{at: \"12:58\", pressure: 400 micron}}]}}");
        Assert.Equal(Verdict.Pass, JobLines.Finding(Of("07:50"), Check, Order).Verdict);
        Assert.Contains("before the strength test", JobLines.Finding(Of("09:30"), Check, Order).Statement, StringComparison.Ordinal);
    }

    // A step may begin in the minute in which the one before it ends.
    [Fact]
    public void Steps_that_touch_are_in_order()
    {
        Assert.Equal(Verdict.Pass, JobLines.Finding(Job("08:10", "09:15", "09:15", "11:00", "11:00"), Check, Order).Verdict);
        Assert.Equal(Verdict.Fail, JobLines.Finding(Job("08:10", "09:15", "09:14", "11:00", "11:00"), Check, Order).Verdict);
        Assert.Equal(Verdict.Fail, JobLines.Finding(Job("08:10", "09:15", "09:15", "11:01", "11:00"), Check, Order).Verdict);
    }

    [Fact]
    public void Every_time_of_the_order_is_named()
    {
        var yaml = Job("08:10", "09:15", "09:25", "10:58", "11:00");
        var finding = JobLines.Finding(yaml, Check, Order);
        Assert.Equal(["\"08:10\"", "\"09:15\"", "\"09:25\"", "\"10:58\"", "\"11:00\"", "\"11:35\""], finding.Readings.Select(r => yaml.Split('\n')[r.At.Line - 1][(r.At.Column - 1)..(r.At.Column + 6)]).Order().Distinct());
        Assert.Null(finding.NextStep);
        Assert.NotNull(JobLines.Finding(Job("08:10", "09:15", "09:14", "10:58", "11:00"), Check, Order).NextStep);
    }

    [Fact]
    public void Every_time_around_the_vacuum_is_named()
    {
        var yaml = JobLines.Of("evacuation: {section: whole system, started: \"09:25\", levels: [{at: \"10:58\", pressure: 400 micron}]}\ncharging: {unit arrived: charged, compressor started: \"11:00\"}\nelectrical: {insulation: {read: 50 Mohm, at: \"11:30\"}}");
        var finding = JobLines.Finding(yaml, Check, "under vacuum");
        Assert.Equal(["section", "started", "at", "compressor started"], JobLines.Keys(yaml, finding));
        Assert.Equal(5, finding.Readings.Length);
        Assert.Null(finding.NextStep);
    }

    // The pump starts at 09:25 and the vacuum ends at 10:58: a test in those very minutes is not inside.
    [Theory]
    [InlineData("09:25", Verdict.Pass)]
    [InlineData("09:26", Verdict.Fail)]
    [InlineData("10:57", Verdict.Fail)]
    [InlineData("10:58", Verdict.Pass)]
    public void The_minutes_of_start_and_end_are_outside(string at, Verdict verdict)
    {
        var finding = JobLines.Finding(JobLines.Of($"evacuation: {{started: \"09:25\", levels: [{{at: \"10:58\", pressure: 400 micron}}]}}\nelectrical: {{insulation: {{read: 50 Mohm, at: \"{at}\"}}}}"), Check, "under vacuum");
        Assert.Equal((verdict, verdict == Verdict.Fail, verdict == Verdict.Fail), (finding.Verdict, finding.IsDanger, finding.NextStep is not null));
    }

    [Theory]
    [InlineData("line set")]
    [InlineData("line set and indoor")]
    [InlineData("indoor")]
    public void A_section_without_the_compressor_leaves_its_windings_in_peace(string section)
    {
        var yaml = JobLines.Of($"evacuation: {{section: {section}, started: \"09:25\", levels: [{{at: \"10:58\", pressure: 400 micron}}]}}\ncharging: {{unit arrived: charged, compressor started: \"11:00\"}}\nelectrical: {{insulation: {{read: 50 Mohm, at: \"10:00\"}}}}");
        Assert.Equal(Verdict.Pass, JobLines.Finding(yaml, Check, "under vacuum").Verdict);
        // Without any time there is nothing to say.
        Assert.DoesNotContain(JobLines.Findings(JobLines.Of($"evacuation: {{section: {section}, started: \"09:25\", levels: [{{at: \"10:58\", pressure: 400 micron}}]}}"), Check), f => f.Subject == "under vacuum");
    }

    [Fact]
    public void Start_and_test_under_vacuum_are_both_told()
    {
        var finding = JobLines.Finding(JobLines.Of("evacuation: {started: \"09:25\", levels: [{at: \"10:58\", pressure: 400 micron}]}\ncharging: {unit arrived: charged, compressor started: \"10:30\"}\nelectrical: {insulation: {read: 50 Mohm, at: \"10:00\"}}"), Check, "under vacuum");
        Assert.Contains("10:30", finding.Statement, StringComparison.Ordinal);
        Assert.Contains("10:00", finding.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void Dates_are_named_and_each_that_is_early_told()
    {
        var yaml = JobLines.Of("leak check: {date: 2026-06-17, result: none, method: bubble solution}\nlabel: {total: 3 lb, date: 2026-06-01}");
        var finding = JobLines.Finding(yaml, Check, "dates");
        Assert.Equal(["date"], JobLines.Keys(yaml, finding));
        Assert.Equal(3, finding.Readings.Length);
        Assert.Contains("2026-06-17", finding.Statement, StringComparison.Ordinal);
        Assert.Contains("2026-06-01", finding.Statement, StringComparison.Ordinal);
        Assert.NotNull(finding.NextStep);
        Assert.Null(JobLines.Finding(JobLines.Of("label: {total: 3 lb, date: 2026-06-18}"), Check, "dates").NextStep);
    }

    [Theory]
    [InlineData("2026-06-18 09:00", Verdict.Pass)]
    [InlineData("2026-06-17 23:59", Verdict.Fail)]
    public void A_photo_of_another_day_belongs_to_another_job(string at, Verdict verdict)
    {
        var yaml = JobLines.Of($"photos: [{{file: plate.jpg, at: \"{at}\", shows: outdoor nameplate}}]");
        var job = JobText.Read(yaml, ("plate.jpg", "x"));
        var finding = Assert.Single(new Checks.Evidence.ChronologyCheck().Evaluate(new Checks.Kernel.CheckContext(job, new Checks.Kernel.CheckSettings(job.Identity.Date.Value))));
        Assert.Equal(verdict, finding.Verdict);
        Assert.Contains("at", JobLines.Keys(yaml, finding));
    }

    [Theory]
    [InlineData("v-20", "yes", Verdict.Pass)]
    [InlineData("V-21", "no", Verdict.Fail)]
    public void The_log_names_both_gauges_and_its_clock(string serial, string clock, Verdict verdict)
    {
        var yaml = JobLines.Of($"instruments: [{{id: vacuum, kind: vacuum gauge, serial: V-20, reads: [evacuation]}}]\nevacuation: {{started: \"09:25\", log: {{gauge serial: {serial}, clock set: {clock}}}, levels: [{{at: \"10:58\", pressure: 400 micron}}]}}");
        var finding = JobLines.Finding(yaml, Check, "vacuum log");
        Assert.Equal((verdict, verdict == Verdict.Fail), (finding.Verdict, finding.NextStep is not null));
        Assert.Equal(["gauge serial", "serial", "clock set"], JobLines.Keys(yaml, finding));
        Assert.Equal(clock == "no", finding.Statement.Contains("clock", StringComparison.Ordinal));
    }

    [Fact]
    public void The_order_of_the_tests_is_shown_with_its_requirement()
    {
        var yaml = JobLines.Of("limits: {packs: [en-378]}\npressure test: {gas: dry nitrogen, strength: {pressure: 500 psig, at: \"08:10\"}, tightness: {from: {at: \"08:10\", pressure: 440 psig}, to: {at: \"09:15\", pressure: 440 psig}}}\nevacuation: {started: \"12:00\", levels: [{at: \"12:58\", pressure: 400 micron}]}");
        var finding = JobLines.Finding(yaml, Check, Order);
        Assert.Equal(Verdict.Pass, finding.Verdict);
        Assert.Single(finding.Limits);
    }

    private static string Job(string testFrom, string testTo, string pump, string end, string start) => JobLines.Of(
        $"pressure test: {{gas: dry nitrogen, tightness: {{from: {{at: \"{testFrom}\", pressure: 440 psig}}, to: {{at: \"{testTo}\", pressure: 440 psig}}}}}}\n"
        + $"evacuation: {{started: \"{pump}\", levels: [{{at: \"{end}\", pressure: 400 micron}}]}}\n"
        + $"charging: {{unit arrived: charged, compressor started: \"{start}\", readings: [{{at: \"11:35\", vapor pressure: 120 psig}}]}}");
}
