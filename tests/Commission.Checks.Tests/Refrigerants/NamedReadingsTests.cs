using Commission.Measurement.Decisions;
using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.Refrigerants;

/// <summary>What a finding of the refrigerant's handling rests on has its place in it; what it is held against is shown.</summary>
public sealed class NamedReadingsTests
{
    private const string Fill = "refrigerant.cylinder-fill";
    private const string Level = "refrigerant.recovery-level";
    private const string Rate = "refrigerant.leak-rate";
    private const string Leaks = "refrigerant.leak-check";

    [Theory]
    [InlineData("tare: 10 lb, before: 12 lb, after: 30 lb, contents: recovered, refrigerant: R-410A, water capacity: 30 lb", "water capacity, tare, contents, refrigerant, after, zone")]
    [InlineData("contents: empty, water capacity: 30 lb", "water capacity, contents, mass, refrigerant, zone")]
    [InlineData("tare: 10 lb, after: 30 lb", "tare")]
    public void The_fill_names_cylinder_and_mass(string cylinder, string keys) => Named(
        JobLines.Of($"cylinders: [{{id: R1, {cylinder}}}]\nrecovery: {{to: 0 psig, mass: 6 lb, cylinder: R1}}", "opened circuit"), Fill, null, keys);

    [Fact]
    public void The_fill_names_what_the_unit_held_before_and_the_rules_that_hold_there()
    {
        Named(
            JobLines.Of("refrigerant change: {from: R-22, to: R-410A}\nas found: {refrigerant: R-22}\nlimits: {packs: [eu-f-gas]}\ncylinders: [{id: R1, tare: 10 lb, before: 30 lb, after: 38 lb, water capacity: 30 lb}]\nrecovery: {to: 0 psig, mass: 8 lb, cylinder: R1}", "refrigerant change"),
            Fill, null, "water capacity, tare, after, refrigerant, from, zone, packs");
        Named(JobLines.Of("recovery: {to: 0 psig, mass: 6 lb, cylinder: R9}", "opened circuit"), Fill, "R9", "cylinder");
    }

    [Fact]
    public void The_fill_shows_its_way()
    {
        // 25 lb in 30 lb of water are 83.3 % of its mass; 80 % of the volume are 84.9 % for R-410A (trade table of the guideline), so 78.5 % by volume.
        var finding = JobLines.Finding(JobLines.Of("cylinders: [{id: R1, tare: 10 lb, before: 12 lb, after: 35 lb, water capacity: 30 lb}]\nrecovery: {to: 0 psig, mass: 6 lb, cylinder: R1}", "opened circuit"), Fill);
        Assert.Equal(0.785, finding.Measured!.Value.Si, 0.001);
        Assert.StartsWith("78.5 ", finding.Trace.Single(s => s.Symbol == "f").Result, StringComparison.Ordinal);
        Assert.DoesNotContain(finding.Trace, s => s.Symbol == "FR");
        Assert.Equal(0.8, finding.Limits[0].UpperSi!.Value, 1e-9);
        // In Europe propane may fill 0.42 to 0.43 of the water's mass (ADR P200, from memory): the mass is judged, not the volume.
        var european = JobLines.Finding(JobLines.Of("limits: {packs: [en-378]}\ncylinders: [{id: R1, refrigerant: R-290, tare: 5 kg, before: 6 kg, after: 9.10 kg, water capacity: 10 L}]\nrecovery: {to: 0 psig, mass: 2 kg, cylinder: R1}", "opened circuit", refrigerant: "R-290"), Fill);
        Assert.Equal(0.41, european.Measured!.Value.Si, 0.002);
        Assert.InRange(european.Limits[0].UpperSi!.Value, 0.42, 0.43);
        Assert.Contains(european.Trace, s => s.Symbol == "FR");
        Assert.Single(european.Limits);
    }

    // A cylinder that something went into is judged, whoever filled it; one that nothing went into is not.
    [Theory]
    [InlineData("before: 12 lb, after: 13 lb", true)]
    [InlineData("before: 13 lb, after: 13 lb", false)]
    [InlineData("before: 13 lb, after: 12 lb", false)]
    [InlineData("contents: recovered, after: 12 lb", true)]
    [InlineData("contents: virgin, after: 12 lb", false)]
    public void A_cylinder_that_was_filled_is_judged(string masses, bool judged)
    {
        var findings = JobLines.Findings(JobLines.Of($"cylinders: [{{id: C1, tare: 10 lb, refrigerant: R-410A, water capacity: 30 lb, {masses}}}]"), Fill);
        Assert.Equal(judged ? [Verdict.Pass] : [], findings.Select(f => f.Verdict));
    }

