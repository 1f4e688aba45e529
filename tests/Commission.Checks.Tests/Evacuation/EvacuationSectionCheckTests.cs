using Commission.Measurement.Decisions;
using Xunit;
using static Commission.Checks.Tests.Evacuation.EvacuationJobs;

namespace Commission.Checks.Tests.Evacuation;

/// <summary>A closed valve leaves a part that was never evacuated (common practice, no source).</summary>
public sealed class EvacuationSectionCheckTests
{
    private const string Id = "evacuation.section";

    [Theory]
    [InlineData("section: line set and indoor", "split", Verdict.Pass)]
    [InlineData("section: whole system\nvalves: {EEV: closed}", "split", Verdict.Fail)]
    [InlineData("section: whole system\nvalves: {solenoids: closed}", "refrigeration", Verdict.Fail)]
    [InlineData("section: whole system", "multi-split", Verdict.Conditional)]
    [InlineData("section: whole system\nvalves: {EEV: driven open}", "multi-split", Verdict.Pass)]
    [InlineData("gauge: at the system", "split", Verdict.NotEvaluated)]
    public void The_section_and_its_valves(string written, string system, Verdict verdict) =>
        Assert.Equal(verdict, One(Id, Job($"{written}\nstarted: \"09:00\"", system: system)).Verdict);

    [Fact]
    public void A_clean_pass_asks_for_nothing() => Assert.Null(One(Id, Job(Placed)).NextStep);
}
