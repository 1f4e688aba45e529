using Commission.Checks.Kernel;
using Commission.Measurement.Decisions;
using Commission.Records;
using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.Recording;

/// <summary>
/// What evidence takes back. R-410A boils about 40 °F at 118.4 psig (printed pressure-temperature charts, from memory); that heat runs from warm to
/// cold is thermodynamics; which oddities stay remarks is the project's own rule.
/// </summary>
public sealed class ImpeachmentTests
{
    private const string Honest = "vapor pressure: 118.4 psig +/- 1, vapor line: 52 F +/- 1, liquid pressure: 365 psig +/- 1, liquid line: 99 F +/- 1, outdoor dry bulb: 90 F +/- 1";

    [Fact]
    public void A_vapor_line_colder_than_it_can_be_leaves_no_verdict_on_superheat()
    {
        var honest = JobLines.Record(Running(Honest));
        Assert.Equal(Verdict.Pass, One(honest, "charge.superheat-floor").Verdict);
        Assert.DoesNotContain(honest.Findings, f => f.IsTakenBack);

        var wrong = JobLines.Record(Running(Honest.Replace("vapor line: 52", "vapor line: 31", StringComparison.Ordinal)));
        var evidence = One(wrong, "evidence.physics");
        var floor = One(wrong, "charge.superheat-floor");
        Assert.Equal((Verdict.Fail, Verdict.NotEvaluated, true), (evidence.Verdict, floor.Verdict, floor.IsTakenBack));
        Assert.Matches(@"^vapor (line|pressure), 11:35 \(.+\) cannot be what it says, see Readings agree with each other$", floor.Reason);
        Assert.Equal($"Not evaluated: {floor.Reason}.", floor.Statement);
        Assert.Equal(evidence.NextStep, floor.NextStep);
        Assert.Null(floor.ProbabilityOfConformity);
        Assert.Equal("common.reading-cannot-be", floor.Messages!.Reason!.Id);
    }

    [Fact]
    public void What_does_not_rest_on_the_contradiction_keeps_its_verdict()
    {
        // The high side is not in doubt, and neither is the elevation that both sides share.
        var wrong = JobLines.Record(Running(Honest.Replace("vapor line: 52", "vapor line: 31", StringComparison.Ordinal)));
        var subcooling = One(wrong, "charge.subcooling");
        Assert.False(subcooling.IsTakenBack);
        Assert.NotEqual(Verdict.NotEvaluated, subcooling.Verdict);
        Assert.All(wrong.Findings.Where(f => f.IsTakenBack), f => Assert.NotEqual(Phases.Evidence, f.Phase));
    }

    [Fact]
    public void A_record_that_lost_a_verdict_is_incomplete_even_where_nobody_required_it()
    {
        var wrong = JobLines.Record(Running(Honest.Replace("vapor line: 52", "vapor line: 31", StringComparison.Ordinal)));
        Assert.NotEqual(Outcome.Accepted, wrong.Outcome);
        var floor = One(wrong, "charge.superheat-floor");
        Assert.False(floor.Required);
        Assert.Contains(floor.Reason!, Assert.Single(wrong.Missing, m => m.Checks.Contains(floor.Check)).Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_liquid_line_colder_than_the_air_that_cools_it_leaves_no_verdict_on_subcooling()
    {
        var wrong = JobLines.Record(Running(Honest.Replace("outdoor dry bulb: 90", "outdoor dry bulb: 104", StringComparison.Ordinal)));
        Assert.Contains("colder than the outdoor air", One(wrong, "evidence.physics").Statement, StringComparison.Ordinal);
        Assert.True(One(wrong, "charge.subcooling").IsTakenBack);
        Assert.False(One(wrong, "charge.superheat-floor").IsTakenBack);
    }

    [Fact]
    public void Rows_that_agree_in_every_digit_stay_a_remark()
    {
        var twice = JobLines.Record(JobLines.Of($"limits: {{subcooling: {{target: 10 F, tolerance: 3 F, from: plate}}}}\ncharging: {{unit arrived: charged, compressor started: \"11:00\", running: full, readings: [{{at: \"11:20\", {Fine}}}, {{at: \"11:35\", {Fine}}}]}}"));
        var repeated = twice.Findings.Single(f => f is { Check: "evidence.repeated", Subject: null });
        Assert.Equal(Verdict.Information, repeated.Verdict);
        Assert.NotNull(repeated.NextStep);
        Assert.DoesNotContain(twice.Findings, f => f.IsTakenBack);
    }

    [Fact]
    public void A_vacuum_that_deepened_by_itself_takes_back_the_hold_and_leaves_the_level()
    {
        var deepened = JobLines.Record(Vacuum("380", "380", "300"));
        Assert.True(One(deepened, "evacuation.hold").IsTakenBack);
        Assert.Equal(Verdict.Pass, One(deepened, "evacuation.level").Verdict);
        Assert.False(One(JobLines.Record(Vacuum("380", "380", "420")), "evacuation.hold").IsTakenBack);
    }

    [Fact]
    public void A_danger_stands_whatever_becomes_of_the_reading()
    {
        // The log says psi nowhere: the hold is taken back. Oxygen as test gas is written in words and stays what it is.
        var record = JobLines.Record(
            JobLines.Of("pressure test: {gas: oxygen, section: low side, tightness: {series: {file: p.csv, time format: clock}, temperature series: {file: t.csv, time format: clock}}}"),
            ("p.csv", "time,reading\n08:00,300\n08:30,300\n09:00,300\n09:30,300\n"),
            ("t.csv", "time,temperature (°F)\n08:00,70\n08:30,70\n09:00,70\n09:30,70\n"));
        Assert.Contains(record.Findings, f => f is { Check: "evidence.physics", Subject: "unit of the pressure log", Verdict: Verdict.Fail });
        Assert.True(One(record, "pressure-test.time").IsTakenBack);
        Assert.True(One(record, "pressure-test.gas").IsDanger);
        Assert.Equal(Outcome.NotAccepted, record.Outcome);
    }

    private const string Fine = "vapor pressure: 118.43 psig, vapor line: 52.37 F, liquid pressure: 365.21 psig, liquid line: 99.14 F, outdoor dry bulb: 90.22 F";

    private static Finding One(CommissioningRecord record, string check) => record.Findings.First(f => f.Check == check);

    private static string Running(string row) => JobLines.Of(
        $"limits: {{subcooling: {{target: 10 F, tolerance: 3 F, from: plate}}}}\ncharging: {{unit arrived: charged, compressor started: \"11:00\", running: full, readings: [{{at: \"11:35\", {row}}}]}}",
        work: "seasonal check", equipment: ", metering: TXV");

    private static string Vacuum(string isolated, string settled, string last) => JobLines.Of(
        $"instruments: [{{id: v, kind: vacuum gauge, accuracy: 10 % of reading, resolution: 1 micron, reads: [evacuation]}}]\nevacuation: {{section: line set, started: \"09:25\", gauge: at the system, isolated at: valve on the service port, levels: [{{at: \"10:25\", pressure: {isolated} micron, isolated: yes}}, {{at: \"10:27\", pressure: {settled} micron}}, {{at: \"10:40\", pressure: {last} micron}}]}}");
}
