using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Functional;

/// <summary>Every trial is named with its place, and each check needs its own. What belongs together: common practice of start-up lists, no source.</summary>
public sealed class NamedTrialsTests
{
    [Theory]
    [InlineData("functional.thermostat-calls", "cooling call: ok, heating call: ok, fan call: ok, thermostat set up: ok", "cooling call, fan call, heating call, system, thermostat set up")]
    [InlineData("functional.fan-rotation", "fan rotation: ok", "fan rotation")]
    [InlineData("functional.reversing-valve", "reversing valve: ok", "reversing valve")]
    [InlineData("functional.auxiliary-heat", "auxiliary heat: ok, auxiliary heat lockout: ok", "auxiliary heat, auxiliary heat lockout")]
    [InlineData("functional.defrost", "defrost starts: ok, defrost ends: ok, defrosts per day: 6, defrost terminates at: 57 F", "defrost ends, defrost starts, defrost terminates at, defrosts per day")]
    [InlineData("functional.fault-codes", "fault codes: {read: yes, codes: [E4, E7], cleared: yes}", "cleared, codes, read")]
    public void What_was_tried_is_named(string check, string tried, string keys)
    {
        var yaml = JobLines.Of($"functional: {{{tried}, witnessed: {{by: P. Okwell}}}}", system: "heat pump");
        var finding = JobLines.Finding(yaml, check);
        Assert.Equal(Verdict.Pass, finding.Verdict);
        Assert.Equal(check == "functional.fault-codes" ? keys.Split(", ") : [.. keys.Split(", ").Append("by").Order()], JobLines.Keys(yaml, finding).Order());
    }

    [Theory]
    [InlineData("economizer: ok", "economizer")]
    [InlineData("damper test: ok", "damper test")]
    [InlineData("economizer: ok, damper test: ok", "damper test, economizer")]
    public void The_damper_is_tried_by_itself_and_by_its_control(string tried, string keys)
    {
        var yaml = JobLines.Of($"air: {{outside air: {{{tried}}}}}");
        var finding = JobLines.Finding(yaml, "functional.economizer");
        Assert.Equal((Verdict.Pass, null), (finding.Verdict, finding.Reservation));
        Assert.Equal(keys.Split(", "), JobLines.Keys(yaml, finding).Order());
        Assert.Equal(Verdict.Fail, JobLines.Finding(yaml.Replace(": ok", ": failed", StringComparison.Ordinal), "functional.economizer").Verdict);
    }

    // A check stands on all its legs: what it needs and nobody wrote is a condition, what it can do without is none.
    [Theory]
    [InlineData("functional.thermostat-calls", "heat pump", "heating call: ok", "cooling call")]
    [InlineData("functional.thermostat-calls", "heat pump", "cooling call: ok", "heating call")]
    [InlineData("functional.thermostat-calls", "heat pump", "cooling call: ok, heating call: ok", null)]
    [InlineData("functional.thermostat-calls", "split", "cooling call: ok", null)]
    [InlineData("functional.thermostat-calls", "split", "heating call: ok", null)]
    [InlineData("functional.auxiliary-heat", "heat pump", "auxiliary heat lockout: ok", "auxiliary heat")]
    [InlineData("functional.auxiliary-heat", "heat pump", "auxiliary heat: ok", null)]
    [InlineData("functional.defrost", "heat pump", "defrost ends: ok", "defrost starts")]
    [InlineData("functional.defrost", "heat pump", "defrost starts: ok", "defrost ends")]
    [InlineData("functional.defrost", "heat pump", "defrost starts: ok, defrost ends: ok", null)]
    public void What_is_needed_and_not_written_is_a_condition(string check, string system, string tried, string? missing)
    {
        var finding = JobLines.Finding(JobLines.Of($"functional: {{{tried}}}", system: system), check);
        Assert.Equal(missing is null ? Verdict.Pass : Verdict.Conditional, finding.Verdict);
        Assert.Equal(missing is not null, finding.NextStep is not null);
        Assert.True(missing is null ? finding.Reservation is null : finding.Reservation!.Contains($"{missing} is", StringComparison.Ordinal), finding.Reservation);
    }

