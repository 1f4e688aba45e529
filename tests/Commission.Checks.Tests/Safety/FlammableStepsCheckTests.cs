using Commission.Checks.Kernel;
using Commission.Checks.Recording;
using Commission.Measurement.Decisions;
using Commission.Records;
using Xunit;

namespace Commission.Checks.Tests.Safety;

/// <summary>IEC/UL 60335-2-40 annex DD, from memory; three metres: common practice, no source.</summary>
public sealed class FlammableStepsCheckTests
{
    private const string Check = "safety.flammable-steps";
    private const string Detector = "instruments: [{id: sniffer, kind: leak detector, sensitivity: 5 g/yr, calibrated: 2026-01-10}]\n";
    private const string All = "area checked with: sniffer, ignition sources removed: yes, ventilated: yes, extinguisher: dry powder, machines rated: yes, signs: yes";

    [Fact]
    public void All_steps_taken()
    {
        var finding = Steps(All);
        Assert.Equal(Verdict.Pass, finding.Verdict);
        Assert.Contains("ventilated", finding.Statement, StringComparison.Ordinal);
        Assert.Contains("sniffer", finding.Instruments);
    }

    [Theory]
    [InlineData("area checked with: sniffer, ", "area checked with a detector")]
    [InlineData("ignition sources removed: yes, ", "ignition sources removed")]
    [InlineData("ventilated: yes, ", "ventilated")]
    [InlineData("extinguisher: dry powder, ", "extinguisher")]
    [InlineData("machines rated: yes, ", "machines rated")]
    public void A_step_that_is_not_written_leaves_the_record_incomplete(string left, string named)
    {
        var finding = Steps(All.Replace(left, "", StringComparison.Ordinal));
        Assert.Equal(Verdict.NotEvaluated, finding.Verdict);
        Assert.Contains(named, finding.Reason, StringComparison.Ordinal);
        var record = JobLines.Record(Job(All.Replace(left, "", StringComparison.Ordinal)));
        Assert.Contains(record.Missing, m => m.Checks.Contains("safety.flammable-steps"));
    }

    // Nobody writes that signs stood there; somebody writes that they were left out (common practice, no source).
    [Fact]
    public void Signs_are_asked_only_where_they_are_written() =>
        Assert.Equal(Verdict.Pass, Steps(All.Replace(", signs: yes", "", StringComparison.Ordinal)).Verdict);

