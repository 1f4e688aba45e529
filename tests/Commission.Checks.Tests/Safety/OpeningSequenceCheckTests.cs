using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Safety;

/// <summary>Order of IEC/UL 60335-2-40 annex DD, from memory.</summary>
public sealed class OpeningSequenceCheckTests
{
    private const string Check = "safety.opening-sequence";

    [Theory]
    [InlineData("recovered, purged, evacuated, purged again, opened", Verdict.Pass)]
    [InlineData("recovered, evacuated, purged, purged again, opened", Verdict.Fail)]
    [InlineData("opened, recovered, purged, evacuated, purged again", Verdict.Fail)]
    [InlineData("recovered, purged, opened", Verdict.Fail)]
    [InlineData("recovered", Verdict.Fail)]
    public void The_order_decides(string sequence, Verdict verdict)
    {
        var finding = JobLines.Finding(Job($"safety: {{flammable: {{sequence: [{sequence}]}}}}"), Check);
        Assert.Equal(verdict, finding.Verdict);
        Assert.Equal("from memory", Assert.Single(finding.Limits).Mark);
    }

    [Fact]
    public void Not_written_is_not_evaluated_and_asked_for_by_the_profile()
    {
        Assert.Equal(Verdict.NotEvaluated, JobLines.Finding(Job("safety: {flammable: {ventilated: yes}}"), Check).Verdict);
        Assert.Equal(Verdict.NotEvaluated, JobLines.Finding(Job(""), Check).Verdict);
        Assert.True(JobLines.Finding(Job(""), Check) is not null);
        Assert.Contains(JobLines.Record(Job("")).Missing, m => m.Checks.Contains("safety.opening-sequence"));
    }

    [Fact]
    public void A_unit_taken_away_whole_is_not_opened()
    {
        Assert.Equal(Verdict.Pass, JobLines.Finding(Job("safety: {flammable: {sequence: [recovered, purged, evacuated, purged again]}}", "decommissioning"), Check).Verdict);
        Assert.Empty(JobLines.Findings(Job("", "decommissioning"), Check));
        Assert.Empty(JobLines.Findings(JobLines.Of(work: "opened circuit", refrigerant: "R-410A"), Check));
    }

    [Fact]
    public void Work_and_steps_are_named()
    {
        foreach (var lines in new[] { "safety: {flammable: {sequence: [recovered, purged, evacuated, purged again, opened]}}", "" })
        {
            var yaml = Job(lines);
            var finding = JobLines.Finding(yaml, Check);
            Assert.Equal(lines.Length == 0 ? ["work"] : ["work", "sequence"], JobLines.Keys(yaml, finding));
            Assert.Equal(lines.Length == 0 ? 1 : 6, finding.Readings.Length);
        }
    }

    // Every work that opens the circuit has the order asked; a circuit that was opened ends with that, whatever the work is called.
    [Theory]
    [InlineData("opened circuit", true)]
    [InlineData("leak repair", true)]
    [InlineData("compressor replacement", true)]
    [InlineData("refrigerant change", true)]
    [InlineData("new installation", false)]
    [InlineData("seasonal check", false)]
    public void Work_that_opens_the_circuit_is_asked(string work, bool asked)
    {
        Assert.Equal(asked ? 1 : 0, JobLines.Findings(Job("", work), Check).Length);
        Assert.Equal(asked ? Verdict.Fail : Verdict.Pass, JobLines.Finding(Job("safety: {flammable: {sequence: [recovered, purged, evacuated, purged again]}}", work), Check).Verdict);
        Assert.Equal(Verdict.Fail, JobLines.Finding(Job("safety: {flammable: {sequence: [recovered, purged, opened]}}", work), Check).Verdict);
    }

    [Fact]
    public void The_steps_left_out_are_told_before_their_order()
    {
        var finding = JobLines.Finding(Job("safety: {flammable: {sequence: [evacuated, recovered, opened]}}"), Check);
        Assert.True(finding.IsDanger);
        Assert.Contains("purged, purged again", finding.Statement, StringComparison.Ordinal);
    }

    private static string Job(string lines, string work = "opened circuit") => JobLines.Of(lines, work: work, refrigerant: "R-32");
}