    // A check speaks of what was tried: of a job with another trial, or with none, it says nothing.
    [Theory]
    [InlineData("functional.thermostat-calls")]
    [InlineData("functional.fan-rotation")]
    [InlineData("functional.reversing-valve")]
    [InlineData("functional.auxiliary-heat")]
    [InlineData("functional.defrost")]
    [InlineData("functional.fault-codes")]
    [InlineData("functional.economizer")]
    public void What_was_not_tried_is_not_spoken_of(string check)
    {
        Assert.Empty(JobLines.Findings(JobLines.Of(system: "heat pump"), check));
        Assert.Empty(JobLines.Findings(JobLines.Of("functional: {float switch: ok, defrosts per day: 6}", system: "heat pump"), check));
        Assert.Empty(JobLines.Findings(JobLines.Of("air: {filter: clean}", system: "heat pump"), check));
        Assert.Empty(JobLines.Findings(JobLines.Of("air: {outside air: {airflow: 200 cfm}}", system: "heat pump"), check));
    }

    [Theory]
    [InlineData("{read: yes, codes: [E4, 31]}", Verdict.Fail, true)]
    [InlineData("{read: yes, codes: [E4, 31], cleared: no}", Verdict.Fail, true)]
    [InlineData("{read: yes, codes: [E4, 31], cleared: yes}", Verdict.Pass, false)]
    [InlineData("{read: yes, cleared: yes}", Verdict.Pass, false)]
    [InlineData("{read: no, codes: [E4, 31]}", Verdict.NotEvaluated, true)]
    public void A_code_that_was_not_cleared_stands(string written, Verdict verdict, bool next)
    {
        var finding = JobLines.Finding(JobLines.Of($"functional: {{fault codes: {written}}}"), "functional.fault-codes");
        Assert.Equal((verdict, next), (finding.Verdict, finding.NextStep is not null));
        Assert.Equal(verdict != Verdict.NotEvaluated && written.Contains("E4", StringComparison.Ordinal), finding.Statement.Contains("E4, 31", StringComparison.Ordinal));
        Assert.Equal(written.Contains("E4", StringComparison.Ordinal) && verdict == Verdict.Pass, finding.Statement.Contains("comes back", StringComparison.Ordinal));
    }

    [Fact]
    public void Each_kind_of_result_is_told()
    {
        var finding = JobLines.Finding(JobLines.Of("functional: {cooling call: ok, heating call: not fitted, fan call: not tested, thermostat set up: failed}"), "functional.thermostat-calls");
        Assert.Equal("Failed: thermostat set up. Works: cooling call. Not tested: fan call. Not fitted: heating call.", finding.Statement);
        Assert.Equal(Verdict.Fail, finding.Verdict);
    }

    // What was left out is a condition where something was tried, and nothing is judged where nothing was.
    [Theory]
    [InlineData("fan call: ok, thermostat set up: not tested", Verdict.Conditional)]
    [InlineData("fan call: ok, thermostat set up: not fitted", Verdict.Pass)]
    [InlineData("fan call: not tested, thermostat set up: not fitted", Verdict.NotEvaluated)]
    [InlineData("fan call: not fitted, thermostat set up: not fitted", Verdict.Information)]
    [InlineData("fan call: failed, thermostat set up: not tested", Verdict.Fail)]
    public void What_was_left_out_weighs_by_what_was_tried(string tried, Verdict verdict)
    {
        var finding = JobLines.Finding(JobLines.Of($"functional: {{{tried}}}"), "functional.thermostat-calls");
        Assert.Equal((verdict, verdict == Verdict.Conditional), (finding.Verdict, finding.Reservation is not null));
        Assert.Equal(verdict is Verdict.Conditional or Verdict.NotEvaluated or Verdict.Fail, finding.NextStep is not null);
        Assert.Equal(verdict is Verdict.NotEvaluated or Verdict.Information, finding.Reason is not null);
        Assert.NotEqual("", finding.Statement);
    }

    [Fact]
    public void Each_that_was_left_out_is_reserved_by_its_name()
    {
        var reserved = JobLines.Finding(JobLines.Of("functional: {fan call: ok, thermostat set up: not tested, cooling call: not tested}"), "functional.thermostat-calls").Reservation;
        Assert.Contains("thermostat set up", reserved, StringComparison.Ordinal);
        Assert.Contains("cooling call", reserved, StringComparison.Ordinal);
    }