    [Theory]
    [InlineData("ventilated: yes", "ventilated: no")]
    [InlineData("ignition sources removed: yes", "ignition sources removed: no")]
    [InlineData("ignition sources removed: yes", "ignition sources removed: yes, within: 2.9 m")]
    [InlineData("extinguisher: dry powder", "extinguisher: none")]
    [InlineData("machines rated: yes", "machines rated: no")]
    [InlineData("signs: yes", "signs: no")]
    [InlineData("signs: yes", "signs: yes, alarm at: 26 %")]
    public void A_step_that_was_not_taken_or_is_not_enough_is_a_danger(string from, string to)
    {
        var finding = Steps(All.Replace(from, to, StringComparison.Ordinal));
        Assert.Equal(Verdict.Fail, finding.Verdict);
        Assert.StartsWith("DANGER", finding.Statement, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("within: 3 m")]
    [InlineData("within: 10 ft")]
    [InlineData("alarm at: 25 %")]
    [InlineData("alarm at: 20 %, within: 5 m")]
    public void Figures_at_the_limit_pass(string more)
    {
        // 10 ft is 3.048 m.
        var finding = Steps($"{All}, {more}");
        Assert.Equal(Verdict.Pass, finding.Verdict);
        Assert.NotEmpty(finding.Limits);
    }

    [Theory]
    [InlineData("detects: [R-454B]", Verdict.Pass)]
    [InlineData("detects: [R-32, R-410A]", Verdict.Pass)] // a component of it
    [InlineData("detects: [A2L]", Verdict.Pass)]
    [InlineData("detects: [R-290]", Verdict.Fail)]
    [InlineData("rated for flammable: no", Verdict.Fail)]
    public void The_detector_is_made_for_the_gas(string detector, Verdict verdict) => Assert.Equal(
        verdict,
        JobLines.Finding(Job(All, instruments: $"instruments: [{{id: sniffer, kind: leak detector, {detector}}}]\n"), Check).Verdict);

    [Fact]
    public void A_thermometer_is_no_detector() => Assert.Equal(
        Verdict.Fail,
        JobLines.Finding(Job(All, instruments: "instruments: [{id: sniffer, kind: thermometer, accuracy: 1 F}]\n"), Check).Verdict);

    [Fact]
    public void With_an_evacuation_the_pump_blows_outdoors()
    {
        const string Pumped = "evacuation: {started: \"09:00\", levels: [{at: \"09:40\", pressure: 400 micron}]{0}}\n";
        // Nobody is asked where the pump blew; who says that it blew into the room has a danger.
        Assert.Equal(Verdict.Pass, JobLines.Finding(Job(All, Pumped.Replace("{0}", "", StringComparison.Ordinal)), Check).Verdict);
        Assert.Equal(Verdict.Fail, JobLines.Finding(Job($"{All}, pump exhaust outdoors: no", Pumped.Replace("{0}", "", StringComparison.Ordinal)), Check).Verdict);
        Assert.Equal(Verdict.Pass, JobLines.Finding(Job($"{All}, pump exhaust outdoors: yes", Pumped.Replace("{0}", "", StringComparison.Ordinal)), Check).Verdict);
        Assert.Equal(Verdict.Pass, JobLines.Finding(Job(All, Pumped.Replace("{0}", ", pump: {exhaust outdoors: yes, rated for flammable: yes}", StringComparison.Ordinal)), Check).Verdict);
        Assert.Equal(Verdict.Fail, JobLines.Finding(Job(All, Pumped.Replace("{0}", ", pump: {exhaust outdoors: yes, rated for flammable: no}", StringComparison.Ordinal)), Check).Verdict);
    }

    [Fact]
    public void Propane_is_not_asked_for_bonding_and_not_bonded_is_a_danger()
    {
        Assert.Equal(Verdict.Pass, JobLines.Finding(Job(All, refrigerant: "R-290"), Check).Verdict);
        var loose = JobLines.Finding(Job($"{All}, bonded: no", refrigerant: "R-290"), Check);
        Assert.Equal(Verdict.Fail, loose.Verdict);
        Assert.True(loose.IsDanger);
        Assert.Contains("bonded", loose.Statement, StringComparison.Ordinal);
        var finding = JobLines.Finding(Job($"{All}, bonded: yes, left-hand thread: no", refrigerant: "R-290"), Check);
        Assert.Equal(Verdict.Pass, finding.Verdict);
        Assert.Contains("not left-handed", finding.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_word_on_it_the_job_is_incomplete()
    {
        var yaml = JobLines.Of(refrigerant: "R-454B");
        Assert.Equal(Verdict.NotEvaluated, JobLines.Finding(yaml, Check).Verdict);
        Assert.Equal(Outcome.Incomplete, JobLines.Record(yaml).Outcome);
        Assert.Empty(JobLines.Findings(JobLines.Of(work: "seasonal check", refrigerant: "R-454B"), Check));
        Assert.Empty(JobLines.Findings(JobLines.Of(refrigerant: "R-410A"), Check));
        Assert.Contains("not known here", JobLines.Finding(JobLines.Of(refrigerant: "R-457C"), Check).Reason, StringComparison.Ordinal);
    }

    // Whoever doubts the verdict finds the place of every answer it rests on.
    [Fact]
    public void Every_answer_is_named()
    {
        var yaml = Job($"{All}, alarm at: 20 %, within: 5 m, bonded: yes, pump exhaust outdoors: yes, left-hand thread: yes", "evacuation: {started: \"09:00\", pump: {rated for flammable: no}, levels: [{at: \"09:40\", pressure: 400 micron}]}\n",
            "instruments: [{id: sniffer, kind: leak detector, detects: [A2L], rated for flammable: yes}]\n");
        var finding = JobLines.Finding(yaml, Check);
        Assert.Equal(
            ["refrigerant", "area checked with", "detects", "kind", "rated for flammable", "alarm at", "ignition sources removed", "within", "ventilated", "extinguisher", "machines rated", "pump exhaust outdoors", "signs", "bonded", "left-hand thread"],
            JobLines.Keys(yaml, finding));
        Assert.Equal(2, finding.Limits.Length);
        // The pump that may not be used there is the one thing not in order, and it is named besides the detector that may.
        Assert.Contains("vacuum pump", finding.Statement, StringComparison.Ordinal);
        Assert.Equal(2, finding.Readings.Count(r => JobLines.Keys(yaml, finding with { Readings = [r] }).Single() == "rated for flammable"));
    }

    [Fact]
    public void What_is_not_written_is_asked_for_with_the_refrigerant_named()
    {
        foreach (var (yaml, known) in new[] { (JobLines.Of(refrigerant: "R-454B"), true), (JobLines.Of(refrigerant: "R-457C"), false), (Job(All, refrigerant: "R-457C"), false), (JobLines.Of($"safety: {{flammable: {{{All.Replace("area checked with: sniffer, ", "", StringComparison.Ordinal)}}}}}", work: "seasonal check", refrigerant: "R-457C"), false) })
        {
            var finding = JobLines.Finding(yaml, Check);
            Assert.Equal((Verdict.NotEvaluated, known), (finding.Verdict, finding.Reason!.Contains("burns", StringComparison.Ordinal)));
            Assert.Equal(["refrigerant"], JobLines.Keys(yaml, finding));
        }

        // A seasonal check opens nothing: without a word on it nothing is asked, with one it is answered.
        Assert.Empty(JobLines.Findings(JobLines.Of(work: "seasonal check", refrigerant: "R-457C"), Check));
        Assert.Single(JobLines.Findings(JobLines.Of("safety: {flammable: {ventilated: yes}}", work: "seasonal check", refrigerant: "R-454B"), Check));
        Assert.Empty(JobLines.Findings(JobLines.Of("safety: {flammable: {ventilated: yes}}", refrigerant: "R-410A"), Check));
    }

    // Each of two has to be fit for it: an answer of the good one does not cover the other.
    [Fact]
    public void Of_two_detectors_the_one_that_is_not_made_for_it_is_told() => Assert.Contains("nose", JobLines.Finding(
        Job(All.Replace("area checked with: sniffer", "area checked with: [sniffer, nose]", StringComparison.Ordinal), instruments: "instruments: [{id: sniffer, kind: leak detector, detects: [A2L]}, {id: nose, kind: leak detector, detects: [R-290]}]\n"), Check).Statement, StringComparison.Ordinal);

    [Fact]
    public void A_thread_that_is_left_handed_needs_no_word() =>
        Assert.DoesNotContain("thread", Steps($"{All}, left-hand thread: yes").Statement, StringComparison.Ordinal);

    private static Records.Findings.Finding Steps(string steps) => JobLines.Finding(Job(steps), Check);

    private static string Job(string steps, string more = "", string instruments = Detector, string refrigerant = "R-454B") =>
        JobLines.Of($"{instruments}{more}safety: {{flammable: {{{steps}}}}}", refrigerant: refrigerant);
}
