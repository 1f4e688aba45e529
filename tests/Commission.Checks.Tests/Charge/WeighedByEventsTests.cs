using Commission.Measurement.Decisions;
using Commission.Measurement.Quantities;
using Xunit;

namespace Commission.Checks.Tests.Charge;

/// <summary>What goes in and comes out between the readings, and lines that are just as long as the factory charge covers. Sums by hand.</summary>
public sealed class WeighedByEventsTests
{
    private static string Job(string charging, string piping = "") => JobLines.Of(
        $"charging: {{as: liquid, unit arrived: charged, {charging}}}",
        equipment: $", nameplate: {{factory charge: 6 lb}}{piping}");

    // 6 lb and what was written: + 10 oz − 4 oz, − 4 oz alone, + 10 oz alone; what is written for the whole job replaces the events.
    [Theory]
    [InlineData("events: [{at: \"10:00\", added: 10 oz}, {at: \"10:20\", removed: 4 oz}]", 102)]
    [InlineData("events: [{at: \"10:00\", removed: 4 oz}]", 92)]
    [InlineData("events: [{at: \"10:00\", added: 10 oz}]", 106)]
    [InlineData("removed: 4 oz", 92)]
    [InlineData("added: 10 oz, removed: 4 oz", 102)]
    [InlineData("removed: 4 oz, events: [{at: \"10:00\", removed: 3 oz}]", 92)]
    public void The_circuit_holds_what_came_with_it_and_what_was_added_less_what_was_taken_out(string charging, double ounces)
    {
        var finding = JobLines.Finding(Job(charging), "charge.total");
        Assert.Equal(ounces, Mass.FromSi(finding.Measured!.Value.Si).Ounces, 1e-6);
    }

    // Without the maker's figure the factory charge is right only where the lines are no longer than it covers.
    [Theory]
    [InlineData("15 ft", true)]
    [InlineData("14.9 ft", true)]
    [InlineData("15.1 ft", false)]
    public void Lines_as_long_as_the_factory_charge_covers_need_no_figure(string length, bool needsNone)
    {
        var finding = JobLines.Finding(
            Job("added: 0 oz", $", piping: {{liquid: {{od: 3/8 in, length: {length}}}, covered by factory charge: 15 ft}}"), "charge.by-weight");
        Assert.Equal(needsNone, finding.Verdict != Verdict.NotEvaluated);
        Assert.Equal(!needsNone, finding.Reason?.Contains("longer than the factory charge covers", StringComparison.Ordinal) == true);
    }
}
