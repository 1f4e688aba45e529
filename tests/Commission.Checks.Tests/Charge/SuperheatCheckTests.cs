using Commission.Checks.Formulas;
using Commission.Measurement.Decisions;
using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.Charge;

public sealed class SuperheatCheckTests
{
    private const string Chart = """
        limits:
          charts:
            - for: superheat
              across: {reading: return wet bulb, at: [64, 68, 72]}
              down: {reading: outdoor dry bulb, at: [85, 95, 105]}
              values: [[12, 18, 24], [8, 14, 20], [none, 10, 16]]
              tolerance: 4 °F
              from: "manual p. 21"
        """;

    private static Finding Judge(string yaml) => Assert.Single(JobText.Evaluate(yaml, "charge.superheat"));

    private static string Weather(string yaml, double outdoor, double wetBulb) => yaml
        .With("outdoor dry bulb: 95.0", FormattableString.Invariant($"outdoor dry bulb: {outdoor:0.0}"))
        .With("return wet bulb: 67.0", FormattableString.Invariant($"return wet bulb: {wetBulb:0.0}"));

    private static string WithLimits(string limits) => ChargeJobs.FenRow.With("instruments:", limits + "\ninstruments:");

    // Table RA3.2-2 of the California Residential Appendix (from memory), written (WB, ODB).
    [Theory]
    [InlineData(67, 95, 12.0)]
    [InlineData(70, 95, 17.8)]
    [InlineData(66, 90, 12.8)]
    public void California_table_RA3_2_2_sets_the_target(double wetBulb, double outdoor, double target)
    {
        var finding = Judge(Weather(ChargeJobs.FenRow, outdoor, wetBulb));
        Assert.Equal(target, finding.Limits[0].TargetSi!.Value * 1.8, 1e-6);
        Assert.Equal(target + 5, finding.Limits[0].UpperSi!.Value * 1.8, 1e-6);
        Assert.Equal("from memory", finding.Limits[0].Mark);
    }

    // Dashes of the same table, with what the field formula (3·WB − 80 − ODB)/2 says there: it never takes the table's place.
    [Theory]
    [InlineData(64, 96, "8.0 °F")]
    [InlineData(55, 75, "5.0 °F")]
    [InlineData(63, 95, "7.0 °F")]
    [InlineData(60, 85, "7.5 °F")]
    [InlineData(64, 100, "6.0 °F")]
    public void A_dash_of_the_table_is_not_evaluated_and_the_formula_is_information(double wetBulb, double outdoor, string formula)
    {
        var finding = Judge(Weather(ChargeJobs.FenRow, outdoor, wetBulb));
        Assert.Equal(Verdict.NotEvaluated, finding.Verdict);
        Assert.Contains("gives no target at this load", finding.Reason, StringComparison.Ordinal);
        Assert.Equal(JobText.Words(CaliforniaSuperheatTable.DashNext), finding.NextStep);
        Assert.Equal(formula, finding.Trace.Single(s => s.Symbol == "SH_formula").Result);
        Assert.Empty(finding.Limits);
        Assert.NotNull(finding.Measured);
    }