    [Theory]
    [InlineData("to: 11 inHg vac, held: 10 min, leaking: no, machine made: 1999-01-01", "factory charge", "to, elevation, refrigerant, held, leaking, machine made, factory charge")]
    [InlineData("to: 0 psig, leaking: yes", "factory charge", "to, elevation, refrigerant, leaking")]
    [InlineData("to: 11 inHg vac", "rated current", "to, elevation, refrigerant")]
    public void The_level_names_what_it_is_read_from(string recovery, string plate, string keys) => Named(
        JobLines.Of($"recovery: {{{recovery}}}", "opened circuit", refrigerant: "R-134a", equipment: $", nameplate: {{{plate}: {(plate == "factory charge" ? "10 lb" : "10 A")}}}"), Level, null, keys);

    [Fact]
    public void The_level_names_what_the_unit_held_before_and_a_small_appliance_its_share()
    {
        Named(JobLines.Of("refrigerant change: {from: R-22, to: R-410A}\nrecovery: {to: 2 inHg vac, mass: 8 lb}", "refrigerant change"), Level, null, "to, refrigerant, from, elevation, mass");
        Named(
            JobLines.Of("limits: {packs: [us-epa-608]}\nrecovery: {to: 3 psig, mass: 1.85 lb}", "decommissioning", "packaged", equipment: ", hermetically sealed: yes, nameplate: {factory charge: 2.00 lb}"),
            Level, null, "to, elevation, refrigerant, hermetically sealed, factory charge, mass");
    }

    // 40 CFR 82.156 table 1: 10 inHg vac of the standard atmosphere, 29.921 − 10 inHg at 3386.389 Pa; "0" is the air at the site.
    [Fact]
    public void The_level_shows_its_class_and_its_limit()
    {
        var vacuum = JobLines.Finding(JobLines.Of("recovery: {to: 11 inHg vac}", "opened circuit", refrigerant: "R-134a", equipment: ", nameplate: {factory charge: 10 lb}"), Level);
        Assert.Equal((29.921 - 10) * 3386.389, vacuum.Limits[0].UpperSi!.Value, 5.0);
        Assert.Null(vacuum.Limits[0].LowerSi);
        Assert.Equal(["p_104", "p_req"], vacuum.Trace.Select(s => s.Symbol).Where(s => s is "p_104" or "p_req"));
        Assert.Contains("medium", vacuum.Trace.Single(s => s.Symbol == "p_104").Result, StringComparison.Ordinal);
        var none = JobLines.Finding(JobLines.Of("recovery: {to: 0 psig}", "opened circuit", refrigerant: "R-744", equipment: ", nameplate: {factory charge: 10 lb}"), Level);
        Assert.Equal((0.0, null), (none.Limits[0].UpperSi!.Value, none.Limits[0].LowerSi));
        Assert.Contains("very high", none.Trace.Single(s => s.Symbol == "p_104").Result, StringComparison.Ordinal);
        Assert.EndsWith("not written.", none.Statement, StringComparison.Ordinal);
    }

    // A small appliance holds at most 5 lb, sealed at the factory (40 CFR 82.152, from memory).
    [Theory]
    [InlineData("5.0 lb", "yes", "packs: [us-epa-608]", true)]
    [InlineData("5.1 lb", "yes", "packs: [us-epa-608]", false)]
    [InlineData("5.0 lb", "no", "packs: [us-epa-608]", false)]
    [InlineData("5.0 lb", "yes", "packs: [common-practice]", false)]
    public void What_is_a_small_appliance(string charge, string isSealed, string packs, bool isSmall) => Assert.Equal(
        isSmall,
        JobLines.Finding(JobLines.Of($"limits: {{{packs}}}\nrecovery: {{to: 3 psig, mass: 4.9 lb}}", "decommissioning", "packaged", equipment: $", hermetically sealed: {isSealed}, nameplate: {{factory charge: {charge}}}"), Level).Trace.Any(s => s.Symbol == "r"));

