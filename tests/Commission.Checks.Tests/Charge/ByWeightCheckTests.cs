using Commission.Measurement.Decisions;
using Commission.Measurement.Quantities;
using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.Charge;

/// <summary>
/// Charge by weight. Worked numbers of generic installation manuals and a public web page (published): 75 ft of 1/2 in at 1.2 oz/ft with 15 ft of
/// 3/8 in in the factory charge, 90 − 9 = +81 oz; 25 ft of 1/4 in at 0.27 oz/ft with an allowance of 13.5 oz, −6.75 oz; 45 ft of 5/16 in at
/// 0.40 oz/ft, 18 − 13.5 = +4.5 oz (the manual's formula line prints 9 oz: a slip); 5 lb with 15 ft covered, 35 ft of 3/8 in at 0.58 oz/ft, 5 lb 11.6 oz.
/// </summary>
public sealed class ByWeightCheckTests
{
    private const string Scale = "  - {id: scale, kind: scale, accuracy: 0.5 oz, resolution: 0.1 oz, reads: [charge]}\n";

    private static Finding Judge(string yaml) => Assert.Single(JobText.Evaluate(yaml, "charge.by-weight"));

    private static string Job(string charging, string piping = "", string work = "new installation", string system = "split", string factory = "nameplate: {factory charge: 5 lb}") => $$"""
        commission: 1
        units: us
        job: {id: W-1, work: {{work}}, date: 2026-05-04, site: {name: "Quarry Cottage", elevation: 300 ft} }
        equipment:
          system: {{system}}
          refrigerant: R-410A
          {{factory}}
          {{piping}}
        instruments:
        {{Scale}}
        charging: { as: liquid, {{charging}} }
        """;

    private static double Asked(Finding finding) => Mass.FromSi(finding.Limits[0].TargetSi!.Value).Ounces;

    [Fact]
    public void Weigh_in_75_ft_of_half_inch_is_81_ounces()
    {
        var finding = Judge(Job("unit arrived: charged, added: 5 lb 1 oz, line adjustment: {figure: 1.2 oz/ft, length: 75 ft, from: manual}, extra: [{what: lines in the factory charge, mass: -9 oz}]"));
        Assert.Equal(81, Asked(finding), 1e-6);
        Assert.Equal(Verdict.Pass, finding.Verdict);
    }