    [Fact]
    public void On_target_passes_with_its_probability()
    {
        // R-410A at 118.35 psig and sea level: dew 40.0 °F; line 52.0 °F; 12.0 °F of superheat against 12.0 ± 5 °F.
        var finding = Judge(ChargeJobs.FenRow);
        Assert.Equal(Verdict.Pass, finding.Verdict);
        Assert.Equal(12.0, finding.Measured!.Value.Si * 1.8, 0.05);
        Assert.True(finding.ProbabilityOfConformity > 0.999);
        Assert.Null(finding.Reservation);
        Assert.Equal("10:30", finding.Subject);
        Assert.Contains(finding.Readings, r => r.Text == "67.0 °F");
        Assert.Contains(finding.Readings, r => r.Text == "10:00");
        Assert.Contains(finding.Trace, s => s.Name.Contains("target", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("62.0", "high")]
    [InlineData("46.0", "low")]
    public void Off_target_fails_and_sends_to_the_diagnosis(string line, string side)
    {
        var finding = Judge(ChargeJobs.FenRow.With("vapor line: 52.0", $"vapor line: {line}"));
        Assert.Equal(Verdict.Fail, finding.Verdict);
        Assert.Contains(side, finding.NextStep, StringComparison.Ordinal);
        Assert.Contains("See the diagnosis", finding.NextStep, StringComparison.Ordinal);
    }

    [Fact]
    public void The_doubt_of_the_weather_is_part_of_the_doubt_of_the_judgement()
    {
        // At (ODB 95, WB 67) the table's neighbours give ∂/∂WB = (13.9 − 10.0)/2 = 1.95 and ∂/∂ODB = (9.3 − 14.6)/10 = −0.53. The bulbs are two sensors of
        // ± 0.5 °F, and outdoors and indoors two probes: 1.95 · 0.5/√3 = 0.563 °F and 0.53 · 0.5/√3 = 0.153 °F of the distance to the target, and none of superheat.
        var finding = Judge(ChargeJobs.FenRow);
        double Of(string place) => Math.Abs(finding.Distance!.Budget.Single(b => b.Cause.ToString() == $"air probe: accuracy, {place}").Contribution) * 1.8;
        Assert.Equal(0.563, Of("return air (wet)"), 0.03);
        Assert.Equal(0.153, Of("outdoor air"), 0.03);
        Assert.DoesNotContain(finding.Budget, b => b.Cause.StartsWith("air probe", StringComparison.Ordinal));
        Assert.Contains(finding.Trace, s => s.Symbol == "Δ");
    }

    [Fact]
    public void Superheat_budget_of_line_and_pressure()
    {
        // Worked budget: R-410A at 118 psig, dT/dp = 5 °F / 11.76 psi = 0.425 °F/psi; u_T 0.5 °F and u_p 0.3 psi give 0.516 °F.
        var finding = Judge(ChargeJobs.FenRow
            .With("vapor pressure: 118.35", "vapor pressure: 118.0 psig +/- 0.3 (k=1)")
            .With("vapor line: 52.0", "vapor line: 52.0 °F +/- 0.5 (k=1)"));
        var stated = finding.Budget.Where(b => b.Cause.EndsWith(": as stated", StringComparison.Ordinal)).ToList();
        Assert.Equal(2, stated.Count);
        Assert.Equal(0.516, Math.Sqrt(stated.Sum(b => b.ContributionSi * b.ContributionSi)) * 1.8, 0.002);
    }

    [Fact]
    public void A_guarded_rule_makes_the_edge_conditional()
    {
        // 15.9 °F of superheat lies inside 12.0 + 5 °F, and nearer to the edge than U, which is above 1.1 °F.
        var finding = Judge(WithLimits("limits: {decision rule: guarded}").With("vapor line: 52.0", "vapor line: 56.2"));
        Assert.Equal(Verdict.Conditional, finding.Verdict);
        Assert.Equal(Verdict.PassWithinUncertainty, Judge(ChargeJobs.FenRow.With("vapor line: 52.0", "vapor line: 56.2")).Verdict);
    }

    [Fact]
    public void The_makers_chart_comes_before_the_table()
    {
        // Row 95 °F of the chart: 8 at 64 and 14 at 68 °F wet bulb; at 67 °F 8 + 6 · 3/4 = 12.5 °F.
        var finding = Judge(WithLimits(Chart));
        Assert.Equal(12.5, finding.Limits[0].TargetSi!.Value * 1.8, 1e-6);
        Assert.Equal(4, (finding.Limits[0].UpperSi!.Value - finding.Limits[0].TargetSi!.Value) * 1.8, 1e-6);
        Assert.Equal("maker", finding.Limits[0].Basis);
        Assert.Equal("manual p. 21", finding.Limits[0].Source);
        Assert.Equal(Verdict.Pass, finding.Verdict);
    }

    [Fact]
    public void A_chart_is_read_bilinearly()
    {
        // 90 °F outdoors and 66 °F wet bulb: 15 in row 85 and 11 in row 95, halfway 13.0 °F.
        var finding = Judge(Weather(WithLimits(Chart), 90, 66));
        Assert.Equal(13.0, finding.Limits[0].TargetSi!.Value * 1.8, 1e-6);
    }

    [Theory]
    [InlineData(100, 66, "gives no figure")]
    [InlineData(110, 70, "outside")]
    [InlineData(84, 67, "outside")]
    public void A_chart_is_not_read_at_a_dash_or_beyond_its_places(double outdoor, double wetBulb, string why)
    {
        var finding = Judge(Weather(WithLimits(Chart), outdoor, wetBulb));
        Assert.Equal(Verdict.NotEvaluated, finding.Verdict);
        Assert.Contains(why, finding.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_chart_of_one_argument_is_read_along_it()
    {
        // 10 at 85 °F, 14 at 105 °F: 12 °F at 95 °F. Without a tolerance of its own the usual ± 5 °F holds.
        var finding = Judge(WithLimits("""
            limits:
              charts: [{for: superheat, across: {reading: outdoor dry bulb, at: [85, 105]}, values: [[10, 14]], from: "door label"}]
            """));
        Assert.Equal(12.0, finding.Limits[0].TargetSi!.Value * 1.8, 1e-6);
        Assert.Equal(5, (finding.Limits[0].UpperSi!.Value - finding.Limits[0].TargetSi!.Value) * 1.8, 1e-6);
    }

    [Fact]
    public void The_makers_figure_comes_before_the_table()
    {
        var finding = Judge(WithLimits("limits: {superheat: {target: 10 °F, tolerance: 1.5 °F, from: manual p. 9}}"));
        Assert.Equal(Verdict.Fail, finding.Verdict);
        Assert.Equal("manual p. 9", finding.Limits[0].Source);
    }

    [Fact]
    public void A_makers_tolerance_looser_than_common_practice_is_remarked_upon()
    {
        var finding = Judge(WithLimits("limits: {superheat: {target: 10 °F, tolerance: 8 °F, from: manual p. 9}}"));
        Assert.Equal(Verdict.Pass, finding.Verdict);
        Assert.Contains("asks less than", finding.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void A_reading_too_soon_after_the_start_is_not_judged()
    {
        var finding = Judge(ChargeJobs.FenRow.With("compressor started: \"10:00\"", "compressor started: \"10:20\""));
        Assert.Equal(Verdict.NotEvaluated, finding.Verdict);
        Assert.Contains("10 min after the start of the compressor", finding.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_reading_before_the_last_change_of_charge_is_not_judged()
    {
        var finding = Judge(ChargeJobs.FenRow.With("running: full", "running: full\n  last change: \"10:40\""));
        Assert.Equal(Verdict.NotEvaluated, finding.Verdict);
        Assert.Contains("after the reading", finding.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Unknown_times_make_a_pass_conditional()
    {
        var finding = Judge(ChargeJobs.FenRow.With("  compressor started: \"10:00\"\n", ""));
        Assert.Equal(Verdict.Conditional, finding.Verdict);
        Assert.Contains("neither the start", finding.Reservation, StringComparison.Ordinal);
    }

    [Fact]
    public void Low_airflow_forbids_a_judgement()
    {
        // Return 80.0 °F, 67 °F wet bulb: target split 18.3 °F (table RA3.2-3, from memory); supply 55.0 °F makes 25.0 °F.
        var finding = Judge(ChargeJobs.FenRow.With("supply dry bulb: 61.8", "supply dry bulb: 55.0"));
        Assert.Equal(Verdict.NotEvaluated, finding.Verdict);
        Assert.Contains("low airflow", finding.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void An_air_side_not_shown_caps_the_verdict_at_a_conditional_pass()
    {
        var finding = Judge(ChargeJobs.FenRow.With("air: {filter: clean, coil: clean, panels on: yes, blower at cooling speed: yes}", "air: {filter: clean}"));
        Assert.Equal(Verdict.Conditional, finding.Verdict);
        Assert.Contains("the indoor coil is clean", finding.Reservation, StringComparison.Ordinal);
    }

    [Fact]
    public void A_variable_speed_system_outside_its_charging_mode_is_not_judged_unless_by_the_makers_chart()
    {
        var variable = ChargeJobs.FenRow.With("compressor: fixed", "compressor: variable speed");
        var finding = Judge(variable);
        Assert.Equal(Verdict.NotEvaluated, finding.Verdict);
        Assert.Contains("charging mode", finding.Reason, StringComparison.Ordinal);
        Assert.Equal(Verdict.Pass, Judge(variable.With("running: full", "running: charging mode")).Verdict);

        // The chart counts all the same; the table of target splits does not, so the airflow is not shown.
        var chart = Judge(variable.With("instruments:", Chart + "\ninstruments:"));
        Assert.Equal(Verdict.Conditional, chart.Verdict);
        Assert.Equal("not shown that the airflow is enough", chart.Reservation);
    }

    [Fact]
    public void Below_55_degrees_outdoors_superheat_is_never_judged()
    {
        var finding = Judge(ChargeJobs.FenRow.With("outdoor dry bulb: 95.0", "outdoor dry bulb: 50.0"));
        Assert.Equal(Verdict.NotEvaluated, finding.Verdict);
        Assert.Contains("50.0 °F", finding.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_system_charged_by_weight_gets_its_superheat_as_information()
    {
        var finding = Judge(ChargeJobs.FenRow.With("system: split", "system: multi-split"));
        Assert.Equal(Verdict.Information, finding.Verdict);
        Assert.Equal("a multi-split is charged by weight", finding.Reason);
    }

    [Fact]
    public void Where_U_is_wider_than_the_tolerance_there_is_no_verdict()
    {
        // A class-2 thermocouple without a field check: ± 2.5 °C = ± 4.5 °F alone make U about 5.2 °F, wider than ± 5 °F.
        var finding = Judge(ChargeJobs.FenRow.With("kind: thermometer, accuracy: 0.5 °F", "kind: thermometer, sensor: thermocouple K class 2"));
        Assert.Equal(Verdict.CannotDecide, finding.Verdict);
        Assert.Contains("wider than the tolerance", finding.Reason, StringComparison.Ordinal);
        Assert.Contains("line probe", finding.NextStep, StringComparison.Ordinal);
    }

    [Fact]
    public void An_accuracy_nobody_states_makes_a_pass_conditional()
    {
        var finding = Judge(ChargeJobs.FenRow.With("kind: thermometer, accuracy: 0.5 °F", "kind: thermometer"));
        Assert.Equal(Verdict.Conditional, finding.Verdict);
        Assert.Contains("accuracy of vapor line", finding.Reservation, StringComparison.Ordinal);
    }

    // Dew 40.0 °F: a line at 46 °F has 6, at 62 °F 22 °F of superheat. A range has no middle that was asked for: above its top is high, the rest low.
    [Theory]
    [InlineData("limits: {superheat: {minimum: 10 °F, maximum: 15 °F, from: manual}}", "62.0", "Superheat is high.")]
    [InlineData("limits: {superheat: {minimum: 10 °F, maximum: 15 °F, from: manual}}", "46.0", "Superheat is low.")]
    [InlineData("limits: {superheat: {minimum: 10 °F, from: manual}}", "46.0", "Superheat is low.")]
    [InlineData("limits: {superheat: {maximum: 15 °F, from: manual}}", "62.0", "Superheat is high.")]
    public void A_range_is_missed_on_one_side_or_the_other(string limits, string line, string advice)
    {
        var finding = Judge(WithLimits(limits).With("vapor line: 52.0", $"vapor line: {line}"));
        Assert.Equal(Verdict.Fail, finding.Verdict);
        Assert.StartsWith(advice, finding.NextStep, StringComparison.Ordinal);
    }

    [Fact]
    public void The_field_formula_stands_beside_the_table_and_nowhere_else()
    {
        // (3 · 67 − 80 − 95)/2 = 13.
        var step = Judge(ChargeJobs.FenRow).Trace.Single(s => s.Symbol == "SH_formula");
        Assert.Equal(("(3 · 67.0 − 80 − 95.0)/2", "13.0 °F"), (step.Substitution, step.Result));
        Assert.DoesNotContain(Judge(WithLimits("limits: {superheat: {target: 12 °F, from: manual}}").With("return wet bulb: 67.0, ", "")).Trace, s => s.Symbol == "SH_formula");
        Assert.DoesNotContain(Judge(WithLimits("limits: {superheat: {target: 12 °F, from: manual}}").With("outdoor dry bulb: 95.0, ", "")).Trace, s => s.Symbol == "SH_formula");
        var cooler = WithLimits("limits: {superheat: {target: 12 °F, from: manual}}").With("system: split", "system: refrigeration, application: medium temperature");
        Assert.DoesNotContain(Judge(cooler).Trace, s => s.Symbol == "SH_formula");
    }

    [Fact]
    public void In_refrigeration_the_table_for_comfort_cooling_does_not_count()
    {
        var finding = Judge(ChargeJobs.FenRow.With("system: split", "system: refrigeration, application: medium temperature"));
        Assert.Equal((Verdict.Information, "the maker gives no superheat, and the table is for comfort cooling"), (finding.Verdict, finding.Reason));
    }

    [Fact]
    public void Where_superheat_shows_no_charge_nothing_is_missed()
    {
        Assert.Empty(JobText.Evaluate(ChargeJobs.FenRow.With("metering: fixed orifice", "metering: fixed orifice, receiver: yes"), "charge.superheat"));
        Assert.Empty(JobText.Evaluate(ChargeJobs.FenRow.With("system: split", "system: multi-split").With("vapor line: 52.0, ", ""), "charge.superheat"));
        Assert.Empty(JobText.Evaluate(ChargeJobs.FenRow.With(", metering: fixed orifice", "").With("vapor line: 52.0, ", ""), "charge.superheat"));
        Assert.Equal("Read pressure and line temperature at the vapor service valve together.", Judge(ChargeJobs.FenRow.With("vapor line: 52.0, ", "")).NextStep);
    }

    [Fact]
    public void Above_the_critical_point_there_is_no_superheat_to_judge_by()
    {
        // R-410A has its critical point near 4.9 MPa, 711 psia (Lemmon 2003).
        var finding = Judge(ChargeJobs.FenRow.With("vapor pressure: 118.35", "vapor pressure: 740.0").With("liquid pressure: 341.88", "liquid pressure: 745.0"));
        Assert.Equal((Verdict.NotEvaluated, "Check the reading and the refrigerant's name."), (finding.Verdict, finding.NextStep));
    }

    [Fact]
    public void An_expansion_valve_has_no_target_superheat() =>
        Assert.Empty(JobText.Evaluate(ChargeJobs.FenRow.With("metering: fixed orifice", "metering: TXV"), "charge.superheat"));

    [Fact]
    public void A_missing_line_temperature_is_told() =>
        Assert.Equal("line temperature for superheat was not read", Judge(ChargeJobs.FenRow.With("vapor line: 52.0, ", "")).Reason);

    [Fact]
    public void A_wet_bulb_from_the_humidity_does_as_well()
    {
        // 80 °F dry bulb with 67 °F wet bulb, the usual rating condition indoors, is 51.1 % relative humidity at sea level (psychrometric chart, from memory).
        var finding = Judge(ChargeJobs.FenRow
            .With("return wet bulb: 67.0", "return humidity: 51.1 %")
            .With("kind: psychrometer, accuracy: 0.5 °F", "kind: psychrometer, humidity accuracy: 2 %, accuracy: 0.5 °F"));
        Assert.Equal(12.0, finding.Limits[0].TargetSi!.Value * 1.8, 0.3);
        Assert.Contains(finding.Distance!.Budget, b => b.Cause.ToString() == "air probe: humidity, return air");
    }
}
