using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Evidence;

/// <summary>Saturation of R-410A: 118.4 psig about 40 °F, 365 psig about 110 °F (printed pressure-temperature charts, from memory).</summary>
public sealed class PhysicsCheckTests
{
    private const string Check = "evidence.physics";

    [Theory]
    [InlineData("vapor pressure: 118.4 psig +/- 1, vapor line: 50 F +/- 1", Verdict.Pass)]
    [InlineData("vapor pressure: 118.4 psig +/- 1, vapor line: 36 F +/- 1", Verdict.Fail)] // colder than it boils
    [InlineData("vapor pressure: 118.4 psig +/- 1, vapor line: 39 F +/- 2", Verdict.Pass)] // within its U
    [InlineData("liquid pressure: 365 psig +/- 1, liquid line: 100 F +/- 1", Verdict.Pass)]
    [InlineData("liquid pressure: 365 psig +/- 1, liquid line: 115 F +/- 1", Verdict.Fail)] // hotter than it condenses
    [InlineData("liquid pressure: 365 psig +/- 1, discharge line: 150 F +/- 2", Verdict.Pass)]
    [InlineData("liquid pressure: 365 psig +/- 1, discharge line: 100 F +/- 2", Verdict.Fail)]
    [InlineData("liquid pressure: 365 psig +/- 1, outdoor dry bulb: 95 F +/- 1", Verdict.Pass)]
    [InlineData("liquid pressure: 365 psig +/- 1, outdoor dry bulb: 115 F +/- 1", Verdict.Fail)]
    [InlineData("liquid line: 97 F +/- 1, outdoor dry bulb: 95 F +/- 1", Verdict.Pass)]
    [InlineData("liquid line: 94 F +/- 1, outdoor dry bulb: 95 F +/- 1", Verdict.Pass)] // within its U
    [InlineData("liquid line: 86 F +/- 1, outdoor dry bulb: 95 F +/- 1", Verdict.Fail)] // colder than the air that cools it
    [InlineData("vapor pressure: 118.4 psig +/- 1, supply dry bulb: 35 F +/- 1", Verdict.Fail)]
    [InlineData("supply dry bulb: 56 F +/- 1, return dry bulb: 75 F +/- 1", Verdict.Pass)]
    [InlineData("supply dry bulb: 78 F +/- 1, return dry bulb: 75 F +/- 1", Verdict.Fail)]
    public void Heat_does_not_run_uphill(string readings, Verdict verdict)
    {
        var finding = JobLines.Finding(Job($"{{at: \"11:35\", {readings}}}"), Check);
        Assert.Equal(verdict, finding.Verdict);
        if (verdict == Verdict.Fail)
            Assert.StartsWith("These cannot be right together: at 11:35", finding.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void Behind_a_heat_exchanger_the_liquid_of_a_cold_room_may_be_colder_than_the_air() => Assert.Empty(JobLines.Findings(
        JobLines.Of("charging: {unit arrived: charged, compressor started: \"11:00\", running: full, readings: [{at: \"11:35\", liquid line: 60 F, outdoor dry bulb: 95 F}]}", system: "refrigeration", refrigerant: "R-448A"), Check));

    [Fact]
    public void In_heating_the_sides_are_changed_and_nothing_is_compared()
    {
        Assert.Empty(JobLines.Findings(Job("{at: \"11:35\", mode: heating, vapor pressure: 365 psig, vapor line: 160 F, supply dry bulb: 100 F, return dry bulb: 70 F}"), Check));
        Assert.Empty(JobLines.Findings(JobLines.Of(), Check));
    }

    [Theory]
    [InlineData("480", "470", "", Verdict.Pass)] // two per cent
    [InlineData("480", "520", "", Verdict.Pass)]
    [InlineData("480", "400", "", Verdict.Fail)]
    [InlineData("480", "400", ", coldest part: 70 F, coldest part at end: 60 F", Verdict.Pass)]
    [InlineData("480", "400", ", coldest part: 60 F, coldest part at end: 70 F", Verdict.Fail)]
    [InlineData("480", "400", ", events: [{at: \"09:50\", what: heat applied}]", Verdict.Pass)]
    public void A_vacuum_does_not_deepen_by_itself(string first, string last, string more, Verdict verdict)
    {
        var finding = JobLines.Finding(
            JobLines.Of($"instruments: [{{id: v, kind: vacuum gauge, accuracy: 10 % of reading, resolution: 1 micron, reads: [evacuation]}}]\nevacuation: {{started: \"09:25\", gauge: at the system, levels: [{{at: \"10:25\", pressure: {first} micron, isolated: yes}}, {{at: \"10:27\", pressure: {first} micron}}, {{at: \"10:40\", pressure: {last} micron}}]{more}}}"),
            Check,
            "vacuum hold");
        Assert.Equal(verdict, finding.Verdict);
    }

    private static string Job(string row) => JobLines.Of($"charging: {{unit arrived: charged, compressor started: \"11:00\", running: full, readings: [{row}]}}");
}
