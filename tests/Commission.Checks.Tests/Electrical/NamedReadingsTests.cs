using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Electrical;

/// <summary>What an electrical finding rests on has its place in it; what it is held against is shown with its step.</summary>
public sealed class NamedReadingsTests
{
    private const string Plate = "{voltage: 208 to 230 V, phases: 3, compressor RLA: 16.7 A, compressor MCC: 24.1 A, MCA: 22.0 A, MOP: 35 A, rated current: 15.5 A, fan FLA: 1.2 A, indoor fan FLA: 4.3 A}";

    [Theory]
    [InlineData("compressor.current", "compressor: 14.9 A", "compressor, compressor MCC, compressor RLA")]
    [InlineData("electrical.fan-current", "outdoor fan: 1.1 A", "outdoor fan, fan FLA")]
    [InlineData("electrical.fan-current", "indoor fan: 4.1 A", "indoor fan, indoor fan FLA")]
    [InlineData("electrical.unit-current", "total: 17.3 A", "total, MCA, rated current")]
    [InlineData("electrical.current-unbalance", "compressor: [14.9 A, 15.2 A, 14.6 A]", "compressor")]
    [InlineData("electrical.overcurrent", "supply: {breaker: 30 A}", "breaker, MOP")]
    [InlineData("electrical.overcurrent", "supply: {fuse: 30 A}", "fuse, MOP")]
    [InlineData("electrical.conductor", "supply: {wire: 10 AWG Cu, ampacity: 30 A}", "wire, ampacity, MCA")]
    [InlineData("electrical.conductor", "supply: {ampacity: 30 A}", "ampacity, MCA")]
    [InlineData("electrical.conductor", "supply: {wire: 10 AWG Cu}", "wire, MCA")]
    [InlineData("electrical.ground", "supply: {equipment ground: continuous}", "equipment ground")]
    [InlineData("electrical.ground", "supply: {protective earth: 0.3 ohm}", "protective earth")]
    [InlineData("electrical.ground", "supply: {disconnect within sight: yes}", "disconnect within sight")]
    [InlineData("electrical.proved-dead", "proved dead: {live-dead-live: yes, locked out: yes}", "live-dead-live, locked out")]
    [InlineData("electrical.terminal-torque", "supply: {terminal torque: 20 lbf·in}", "terminal torque")]
    [InlineData("electrical.insulation", "insulation: {read: 50 Mohm, test voltage: 500 V, leads off: yes, at: \"10:00\"}", "read, test voltage, leads off, at")]
    [InlineData("electrical.supply-voltage", "line to line: [236 V]", "line to line, voltage")]
    [InlineData("electrical.voltage-unbalance", "line to line: [236 V, 238 V, 241 V]", "line to line")]
    [InlineData("electrical.voltage-drop-at-start", "voltage drop at start: {before: 239 V, lowest: 222 V}", "before, lowest")]
    [InlineData("electrical.control-voltage", "control voltage: 26.2 V", "control voltage")]
    [InlineData("electrical.phase-rotation", "phase rotation: correct", "phase rotation, phases")]
    public void What_it_rests_on_is_named(string check, string electrical, string keys)
    {
        var yaml = ElectricalJob.Yaml($"{{{electrical}}}", Plate, "compressor: fixed");
        // The kind of the compressor stands under the key of its current; both have their place.
        Assert.Equal(keys.Split(", ").Order(), JobLines.Keys(yaml, JobLines.Finding(yaml, check)).Order());
    }

    [Fact]
    public void A_test_of_insulation_names_when_the_circuit_was_under_vacuum()
    {
        var yaml = JobLines.Of("evacuation: {started: \"09:25\", events: [{at: \"10:30\", what: end}]}\ncharging: {unit arrived: charged, compressor started: \"11:30\"}\nelectrical: {insulation: {read: 50 Mohm, at: \"12:00\"}}");
        Assert.Equal(["read", "at", "started", "compressor started"], JobLines.Keys(yaml, JobLines.Finding(yaml, "electrical.insulation")));
        Assert.Equal(5, JobLines.Finding(yaml, "electrical.insulation").Readings.Length);
    }