    // A low-pressure control stops below where it starts, a high-pressure control above, and at most at the design pressure (EN 378-2, from memory).
    [Theory]
    [InlineData("low-pressure control", "cut in: 40 psig, cut out: 40 psig, tested: ok", Verdict.Fail, "wrong way")]
    [InlineData("low-pressure control", "cut in: 40 psig, cut out: 39 psig, tested: ok", Verdict.Pass, "cut-in 40 psig, cut-out 39 psig")]
    [InlineData("high-pressure control", "cut in: 300 psig, cut out: 300 psig, tested: ok", Verdict.Fail, "wrong way")]
    [InlineData("high-pressure control", "cut in: 300 psig, cut out: 301 psig, tested: ok", Verdict.Pass, "cut-in 300 psig, cut-out 301 psig")]
    [InlineData("low-pressure control", "cut out: 900 psig, tested: ok", Verdict.Pass, "cut-out 900 psig")]
    [InlineData("high-pressure control", "cut in: 300 psig, tested: ok", Verdict.Pass, "cut-in 300 psig")]
    [InlineData("high-pressure control", "tested: ok", Verdict.Pass, "works")]
    [InlineData("high-pressure control", "cut in: 300 psig, cut out: 400 psig, tested: not tested", Verdict.NotEvaluated, "")]
    [InlineData("high-pressure control", "cut out: 451 psig", Verdict.Fail, "cut-out 451 psig")]
    [InlineData("high-pressure control", "cut in: 400 psig, cut out: 300 psig, tested: failed", Verdict.Fail, "failed its test")]
    public void A_control_is_set_the_right_way_round(string control, string setting, Verdict verdict, string told)
    {
        var yaml = JobLines.Of($"functional: {{{control}: {{{setting}}}}}", system: "refrigeration", equipment: ", nameplate: {design pressure: {low: 250 psig, high: 450 psig}}");
        var finding = JobLines.Finding(yaml, "functional.pressure-controls");
        Assert.Equal((verdict, control), (finding.Verdict, finding.Subject));
        Assert.Equal(verdict is Verdict.Fail or Verdict.NotEvaluated, finding.NextStep is not null);
        Assert.Contains(told, finding.Statement, StringComparison.Ordinal);
        Assert.Empty(new[] { "cut in", "cut out", "tested" }.Where(k => setting.Contains(k + ":", StringComparison.Ordinal)).Except(JobLines.Keys(yaml, finding)));
        Assert.Equal(control.StartsWith("high", StringComparison.Ordinal) && setting.Contains("cut out", StringComparison.Ordinal) && !told.EndsWith("way", StringComparison.Ordinal) && !told.StartsWith("failed", StringComparison.Ordinal), JobLines.Keys(yaml, finding).Contains("high"));
    }

    [Fact]
    public void Without_a_design_pressure_no_control_stops_too_high()
    {
        var yaml = JobLines.Of("functional: {low-pressure control: {cut in: 40 psig, cut out: 20 psig, tested: ok}, high-pressure control: {cut out: 900 psig, tested: ok}}", system: "refrigeration");
        Assert.Equal([Verdict.Pass, Verdict.Pass], JobLines.Findings(yaml, "functional.pressure-controls").Select(f => f.Verdict));
        Assert.All(JobLines.Findings(yaml, "functional.pressure-controls"), f => Assert.Empty(f.Limits));
        var limited = JobLines.Finding(JobLines.Of("functional: {high-pressure control: {cut out: 400 psig, tested: ok}}", system: "refrigeration", equipment: ", nameplate: {design pressure: {low: 250 psig, high: 450 psig}}"), "functional.pressure-controls");
        // 450 psig · 6894.757 Pa.
        Assert.Equal(450 * 6894.757293168, limited.Limits[0].UpperSi!.Value, 1e-3);
        Assert.Null(limited.Limits[0].LowerSi);
        Assert.Contains("450.0 psig", limited.Limits[0].Text, StringComparison.Ordinal);
    }
}
