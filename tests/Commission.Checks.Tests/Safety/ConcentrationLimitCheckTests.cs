using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Safety;

/// <summary>ASHRAE 15 and 34, from memory: R-410A 420 g/m³. Above a figure from memory nothing fails: it is a condition that the standard settles.</summary>
public sealed class ConcentrationLimitCheckTests
{
    private const string Check = "safety.concentration-limit";

    [Theory]
    [InlineData("20 kg", "40 m3", Verdict.Conditional, "500 g/m³", "more than")] // 20 kg / 40 m³; 420 g/m³ × 40 m³ would be 16.8 kg
    [InlineData("17 kg", "40 m3", Verdict.Conditional, "425 g/m³", "more than")]
    [InlineData("16.6 kg", "40 m3", Verdict.Pass, "415 g/m³", "less than")]
    [InlineData("16 kg", "40 m3", Verdict.Pass, "400 g/m³", "less than")]
    public void More_than_the_limit_is_a_condition_and_less_passes(string charge, string volume, Verdict verdict, string printed, string compared)
    {
        var finding = JobLines.Finding(Job(charge, $"volume: {volume}"), Check);
        Assert.Equal(verdict, finding.Verdict);
        Assert.Equal(verdict == Verdict.Conditional, finding.NextStep is not null);
        Assert.Contains(printed, finding.Statement, StringComparison.Ordinal);
        Assert.Contains($"{compared} the 420 g/m³", finding.Statement, StringComparison.Ordinal);
        Assert.Contains("from memory", finding.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void People_who_cannot_leave_halve_the_limit() => Assert.Contains("210 g/m³", JobLines.Finding(Job("10 kg", "volume: 40 m3, occupancy: institutional"), Check).Statement, StringComparison.Ordinal);

    [Fact]
    public void Area_and_ceiling_make_a_volume() => Assert.Contains("500 g/m³", JobLines.Finding(Job("12 kg", "ceiling height: 2.4 m", "10 m2"), Check).Statement, StringComparison.Ordinal);

    [Fact]
    public void What_is_missing_is_said_and_flammable_gas_goes_by_its_own_rule()
    {
        Assert.Equal(Verdict.NotEvaluated, JobLines.Finding(Job("10 kg", "mounting: wall"), Check).Verdict);
        Assert.Equal(Verdict.NotEvaluated, JobLines.Finding(JobLines.Of("safety: {room: {area: 10 m2, volume: 30 m3}}", units: "si"), Check).Verdict);
        Assert.Empty(JobLines.Findings(JobLines.Of("safety: {room: {area: 10 m2, volume: 30 m3}}", refrigerant: "R-32", units: "si"), Check));
        Assert.Empty(JobLines.Findings(JobLines.Of(), Check));
    }

    private static string Job(string charge, string room, string area = "20 m2") =>
        JobLines.Of($"charging: {{unit arrived: recovered and evacuated, added: {charge}}}\nsafety: {{room: {{area: {area}, {room}}}}}", units: "si");
}
