using Commission.Measurement.Decisions;
using Commission.Records;
using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.Evidence;

/// <summary>
/// Vacua that cannot be. A two-stage rotary vane pump ends at a few micron on its own inlet, and the conductance of a hose keeps a circuit above that
/// (vacuum handbooks, from memory); 5 micron is common practice, no source.
/// </summary>
public sealed class ImplausibleReadingsTests
{
    [Theory]
    [InlineData("2 micron", "2 micron", false)]
    [InlineData("4 micron", "60 micron", false)] // 4 ± 0.5 micron
    [InlineData("4.8 micron", "60 micron", true)] // 4.8 ± 0.6 micron reaches five
    [InlineData("6 micron", "60 micron", true)]
    [InlineData("61 micron", "97 micron", true)]
    [InlineData("0 micron", "0 micron", false)]
    [InlineData("0 micron", "300 micron", false)]
    public void A_level_below_what_hoses_let_through_is_asked_about_and_not_judged(string isolated, string held, bool stands)
    {
        var record = JobLines.Record(Job($"levels: [{{at: \"09:50\", pressure: 900 micron}}, {{at: \"10:10\", pressure: {isolated}, isolated: yes}}, {{at: \"10:20\", pressure: {held}}}, {{at: \"10:30\", pressure: {held}}}]"));
        var level = Assert.Single(record.Findings, f => f.Check == "evacuation.level");
        var physics = record.Findings.SingleOrDefault(f => f is { Check: "evidence.physics", Subject: "depth of the vacuum" });
        Assert.Equal(stands, physics is null);
        Assert.Equal(stands, level.Verdict is not Verdict.NotEvaluated);
        if (stands)
            return;
        Assert.StartsWith("Which unit was the gauge set to", level.NextStep, StringComparison.Ordinal);
        Assert.Equal(isolated.StartsWith('0'), physics!.Statement.Contains("exactly 0 at 10:10", StringComparison.Ordinal));
        Assert.NotEqual(Outcome.Accepted, record.Outcome);
    }

    [Fact]
    public void Nothing_on_a_gauge_of_coarse_steps_is_below_its_range_and_no_level()
    {
        // 0 ± 29 micron reaches far beyond five, and still the gauge shows nothing.
        var yaml = Job("levels: [{at: \"10:10\", pressure: 0 micron, isolated: yes}, {at: \"10:30\", pressure: 100 micron}]").Replace("resolution: 0.1 micron", "resolution: 25 micron", StringComparison.Ordinal);
        Assert.Equal(Verdict.NotEvaluated, JobLines.Record(yaml).Findings.Single(f => f.Check == "evacuation.level").Verdict);
    }

    [Fact]
    public void The_pump_alone_may_reach_what_no_hose_lets_through() => Assert.Equal(
        Verdict.Pass,
        JobLines.Findings(Job("rig check: {pump alone: 3 micron}\n  levels: [{at: \"10:10\", pressure: 200 micron, isolated: yes}, {at: \"10:30\", pressure: 220 micron}]"), "evacuation.rig").Single().Verdict);

    [Theory]
    [InlineData("time,reading", "", true)]
    [InlineData("time,vacuum (micron)", "", false)]
    [InlineData("time,reading", ", unit: micron", false)]
    public void A_log_whose_unit_nobody_wrote_decides_nothing(string heading, string unit, bool guessed)
    {
        // 322 may be micron or pascal; a crew that says which is believed.
        var record = JobLines.Record(
            Job($"series: {{file: v.csv, time format: clock{unit}}}\n  events: [{{at: \"10:10\", what: isolated}}, {{at: \"10:30\", what: end}}]"),
            ("v.csv", $"{heading}\n09:30,25000\n09:40,1650\n09:50,640\n10:00,450\n10:05,380\n10:10,322\n10:15,371\n10:20,388\n10:25,396\n10:30,402\n"));
        foreach (var check in new[] { "evacuation.level", "evacuation.hold" })
        {
            var found = Assert.Single(record.Findings, f => f.Check == check);
            Assert.Equal(guessed ? Verdict.NotEvaluated : Verdict.Pass, found.Verdict);
            Assert.Equal(guessed, found.NextStep?.StartsWith("Which unit was the gauge set to when it wrote v.csv?", StringComparison.Ordinal) == true);
        }
    }

    private static string Job(string lines) => JobLines.Of(
        $"instruments: [{{id: v, kind: vacuum gauge, sensor: thermal, accuracy: 10 % of reading, resolution: 0.1 micron, reads: [evacuation]}}]\nevacuation:\n  section: line set\n  gauge: at the system\n  isolated at: valve on the service port\n  started: \"09:30\"\n  {lines}");
}