    // NEC article 440 and the plates, from memory: the factor is one.
    [Theory]
    [InlineData("electrical.fan-current", "outdoor fan: 1.1 A", "I_max", null, 1.2)]
    [InlineData("electrical.unit-current", "total: 17.3 A", "I_max", null, 22.0)]
    [InlineData("electrical.overcurrent", "supply: {breaker: 30 A}", "I_max", null, 35.0)]
    [InlineData("electrical.conductor", "supply: {ampacity: 30 A}", "I_min", 22.0, null)]
    [InlineData("electrical.supply-voltage", "line to line: [236 V]", "V", 208 * 0.9, 230 * 1.1)]
    [InlineData("compressor.current", "compressor: 19 A", "I_max", null, 24.1)]
    [InlineData("electrical.voltage-drop-at-start", "voltage drop at start: {before: 239 V, lowest: 222 V}", "d", null, 0.15)]
    [InlineData("electrical.current-unbalance", "compressor: [14.9 A, 15.2 A, 14.6 A]", "u", null, 0.1)]
    public void What_it_is_held_against_is_shown(string check, string electrical, string symbol, double? lower, double? upper)
    {
        var finding = ElectricalJob.One(check, $"{{{electrical}}}", Plate, "compressor: fixed");
        Assert.Equal((lower ?? double.NaN, upper ?? double.NaN), (finding.Limits[0].LowerSi ?? double.NaN, finding.Limits[0].UpperSi ?? double.NaN));
        Assert.Contains(finding.Trace, s => s.Symbol == symbol);
    }

    // Without a maximum continuous current on the plate it is 1.4 times the rated one: 16.7 A · 1.4 = 23.38 A (UL practice, from memory).
    [Fact]
    public void The_maximum_continuous_current_comes_from_the_rated_one()
    {
        var finding = ElectricalJob.One("compressor.current", "{compressor: 19 A}", "{compressor RLA: 16.7 A}", "compressor: fixed");
        Assert.Equal(23.38, finding.Limits[0].UpperSi!.Value, 1e-9);
        Assert.Equal("1.4 × 16.7 A", finding.Trace.Single(s => s.Symbol == "I_max").Substitution);
        Assert.Equal(16.7, ElectricalJob.One("compressor.current", "{compressor: 16.7 A}", "{compressor RLA: 16.7 A}", "compressor: fixed").Limits[0].UpperSi!.Value, 1e-9);
        Assert.Empty(ElectricalJob.One("compressor.current", "{compressor: 16.7 A}", "{compressor RLA: 16.7 A}", "compressor: fixed").Trace);
    }

    // What stands in the limit is what is judged by, and whose it is.
    [Theory]
    [InlineData("compressor.current", "compressor: 14.9 A", "at most 16.7 A")]
    [InlineData("compressor.current", "compressor: 19 A", "at most 24.1 A")]
    [InlineData("electrical.overcurrent", "supply: {breaker: 30 A}", "at most 35")]
    [InlineData("electrical.conductor", "supply: {ampacity: 30 A}", "at least 22.0 A")]
    public void The_limit_says_its_figure(string check, string electrical, string text) =>
        Assert.StartsWith(text, ElectricalJob.One(check, $"{{{electrical}}}", Plate, "compressor: fixed").Limits[0].Text, StringComparison.Ordinal);

