using Commission.Measurement.Decisions;
using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.PressureTest;

/// <summary>
/// Gas, section, joints and brazing: facts of the work. Inert gas only: ASHRAE 15-1994 section 10.1.2, interim action. 5 g/yr at field
/// joints indoors: IEC/UL 60335-2-40 (from memory). 2 to 5 cubic feet of nitrogen an hour while brazing: common practice, no source.
/// </summary>
public sealed class PressureTestFactsTests
{
    private const string Job = """
        commission: 1
        units: us
        job: {id: T, work: new installation, date: 2026-06-10, site: {elevation: 0 ft}}
        equipment: {system: split, refrigerant: R-32, metering: EEV, nameplate: {design pressure: {low: 450 psig, high: 550 psig}}}
        instruments:
          - {id: fine, kind: leak detector, sensitivity: 3 g/yr}
          - {id: coarse, kind: leak detector, sensitivity: 14 g/yr}
        pressure test:
          gas: dry nitrogen
          section: line set and indoor
          joints: [{place: flares, kind: flare, method: bubble solution, result: none}]
        """;

    [Theory]
    [InlineData("dry nitrogen", Verdict.Pass)]
    [InlineData("helium", Verdict.Pass)]
    [InlineData("oxygen", Verdict.Fail)]
    [InlineData("compressed air", Verdict.Fail)]
    [InlineData("acetylene", Verdict.Fail)]
    public void Only_an_inert_gas_tests_a_circuit(string gas, Verdict verdict)
    {
        var finding = One("gas: dry nitrogen", $"gas: {gas}", "pressure-test.gas");
        Assert.Equal(verdict, finding.Verdict);
        Assert.Equal(verdict == Verdict.Fail, finding.Statement.StartsWith("DANGER", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("5 %", Verdict.Pass)]
    [InlineData("10 %", Verdict.Fail)]
    public void A_tracer_is_a_small_share(string share, Verdict verdict)
    {
        var finding = One("gas: dry nitrogen", $"gas: nitrogen with tracer\n  tracer: {{gas: hydrogen, share: {share}}}", "pressure-test.gas");
        Assert.Equal(verdict, finding.Verdict);
        Assert.Null(finding.Measured);
    }

    [Fact]
    public void A_whole_system_with_a_closed_valve_was_not_tested_whole() =>
        Assert.Equal(Verdict.Fail, One("section: line set and indoor", "section: whole system\n  valves: {EEV: closed}", "pressure-test.section").Verdict);

    [Theory]
    [InlineData("split", "section: whole system\n  valves: {EEV: driven open}", Verdict.Pass)]
    [InlineData("split", "section: whole system", Verdict.Pass)] // the valve sits outdoors or stands open as delivered (common practice, no source)
    [InlineData("VRF", "section: whole system\n  valves: {EEV: driven open}", Verdict.Pass)]
    [InlineData("VRF", "section: whole system", Verdict.Conditional)]
    [InlineData("VRF", "section: line set and indoor", Verdict.Pass)]
    public void The_position_of_an_expansion_valve_decides_what_was_inside(string system, string section, Verdict verdict) => Assert.Equal(
        verdict,
        Assert.Single(JobText.Evaluate(Job.Replace("system: split", $"system: {system}", StringComparison.Ordinal).Replace("section: line set and indoor", section, StringComparison.Ordinal), "pressure-test.section")).Verdict);

    [Theory]
    [InlineData("method: bubble solution, result: none", Verdict.Pass)]
    [InlineData("method: electronic with tracer, with: fine, result: none", Verdict.Pass)]
    [InlineData("method: electronic with tracer, result: none", Verdict.Conditional)]
    [InlineData("result: none", Verdict.NotEvaluated)]
    [InlineData("method: bubble solution, result: leak", Verdict.Fail)]
    public void A_joint_is_searched_by_a_method_that_can_see_a_leak(string joint, Verdict verdict) =>
        Assert.Equal(verdict, Traced(joint).Verdict);

    [Fact]
    public void A_detector_coarser_than_asked_proves_nothing_at_a_joint()
    {
        var finding = Traced("method: electronic with tracer, with: coarse, result: none");
        Assert.Equal(Verdict.Fail, finding.Verdict);
        Assert.Equal(["coarse"], finding.Instruments);
    }

    [Theory]
    [InlineData("3 cfh", Verdict.Pass)]
    [InlineData("0.5 cfh", Verdict.Fail)]
    [InlineData("20 cfh", Verdict.Fail)]
    public void Nitrogen_flows_gently_while_a_joint_is_brazed(string flow, Verdict verdict) =>
        Assert.Equal(verdict, One("gas: dry nitrogen", $"gas: dry nitrogen\n  brazing: {{nitrogen flow: {flow}}}", "pressure-test.brazing").Verdict);

    [Fact]
    public void Brazed_joints_without_a_flow_are_told_and_not_judged() =>
        Assert.Equal(Verdict.Information, One("kind: flare", "kind: brazed", "pressure-test.brazing").Verdict);

    private static Finding Traced(string joint) =>
        Assert.Single(JobText.Evaluate(Job.Replace("gas: dry nitrogen", "gas: nitrogen with tracer", StringComparison.Ordinal).Replace("method: bubble solution, result: none", joint, StringComparison.Ordinal), "pressure-test.joint-leak-check"));

    private static Finding One(string from, string to, string check) =>
        Assert.Single(JobText.Evaluate(Job.Replace(from, to, StringComparison.Ordinal), check));
}
