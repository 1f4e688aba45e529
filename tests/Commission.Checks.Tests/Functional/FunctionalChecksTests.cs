using Commission.Checks.Kernel;
using Commission.Checks.Recording;
using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Functional;

/// <summary>What was tried and how it ended. The requirements are common practice of start-up lists, no source.</summary>
public sealed class FunctionalChecksTests
{
    [Theory]
    [InlineData("functional.thermostat-calls", "cooling call")]
    [InlineData("functional.reversing-valve", "reversing valve")]
    [InlineData("functional.fan-rotation", "fan rotation")]
    [InlineData("functional.float-switch", "float switch")]
    [InlineData("functional.condensate", "condensate drains")]
    [InlineData("functional.auxiliary-heat", "auxiliary heat")]
    public void Each_item_passes_fails_is_left_out_or_is_not_there(string check, string item)
    {
        Assert.Equal(Verdict.Pass, Tried(check, item, "ok").Verdict);
        Assert.Equal($"Works: {item}.", Tried(check, item, "ok").Statement);
        var failed = Tried(check, item, "failed");
        Assert.Equal(Verdict.Fail, failed.Verdict);
        Assert.NotNull(failed.NextStep);
        Assert.Equal(Verdict.NotEvaluated, Tried(check, item, "not tested").Verdict);
        Assert.Equal(Verdict.Information, Tried(check, item, "not fitted").Verdict);
        Assert.Empty(JobLines.Findings(JobLines.Of("functional: {oil level: in the glass}"), check));
        Assert.Contains(Tried(check, item, "ok").Readings, r => r.Name == item);
    }

    [Fact]
    public void A_heat_pump_is_called_both_ways()
    {
        var cooling = JobLines.Finding(JobLines.Of("functional: {cooling call: ok}", system: "heat pump"), "functional.thermostat-calls");
        Assert.Equal(Verdict.Conditional, cooling.Verdict);
        Assert.Equal("the result of heating call is not recorded", cooling.Reservation);
        Assert.Equal(Verdict.Pass, JobLines.Finding(JobLines.Of("functional: {cooling call: ok, heating call: ok}", system: "heat pump"), "functional.thermostat-calls").Verdict);
    }

    [Fact]
    public void A_defrost_has_a_beginning_and_an_end()
    {
        Assert.Equal(Verdict.Pass, Defrost("defrost starts: ok, defrost ends: ok").Verdict);
        Assert.Equal("the result of defrost ends is not recorded", Defrost("defrost starts: ok").Reservation);
        Assert.Equal("defrost ends was not tested", Defrost("defrost starts: ok, defrost ends: not tested").Reservation);
        var failed = Defrost("defrost starts: ok, defrost ends: failed, defrosts per day: 6, defrost terminates at: 57 F");
        Assert.Equal(Verdict.Fail, failed.Verdict);
        Assert.Equal("Failed: defrost ends. Works: defrost starts. Defrosts a day: 6. It is set to end at 57 °F.", failed.Statement);
    }

    [Fact]
    public void The_slope_of_a_drain_shows_the_limit_of_the_codes()
    {
        // 1/8 in per foot is 0.125/12 = 1.04 %: model mechanical codes, from memory.
        var finding = JobLines.Finding(JobLines.Of("functional: {condensate drains: ok, drain slope: ok}"), "functional.condensate");
        Assert.Equal(Verdict.Pass, finding.Verdict);
        Assert.Contains("1.04 %", Assert.Single(finding.Limits).Text, StringComparison.Ordinal);
        Assert.Equal("from memory", finding.Limits[0].Mark);
    }

    [Theory]
    [InlineData("no", Verdict.NotEvaluated)]
    [InlineData("yes", Verdict.Pass)]
    [InlineData("{read: yes, codes: [E4, 31]}", Verdict.Fail)]
    [InlineData("{read: yes, codes: [E4], cleared: yes}", Verdict.Pass)]
    public void Fault_codes(string written, Verdict verdict) =>
        Assert.Equal(verdict, JobLines.Finding(JobLines.Of($"functional: {{fault codes: {written}}}"), "functional.fault-codes").Verdict);

    [Theory]
    [InlineData("low-pressure control", "cut in: 40 psig, cut out: 20 psig, tested: ok", Verdict.Pass)]
    [InlineData("low-pressure control", "cut in: 20 psig, cut out: 40 psig, tested: ok", Verdict.Fail)]
    [InlineData("low-pressure control", "cut in: 40 psig, cut out: 20 psig", Verdict.NotEvaluated)]
    [InlineData("low-pressure control", "tested: failed", Verdict.Fail)]
    [InlineData("low-pressure control", "tested: not fitted", Verdict.Information)]
    [InlineData("high-pressure control", "cut in: 300 psig, cut out: 400 psig, tested: ok", Verdict.Pass)]
    [InlineData("high-pressure control", "cut in: 400 psig, cut out: 300 psig, tested: ok", Verdict.Fail)]
    [InlineData("high-pressure control", "cut out: 451 psig, tested: ok", Verdict.Fail)]
    [InlineData("high-pressure control", "cut out: 450 psig, tested: ok", Verdict.Pass)]
    public void Pressure_controls(string control, string setting, Verdict verdict)
    {
        var yaml = JobLines.Of($"functional: {{{control}: {{{setting}}}}}", system: "refrigeration", equipment: ", nameplate: {design pressure: {low: 250 psig, high: 450 psig}}");
        Assert.Equal(verdict, JobLines.Finding(yaml, "functional.pressure-controls").Verdict);
    }

    [Theory]
    [InlineData("oil level: in the glass", Verdict.Pass)]
    [InlineData("oil level: low", Verdict.Fail)]
    [InlineData("oil level: no glass", Verdict.Information)]
    [InlineData("oil pressure difference: 30 psi", Verdict.Information)]
    public void Oil(string written, Verdict verdict) =>
        Assert.Equal(verdict, JobLines.Finding(JobLines.Of($"functional: {{{written}}}", system: "refrigeration"), "functional.oil").Verdict);

    [Fact]
    public void A_box_is_pulled_down_at_a_rate()
    {
        // 75 − 35 = 40 °F in 2.5 h: 16 °F an hour.
        var finding = JobLines.Finding(JobLines.Of("functional: {box pull-down: {from: 75 F, to: 35 F, in: 2 h 30 min}, EPR setting: 30 psig}", system: "refrigeration"), "functional.box-pull-down");
        Assert.Equal("The box went from 75 °F to 35 °F in 2 h 30 min, 16.0 °F per hour. The evaporator pressure regulator is set to 30 psig.", finding.Statement);
        Assert.Equal(Verdict.Information, finding.Verdict);
    }

    [Fact]
    public void The_table_lists_each_item()
    {
        var record = JobLines.Record(JobLines.Of("functional: {cooling call: ok, fan call: ok, float switch: not tested, witnessed: {by: P. Okwell, role: owner}}"));
        var table = Assert.Single(record.Tables, t => t.Id == "functional");
        Assert.Equal("Witnessed by P. Okwell, owner.", table.Note);
        Assert.Equal(["ok|cooling call, fan call", "not tested|float switch"], table.Rows.Select(r => string.Join('|', r)));
    }

    private static Records.Findings.Finding Tried(string check, string item, string result) => JobLines.Finding(JobLines.Of($"functional: {{{item}: {result}}}"), check);

    private static Records.Findings.Finding Defrost(string written) => JobLines.Finding(JobLines.Of($"functional: {{{written}}}", system: "heat pump"), "functional.defrost");
}