    [Fact]
    public void Rated_and_continuous_current_have_each_a_source()
    {
        var rated = ElectricalJob.One("compressor.current", "{compressor: 14.9 A}", Plate, "compressor: fixed");
        var plate = ElectricalJob.One("compressor.current", "{compressor: 19 A}", Plate, "compressor: fixed");
        var factor = ElectricalJob.One("compressor.current", "{compressor: 19 A}", "{compressor RLA: 16.7 A}", "compressor: fixed");
        Assert.NotEqual(rated.Limits[0].Source, factor.Limits[0].Source);
        Assert.Equal(factor.Limits[0].Source, factor.Trace.Single(s => s.Symbol == "I_max").Source);
        Assert.Equal(("nameplate", "24.1 A"), (plate.Trace.Single(s => s.Symbol == "I_max").Formula, plate.Trace.Single(s => s.Symbol == "I_max").Substitution));
        Assert.NotEqual("nameplate", factor.Trace.Single(s => s.Symbol == "I_max").Formula);
    }

    [Theory]
    [InlineData("14.0 A", Verdict.Pass)]
    [InlineData("15.0 A", Verdict.Fail)]
    public void The_makers_current_comes_before_the_plate(string current, Verdict verdict)
    {
        var finding = ElectricalJob.One("compressor.current", $"{{compressor: {current}}}", Plate, "compressor: fixed", "{compressor current: {maximum: 14.5 A, from: manual p. 4}}");
        Assert.Equal((verdict, "maker", verdict == Verdict.Fail), (finding.Verdict, finding.Limits[0].Basis, finding.NextStep is not null));
    }

    [Theory]
    [InlineData("variable speed")]
    [InlineData("digital")]
    public void A_compressor_that_changes_its_speed_is_told_with_its_number(string kind) =>
        Assert.Equal((Verdict.Information, 24.0), (ElectricalJob.One("compressor.current", "{compressor: 24.0 A}", Plate, $"compressor: {kind}").Verdict, ElectricalJob.One("compressor.current", "{compressor: 24.0 A}", Plate, $"compressor: {kind}").Measured!.Value.Si));

    // Each of several currents or voltages is judged and named by itself.
    [Fact]
    public void Several_lines_speak_each_for_itself()
    {
        Assert.Equal(["compressor current 1", "compressor current 2", "compressor current 3"], ElectricalJob.All("compressor.current", "{compressor: [14.9 A, 15.2 A, 14.6 A]}", Plate).Select(f => f.Subject));
        Assert.Equal([Verdict.Pass, Verdict.Fail, Verdict.Pass], ElectricalJob.All("compressor.current", "{compressor: [14.9 A, 25.2 A, 14.6 A]}", Plate).Select(f => f.Verdict));
        Assert.Equal(["line to line 1", "line to line 2", "line to line 3"], ElectricalJob.All("electrical.supply-voltage", "{line to line: [236 V, 238 V, 241 V]}", Plate).Select(f => f.Subject));
        Assert.Null(ElectricalJob.One("electrical.supply-voltage", "{line to line: [236 V]}", Plate).Subject);
        Assert.Empty(ElectricalJob.All("electrical.current-unbalance", "{compressor: 14.9 A}", Plate));
        Assert.Equal([Verdict.NotEvaluated, Verdict.NotEvaluated, Verdict.NotEvaluated], ElectricalJob.All("electrical.supply-voltage", "{line to line: [236 V, 238 V, 241 V]}").Select(f => f.Verdict));
        Assert.All(ElectricalJob.All("electrical.supply-voltage", "{line to line: [236 V, 238 V, 241 V]}", Plate, limits: "{voltage: {minimum: 197 V, maximum: 253 V, from: \"manual p. 3\"}}"), f => Assert.Equal("maker", f.Limits[0].Basis));
        foreach (var (plate, kind, limits) in new[] { ("", "fixed", ""), (Plate, "variable speed", ""), (Plate, "fixed", "{compressor current: {maximum: 14.5 A, from: manual p. 4}}") })
            Assert.Equal(3, ElectricalJob.All("compressor.current", "{compressor: [14.9 A, 15.2 A, 14.6 A]}", plate, $"compressor: {kind}", limits).Count);
    }

