using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.PressureTest;

/// <summary>Brazing under flowing nitrogen: 2 to 5 cubic feet an hour, common practice without a source.</summary>
public sealed class BrazingCheckTests
{
    private const string Check = "pressure-test.brazing";

    [Theory]
    [InlineData("3 cfh", Verdict.Pass)]
    [InlineData("1.5 L/min", Verdict.Pass)] // 90 L/h = 3.2 ft³/h
    [InlineData("1 cfh", Verdict.Fail)]
    [InlineData("15 cfh", Verdict.Fail)]
    public void Nitrogen_flows_and_does_not_blow(string flow, Verdict verdict) =>
        Assert.Equal(verdict, JobLines.Finding(JobLines.Of($"pressure test: {{gas: dry nitrogen, brazing: {{nitrogen flow: {flow}}}}}"), Check).Verdict);

    [Fact]
    public void Brazed_joints_without_a_flow_are_told_and_not_judged()
    {
        var finding = JobLines.Finding(JobLines.Of("pressure test: {gas: dry nitrogen, joints: [{place: coil stubs, kind: brazed, method: bubble solution, result: none}]}"), Check);
        Assert.Equal(Verdict.Information, finding.Verdict);
        Assert.Contains("no nitrogen flow", finding.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void Flares_alone_have_nothing_to_do_with_brazing() =>
        Assert.Empty(JobLines.Findings(JobLines.Of("pressure test: {gas: dry nitrogen, joints: [{place: valves, kind: flare, method: bubble solution, result: none}]}"), Check));
}