    [Theory]
    [InlineData("limits: {packs: [us-epa-608]}\n", "R-22", "previous addition, date, work, system, refrigerant, factory charge, added")]
    [InlineData("", "R-22", "previous addition, date, work, factory charge, added")]
    public void The_leak_rate_names_charge_and_dates(string packs, string refrigerant, string keys) => Named(
        JobLines.Of($"{packs}charging: {{added: 4.0 lb, previous addition: 2026-01-19, left in hoses: 0 lb}}", "charge adjustment", refrigerant: refrigerant, equipment: ", nameplate: {factory charge: 60 lb}"), Rate, null, keys);

    [Fact]
    public void The_leak_rate_shows_its_sum()
    {
        // 4/60 · 365/150 = 16.2 %; the day after the previous addition 4/60 · 365 = 2433 %.
        static Finding Of(string previous, string added = "4.0 lb", string packs = "limits: {packs: [us-epa-608]}\n") =>
            JobLines.Finding(JobLines.Of($"{packs}charging: {{added: {added}, previous addition: {previous}, left in hoses: 0 lb}}", "charge adjustment", refrigerant: "R-22", equipment: ", nameplate: {factory charge: 60 lb}"), Rate);
        Assert.Equal(4.0 / 60 * 365 / 150, Of("2026-01-19").Measured!.Value.Si, 1e-9);
        Assert.Contains(Of("2026-01-19").Trace, s => s.Symbol == "r");
        Assert.Equal(4.0 / 60 * 365, Of("2026-06-17").Measured!.Value.Si, 1e-9);
        Assert.Equal(4.0 / 60 * 365 / 150, Of("2026-01-19", packs: "").Measured!.Value.Si, 1e-9);
        // 10 % of 60 lb in 150 days of a year are 2.466 lb.
        Assert.Equal([Verdict.Pass, Verdict.Fail], new[] { "2.4 lb", "2.5 lb" }.Select(m => Of("2026-01-19", $"{m} +/- 0.001").Verdict));
        Assert.Equal(Verdict.Information, Of("2026-01-19", "0 lb").Verdict);
    }

    [Theory]
    [InlineData("new installation", false)]
    [InlineData("refrigerant change", false)]
    [InlineData("decommissioning", false)]
    [InlineData("seasonal check", true)]
    [InlineData("leak repair", true)]
    public void A_first_charge_tells_nothing_of_leaks(string work, bool isTold) => Assert.Equal(
        isTold,
        JobLines.Findings(JobLines.Of("limits: {packs: [us-epa-608]}\ncharging: {unit arrived: charged, added: 4.0 lb, previous addition: 2026-01-19}", work, refrigerant: "R-22", equipment: ", nameplate: {factory charge: 60 lb}"), Rate).Length == 1);

    [Fact]
    public void Where_no_rule_asks_and_no_date_is_written_no_rate_is_told()
    {
        Assert.Empty(JobLines.Findings(JobLines.Of("charging: {added: 4.0 lb}", "charge adjustment", refrigerant: "R-22"), Rate));
        Assert.Empty(JobLines.Findings(JobLines.Of("limits: {packs: [us-epa-608]}\ncharging: {method: superheat}", "charge adjustment", refrigerant: "R-22"), Rate));
        Assert.Single(JobLines.Findings(JobLines.Of("charging: {added: 4.0 lb, previous addition: 2026-01-19}", "charge adjustment", refrigerant: "R-22"), Rate));
    }

    [Theory]
    [InlineData("result: none, method: electronic, kind: direct, with: sniffer", "result, method, kind, date, sensitivity")]
    [InlineData("result: none, method: electronic, sensitivity: 3 g/yr", "result, method, date, sensitivity")]
    [InlineData("result: leak, method: bubble solution", "result, method, date")]
    public void The_search_names_how_it_was_made(string check, string keys)
    {
        var yaml = JobLines.Of($"instruments: [{{id: sniffer, kind: leak detector, sensitivity: 5 g/yr, calibrated: 2026-01-10}}]\nleak check: {{date: 2026-06-18, {check}}}");
        Named(yaml, Leaks, null, keys);
        Assert.Equal(check.Contains("sniffer", StringComparison.Ordinal) ? ["sniffer"] : [], JobLines.Finding(yaml, Leaks).Instruments);
    }

