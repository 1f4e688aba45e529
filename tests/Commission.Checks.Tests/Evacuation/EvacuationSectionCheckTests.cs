using Commission.Measurement.Decisions;
using Xunit;
using static Commission.Checks.Tests.Evacuation.EvacuationJobs;

namespace Commission.Checks.Tests.Evacuation;

/// <summary>
/// A closed valve leaves a part that was never evacuated. The electronic valves of VRF and of refrigeration rest closed without power; those of
/// ductless and multi-split systems sit outdoors or stand open as delivered, and a thermostatic valve is open without pressure (common practice, no source).
/// </summary>
public sealed class EvacuationSectionCheckTests
{
    private const string Id = "evacuation.section";

    [Theory]
    [InlineData("section: line set and indoor", "split", Verdict.Pass)]
    [InlineData("section: whole system\nvalves: {EEV: closed}", "split", Verdict.Fail)]
    [InlineData("section: whole system\nvalves: {solenoids: closed}", "refrigeration", Verdict.Fail)]
    [InlineData("section: whole system\nvalves: {EEV: driven open}", "multi-split", Verdict.Pass)]
    [InlineData("gauge: at the system", "split", Verdict.NotEvaluated)]
    public void The_section_and_its_valves(string written, string system, Verdict verdict) =>
        Assert.Equal(verdict, One(Id, Job($"{written}\nstarted: \"09:00\"", system: system)).Verdict);

    [Theory]
    [InlineData("section: whole system", "VRF", "EEV", Verdict.Conditional)]
    [InlineData("section: whole system", "refrigeration", "EEV", Verdict.Conditional)]
    [InlineData("section: whole system\nvalves: {EEV: driven open}", "VRF", "EEV", Verdict.Pass)]
    [InlineData("section: line set and indoor", "VRF", "EEV", Verdict.Pass)]
    [InlineData("section: whole system", "multi-split", "EEV", Verdict.Pass)]
    [InlineData("section: whole system", "ductless split", "EEV", Verdict.Pass)]
    [InlineData("section: whole system", "refrigeration", "TXV", Verdict.Pass)]
    public void The_position_of_a_valve_is_asked_only_where_it_may_have_stood_closed(string written, string system, string metering, Verdict verdict) =>
        Assert.Equal(verdict, One(Id, Job($"{written}\nstarted: \"09:00\"", system: system).Replace("metering: TXV", $"metering: {metering}", StringComparison.Ordinal)).Verdict);

    [Fact]
    public void A_clean_pass_asks_for_nothing() => Assert.Null(One(Id, Job(Placed)).NextStep);
}
