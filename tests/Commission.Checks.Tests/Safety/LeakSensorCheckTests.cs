using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Safety;

/// <summary>The maker's test of a unit's leak sensor: IEC/UL 60335-2-40, from memory.</summary>
public sealed class LeakSensorCheckTests
{
    private const string Check = "safety.leak-sensor";

    [Theory]
    [InlineData("{fitted: yes, connected: yes, test run: yes, fan on: yes, compressor off: yes, responded in: 12 s}", Verdict.Pass)]
    [InlineData("{fitted: yes, connected: yes, test run: yes, fan on: no, compressor off: yes}", Verdict.Fail)]
    [InlineData("{fitted: yes, connected: no, test run: no}", Verdict.Fail)]
    [InlineData("{fitted: yes, connected: yes, test run: yes, fan on: yes}", Verdict.Conditional)]
    [InlineData("{fitted: yes, connected: yes}", Verdict.NotEvaluated)]
    [InlineData("{fitted: yes, connected: yes, test run: no}", Verdict.NotEvaluated)]
    [InlineData("{fitted: no}", Verdict.Information)]
    public void The_sensor_acts(string sensor, Verdict verdict) => Assert.Equal(verdict, JobLines.Finding(JobLines.Of($"safety: {{leak sensor: {sensor}}}", refrigerant: "R-454B"), Check).Verdict);

    [Fact]
    public void A_room_that_relies_on_it_needs_one()
    {
        Assert.Equal(Verdict.Fail, JobLines.Finding(JobLines.Of("safety: {mitigation: leak sensor with fan, leak sensor: {fitted: no}}", refrigerant: "R-454B"), Check).Verdict);
        Assert.Equal(Verdict.NotEvaluated, JobLines.Finding(JobLines.Of("safety: {mitigation: leak sensor with fan}", refrigerant: "R-454B"), Check).Verdict);
        Assert.Empty(JobLines.Findings(JobLines.Of("safety: {mitigation: continuous fan}", refrigerant: "R-454B"), Check));
        Assert.Contains("12 s", JobLines.Finding(JobLines.Of("safety: {leak sensor: {fitted: yes, connected: yes, test run: yes, fan on: yes, compressor off: yes, responded in: 12 s}}", refrigerant: "R-454B"), Check).Statement, StringComparison.Ordinal);
    }
}
