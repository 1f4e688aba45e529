using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Electrical;

/// <summary>Motors: compressor, unit and fan currents, run capacitor, voltage drop at start, insulation.</summary>
public sealed class MotorChecksTests
{
    private const string Plate = "{compressor RLA: 16.7 A, MCA: 22.0 A, fan FLA: 1.2 A, indoor fan FLA: 4.3 A}";

    // RLA is no running limit: up to 1.4 × RLA (16.7 A · 1.4 = 23.4 A) it passes with a remark, above it fails.
    [Theory]
    [InlineData("14.9 A", Verdict.Pass, false)]
    [InlineData("19.0 A", Verdict.Pass, true)]
    [InlineData("24.0 A", Verdict.Fail, false)]
    public void Compressor_current_between_RLA_and_the_maximum_continuous_current(string amperes, Verdict verdict, bool remark)
    {
        var f = ElectricalJob.One("compressor.current", $"{{compressor: {amperes}}}", Plate, "compressor: fixed");
        Assert.Equal(verdict, f.Verdict);
        Assert.Equal(remark, f.Statement.Contains("hot day", StringComparison.Ordinal));
    }

    [Fact]
    public void The_plates_MCC_comes_before_a_factor()
    {
        var f = ElectricalJob.One("compressor.current", "{compressor: 24.0 A}", "{compressor RLA: 16.7 A, compressor MCC: 26 A}", "compressor: fixed");
        Assert.Equal(Verdict.Pass, f.Verdict);
        Assert.Contains("MCC", f.Limits[0].Text, StringComparison.Ordinal);
    }

    [Fact]
    public void RLA_says_nothing_of_a_variable_speed_compressor()
    {
        var f = ElectricalJob.One("compressor.current", "{compressor: 24.0 A}", Plate, "compressor: variable speed");
        Assert.Equal(Verdict.Information, f.Verdict);
    }

    [Fact]
    public void Without_RLA_the_compressor_is_not_evaluated() =>
        Assert.Equal(Verdict.NotEvaluated, ElectricalJob.One("compressor.current", "{compressor: 14.9 A}", more: "compressor: fixed").Verdict);

    [Theory]
    [InlineData("19.5 A", Verdict.Pass)]
    [InlineData("22.4 A", Verdict.Fail)]
    public void The_unit_draws_at_most_MCA(string amperes, Verdict verdict) =>
        Assert.Equal(verdict, ElectricalJob.One("electrical.unit-current", $"{{total: {amperes}}}", Plate, "compressor: variable speed").Verdict);