    // A job without the part says nothing of it.
    [Theory]
    [InlineData("compressor.current")]
    [InlineData("electrical.fan-current")]
    [InlineData("electrical.unit-current")]
    [InlineData("electrical.overcurrent")]
    [InlineData("electrical.conductor")]
    [InlineData("electrical.ground")]
    [InlineData("electrical.proved-dead")]
    [InlineData("electrical.terminal-torque")]
    [InlineData("electrical.insulation")]
    [InlineData("electrical.supply-voltage")]
    [InlineData("electrical.voltage-unbalance")]
    [InlineData("electrical.voltage-drop-at-start")]
    [InlineData("electrical.control-voltage")]
    [InlineData("electrical.phase-rotation")]
    public void What_is_not_written_is_not_spoken_of(string check)
    {
        Assert.Empty(JobLines.Findings(JobLines.Of(equipment: ", nameplate: {MCA: 22.0 A}"), check));
        Assert.Empty(JobLines.Findings(JobLines.Of("electrical: {run capacitor: {label: 45 uF, read: 44.1 uF}}"), check));
        Assert.Empty(JobLines.Findings(JobLines.Of("electrical: {supply: {RCD: 30 mA}}"), check));
    }

    // A pass needs no next step, a failure has one, whatever is judged.
    [Theory]
    [InlineData("compressor.current", "compressor: 14.9 A", "compressor: 25 A")]
    [InlineData("electrical.fan-current", "indoor fan: 4.1 A", "indoor fan: 4.9 A")]
    [InlineData("electrical.unit-current", "total: 15 A", "total: 23 A")]
    [InlineData("electrical.current-unbalance", "compressor: [14.9 A, 15.2 A, 14.6 A]", "compressor: [12 A, 15 A, 12 A]")]
    [InlineData("electrical.overcurrent", "supply: {breaker: 30 A}", "supply: {breaker: 40 A}")]
    [InlineData("electrical.conductor", "supply: {ampacity: 30 A}", "supply: {ampacity: 20 A}")]
    [InlineData("electrical.ground", "supply: {equipment ground: continuous}", "supply: {equipment ground: not continuous}")]
    [InlineData("electrical.ground", "supply: {protective earth: 0.3 ohm}", "supply: {protective earth: 2.3 ohm}")]
    [InlineData("electrical.ground", "supply: {disconnect within sight: yes}", "supply: {disconnect within sight: no}")]
    [InlineData("electrical.proved-dead", "proved dead: {live-dead-live: yes, locked out: yes}", "proved dead: {live-dead-live: yes, locked out: no}")]
    [InlineData("electrical.insulation", "insulation: {read: 50 Mohm, leads off: yes}", "insulation: {read: 0.5 Mohm, leads off: yes}")]
    [InlineData("electrical.supply-voltage", "line to line: [236 V]", "line to line: [270 V]")]
    [InlineData("electrical.voltage-unbalance", "line to line: [236 V, 238 V, 241 V]", "line to line: [203 V, 210 V, 212 V]")]
    [InlineData("electrical.voltage-drop-at-start", "voltage drop at start: {before: 239 V, lowest: 222 V}", "voltage drop at start: {before: 239 V, lowest: 190 V}")]
    [InlineData("electrical.control-voltage", "control voltage: 26.2 V", "control voltage: 17 V")]
    [InlineData("electrical.phase-rotation", "phase rotation: correct", "phase rotation: reversed")]
    public void A_failure_has_a_next_step(string check, string good, string bad)
    {
        var passed = ElectricalJob.One(check, $"{{{good}}}", Plate, "compressor: fixed");
        var failed = ElectricalJob.One(check, $"{{{bad}}}", Plate, "compressor: fixed");
        Assert.Equal((Verdict.Pass, Verdict.Fail), (passed.Verdict, failed.Verdict));
        Assert.Equal((true, true), (passed.NextStep is null, failed.NextStep is not null));
        Assert.NotEqual(passed.Statement, failed.Statement);
    }
}
