using Commission.Measurement.Decisions;
using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.PressureTest;

/// <summary>Test pressure between design pressure and what the weakest part may bear. Factors: EN 378-2 strength 1.1 PS, tightness at most 1.0 PS (from memory); 95 % and the part's rating common practice.</summary>
public sealed class TestLevelCheckTests
{
    private const string Job = """
        commission: 1
        units: si
        job: {id: T, work: new installation, date: 2026-06-10, site: {elevation: 0 m}}
        equipment: {system: refrigeration, refrigerant: R-448A, nameplate: {design pressure: {low: 19 bar(g), high: 28 bar(g)}}}
        instruments: [{id: g, kind: pressure gauge, accuracy: 0.05 bar, reads: [pressure test], checks: {zero: 0.00 bar(g)}}]
        PACKS
        pressure test:
          gas: dry nitrogen
          section: low side
          weakest part: {what: evaporator, rated: 22 bar(g)}
          STRENGTH
          tightness: {from: {at: "10:00", pressure: HOLD bar(g), temperature: 16 °C}, to: {at: "12:00", pressure: HOLD bar(g), temperature: 16 °C}}
        """;

    [Theory]
    [InlineData("18.40", Verdict.Pass, Verdict.Pass)]
    [InlineData("17.90", Verdict.Information, Verdict.Pass)] // below the usual, which no standard asks for
    [InlineData("21.80", Verdict.Pass, Verdict.Pass)]
    [InlineData("22.10", Verdict.Pass, Verdict.Fail)]
    public void The_hold_lies_between_its_share_of_the_design_pressure_and_the_weakest_part(string hold, Verdict minimum, Verdict maximum)
    {
        // 0.95 × 19 = 18.05 bar(g); the weakest part bears 22 bar(g), 1.3 × 19 = 24.7 bar(g) is more.
        var findings = Evaluate(hold, "", "");
        Assert.Equal(minimum, findings["minimum"].Verdict);
        Assert.Equal(maximum, findings["maximum"].Verdict);
    }

    // 0.95 × 19 = 18.05 bar(g) would be usual, and a coil that bears 17 bar(g) must not see it: nobody is told to raise the pressure beyond a part's rating.
    [Fact]
    public void Nobody_is_sent_beyond_what_the_weakest_part_bears()
    {
        var job = Job.Replace("rated: 22 bar(g)", "rated: 17 bar(g)", StringComparison.Ordinal).Replace("PACKS", "", StringComparison.Ordinal).Replace("STRENGTH", "", StringComparison.Ordinal);
        var low = JobText.Evaluate(job.Replace("HOLD", "16.00", StringComparison.Ordinal), "pressure-test.level").Single(f => f.Subject == "minimum");
        Assert.Contains("17.00 bar(g)", low.Statement, StringComparison.Ordinal);
        Assert.Equal(Verdict.Information, low.Verdict);
        Assert.Equal(Verdict.Pass, JobText.Evaluate(job.Replace("HOLD", "17.10", StringComparison.Ordinal), "pressure-test.level").Single(f => f.Subject == "minimum").Verdict);
    }

    // Lines and coil shut off from the unit hold the liquid line, which is the high side's: parts rated for it are tested at its 28 bar(g), the low side alone at its 19.
    [Theory]
    [InlineData("line set and indoor", "33", "27.60", Verdict.Pass)]
    [InlineData("line set and indoor", "33", "28.60", Verdict.Fail)]
    [InlineData("line set and indoor", "25", "27.60", Verdict.Fail)]
    [InlineData("low side", "33", "18.60", Verdict.Pass)]
    [InlineData("low side", "33", "27.60", Verdict.Fail)]
    [InlineData("whole system", "33", "27.60", Verdict.Fail)]
    public void Lines_and_coil_together_bear_what_their_weakest_part_does(string section, string rated, string hold, Verdict maximum)
    {
        var job = Job.Replace("section: low side", $"section: {section}", StringComparison.Ordinal).Replace("rated: 22 bar(g)", $"rated: {rated} bar(g)", StringComparison.Ordinal)
            .Replace("PACKS", "limits: {packs: [en-378]}", StringComparison.Ordinal).Replace("STRENGTH", "", StringComparison.Ordinal).Replace("HOLD", hold, StringComparison.Ordinal);
        Assert.Equal(maximum, JobText.Evaluate(job, "pressure-test.level").Single(f => f.Subject == "maximum").Verdict);
    }