    // Regulation (EC) 1516/2007, article 6(2): 5 g a year.
    [Theory]
    [InlineData("method: electronic, sensitivity: 5 g/yr", Verdict.Pass)]
    [InlineData("method: electronic, sensitivity: 5.1 g/yr", Verdict.Fail)]
    [InlineData("method: electronic with tracer, sensitivity: 5.1 g/yr", Verdict.Fail)]
    [InlineData("method: bubble solution, sensitivity: 5.1 g/yr", Verdict.Pass)]
    [InlineData("method: electronic", Verdict.Conditional)]
    [InlineData("method: indirect", Verdict.Conditional)]
    [InlineData("method: bubble solution, kind: indirect", Verdict.Conditional)]
    [InlineData("method: bubble solution, kind: direct", Verdict.Pass)]
    [InlineData("kind: direct", Verdict.Pass)]
    [InlineData("sensitivity: 3 g/yr", Verdict.NotEvaluated)]
    public void A_search_sees_a_small_leak(string how, Verdict verdict)
    {
        var finding = JobLines.Finding(JobLines.Of($"limits: {{packs: [eu-f-gas]}}\nleak check: {{date: 2026-06-18, result: none, {how}}}", "seasonal check"), Leaks);
        Assert.Equal(verdict, finding.Verdict);
        Assert.Equal(verdict == Verdict.Pass, finding.NextStep is null);
    }

    [Fact]
    public void A_leak_that_was_repaired_is_checked_again_whoever_asks()
    {
        var finding = JobLines.Finding(JobLines.Of("leak check: {date: 2026-06-18, result: leak repaired, method: bubble solution}", "seasonal check"), Leaks);
        Assert.Equal((Verdict.Conditional, true, true), (finding.Verdict, finding.Reservation is not null, finding.NextStep is not null));
        var none = JobLines.Finding(JobLines.Of("leak check: {date: 2026-06-18, result: none, method: bubble solution}", "seasonal check"), Leaks);
        Assert.Equal((Verdict.Pass, false, false), (none.Verdict, none.Reservation is not null, none.NextStep is not null));
        Assert.NotEqual(none.Statement, finding.Statement);
    }

    // 28 lb in 30 lb of water are 93 %: R-22 may (95.5 %), R-410A may not (84.9 %, trade tables of the guideline).
    [Theory]
    [InlineData("refrigerant: R-22, ", "", Verdict.Pass, 1)]
    [InlineData("", "", Verdict.Fail, 1)]
    [InlineData("refrigerant: R-22, ", "recovery: {to: 0 psig, mass: 6 lb, cylinder: C1}", Verdict.Fail, 2)]
    [InlineData("refrigerant: R-410A, ", "recovery: {to: 0 psig, mass: 6 lb, cylinder: C1}", Verdict.Fail, 1)]
    [InlineData("refrigerant: R-22, ", "recovery: {to: 0 psig, mass: 6 lb, cylinder: R9}", Verdict.Pass, 1)]
    public void What_a_cylinder_holds_is_its_own_and_what_was_recovered_into_it(string refrigerant, string recovery, Verdict verdict, int gases)
    {
        var yaml = JobLines.Of($"cylinders: [{{id: C1, {refrigerant}tare: 10 lb, before: 30 lb, after: 38 lb, water capacity: 30 lb}}, {{id: R9, before: 12 lb, after: 14 lb}}]\n{recovery}", "opened circuit");
        var finding = JobLines.Finding(yaml, Fill, "C1");
        Assert.Equal(verdict, finding.Verdict);
        Assert.Equal(gases > 1, finding.Messages!.Statement.Any(m => m.Name == "fill-mixed"));
        Assert.Equal(recovery.Contains("C1", StringComparison.Ordinal), finding.Readings.Any(r => r.Text == "R-410A" && r.At.Line == 4));
    }

    [Fact]
    public void A_name_of_the_trade_is_no_second_refrigerant()
    {
        var finding = JobLines.Finding(JobLines.Of("cylinders: [{id: R1, refrigerant: n-propane, tare: 10 lb, before: 12 lb, after: 21 lb, water capacity: 30 lb}]\nrecovery: {to: 0 psig, mass: 6 lb, cylinder: R1}", "opened circuit", refrigerant: "R-290"), Fill);
        Assert.Equal(Verdict.Pass, finding.Verdict);
        Assert.DoesNotContain(finding.Messages!.Statement, m => m.Name == "fill-mixed");
    }

