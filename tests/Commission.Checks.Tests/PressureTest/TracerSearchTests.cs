using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.PressureTest;

/// <summary>A detector finds the gas it is made for and no other; air is four fifths nitrogen (facts). Trade names of hydrogen mixtures from memory.</summary>
public sealed class TracerSearchTests
{
    private const string Check = "pressure-test.joint-leak-check";

    [Theory]
    [InlineData("dry nitrogen", "", "electronic", "[R-410A]", Verdict.NotEvaluated)]
    [InlineData("dry nitrogen", "", "electronic with tracer", "[hydrogen]", Verdict.NotEvaluated)]
    [InlineData("nitrogen with tracer", "tracer: {gas: hydrogen, share: 5 %}", "electronic with tracer", "[R-410A]", Verdict.NotEvaluated)]
    [InlineData("nitrogen with tracer", "tracer: {gas: helium, share: 5 %}", "electronic with tracer", "[hydrogen]", Verdict.NotEvaluated)]
    [InlineData("nitrogen with tracer", "tracer: {gas: hydrogen, share: 5 %}", "electronic with tracer", "[R-410A, hydrogen]", Verdict.Pass)]
    [InlineData("nitrogen with tracer", "tracer: 5 % hydrogen", "electronic with tracer", "[H2]", Verdict.Pass)]
    [InlineData("nitrogen with tracer", "tracer: forming gas", "electronic with tracer", "[hydrogen]", Verdict.Pass)]
    [InlineData("dry nitrogen", "tracer: {gas: R-410A, share: 2 %}", "electronic", "[R-410A]", Verdict.Pass)]
    [InlineData("dry nitrogen", "tracer: {gas: R-410A, share: 2 %}", "electronic", "[R-32]", Verdict.Pass)] // R-410A is half R-32
    [InlineData("dry nitrogen", "tracer: {gas: R-32, share: 2 %}", "electronic", "[A2L]", Verdict.Pass)]
    [InlineData("helium", "", "electronic", "[helium]", Verdict.Pass)]
    [InlineData("nitrogen with tracer", "", "electronic with tracer", "[hydrogen]", Verdict.Pass)]
    [InlineData("nitrogen with tracer", "", "electronic with tracer", "[R-410A]", Verdict.Conditional)] // which tracer is not written
    [InlineData("dry nitrogen", "", "bubble solution", "[R-410A]", Verdict.Pass)]
    [InlineData("dry nitrogen", "", "ultrasonic", "[R-410A]", Verdict.Pass)]
    public void A_detector_finds_what_it_is_made_for(string gas, string tracer, string method, string detects, Verdict verdict) =>
        Assert.Equal(verdict, JobLines.Finding(Job(gas, tracer, method, $", detects: {detects}"), Check).Verdict);

    [Theory]
    [InlineData("electronic with tracer", Verdict.Pass)] // the method says it
    [InlineData("electronic", Verdict.Conditional)]
    public void Where_a_detector_is_not_described_the_method_says_what_it_reacts_to(string method, Verdict verdict) =>
        Assert.Equal(verdict, JobLines.Finding(Job("nitrogen with tracer", "tracer: {gas: hydrogen, share: 5 %}", method, ""), Check).Verdict);

    [Fact]
    public void The_next_step_is_another_search_and_no_other_pressure()
    {
        var finding = JobLines.Finding(Job("nitrogen with tracer", "tracer: hydrogen", "electronic with tracer", ", detects: [R-410A]"), Check);
        Assert.Contains("R-410A", finding.Statement, StringComparison.Ordinal);
        Assert.Contains("hydrogen", finding.Statement, StringComparison.Ordinal);
        Assert.Contains("bubbles", finding.NextStep, StringComparison.Ordinal);
    }

    private static string Job(string gas, string tracer, string method, string detects) => JobLines.Of($$"""
        instruments: [{id: sniffer, kind: leak detector, sensitivity: 3 g/yr{{detects}}}]
        pressure test:
          gas: {{gas}}
          section: line set and indoor
          joints: [{place: flares, kind: flare, method: {{method}}, with: sniffer, result: none}]
          {{tracer}}
        """);
}