    [Fact]
    public void Weigh_in_25_ft_of_quarter_inch_is_6_75_ounces_to_recover()
    {
        var job = "unit arrived: charged, line adjustment: {figure: 0.27 oz/ft, length: 25 ft, from: manual}, extra: [{what: factory line-set allowance, mass: -13.5 oz}]";
        var recovered = Judge(Job(job + ", removed: 6.8 oz"));
        Assert.Equal(-6.75, Asked(recovered), 1e-6);
        Assert.Equal(Verdict.Pass, recovered.Verdict);
        Assert.StartsWith("6.80 oz", recovered.Statement, StringComparison.Ordinal);
        Assert.Contains("was recovered; these lines need 6.8 oz less than the factory charge.", recovered.Statement, StringComparison.Ordinal);

        var untouched = Judge(Job(job));
        Assert.Equal(Verdict.NotEvaluated, untouched.Verdict);
        Assert.Contains("has to be recovered", untouched.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Weigh_in_45_ft_of_five_sixteenths_is_4_5_ounces_not_9()
    {
        var finding = Judge(Job("unit arrived: charged, added: 4.5 oz, line adjustment: {figure: 0.40 oz/ft, length: 45 ft, from: manual}, extra: [{what: factory line-set allowance, mass: -13.5 oz}]"));
        Assert.Equal(4.5, Asked(finding), 1e-6);
        Assert.Equal(Verdict.Pass, finding.Verdict);
        Assert.Equal(Verdict.Fail, Judge(Job("unit arrived: charged, added: 9 oz, line adjustment: {figure: 0.40 oz/ft, length: 45 ft, from: manual}, extra: [{what: factory line-set allowance, mass: -13.5 oz}]")).Verdict);
    }

    [Fact]
    public void Weigh_in_of_an_evacuated_unit_is_5_lb_11_6_oz()
    {
        const string Piping = "piping: {liquid: {od: 3/8 in, length: 35 ft}, covered by factory charge: 15 ft}";
        var finding = Judge(Job("unit arrived: recovered and evacuated, scale: {before: 20.0 lb, after: 14.28 lb}, line adjustment: {figure: 0.58 oz/ft, from: plate}", Piping));
        Assert.Equal((5 * 16) + 11.6, Asked(finding), 1e-6);
        Assert.Equal(Verdict.Pass, finding.Verdict);
    }

    [Fact]
    public void A_field_drier_is_an_extra()
    {
        // +6 oz for a field drier (generic installation manual, published).
        var finding = Judge(Job("unit arrived: charged, added: 18 oz, line adjustment: {figure: 0.60 oz/ft, length: 20 ft, from: manual}, extra: [{what: field drier, mass: 6 oz}]"));
        Assert.Equal(18, Asked(finding), 1e-6);
    }

    [Fact]
    public void A_charged_unit_filled_as_if_it_were_empty_fails()
    {
        // 7.51 lb out of the cylinder into a unit that came with its charge: the old error of comparing the scale with the whole charge.
        // 120.16 − 16.2 = 103.96 oz too much.
        var finding = Judge(ChargeJobs.TarnLane.With("after: 23.84 lb", "after: 17.35 lb"));
        Assert.Equal(Verdict.Fail, finding.Verdict);
        Assert.StartsWith("Recover 6 lb 8.0 oz", finding.NextStep, StringComparison.Ordinal);
    }

    [Fact]
    public void The_tolerance_is_two_percent_of_the_whole_charge()
    {
        // 6 lb 8 oz + 16.2 oz = 120.2 oz; 2 % = 2.404 oz.
        var limit = Judge(ChargeJobs.TarnLane).Limits[0];
        Assert.Equal(2.404, Mass.FromSi(limit.UpperSi!.Value - limit.TargetSi!.Value).Ounces, 1e-3);
    }

    [Fact]
    public void And_never_less_than_an_ounce()
    {
        var limit = Judge(Job("unit arrived: charged, added: 6 oz, line adjustment: {figure: 0.60 oz/ft, length: 10 ft, from: manual}", factory: "nameplate: {factory charge: 1 lb}")).Limits[0];
        Assert.Equal(1, Mass.FromSi(limit.UpperSi!.Value - limit.TargetSi!.Value).Ounces, 1e-6);
    }

    [Fact]
    public void What_stays_in_the_hoses_is_written_with_its_own_doubt()
    {
        // The last digit of 1 oz: ± 0.5 oz, rectangular; ± 0.5 oz for the scale once for the difference; two readings of 0.1 oz.
        var finding = Judge(ChargeJobs.TarnLane.With("method: subcooling", "left in hoses: 1 oz\n  method: subcooling"));
        Assert.Equal(15.32, Mass.FromSi(finding.Measured!.Value.Si).Ounces, 0.06);
        Assert.Equal(0.5 / Math.Sqrt(3), Mass.FromSi(Math.Abs(finding.Budget.Single(b => b.Cause == "left in hoses: last digit").ContributionSi)).Ounces, 1e-3);
        Assert.Equal(0.5 / Math.Sqrt(3), Mass.FromSi(finding.Budget.Single(b => b.Cause == "scale: slope and linearity").ContributionSi).Ounces, 1e-3);
        Assert.DoesNotContain(finding.Budget, b => b.Cause == "scale: accuracy");
    }

    [Fact]
    public void A_hose_of_which_nothing_is_written_is_allowed_an_ounce()
    {
        // ± 1 oz for each hose, rectangular: 1/√3 oz (common practice).
        var one = Judge(ChargeJobs.TarnLane);
        Assert.Equal(1 / Math.Sqrt(3), Mass.FromSi(Math.Abs(one.Budget.Single(b => b.Cause == "left in the hose").ContributionSi)).Ounces, 1e-3);
        var two = Judge(ChargeJobs.TarnLane.With("method: subcooling", "hoses: 2\n  method: subcooling"));
        Assert.Equal(2, two.Budget.Count(b => b.Cause.StartsWith("left in hose ", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("4 oz", 0.4)] // a tenth of 4 oz
    [InlineData("10 oz", 1.0)]
    [InlineData("30 oz", 1.0)]
    public void A_hose_holds_no_more_than_a_tenth_of_what_went_through_it(string added, double ounces)
    {
        // Common practice, no source: a small charge is drawn in to the last.
        var finding = Judge(Job($"added: {added}", work: "charge adjustment"));
        Assert.Equal(ounces / Math.Sqrt(3), Mass.FromSi(Math.Abs(finding.Budget.Single(b => b.Cause == "left in the hose").ContributionSi)).Ounces, 1e-3);
    }

    [Fact]
    public void Where_the_hose_is_the_doubt_the_advice_says_hose()
    {
        // A scale of half an ounce would tell; a tenth of 6 oz in each of two hoses makes U more than the tolerance of an ounce.
        const string Small = "unit arrived: charged, added: 6 oz, hoses: 2, line adjustment: {figure: 0.60 oz/ft, length: 10 ft, from: manual}";
        var hose = Judge(Job(Small, factory: "nameplate: {factory charge: 1 lb}"));
        Assert.Equal(Verdict.CannotDecide, hose.Verdict);
        Assert.StartsWith("Weigh with a hose that is emptied into the circuit", hose.NextStep, StringComparison.Ordinal);
        var scale = Judge(Job($"{Small}, left in hoses: 0.0 oz", factory: "nameplate: {factory charge: 1 lb}").Replace("accuracy: 0.5 oz", "accuracy: 5 oz", StringComparison.Ordinal));
        Assert.Equal(Verdict.CannotDecide, scale.Verdict);
        Assert.DoesNotContain("hose", scale.NextStep, StringComparison.Ordinal);
    }

    [Fact]
    public void A_charge_that_covers_a_length_covers_less()
    {
        // Ductless manuals: "chargeless up to" (common practice). 0.60 oz/ft · (8 − 25) ft = −10.2 oz only where the manual says so.
        const string Piping = "piping: {liquid: {od: 3/8 in, length: 8 ft}, covered by factory charge: 25 ft}";
        var covered = Judge(Job("unit arrived: charged, line adjustment: {figure: 0.60 oz/ft, from: manual p. 22}", Piping));
        Assert.Equal(Verdict.Pass, covered.Verdict);
        Assert.Equal(0, Asked(covered), 1e-9);
        var deduct = Judge(Job("unit arrived: charged, removed: 10.2 oz, left in hoses: 0 oz, line adjustment: {figure: 0.60 oz/ft, from: manual p. 22, deduct for shorter lines: manual p. 13}", Piping));
        Assert.Equal(-10.2, Asked(deduct), 1e-6);
        Assert.Equal(Verdict.Pass, deduct.Verdict);
        Assert.Contains("manual p. 13", deduct.Limits[0].Source, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_nothing_was_moved_nothing_is_doubtful()
    {
        // No scale was read and no hose held anything: the accuracy of neither matters.
        const string Piping = "piping: {liquid: {od: 3/8 in, length: 8 ft}, covered by factory charge: 25 ft}";
        var finding = Judge(Job("unit arrived: charged, added: 0 oz", Piping).Replace("reads: [charge]", "reads: [recovery]", StringComparison.Ordinal));
        Assert.Equal(Verdict.Pass, finding.Verdict);
        Assert.Empty(finding.Budget);
        Assert.Contains(finding.Readings, r => r.Name == "refrigerant added");
    }

    [Fact]
    public void A_circuit_closed_in_the_factory_has_no_lines()
    {
        const string Factory = "nameplate: {factory charge: 3.9 oz}\n  metering: capillary\n  hermetically sealed: {0}";
        const string Charging = "unit arrived: recovered and evacuated, added: 3.9 oz +/- 0.1 oz, left in hoses: 0.0 oz";
        Assert.Equal(Verdict.Pass, Judge(Job(Charging, system: "refrigeration", factory: Factory.Replace("{0}", "yes", StringComparison.Ordinal))).Verdict);
        Assert.Equal(Verdict.NotEvaluated, Judge(Job(Charging, system: "refrigeration", factory: Factory.Replace("{0}", "no", StringComparison.Ordinal))).Verdict);
    }

    [Fact]
    public void Two_scales_are_asked_for()
    {
        const string Both = "instruments:\n  - {id: platform, kind: scale, accuracy: 6 oz, reads: [charge]}";
        const string Charging = "unit arrived: charged, scale: {before: 24.00 lb, after: 22.875 lb}, left in hoses: 0.0 oz, line adjustment: {figure: 0.60 oz/ft, length: 30 ft, from: manual}";
        var asked = Judge(Job(Charging).Replace("instruments:", Both, StringComparison.Ordinal));
        Assert.Equal(Verdict.NotEvaluated, asked.Verdict);
        Assert.Contains("platform and scale", asked.Reason, StringComparison.Ordinal);
        Assert.Contains(asked.Readings, r => r.Name == "platform: accuracy");
        Assert.Equal(Verdict.Pass, Judge(Job($"{Charging}, with: scale").Replace("instruments:", Both, StringComparison.Ordinal)).Verdict);
        Assert.Equal(Verdict.Pass, Judge(Job(Charging).Replace("instruments:", Both.Replace("6 oz", "0.5 oz", StringComparison.Ordinal), StringComparison.Ordinal)).Verdict);
    }

    [Fact]
    public void The_plates_charge_of_another_refrigerant_is_a_guide()
    {
        // 7 lb of 7 lb 8 oz: 93.3 %.
        var job = Job("unit arrived: recovered and evacuated, added: 7 lb", work: "refrigerant change", factory: "nameplate: {refrigerant: R-22, factory charge: 7 lb 8 oz}").Replace("charging:", "refrigerant change: {from: R-22, to: R-410A}\ncharging:", StringComparison.Ordinal);
        var finding = Judge(job);
        Assert.Equal(Verdict.Information, finding.Verdict);
        Assert.Contains("93.3 % of the 7 lb 8.0 oz of R-22", finding.Statement, StringComparison.Ordinal);
        Assert.Contains(finding.Readings, r => r.Name == "factory charge");
        Assert.Contains(finding.Readings, r => r.Text == "R-22");
        Assert.Equal(Verdict.Fail, Judge(Job("unit arrived: recovered and evacuated, added: 7 lb, line adjustment: {figure: 0.60 oz/ft, length: 0 ft, from: manual}", factory: "nameplate: {refrigerant: R-410A, factory charge: 7 lb 8 oz}")).Verdict);
    }

    [Fact]
    public void Several_cylinders_add_up()
    {
        var finding = Judge(ChargeJobs.TarnLane.With("scale: {before: 24.86 lb, after: 23.84 lb}", "scale: [{cylinder: A, before: 24.86 lb, after: 24.36 lb}, {cylinder: B, before: 12.00 lb, after: 11.48 lb}]"));
        Assert.Equal(16.32, Mass.FromSi(finding.Measured!.Value.Si).Ounces, 0.06);
    }

    [Theory]
    [InlineData("unit arrived: unknown", "nobody knows what the unit held")]
    [InlineData("unit arrived: charged, added: 4 oz", "neither the lines nor the maker's figure")]
    [InlineData("unit arrived: charged, added: 4 oz, line adjustment: {figure: 0.6 oz/ft, from: manual}", "needs the length")]
    public void What_is_not_known_is_not_judged(string charging, string why)
    {
        var finding = Judge(Job(charging));
        Assert.Equal(Verdict.NotEvaluated, finding.Verdict);
        Assert.Contains(why, finding.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void How_the_unit_arrived_must_be_known_where_the_circuit_was_opened() =>
        Assert.Contains("it is not written how the unit arrived", Judge(Job("added: 4 oz", work: "opened circuit")).Reason, StringComparison.Ordinal);

    [Fact]
    public void Lines_longer_than_covered_need_the_makers_figure()
    {
        var piping = "piping: {liquid: {od: 3/8 in, length: 35 ft}, covered by factory charge: 15 ft}";
        Assert.Contains("longer than the factory charge covers", Judge(Job("unit arrived: charged, added: 4 oz", piping)).Reason, StringComparison.Ordinal);
        var fits = Judge(Job("unit arrived: charged", piping.Replace("35 ft", "12 ft", StringComparison.Ordinal)));
        Assert.Equal(Verdict.Pass, fits.Verdict);
        Assert.Contains("nothing had to be added", fits.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void A_multi_split_adds_its_lines_and_indoor_units_up()
    {
        // 120 ft · 0.27 oz/ft + 40 ft · 0.54 oz/ft + 3.5 oz = 32.4 + 21.6 + 3.5 = 57.5 oz.
        var finding = Judge(Job(
            "unit arrived: charged, added: 57.5 oz, extra: [{line: 1/4 in, length: 120 ft, figure: 0.27 oz/ft}, {line: 3/8 in, length: 40 ft, figure: 0.54 oz/ft}, {what: indoor adder, mass: 3.5 oz}]", system: "multi-split"));
        Assert.Equal(57.5, Asked(finding), 1e-6);
        Assert.Equal(Verdict.Pass, finding.Verdict);
    }

    [Fact]
    public void An_adjustment_of_a_running_system_is_information()
    {
        // 0.5 oz of the scale, 0.4 oz in the hose and two readings of 0.1 oz, rectangular: 2 √(0.25/3 + 0.16/3 + 2 · 0.01/12) = 0.74 oz.
        var finding = Judge(Job("added: 4 oz", work: "charge adjustment"));
        Assert.Equal(Verdict.Information, finding.Verdict);
        Assert.Contains("4.00 oz ± 0.74 oz", finding.Statement, StringComparison.Ordinal);
    }

    // 0.60 oz/ft over 30 ft are 18 oz: 12 oz lack 6, 24 oz are 6 too many.
    [Theory]
    [InlineData("12.0 oz", "Add 6.0")]
    [InlineData("24.0 oz", "Recover 6.0")]
    public void What_lacks_or_is_too_much_is_said(string added, string advice)
    {
        var finding = Judge(Job($"unit arrived: charged, added: {added} +/- 0.1 oz, left in hoses: 0.0 oz, line adjustment: {{figure: 0.60 oz/ft, length: 30 ft, from: manual}}"));
        Assert.Equal(Verdict.Fail, finding.Verdict);
        Assert.StartsWith(advice, finding.NextStep, StringComparison.Ordinal);
        Assert.Contains("beyond the factory charge", finding.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void A_unit_that_came_empty_is_asked_for_its_whole_charge()
    {
        const string Empty = "unit arrived: recovered and evacuated, added: 98.0 oz +/- 0.1 oz, left in hoses: 0.0 oz, line adjustment: {figure: 0.60 oz/ft, length: 30 ft, from: manual}";
        // 5 lb and 18 oz are 98 oz.
        var finding = Judge(Job(Empty));
        Assert.Equal(Verdict.Pass, finding.Verdict);
        Assert.DoesNotContain("beyond the factory charge", finding.Statement, StringComparison.Ordinal);
        Assert.StartsWith("5 lb + 1 lb 2.0", finding.Trace.Single(s => s.Symbol == "m_asked").Substitution, StringComparison.Ordinal);
        Assert.Contains(finding.Readings, r => r is { Name: "factory charge", Text: "5 lb" });
        Assert.Contains(finding.Readings, r => r.Text == "0.60 oz/ft");
        Assert.NotEqual("", finding.Limits[0].Quantity);
        Assert.Equal("the factory charge is not recorded, and the scale saw the whole charge", Judge(Job(Empty, factory: "nameplate: {MOP: 20 A}")).Reason);
    }

    // 2 % of 5 lb and what the lines ask: for 1.6 oz more 1.632 oz, for 1.7 oz 1.634; for 1.5 oz less 1.570 oz, for 1.7 oz less 1.566.
    [Theory]
    [InlineData("1.6 oz", Verdict.Pass, null)]
    [InlineData("1.7 oz", Verdict.NotEvaluated, "no scale reading and no mass added is written")]
    [InlineData("-1.5 oz", Verdict.Pass, null)]
    [InlineData("-1.7 oz", Verdict.NotEvaluated, "1.7 oz has to be recovered, and nothing removed is recorded")]
    public void A_charge_that_fits_as_it_came_needs_no_scale(string extra, Verdict verdict, string? why)
    {
        var finding = Judge(Job($"unit arrived: charged, extra: [{{what: lines, mass: {extra}}}], line adjustment: {{figure: 0.60 oz/ft, length: 0 ft, from: manual}}"));
        Assert.Equal((verdict, why), (finding.Verdict, finding.Reason?.Replace("1.70 oz", "1.7 oz", StringComparison.Ordinal)));
    }

    [Fact]
    public void Where_the_lines_ask_for_nothing_what_went_in_is_told_as_that()
    {
        var finding = Judge(Job("unit arrived: charged, added: 0.5 oz +/- 0.1 oz, left in hoses: 0.0 oz, line adjustment: {figure: 0.60 oz/ft, length: 0 ft, from: manual}"));
        Assert.Equal(Verdict.Pass, finding.Verdict);
        Assert.Contains("went in; ", finding.Statement, StringComparison.Ordinal);
        Assert.Contains("was required beyond the factory charge", finding.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_is_asked_where_nothing_was_weighed()
    {
        Assert.Empty(JobText.Evaluate(Job("method: subcooling", work: "charge adjustment"), "charge.by-weight"));
        Assert.Empty(JobText.Evaluate(Job("method: subcooling", work: "seasonal check"), "charge.by-weight"));
        Assert.Empty(JobText.Evaluate(Job("added: 4 oz", work: "decommissioning"), "charge.by-weight"));
        Assert.Equal(Verdict.NotEvaluated, Judge(Job("method: subcooling", work: "opened circuit")).Verdict);
        Assert.Equal(Verdict.NotEvaluated, Judge(Job("unit arrived: unknown", work: "seasonal check")).Verdict);
    }

    [Fact]
    public void The_makers_own_tolerance_comes_first()
    {
        var finding = Judge(ChargeJobs.TarnLane.With("limits:\n", "limits:\n  charge tolerance: {maximum: 0.05 oz, from: unit plate}\n"));
        Assert.Equal(Verdict.CannotDecide, finding.Verdict);
        Assert.Contains("wider than the tolerance", finding.Reason, StringComparison.Ordinal);
    }
}