    [Fact]
    public void Above_the_rated_current_the_unit_passes_with_a_remark()
    {
        var f = ElectricalJob.One("electrical.unit-current", "{total: 19.5 A}", "{MCA: 22.0 A, rated current: 18.0 A}");
        Assert.Equal(Verdict.Pass, f.Verdict);
        Assert.Contains("rated current", f.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rated_current_alone_is_no_limit() =>
        Assert.Equal(Verdict.Information, ElectricalJob.One("electrical.unit-current", "{total: 19.5 A}", "{rated current: 18.0 A}").Verdict);

    [Fact]
    public void Without_MCA_the_unit_is_not_evaluated() =>
        Assert.Equal(Verdict.NotEvaluated, ElectricalJob.One("electrical.unit-current", "{total: 19.5 A}").Verdict);

    [Fact]
    public void Both_fans_against_their_FLA()
    {
        var all = ElectricalJob.All("electrical.fan-current", "{outdoor fan: 1.1 A, indoor fan: 4.9 A}", Plate);
        Assert.Equal([Verdict.Pass, Verdict.Fail], all.Select(f => f.Verdict));
        Assert.Equal(["outdoor fan", "indoor fan"], all.Select(f => f.Subject));
    }

    [Fact]
    public void A_fan_without_FLA_is_not_evaluated() =>
        Assert.Equal(Verdict.NotEvaluated, ElectricalJob.One("electrical.fan-current", "{outdoor fan: 1.1 A}").Verdict);

    // 45 µF ± 6 % is 42.3 to 47.7 µF (common practice).
    [Theory]
    [InlineData("44.1 uF", Verdict.Pass)]
    [InlineData("42.2 uF", Verdict.Fail)]
    [InlineData("47.8 uF", Verdict.Fail)]
    public void A_run_capacitor_off_the_circuit(string read, Verdict verdict) =>
        Assert.Equal(verdict, ElectricalJob.One("electrical.run-capacitor", $"{{run capacitor: {{label: 45 uF, read: {read}}}}}").Verdict);

    [Fact]
    public void Run_capacitor_of_39_98_microfarad_while_running()
    {
        // 2652.6·I/V at 60 Hz: 2652.6 · 5.2 / 345 = 39.98 µF [computed].
        var f = ElectricalJob.One("electrical.run-capacitor", "{run capacitor: {label: 40 uF, running current: 5.2 A, running voltage: 345 V}}", "{frequency: 60 Hz}");
        Assert.Equal(Verdict.Pass, f.Verdict);
        Assert.Equal(39.98, f.Measured!.Value.Si * 1e6, 0.005);
    }

    [Fact]
    public void The_tolerance_on_the_label_comes_first()
    {
        var f = ElectricalJob.One("electrical.run-capacitor", "{run capacitor: {label: 45 uF, tolerance: 10 %, read: 41.0 uF}}");
        Assert.Equal(Verdict.PassWithinUncertainty, f.Verdict);
        Assert.Equal("maker", f.Limits[0].Basis);
    }

    [Fact]
    public void A_capacitor_without_a_reading_is_not_evaluated() =>
        Assert.Equal(Verdict.NotEvaluated, ElectricalJob.One("electrical.run-capacitor", "{run capacitor: {label: 45 uF}}").Verdict);

    // (240 − 214)/240 = 10.8 %; (240 − 200)/240 = 16.7 %: limit 15 %, a good supply 10 % (common practice).
    [Theory]
    [InlineData("228 V", Verdict.Pass, false)]
    [InlineData("214 V", Verdict.Pass, true)]
    [InlineData("200 V", Verdict.Fail, false)]
    public void Voltage_drop_at_start(string lowest, Verdict verdict, bool remark)
    {
        var f = ElectricalJob.One("electrical.voltage-drop-at-start", $"{{voltage drop at start: {{before: 240 V, lowest: {lowest}}}}}");
        Assert.Equal(verdict, f.Verdict);
        Assert.Equal(remark, f.Statement.Contains("good supply", StringComparison.Ordinal));
    }

    [Fact]
    public void A_dead_supply_has_no_drop() =>
        Assert.Equal(Verdict.NotEvaluated, ElectricalJob.One("electrical.voltage-drop-at-start", "{voltage drop at start: {before: 0 V, lowest: 0 V}}").Verdict);

    [Theory]
    [InlineData("50 Mohm", Verdict.Pass, false)]
    [InlineData("8 Mohm", Verdict.Pass, true)]
    [InlineData("0.6 Mohm", Verdict.Fail, false)]
    public void Insulation(string read, Verdict verdict, bool remark)
    {
        var f = ElectricalJob.One("electrical.insulation", $"{{insulation: {{read: {read}, test voltage: 500 V, leads off: yes}}}}");
        Assert.Equal(verdict, f.Verdict);
        Assert.Equal(remark, f.Statement.Contains("warm the oil", StringComparison.Ordinal));
        Assert.Equal(verdict == Verdict.Fail, f.NextStep is not null);
    }

    [Fact]
    public void Insulation_with_the_boards_leads_on_passes_with_a_reservation() =>
        Assert.Equal(Verdict.Conditional, ElectricalJob.One("electrical.insulation", "{insulation: {read: 50 Mohm, leads off: no}}").Verdict);
}
