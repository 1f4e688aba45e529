using Xunit;

namespace Commission.Checks.Tests.Safety;

/// <summary>The usual cautions of the trade go with the work and the refrigerant.</summary>
public sealed class CautionTests
{
    [Theory]
    [InlineData("R-410A", "", "electricity", "frostbite and eyes", "asphyxiation", "law and license")]
    [InlineData("R-454B", "", "flammable refrigerant", "electricity")]
    [InlineData("R-290", "", "flammable refrigerant")]
    [InlineData("R-717", "", "flammable refrigerant", "toxic refrigerant")]
    [InlineData("R-123", "", "toxic refrigerant")]
    [InlineData("R-744", "", "carbon dioxide")]
    [InlineData("R-457C", "", "unknown refrigerant")]
    [InlineData("R-410A", "pressure test: {gas: dry nitrogen, joints: [{place: coil, kind: brazed, result: none}]}", "pressure", "burns and fire")]
    [InlineData("R-410A", "evacuation: {started: \"09:00\", levels: [{at: \"09:40\", pressure: 400 micron}]}", "vacuum")]
    [InlineData("R-410A", "recovery: {to: 0 psig}", "cylinders")]
    [InlineData("R-410A", "charging: {unit arrived: charged, readings: [{at: \"11:00\", vapor pressure: 120 psig}]}", "hot and moving parts")]
    public void They_are_there(string refrigerant, string lines, params string[] hazards)
    {
        var cautions = JobLines.Record(JobLines.Of(lines, refrigerant: refrigerant)).Cautions;
        Assert.All(hazards, hazard => Assert.Contains(cautions, c => c.Hazard == hazard));
        Assert.All(cautions, c => Assert.EndsWith(".", c.Text, StringComparison.Ordinal));
    }

    [Fact]
    public void What_does_not_belong_is_not_there()
    {
        var hazards = JobLines.Record(JobLines.Of(work: "seasonal check")).Cautions.Select(c => c.Hazard).ToList();
        Assert.Equal(["electricity", "law and license"], hazards);
        Assert.Contains("bond", JobLines.Record(JobLines.Of(refrigerant: "R-290")).Cautions[0].Text, StringComparison.Ordinal);
        Assert.DoesNotContain("bond", JobLines.Record(JobLines.Of(refrigerant: "R-32")).Cautions[0].Text, StringComparison.Ordinal);
    }
}