    // One of the two has no density: what the cylinder holds cannot be judged by the other.
    [Fact]
    public void A_refrigerant_without_a_density_leaves_it_open()
    {
        var unknown = Commission.Fluids.RefrigerantCatalogue.All.First(r => !r.IsComputable).Designation;
        foreach (var (inside, unit) in new[] { (unknown, "R-410A"), ("R-410A", unknown) })
        {
            var finding = JobLines.Finding(JobLines.Of($"cylinders: [{{id: R1, refrigerant: {inside}, tare: 10 lb, before: 12 lb, after: 21 lb, water capacity: 30 lb}}]\nrecovery: {{to: 0 psig, mass: 6 lb, cylinder: R1}}", "opened circuit", refrigerant: unit), Fill);
            Assert.Equal((Verdict.NotEvaluated, true), (finding.Verdict, finding.NextStep is not null));
            Assert.Contains(unknown, finding.Reason, StringComparison.Ordinal);
        }
    }

    // Tare 10 lb, gross 20 lb: 10 of 30 lb of water, 31.4 % of the volume (10/30 · 80/84.9). The cylinder's own mass comes before the one of the recovery.
    [Theory]
    [InlineData("tare: 10 lb, ", "scale: {before: 14 lb, after: 20 lb}", 0.314)]
    [InlineData("tare: 10 lb, after: 20 lb, ", "scale: {before: 14 lb, after: 26 lb}", 0.314)]
    [InlineData("contents: empty, ", "scale: {before: 14 lb, after: 20 lb}", 0.188)]
    [InlineData("contents: recovered, ", "scale: {before: 14 lb, after: 20 lb}", null)]
    public void The_gross_mass_may_stand_with_the_recovery(string cylinder, string scale, double? fill)
    {
        var finding = JobLines.Finding(JobLines.Of($"cylinders: [{{id: R1, {cylinder}water capacity: 30 lb}}, {{id: C2, contents: recovered, tare: 10 lb, refrigerant: R-22, water capacity: 30 lb}}]\nrecovery: {{to: 0 psig, {scale}, cylinder: R1}}", "opened circuit"), Fill, "R1");
        Assert.Equal(fill ?? 0, finding.Measured?.Value.Si ?? 0, 0.0015);
        // Another cylinder has no part in it.
        Assert.Equal(Verdict.NotEvaluated, JobLines.Finding(JobLines.Of($"cylinders: [{{id: R1, {cylinder}water capacity: 30 lb}}, {{id: C2, contents: recovered, tare: 10 lb, refrigerant: R-22, water capacity: 30 lb}}]\nrecovery: {{to: 0 psig, {scale}, cylinder: R1}}", "opened circuit"), Fill, "C2").Verdict);
    }

    [Fact]
    public void More_than_fits_is_shown_with_its_limit_and_europe_says_how_much_of_the_volume_it_is()
    {
        var impossible = JobLines.Finding(JobLines.Of("cylinders: [{id: R1, refrigerant: R-290, tare: 10 lb, before: 12 lb, after: 26 lb, water capacity: 30 lb}]", refrigerant: "R-290"), Fill);
        Assert.Single(impossible.Limits);
        Assert.True(impossible.Measured!.Value.Si > 1);
        // 4.10 kg of propane in 10 L: 41.0 % of the water's mass, 83 % of the volume (39.5 % are 80 %).
        static Finding Of(string after) => JobLines.Finding(JobLines.Of($"limits: {{packs: [en-378]}}\ncylinders: [{{id: R1, refrigerant: R-290, tare: 5 kg, before: 6 kg, after: {after}, water capacity: 10 L}}]", refrigerant: "R-290"), Fill);
        Assert.Contains("41.0 %", Of("9.10 kg").Statement, StringComparison.Ordinal);
        Assert.Contains(Of("9.10 kg").Messages!.Statement, m => m.Name == "fill-above-eighty");
        Assert.DoesNotContain(Of("8.80 kg").Messages!.Statement, m => m.Name == "fill-above-eighty");
    }

    [Theory]
    [InlineData("sensitivity: 3 g/yr, ", Verdict.Pass)]
    [InlineData("", Verdict.Fail)]
    public void What_the_search_says_of_its_sensitivity_comes_before_the_detectors_sheet(string written, Verdict verdict)
    {
        var finding = JobLines.Finding(JobLines.Of($"limits: {{packs: [eu-f-gas]}}\ninstruments: [{{id: sniffer, kind: leak detector, sensitivity: 6 g/yr, calibrated: 2026-01-10}}]\nleak check: {{date: 2026-06-18, result: none, method: electronic, {written}with: sniffer}}", "seasonal check"), Leaks);
        Assert.Equal(verdict, finding.Verdict);
        Assert.Equal(verdict == Verdict.Fail, finding.Messages!.Statement.Any(m => m.Name == "leak-check-coarse"));
        // What a detector can show is no measured leak.
        Assert.Null(finding.Measured);
    }

