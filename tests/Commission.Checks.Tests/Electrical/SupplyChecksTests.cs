using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Electrical;

/// <summary>Supply: voltage against the plate, breaker against MOP, conductor against MCA, ground, disconnect, proved dead, rotation, control voltage, lugs.</summary>
public sealed class SupplyChecksTests
{
    private const string Plate = "{voltage: 208 to 230 V, MCA: 22.0 A, MOP: 35 A}";

    // 208/230 V equipment runs from 187 to 253 V: 208 less 10 %, 230 plus 10 % (common practice).
    [Theory]
    [InlineData("236 V", Verdict.Pass)]
    [InlineData("188 V", Verdict.PassWithinUncertainty)]
    [InlineData("187 V", Verdict.Fail)]
    [InlineData("253 V", Verdict.PassWithinUncertainty)]
    [InlineData("254 V", Verdict.Fail)]
    public void Voltage_between_187_and_253(string volts, Verdict verdict)
    {
        var f = ElectricalJob.One("electrical.supply-voltage", $"{{line to line: [{volts}]}}", Plate);
        Assert.Equal(verdict, f.Verdict);
        Assert.Equal("187 V to 253 V", f.Limits[0].Text);
    }

    [Fact]
    public void The_makers_range_comes_before_the_plate()
    {
        var f = ElectricalJob.One("electrical.supply-voltage", "{line to line: [236 V]}", Plate, limits: "{voltage: {minimum: 197 V, maximum: 230 V, from: \"manual p. 3\"}}");
        Assert.Equal(Verdict.Fail, f.Verdict);
        Assert.Equal("maker", f.Limits[0].Basis);
    }

    [Fact]
    public void Without_a_plate_the_voltage_is_not_evaluated() =>
        Assert.Equal(Verdict.NotEvaluated, ElectricalJob.One("electrical.supply-voltage", "{line to line: [236 V]}").Verdict);

    [Theory]
    [InlineData("30 A", Verdict.Pass)]
    [InlineData("35 A", Verdict.Pass)]
    [InlineData("40 A", Verdict.Fail)]
    public void A_breaker_up_to_MOP(string breaker, Verdict verdict) =>
        Assert.Equal(verdict, ElectricalJob.One("electrical.overcurrent", $"{{supply: {{breaker: {breaker}}}}}", Plate).Verdict);

    [Fact]
    public void A_fuse_counts_like_a_breaker() =>
        Assert.Contains("fuse", ElectricalJob.One("electrical.overcurrent", "{supply: {fuse: 30 A}}", Plate).Statement, StringComparison.Ordinal);

    [Fact]
    public void Without_MOP_the_breaker_is_not_evaluated() =>
        Assert.Equal(Verdict.NotEvaluated, ElectricalJob.One("electrical.overcurrent", "{supply: {breaker: 30 A}}").Verdict);

    [Theory]
    [InlineData("30 A", Verdict.Pass)]
    [InlineData("22 A", Verdict.Pass)]
    [InlineData("20 A", Verdict.Fail)]
    public void A_conductor_from_MCA_up(string ampacity, Verdict verdict) =>
        Assert.Equal(verdict, ElectricalJob.One("electrical.conductor", $"{{supply: {{wire: 10 AWG Cu, ampacity: {ampacity}}}}}", Plate).Verdict);

    [Theory]
    [InlineData("{supply: {wire: 10 AWG Cu}}", Plate)]
    [InlineData("{supply: {wire: 10 AWG Cu, ampacity: 30 A}}", "{MOP: 35 A}")]
    public void A_conductor_without_ampacity_or_MCA_is_not_evaluated(string electrical, string plate) =>
        Assert.Equal(Verdict.NotEvaluated, ElectricalJob.One("electrical.conductor", electrical, plate).Verdict);