    // A plate of 19 bar(g) for the low side: beyond the closed valves a coil rated 27 bar(g) bears 26, and the record says by what right; with the low side of the unit
    // under the same pressure 1.3 × 19 = 24.7 bar(g) is all that the code allows on it (from memory); where nobody wrote the section, nobody signs it without a word.
    [Theory]
    [InlineData("section: line set and indoor", Verdict.Pass, "at most 27.00 bar(g), the rating of evaporator", "bears 27.00 bar(g) by its own rating. The plate's 19.00 bar(g) for the low side is for the unit")]
    [InlineData("section: whole system", Verdict.Fail, "at most 24.70 bar(g)", "above the 24.70 bar(g) it may bear")]
    [InlineData("section: low side", Verdict.Fail, "at most 24.70 bar(g)", "above the 24.70 bar(g) it may bear")]
    [InlineData("gas: dry nitrogen", Verdict.Conditional, "at most 27.00 bar(g)", "within what the section may bear")]
    public void A_part_that_bears_more_than_the_plate_speaks_for_itself_alone(string section, Verdict verdict, string limit, string said)
    {
        var job = Job.Replace(section.StartsWith("gas", StringComparison.Ordinal) ? "  section: low side\n" : "section: low side", section.StartsWith("gas", StringComparison.Ordinal) ? "" : section, StringComparison.Ordinal)
            .Replace("rated: 22 bar(g)", "rated: 27 bar(g)", StringComparison.Ordinal).Replace("PACKS", "", StringComparison.Ordinal).Replace("STRENGTH", "", StringComparison.Ordinal).Replace("HOLD", "26.00", StringComparison.Ordinal);
        var found = JobText.Evaluate(job, "pressure-test.level").Single(f => f.Subject == "maximum");
        Assert.Equal((verdict, limit), (found.Verdict, found.Limits[0].Text));
        Assert.Contains(said, found.Statement, StringComparison.Ordinal);
        Assert.Equal(verdict == Verdict.Fail, found.IsDanger);
    }