    // 6.26 t: the second look and the hours of operation, each a requirement that is shown (Regulation (EU) 2024/573, articles 4(5) and 5).
    [Fact]
    public void The_second_look_shows_both_its_requirements()
    {
        static string Of(string check) => JobLines.Of($"limits: {{packs: [eu-f-gas]}}\ncharging: {{unit arrived: recovered and evacuated, added: 3 kg, left in hoses: 0 kg}}\n{check}", "leak repair", units: "si");
        Assert.Equal(2, JobLines.Finding(Of("leak check: {date: 2026-06-20, method: bubble solution, result: none, after repair: yes, running for: 30 h}"), Leaks, "after repair").Limits.Length);
        Assert.Equal(2, JobLines.Finding(Of(""), Leaks).Limits.Length);
        var yaml = Of("leak check: {date: 2026-06-20, method: bubble solution, result: none, after repair: yes, running for: 30 h, next due: 2027-06-01}");
        Assert.Subset(JobLines.Keys(yaml, JobLines.Finding(yaml, Leaks, "next check")).ToHashSet(), new HashSet<string> { "date", "next due", "added", "refrigerant" });
        Assert.Contains("+ 12 months", JobLines.Finding(yaml, Leaks, "next check").Trace.Single(s => s.Symbol == "due").Substitution, StringComparison.Ordinal);
    }

    // A span longer than a year counts as one; each way out of the rule has its reason.
    [Fact]
    public void The_sum_and_the_reasons_of_the_leak_rate()
    {
        static Finding Of(string refrigerant = "R-22", string packs = "limits: {packs: [us-epa-608]}\n", string previous = "2020-01-01") =>
            JobLines.Finding(JobLines.Of($"{packs}charging: {{added: 4.0 lb, previous addition: {previous}, left in hoses: 0 lb}}", "charge adjustment", refrigerant: refrigerant, equipment: ", nameplate: {factory charge: 60 lb}"), Rate);
        Assert.Contains("365 / 365", Of().Trace.Single(s => s.Symbol == "r").Substitution, StringComparison.Ordinal);
        Assert.Contains("365 / 150", Of(previous: "2026-01-19").Trace.Single(s => s.Symbol == "r").Substitution, StringComparison.Ordinal);
        Assert.Contains("pack", Of(packs: "").Reason, StringComparison.Ordinal);
        Assert.Contains("rule", Of("R-410A").Reason, StringComparison.Ordinal);
    }

    // 40 CFR 84.106 leaves out the residential and light-commercial subsector of air conditioning (published); goods are no comfort.
    [Theory]
    [InlineData("split", "", true, true)]
    [InlineData("refrigeration", "", false, false)]
    [InlineData("refrigeration", ", application: AC", true, false)]
    [InlineData("refrigeration", ", application: medium temperature", false, false)]
    [InlineData("split", ", application: AC", true, true)]
    [InlineData("split", ", application: medium temperature", false, false)]
    public void Comfort_and_its_subsector(string system, string application, bool isComfort, bool isExempt)
    {
        var rule = JobText.Context(JobLines.Of(system: system, equipment: application)).Get<Checks.Refrigerants.UnitedStatesRule>();
        Assert.Equal((isComfort, isExempt), (rule.IsComfort, rule.IsExemptSubsector));
    }

    [Theory]
    [InlineData("199 lb", "", "below 200 lb")]
    [InlineData("200 lb", "", "at least 200 lb")]
    [InlineData("199 lb", ", machine made: 1990-01-01", "1993")]
    public void The_row_of_the_table_is_told(string charge, string made, string told)
    {
        var step = JobLines.Finding(JobLines.Of($"recovery: {{to: 16 inHg vac{made}}}", "opened circuit", refrigerant: "R-134a", equipment: $", nameplate: {{factory charge: {charge}}}"), Level).Trace.Single(s => s.Symbol == "p_req");
        Assert.Contains(told, step.Substitution, StringComparison.Ordinal);
        Assert.Equal(made.Length > 0, step.Substitution.Contains("1993", StringComparison.Ordinal));
    }

    private static void Named(string yaml, string check, string? subject, string keys) =>
        Assert.Equal(keys.Split(", ").Order(), JobLines.Keys(yaml, JobLines.Finding(yaml, check, subject)).Order());
}
