using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Evidence;

/// <summary>E_n = |a − b| / √(U_a² + U_b²) for independent numbers (ISO 13528, from memory).</summary>
public sealed class AgreementCheckTests
{
    private const string Check = "evidence.agreement";

    [Theory]
    [InlineData("8.4 oz +/- 0.4", Verdict.Pass)]
    [InlineData("7.0 oz +/- 0.4", Verdict.Fail)]
    public void Scale_and_amounts_written(string added, Verdict verdict)
    {
        var finding = JobLines.Finding(JobLines.Of($"charging: {{scale: {{before: 20 lb +/- 0.001, after: 19.5 lb +/- 0.02}}, events: [{{at: \"11:00\", added: {added}}}]}}", "charge adjustment"), Check);
        Assert.Equal(verdict, finding.Verdict);
        Assert.Equal("charge added", finding.Subject);
    }

    [Fact]
    public void The_number_is_the_hand_calculated_one()
    {
        // 20.0 − 19.5 = 0.5 lb = 8 oz with U √(0.02² + 0.001²) lb = 0.3204 oz; 8.4 ± 0.4 oz: E_n = 0.4 / √(0.3204² + 0.4²) = 0.78.
        var finding = JobLines.Finding(JobLines.Of("charging: {scale: {before: 20 lb +/- 0.001, after: 19.5 lb +/- 0.02}, events: [{at: \"11:00\", added: 8.4 oz +/- 0.4}]}", "charge adjustment"), Check);
        Assert.Equal("0.78", finding.Trace.Single(s => s.Symbol == "E_n").Result);
        Assert.Equal("E_n at most 1", finding.Limits[0].Text);
    }

    [Theory]
    [InlineData("8.0 oz +/- 0.3", Verdict.Pass)] // what left the cylinder
    [InlineData("6.0 oz +/- 0.3", Verdict.Pass)] // what reached the circuit
    [InlineData("4.0 oz +/- 0.3", Verdict.Fail)]
    public void What_stayed_in_the_hoses_may_or_may_not_be_written_as_added(string added, Verdict verdict) => Assert.Equal(
        verdict,
        JobLines.Finding(JobLines.Of($"charging: {{left in hoses: 2.0 oz +/- 0.2, scale: {{before: 20 lb +/- 0.001, after: 19.5 lb +/- 0.02}}, events: [{{at: \"11:00\", added: {added}}}]}}", "charge adjustment"), Check).Verdict);

    [Fact]
    public void Wet_bulb_by_wick_and_by_humidity()
    {
        // 80 °F and 50 % relative humidity at sea level: wet bulb 66.7 °F (psychrometric chart, from memory).
        string Of(string wet) => JobLines.Of($"charging: {{readings: [{{at: \"11:35\", return dry bulb: 80 F +/- 0.5, return wet bulb: {wet} +/- 0.5, return humidity: 50 % +/- 3}}]}}", "seasonal check");
        Assert.Equal(Verdict.Pass, JobLines.Finding(Of("66.7 F"), Check).Verdict);
        Assert.Equal(Verdict.Fail, JobLines.Finding(Of("61 F"), Check).Verdict);
    }

    [Fact]
    public void Mass_recovered_by_scale_and_as_written()
    {
        string Of(string mass) => JobLines.Of($"recovery: {{to: 0 psig, mass: {mass} +/- 0.05, scale: {{before: 20.0 lb +/- 0.02, after: 26.0 lb +/- 0.02}}}}", "opened circuit");
        Assert.Equal(Verdict.Pass, JobLines.Finding(Of("6.0 lb"), Check).Verdict);
        Assert.Equal(Verdict.Fail, JobLines.Finding(Of("6.2 lb"), Check).Verdict);
    }

    [Fact]
    public void Without_an_accuracy_nothing_is_judged()
    {
        Assert.Equal(Verdict.NotEvaluated, JobLines.Finding(JobLines.Of("charging: {scale: {before: 20 lb, after: 19.5 lb}, events: [{at: \"11:00\", added: 8.4 oz}]}", "charge adjustment"), Check).Verdict);
        Assert.Empty(JobLines.Findings(JobLines.Of("charging: {scale: {before: 20 lb, after: 19.5 lb}}", "charge adjustment"), Check));
    }
}
