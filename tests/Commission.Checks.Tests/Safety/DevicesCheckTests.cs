using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Safety;

/// <summary>
/// EN 378-2: a high-pressure switch acts at or below the allowable pressure (from memory). R-410A 610 to 650 psig: generic installation
/// manuals. 5 % about the setting: common practice, no source.
/// </summary>
public sealed class DevicesCheckTests
{
    private const string Check = "safety.devices";
    private const string Plate = ", nameplate: {design pressure: {low: 450 psig, high: 650 psig}}";

    [Theory]
    [InlineData("set: 640 psig, tripped at: 632 psig +/- 2", Verdict.Pass)]
    [InlineData("set: 640 psig, tripped at: 649 psig +/- 2", Verdict.Conditional)] // 1 psi of room, U 2 psi
    [InlineData("set: 640 psig, tripped at: 660 psig +/- 2", Verdict.Fail)]
    [InlineData("set: 640 psig", Verdict.NotEvaluated)]
    [InlineData("set: 640 psig, tested: not tested", Verdict.NotEvaluated)]
    [InlineData("set: 640 psig, tested: ok", Verdict.Pass)]
    [InlineData("set: 640 psig, tripped at: 632 psig, tested: failed", Verdict.Fail)]
    [InlineData("tested: not fitted", Verdict.Information)]
    public void A_high_pressure_switch(string device, Verdict verdict)
    {
        var finding = JobLines.Finding(Job($"kind: high-pressure switch, {device}"), Check, "high-pressure switch");
        Assert.Equal(verdict, finding.Verdict);
        if (verdict == Verdict.NotEvaluated)
            Assert.Equal("the device was not tried", finding.Reason);
    }

    [Fact]
    public void Its_gauge_counts()
    {
        // The gauge reads 5 psi high with its hose open: 652 shown is 647 psig, below the design pressure of 650 psig.
        var gauge = "instruments: [{id: high, kind: pressure gauge, accuracy: 0.1 psi, resolution: 1 psi, reads: [liquid pressure], checks: {zero: 5 psig}}]\n";
        var finding = JobLines.Finding(gauge + Job("kind: high-pressure switch, tripped at: 652 psig"), Check, "high-pressure switch");
        Assert.Equal(Verdict.Pass, finding.Verdict);
        Assert.Contains("high", finding.Instruments);
        Assert.Equal("647.00 psig", finding.Measured!.Value.Text);
    }

    [Theory]
    [InlineData("set: 640 psig, tripped at: 632 psig", Verdict.Pass)] // within 640 ± 32
    [InlineData("set: 600 psig, tripped at: 632 psig", Verdict.Fail)] // 600 ± 30
    public void It_trips_near_its_setting(string device, Verdict verdict) =>
        Assert.Equal(verdict, JobLines.Finding(Job($"kind: high-pressure switch, {device}"), Check, "high-pressure switch, against its setting").Verdict);

    [Theory]
    [InlineData("set: 610 psig, tested: ok", Verdict.Pass)]
    [InlineData("set: 600 psig, tested: ok", Verdict.Fail)]
    public void Its_setting_belongs_to_the_refrigerant(string device, Verdict verdict) =>
        Assert.Equal(verdict, JobLines.Finding(Job($"kind: high-pressure switch, {device}"), Check, "high-pressure switch, setting").Verdict);

    [Theory]
    [InlineData("set: 450 psig, date: 2024-05-01", Verdict.Pass)]
    [InlineData("set: 650 psig", Verdict.Pass)]
    [InlineData("set: 651 psig", Verdict.Fail)]
    [InlineData("date: 2024-05-01", Verdict.NotEvaluated)]
    public void A_relief_valve_is_set_at_most_at_the_design_pressure(string device, Verdict verdict)
    {
        // ASHRAE 15 section 9, from memory.
        var finding = JobLines.Finding(Job($"kind: relief valve, {device}"), Check, "relief valve");
        Assert.Equal(verdict, finding.Verdict);
        if (device.Contains("date", StringComparison.Ordinal) && verdict == Verdict.Pass)
            Assert.EndsWith("It is dated 2024-05-01.", finding.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void Other_devices_are_tried()
    {
        Assert.Equal(Verdict.Pass, JobLines.Finding(Job("kind: freeze protection, set: 28 F, tripped at: 27 F"), Check).Verdict);
        Assert.Equal(Verdict.Pass, JobLines.Finding(Job("kind: discharge thermostat, tested: ok"), Check).Verdict);
        Assert.Equal(Verdict.NotEvaluated, JobLines.Finding(Job("kind: low-pressure switch, set: 50 psig"), Check).Verdict);
        Assert.Equal(Verdict.Fail, JobLines.Finding(Job("kind: low-pressure switch, set: 50 psig, tripped at: 40 psig"), Check, "low-pressure switch, against its setting").Verdict);
    }

    [Fact]
    public void Two_of_a_kind_have_two_names()
    {
        var subjects = JobLines.Findings(JobLines.Of("safety: {devices: [{kind: relief valve, set: 450 psig}, {kind: relief valve, set: 450 psig}, {kind: relief valve, id: R-7, set: 450 psig}]}", equipment: Plate), Check).Select(f => f.Subject);
        Assert.Equal(["relief valve", "relief valve (2)", "relief valve R-7"], subjects);
        Assert.Empty(JobLines.Findings(JobLines.Of("safety: {mitigation: none}"), Check));
    }

    private static string Job(string device) => JobLines.Of($"safety: {{devices: [{{{device}}}]}}", equipment: Plate);
}
