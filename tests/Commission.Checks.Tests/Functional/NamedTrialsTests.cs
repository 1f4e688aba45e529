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
}
