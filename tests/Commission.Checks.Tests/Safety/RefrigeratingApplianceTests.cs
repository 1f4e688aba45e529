using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Safety;

/// <summary>
/// IEC 60335-2-89:2019, from memory: A3 at most 13 m³ · LFL, A2 and A2L at most 1.2 kg, 150 g anywhere, above it M / (0.25 · LFL · 2.2 m) of
/// floor. LFL of R-290 0.038, R-32 0.307 kg/m³. Worked by hand.
/// </summary>
public sealed class RefrigeratingApplianceTests
{
    private const string Check = "safety.flammable-charge";

    [Theory]
    [InlineData("550 g", Verdict.Fail, "0.494 kg")] // more than 13 · 0.038 = 0.494 kg, whatever the room
    [InlineData("490 g", Verdict.Pass, "23.4 m²")] // 0.490 / (0.25 · 0.038 · 2.2) = 23.4 m²
    [InlineData("150 g", Verdict.Pass, "no room")]
    public void What_an_appliance_of_propane_may_hold_in_30_m2(string charge, Verdict verdict, string said)
    {
        var finding = JobLines.Finding(Job(charge, $"added: {charge}", "safety: {room: {area: 30 m2}}"), Check);
        Assert.Equal(verdict, finding.Verdict);
        Assert.Equal(verdict == Verdict.Fail, finding.IsDanger);
        Assert.Contains(said, finding.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void The_marked_charge_counts_where_the_scale_cannot_tell_the_difference()
    {
        Assert.Equal(Verdict.Pass, JobLines.Finding(Job("150 g", "added: 150.8 g +/- 1"), Check).Verdict);
        // 200 g on a plate of 150 g: the scale shows more, and no room is written for it.
        var over = JobLines.Finding(Job("150 g", "added: 200 g +/- 1"), Check);
        Assert.Equal(Verdict.Information, over.Verdict);
        Assert.Contains("9.6 m²", over.Statement, StringComparison.Ordinal); // 0.2 / 0.0209
    }

    [Fact]
    public void How_high_it_stands_is_not_asked_for() =>
        Assert.Equal(Verdict.Pass, JobLines.Finding(Job("300 g", "added: 300 g +/- 0.1", "safety: {room: {area: 15 m2}}"), Check).Verdict); // 14.35 m²

    [Theory]
    [InlineData("new installation", Verdict.NotEvaluated)]
    [InlineData("leak repair", Verdict.Information)]
    public void A_repair_did_not_choose_the_room(string work, Verdict verdict) =>
        Assert.Equal(verdict, JobLines.Finding(Job("300 g", "added: 300 g +/- 0.1", "", work), Check).Verdict);

    [Theory]
    [InlineData("1.19 kg", Verdict.Pass)]
    [InlineData("1.21 kg", Verdict.Fail)]
    public void An_appliance_of_a_slowly_burning_gas_holds_1_2_kg(string charge, Verdict verdict) =>
        Assert.Equal(verdict, JobLines.Finding(Job(charge, $"added: {charge} +/- 0.0001", "safety: {room: {area: 30 m2}}", refrigerant: "R-32"), Check).Verdict);

    [Theory]
    [InlineData("hermetically sealed: yes", true)]
    [InlineData("metering: capillary", true)]
    [InlineData("metering: TXV", false)] // nothing says that it came whole
    [InlineData("metering: capillary, hermetically sealed: no", false)]
    [InlineData("metering: capillary, piping: {liquid: {od: 6 mm, length: 4 m}}", false)]
    public void A_capillary_circuit_without_piping_comes_whole(string equipment, bool isAppliance)
    {
        var yaml = JobLines.Of("charging: {unit arrived: recovered and evacuated, added: 300 g +/- 0.1, left in hoses: 0 g}\nsafety: {room: {area: 15 m2}}", "leak repair", "refrigeration", "R-290", $", {equipment}", units: "si");
        Assert.Equal(isAppliance ? Verdict.Pass : Verdict.NotEvaluated, JobLines.Finding(yaml, Check).Verdict); // 60335-2-40 asks how high it is mounted
    }

    private static string Job(string plate, string put, string safety = "", string work = "leak repair", string refrigerant = "R-290") =>
        JobLines.Of($"charging: {{unit arrived: recovered and evacuated, {put}, left in hoses: 0 g +/- 0.01}}\n{safety}", work, "refrigeration", refrigerant, $", hermetically sealed: yes, metering: capillary, nameplate: {{factory charge: {plate}}}", units: "si");
}
