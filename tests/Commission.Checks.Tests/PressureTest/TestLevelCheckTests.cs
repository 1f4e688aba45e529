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
    [InlineData("17.90", Verdict.Fail, Verdict.Pass)]
    [InlineData("21.80", Verdict.Pass, Verdict.Pass)]
    [InlineData("22.10", Verdict.Pass, Verdict.Fail)]
    public void The_hold_lies_between_its_share_of_the_design_pressure_and_the_weakest_part(string hold, Verdict minimum, Verdict maximum)
    {
        // 0.95 × 19 = 18.05 bar(g); the weakest part bears 22 bar(g), 1.3 × 19 = 24.7 bar(g) is more.
        var findings = Evaluate(hold, "", "");
        Assert.Equal(minimum, findings["minimum"].Verdict);
        Assert.Equal(maximum, findings["maximum"].Verdict);
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
