using Commission.Measurement.Decisions;
using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.Electrical;

/// <summary>Terminals arc in a vacuum: an insulation test between the start of the pump and the end of the evacuation is a danger whatever it shows.</summary>
public sealed class InsulationUnderVacuumTests
{
    private const string EndEvent = "{at: \"11:00\", what: end}";

    private static Finding Test(string at, string events, string charging = "") => Assert.Single(JobText.Evaluate(
        $$$"""
        commission: 1
        units: us
        job: {id: EL-2, work: new installation, date: 2026-07-02, site: {name: "Fen Row 7", elevation: 0 ft}}
        equipment: {system: split, refrigerant: R-410A}
        evacuation: {started: "09:25", target: 500 micron, events: [{at: "10:30", what: isolated}{{{(events.Length == 0 ? "" : ", " + events)}}}]}
        {{{charging}}}
        electrical: {insulation: {read: 50 Mohm, test voltage: 500 V, leads off: yes, at: "{{{at}}}"}}
        """,
        "electrical.insulation"));

    [Fact]
    public void Between_start_and_end_it_is_a_danger()
    {
        var f = Test("10:00", EndEvent);
        Assert.Equal(Verdict.Fail, f.Verdict);
        Assert.StartsWith("DANGER", f.Statement, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("09:00")]
    [InlineData("11:20")]
    public void Before_the_pump_and_after_the_end_it_is_judged(string at) => Assert.Equal(Verdict.Pass, Test(at, EndEvent).Verdict);

    [Fact]
    public void Without_an_end_a_later_test_is_no_danger_but_not_shown_to_be_safe()
    {
        var f = Test("15:00", "");
        Assert.Equal(Verdict.Conditional, f.Verdict);
        Assert.Contains("end of the evacuation", f.Reservation, StringComparison.Ordinal);
    }

    [Fact]
    public void A_compressor_that_was_started_shows_that_the_vacuum_had_ended() =>
        Assert.Equal(Verdict.Pass, Test("15:00", "", "charging: {unit arrived: charged, compressor started: \"11:30\"}").Verdict);

    // From the minute of the start to the minute of the end; the end that is written counts before the start of the compressor.
    [Theory]
    [InlineData("09:24", false)]
    [InlineData("09:25", true)]
    [InlineData("11:00", true)]
    [InlineData("11:01", false)]
    [InlineData("11:15", false)]
    public void The_first_and_the_last_minute_are_inside(string at, bool danger) =>
        Assert.Equal(danger, Test(at, EndEvent, "charging: {unit arrived: charged, compressor started: \"11:30\"}").IsDanger);
}