    [Fact]
    public void A_strength_test_that_a_pack_asks_for_is_bounded_by_the_weakest_part_and_not_by_the_design_pressure()
    {
        // EN 378-2 asks for 1.1 × 19 = 20.9 bar(g) first and for at most 19 bar(g) in the hold: both have to be possible in one job.
        var findings = Evaluate("18.40", "strength: {pressure: 21.2 bar(g), held: 30 min, result: none}", "limits: {packs: [en-378]}");
        Assert.Equal(Verdict.Pass, findings["maximum"].Verdict);
        Assert.Equal(Verdict.Pass, findings["strength test, maximum"].Verdict);
        Assert.DoesNotContain("strength", findings["maximum"].Statement, StringComparison.Ordinal);

        var over = Evaluate("18.40", "strength: {pressure: 22.6 bar(g), held: 30 min, result: none}", "limits: {packs: [en-378]}");
        Assert.Equal(Verdict.Fail, over["strength test, maximum"].Verdict);
        Assert.StartsWith("DANGER", over["strength test, maximum"].Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void A_stage_on_the_way_counts_against_the_maximum()
    {
        var findings = Evaluate("18.40", "stages: [{pressure: 3 bar(g)}, {pressure: 25 bar(g)}]", "");
        Assert.Equal(Verdict.Fail, findings["maximum"].Verdict);
        Assert.Equal(Verdict.Pass, findings["minimum"].Verdict);
    }

    [Theory]
    [InlineData("ductless split", Verdict.Pass)]
    [InlineData("heat pump", Verdict.Pass)]
    [InlineData("split", Verdict.Fail)]
    public void Where_a_system_heats_its_line_set_is_high_side(string system, Verdict verdict)
    {
        // 41 bar(g) on a plate of 21/42: below the high side, and nearly twice the low side (generic installation manuals, from memory).
        var findings = JobText.Evaluate(
            $$$"""
            commission: 1
            units: si
            job: {id: T, work: new installation, date: 2026-06-10, site: {elevation: 0 m}}
            equipment: {system: {{{system}}}, refrigerant: R-32, nameplate: {design pressure: {low: 21 bar(g), high: 42 bar(g)} } }
            pressure test:
              gas: dry nitrogen
              section: line set and indoor
              tightness: {from: {at: "10:00", pressure: 41.0 bar(g), temperature: 16 °C}, to: {at: "12:00", pressure: 41.0 bar(g), temperature: 16 °C} }
            """, "pressure-test.level").ToDictionary(f => f.Subject ?? "", StringComparer.Ordinal);
        Assert.Equal(verdict, findings["maximum"].Verdict);
        Assert.Equal(verdict == Verdict.Fail, findings["maximum"].IsDanger);
    }

    [Theory]
    [InlineData("readings: [{at: \"10:00\", pressure: 18.4 bar(g)}, {at: \"11:00\", pressure: 18.5 bar(g)}, {at: \"12:00\", pressure: 18.4 bar(g)}]", "", Verdict.Pass, Verdict.Pass)]
    [InlineData("series: {file: p.csv}", "time (s),pressure (bar(g))\n0,18.4\n1800,18.6\n3600,18.5\n", Verdict.Pass, Verdict.Pass)]
    [InlineData("series: {file: p.csv}", "time (s),pressure (bar(g))\n0,18.4\n1800,22.3\n1860,22.4\n3600,18.5\n", Verdict.Pass, Verdict.Fail)]
    [InlineData("series: {file: p.csv}", "time (s),reading\n0,18.4\n1800,22.3\n3600,18.5\n", Verdict.NotEvaluated, Verdict.NotEvaluated)]
    public void The_pressure_of_a_hold_is_read_from_its_readings_and_from_its_log(string hold, string log, Verdict minimum, Verdict maximum)
    {
        // 19 bar(g) of design pressure and a part rated 22 bar(g), as above; whoever wrote no unit is asked and not called a danger.
        var yaml = Job.Replace("from: {at: \"10:00\", pressure: HOLD bar(g), temperature: 16 °C}, to: {at: \"12:00\", pressure: HOLD bar(g), temperature: 16 °C}", hold, StringComparison.Ordinal)
            .Replace("STRENGTH", "", StringComparison.Ordinal).Replace("PACKS", "", StringComparison.Ordinal);
        var found = JobLines.Record(yaml, log.Length > 0 ? [("p.csv", log)] : []).Findings.Where(f => f.Check == "pressure-test.level").ToList();
        Assert.Equal(minimum, found.First(f => f.Subject is "minimum" or null).Verdict);
        Assert.Equal(maximum, found.First(f => f.Subject is "maximum" or null).Verdict);
        Assert.Equal(maximum == Verdict.Fail, found.Exists(f => f.IsDanger));
    }

    // The maker's own level comes before the share of the design pressure; an absolute one is counted from the atmosphere of the site, 1.01325 bar at sea level.
    [Theory]
    [InlineData("minimum: 18.60 bar(g)", "18.50", Verdict.Fail)]
    [InlineData("minimum: 18.60 bar(g)", "18.70", Verdict.Pass)]
    [InlineData("minimum: 19.61325 bar(a)", "18.50", Verdict.Fail)]
    [InlineData("minimum: 19.61325 bar(a)", "18.70", Verdict.Pass)]
    [InlineData("minimum: 15 bar(g)", "15.10", Verdict.Pass)]
    [InlineData("maximum: 21 bar(g)", "17.90", Verdict.Information)]
    [InlineData("maximum: 21 bar(g)", "18.20", Verdict.Pass)]
    public void The_maker_says_how_much_is_enough(string level, string hold, Verdict verdict)
    {
        var found = Evaluate(hold, "", $"limits: {{test pressure: {{{level}, from: manual p. 7}}}}")["minimum"];
        Assert.Equal(verdict, found.Verdict);
        if (level.StartsWith("minimum: 1", StringComparison.Ordinal) && verdict == Verdict.Fail)
            Assert.Contains("below the 18.60 bar(g) asked", found.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void A_strength_test_alone_is_held_against_both_bounds()
    {
        var yaml = Job.Replace("tightness: {from: {at: \"10:00\", pressure: HOLD bar(g), temperature: 16 °C}, to: {at: \"12:00\", pressure: HOLD bar(g), temperature: 16 °C}}", "", StringComparison.Ordinal).Replace("PACKS", "", StringComparison.Ordinal);
        var good = JobText.Evaluate(yaml.Replace("STRENGTH", "strength: {pressure: 21.2 bar(g)}", StringComparison.Ordinal), "pressure-test.level").ToDictionary(f => f.Subject ?? "", StringComparer.Ordinal);
        Assert.Equal((Verdict.Pass, Verdict.Pass), (good["minimum"].Verdict, good["maximum"].Verdict));
        Assert.Equal(2, good.Count);
        var over = JobText.Evaluate(yaml.Replace("STRENGTH", "strength: {pressure: 22.2 bar(g)}", StringComparison.Ordinal), "pressure-test.level").ToDictionary(f => f.Subject ?? "", StringComparer.Ordinal);
        Assert.Equal((Verdict.Pass, Verdict.Fail), (over["minimum"].Verdict, over["maximum"].Verdict));
    }

    [Fact]
    public void The_lowest_reading_of_the_hold_and_the_highest_of_all_are_judged_and_every_one_is_named()
    {
        var yaml = Job.Replace("from: {at: \"10:00\", pressure: HOLD bar(g), temperature: 16 °C}, to: {at: \"12:00\", pressure: HOLD bar(g), temperature: 16 °C}", "readings: [{at: \"10:00\", pressure: 18.40 bar(g)}, {at: \"11:00\", pressure: 18.20 bar(g)}, {at: \"12:00\", pressure: 18.30 bar(g)}]", StringComparison.Ordinal)
            .Replace("STRENGTH", "stages: [{pressure: 3.00 bar(g)}, {pressure: 20.00 bar(g)}]", StringComparison.Ordinal).Replace("PACKS", "", StringComparison.Ordinal);
        var found = JobText.Evaluate(yaml, "pressure-test.level").ToDictionary(f => f.Subject ?? "", StringComparer.Ordinal);
        Assert.StartsWith("Lowest test pressure 18.20 bar(g), at least 18.05 bar(g) asked.", found["minimum"].Statement, StringComparison.Ordinal);
        Assert.StartsWith("Highest test pressure 20.00 bar(g), within what the section may bear.", found["maximum"].Statement, StringComparison.Ordinal);
        Assert.Equal(
            ["0.00 bar(g)", "18.20 bar(g)", "18.30 bar(g)", "18.40 bar(g)", "20.00 bar(g)", "3.00 bar(g)"], // the first is the zero of the gauge
            found["maximum"].Readings.Select(r => r.Text).Where(t => t.Split(' ')[0].Split('.') is [_, { Length: 2 }]).Distinct().Order(StringComparer.Ordinal));
        Assert.Equal(("0.95 × 19 bar(g)", "18.05 bar(g)"), (found["minimum"].Trace.Single(s => s.Symbol == "p_min").Substitution, found["minimum"].Trace.Single(s => s.Symbol == "p_min").Result));
        Assert.Equal(["22.00 bar(g)", "24.70 bar(g)"], found["maximum"].Trace.Where(s => s.Symbol == "p_max").Select(s => s.Result));
        Assert.Equal(["design pressure, low side", "rating of evaporator"], found["maximum"].Readings.Select(r => r.Name).Where(n => n.StartsWith("design", StringComparison.Ordinal) || n.StartsWith("rating", StringComparison.Ordinal)).Order(StringComparer.Ordinal));
        Assert.Contains(found["minimum"].Readings, r => r.Name == "design pressure, low side");
        Assert.Equal(["1 × 22 bar(g)", "1.3 × 19 bar(g)"], found["maximum"].Trace.Where(s => s.Symbol == "p_max").Select(s => s.Substitution));
        Assert.Equal((LimitKind.AtMost, "at most 22.00 bar(g)"), (found["maximum"].Limits[0].Kind, found["maximum"].Limits[0].Text));
        Assert.Equal((LimitKind.AtLeast, "at least 18.05 bar(g)"), (found["minimum"].Limits[0].Kind, found["minimum"].Limits[0].Text));
    }

    [Fact]
    public void Without_any_pressure_or_design_pressure_nothing_is_judged()
    {
        Assert.Equal(Verdict.NotEvaluated, Evaluate("18.40", "", "", "nameplate: {design pressure: {low: 19 bar(g), high: 28 bar(g)}}", "nameplate: {MOP: 16 A}")["minimum"].Verdict);
        var bare = JobText.Evaluate(
            """
            commission: 1
            units: si
            job: {id: T, work: new installation, date: 2026-06-10, site: {elevation: 0 m}}
            equipment: {system: split, refrigerant: R-32}
            pressure test: {gas: dry nitrogen}
            """, "pressure-test.level");
        Assert.Equal(Verdict.NotEvaluated, Assert.Single(bare).Verdict);
    }

    private static Dictionary<string, Finding> Evaluate(string hold, string strength, string packs, string old = "HOLD", string other = "") => JobText
        .Evaluate(Job.Replace(old, other.Length == 0 ? hold : other, StringComparison.Ordinal).Replace("HOLD", hold, StringComparison.Ordinal).Replace("STRENGTH", strength, StringComparison.Ordinal).Replace("PACKS", packs, StringComparison.Ordinal), "pressure-test.level")
        .ToDictionary(f => f.Subject ?? "", StringComparer.Ordinal);
}