    [Fact]
    public void Ground_earth_and_disconnect_speak_each_for_itself()
    {
        var all = ElectricalJob.All("electrical.ground", "{supply: {equipment ground: continuous, protective earth: 0.3 ohm, disconnect within sight: yes}}");
        Assert.Equal(["equipment ground", "protective earth", "disconnect"], all.Select(f => f.Subject));
        Assert.All(all, f => Assert.Equal(Verdict.Pass, f.Verdict));
        Assert.StartsWith("0.3", all[1].Measured!.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{supply: {equipment ground: not continuous}}")]
    [InlineData("{supply: {protective earth: 2.4 ohm}}")]
    [InlineData("{supply: {disconnect within sight: no}}")]
    public void An_open_ground_a_high_earth_a_far_disconnect_fail(string electrical)
    {
        var f = ElectricalJob.One("electrical.ground", electrical);
        Assert.Equal(Verdict.Fail, f.Verdict);
        Assert.NotNull(f.NextStep);
    }

    [Fact]
    public void A_ground_that_nobody_checked_is_not_evaluated() =>
        Assert.Equal(Verdict.NotEvaluated, ElectricalJob.One("electrical.ground", "{supply: {equipment ground: not checked}}").Verdict);

    [Fact]
    public void Proved_dead_passes_with_both_words()
    {
        var f = ElectricalJob.One("electrical.proved-dead", "{proved dead: {live-dead-live: yes, locked out: yes}}");
        Assert.Equal(Verdict.Pass, f.Verdict);
        Assert.Null(f.NextStep);
    }

    [Theory]
    [InlineData("{live-dead-live: yes}")]
    [InlineData("{locked out: yes}")]
    public void Half_of_it_passes_with_a_reservation(string dead)
    {
        var f = ElectricalJob.One("electrical.proved-dead", $"{{proved dead: {dead}}}");
        Assert.Equal(Verdict.Conditional, f.Verdict);
        Assert.NotNull(f.Reservation);
        Assert.NotNull(f.NextStep);
    }

    [Fact]
    public void Not_proved_dead_fails() =>
        Assert.Equal(Verdict.Fail, ElectricalJob.One("electrical.proved-dead", "{proved dead: {live-dead-live: no, locked out: yes}}").Verdict);

    [Fact]
    public void Proved_dead_without_a_word_is_not_evaluated() =>
        Assert.Equal(Verdict.NotEvaluated, ElectricalJob.One("electrical.proved-dead", "{proved dead: {by: Mira Solend}}").Verdict);

    [Theory]
    [InlineData("phase rotation: correct", Verdict.Pass)]
    [InlineData("phase rotation: reversed", Verdict.Fail)]
    [InlineData("phase rotation: single phase", Verdict.NotEvaluated)]
    [InlineData("control voltage: 24 V", Verdict.NotEvaluated)]
    public void Three_phases_have_a_rotation(string rotation, Verdict verdict) =>
        Assert.Equal(verdict, ElectricalJob.One("electrical.phase-rotation", $"{{{rotation}}}", "{phases: 3}").Verdict);

    [Fact]
    public void One_phase_has_none() => Assert.Empty(ElectricalJob.All("electrical.phase-rotation", "{phase rotation: correct}", "{phases: 1}"));

    // 20 to 28 V for a 24 V circuit (common practice).
    [Theory]
    [InlineData("26.1 V", Verdict.Pass)]
    [InlineData("19.2 V", Verdict.Fail)]
    [InlineData("29.0 V", Verdict.Fail)]
    public void Control_voltage(string volts, Verdict verdict) =>
        Assert.Equal(verdict, ElectricalJob.One("electrical.control-voltage", $"{{control voltage: {volts}}}").Verdict);

    [Theory]
    [InlineData("20 lbf·in", Verdict.Pass)]
    [InlineData("40 lbf·in", Verdict.Fail)]
    public void Lugs_against_the_maker(string torque, Verdict verdict) =>
        Assert.Equal(verdict, ElectricalJob.One("electrical.terminal-torque", $"{{supply: {{terminal torque: {torque}}}}}", limits: "{terminal torque: {target: 22 lbf·in, tolerance: 3 lbf·in, from: label}}").Verdict);

    [Fact]
    public void Lugs_without_a_maker_are_information() =>
        Assert.Equal(Verdict.Information, ElectricalJob.One("electrical.terminal-torque", "{supply: {terminal torque: 20 lbf·in}}").Verdict);
}
