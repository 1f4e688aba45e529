using Commission.Measurement.Decisions;
using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.Charge;

public sealed class SubcoolingCheckTests
{
    private static Finding Judge(string yaml) => Assert.Single(JobText.Evaluate(yaml, "charge.subcooling"));

    private static string Valve(string limits = "limits: {subcooling: {target: 10 °F, tolerance: 3 °F, from: unit plate}}") =>
        ChargeJobs.FenRow.With("metering: fixed orifice", "metering: TXV").With("instruments:", limits + "\ninstruments:");

    [Fact]
    public void On_target_passes()
    {
        // R-410A at 341.88 psig and sea level: bubble 105.0 °F; line 95.0 °F; 10.0 °F against 10 ± 3 °F.
        var finding = Judge(Valve());
        Assert.Equal(Verdict.Pass, finding.Verdict);
        Assert.Equal(10.0, finding.Measured!.Value.Si * 1.8, 0.05);
        Assert.Equal("unit plate", finding.Limits[0].Source);
    }

    [Theory]
    [InlineData("90.0", "high")]
    [InlineData("99.0", "low")]
    public void Off_target_fails_and_sends_to_the_pattern_of_both_sides(string line, string side)
    {
        var finding = Judge(Valve().With("liquid line: 95.0", $"liquid line: {line}"));
        Assert.Equal(Verdict.Fail, finding.Verdict);
        Assert.Contains($"Subcooling is {side}", finding.NextStep, StringComparison.Ordinal);
    }

    [Fact]
    public void A_target_without_a_tolerance_takes_the_usual_one()
    {
        var finding = Judge(Valve("limits: {subcooling: {target: 12 °F, from: unit plate}}"));
        Assert.Equal(12 - 3, finding.Limits[0].LowerSi!.Value * 1.8, 1e-6);
        Assert.Contains("p. RA3-15", finding.Limits[0].Source, StringComparison.Ordinal);
        Assert.Equal("maker", finding.Limits[0].Basis);
    }

    [Fact]
    public void A_range_of_the_maker_is_a_limit_of_its_own()
    {
        var finding = Judge(Valve("limits: {subcooling: {minimum: 8 °F, maximum: 12 °F, from: manual p. 3}}"));
        Assert.Equal(Verdict.Pass, finding.Verdict);
        Assert.Equal(LimitKind.Within, finding.Limits[0].Kind);
    }

    // Bubble point 105.0 °F: a line at 90 °F has 15, at 99 °F 6 °F of subcooling.
    [Theory]
    [InlineData("minimum: 8 °F, maximum: 12 °F", "90.0", "Subcooling is high.")]
    [InlineData("minimum: 8 °F, maximum: 12 °F", "99.0", "Subcooling is low.")]
    [InlineData("minimum: 8 °F", "99.0", "Subcooling is low.")]
    [InlineData("maximum: 12 °F", "90.0", "Subcooling is high.")]
    public void A_range_is_missed_on_one_side_or_the_other(string range, string line, string advice)
    {
        var finding = Judge(Valve($"limits: {{subcooling: {{{range}, from: manual p. 3}}}}").With("liquid line: 95.0", $"liquid line: {line}"));
        Assert.Equal(Verdict.Fail, finding.Verdict);
        Assert.StartsWith(advice, finding.NextStep, StringComparison.Ordinal);
    }

    [Fact]
    public void A_fixed_orifice_is_judged_where_its_maker_gives_a_subcooling() =>
        Assert.Equal(Verdict.Pass, Judge(ChargeJobs.FenRow.With("instruments:", "limits: {subcooling: {target: 10 °F, tolerance: 3 °F, from: unit plate}}\ninstruments:")).Verdict);

    [Fact]
    public void Half_a_reading_is_missed_with_a_valve_alone()
    {
        var half = Judge(Valve().With("liquid line: 95.0, ", ""));
        Assert.Equal((Verdict.NotEvaluated, "Read pressure and line temperature at the liquid service valve together."), (half.Verdict, half.NextStep));
        Assert.Empty(JobText.Evaluate(ChargeJobs.FenRow.With("liquid line: 95.0, ", ""), "charge.subcooling"));
        Assert.Empty(JobText.Evaluate(Valve().With("metering: TXV", "metering: TXV, receiver: yes").With("liquid line: 95.0, ", ""), "charge.subcooling"));
    }

    [Fact]
    public void A_reading_that_has_not_settled_is_told_and_not_judged()
    {
        var finding = Judge(Valve().With("compressor started: \"10:00\"", "compressor started: \"10:25\""));
        Assert.Equal(Verdict.NotEvaluated, finding.Verdict);
        Assert.StartsWith("Subcooling was 10.0", finding.Statement, StringComparison.Ordinal);
        Assert.Contains("and is not judged: ", finding.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_figure_of_the_maker_nothing_is_judged()
    {
        var finding = Judge(ChargeJobs.FenRow.With("metering: fixed orifice", "metering: TXV"));
        Assert.Equal(Verdict.NotEvaluated, finding.Verdict);
        Assert.Equal("the maker's subcooling is not written", finding.Reason);
    }

    [Fact]
    public void A_fixed_orifice_gets_its_subcooling_as_information()
    {
        var finding = Judge(ChargeJobs.FenRow);
        Assert.Equal("a fixed orifice is charged by superheat", finding.Reason);
        Assert.Equal(10.0, finding.Measured!.Value.Si * 1.8, 0.05);
        Assert.Equal("a multi-split is charged by weight", Judge(ChargeJobs.FenRow.With("system: split", "system: multi-split").With("metering: fixed orifice", "metering: EEV, receiver: yes")).Reason);
    }

    // 8 °F at 85 °F outdoors and 12 at 105: 10 at 95 °F. A chart counts in the state it was made for, a figure in full running only.
    [Fact]
    public void The_makers_chart_counts_in_every_running_state()
    {
        const string Chart = "limits: {charts: [{for: subcooling, across: {reading: outdoor dry bulb, at: [85, 105]}, values: [[8, 12]], tolerance: 3 °F, from: door label}]}";
        var finding = Judge(Valve(Chart));
        Assert.Equal((Verdict.Pass, "door label"), (finding.Verdict, finding.Limits[0].Source));
        Assert.Equal(10, finding.Limits[0].TargetSi!.Value * 1.8, 1e-6);
        Assert.Contains(finding.Readings, r => r.Name.StartsWith("outdoor", StringComparison.Ordinal));
        Assert.Contains(finding.Readings, r => r.Text == "10:00");
        Assert.Contains(finding.Trace, s => s.Source == "door label");
        Assert.NotEqual(Verdict.NotEvaluated, Judge(Valve(Chart).With("compressor: fixed", "compressor: variable speed")).Verdict);
        Assert.Equal(Verdict.NotEvaluated, Judge(Valve().With("compressor: fixed", "compressor: variable speed")).Verdict);
    }

    [Fact]
    public void A_receiver_hides_the_charge_from_the_subcooling()
    {
        var finding = Judge(Valve().With("metering: TXV", "metering: TXV, receiver: yes"));
        Assert.Equal(Verdict.Information, finding.Verdict);
        Assert.Contains("receiver", finding.Reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("multi-split")]
    [InlineData("VRF")]
    [InlineData("ductless split")]
    public void A_system_charged_by_weight_gets_information_and_a_missing_port_is_no_fault(string system)
    {
        var yaml = ChargeJobs.FenRow.With("metering: fixed orifice", "metering: EEV").With("system: split", $"system: {system}");
        Assert.Equal(Verdict.Information, Judge(yaml).Verdict);
        Assert.Empty(JobText.Evaluate(yaml.With("liquid pressure: 341.88, ", "").With("liquid line: 95.0, ", ""), "charge.subcooling"));
    }

    [Fact]
    public void A_ductless_split_is_judged_where_its_maker_says_so() =>
        Assert.Equal(Verdict.Pass, Judge(Valve().With("system: split", "system: ductless split")).Verdict);

    [Fact]
    public void A_pressure_from_the_discharge_port_makes_a_pass_conditional()
    {
        var finding = Judge(Valve().With("running: full", "running: full\n  read at: {liquid pressure: discharge port}"));
        Assert.Equal(Verdict.Conditional, finding.Verdict);
        Assert.Contains("discharge port", finding.Reservation, StringComparison.Ordinal);
    }

    [Fact]
    public void Above_the_critical_point_there_is_no_subcooling()
    {
        // Carbon dioxide at 90 bar(a): the critical pressure is 73.77 bar (Span and Wagner 1996).
        var finding = Judge(Valve().With("refrigerant: R-410A", "refrigerant: R-744").With("liquid pressure: 341.88", "liquid pressure: 90 bar(a)"));
        Assert.Equal(Verdict.NotEvaluated, finding.Verdict);
        Assert.Contains("transcritical", finding.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void The_head_pressure_raised_in_the_cold_counts_only_where_a_document_allows_it()
    {
        var cold = Valve().With("outdoor dry bulb: 95.0", "outdoor dry bulb: 45.0").With("running: full", "running: full\n  head pressure raised: yes");
        Assert.Equal(Verdict.NotEvaluated, Judge(cold).Verdict);
        // Winter method of the Californian pack: 37 to 55 °F outdoors (RA1, from memory).
        Assert.Equal(Verdict.Pass, Judge(cold.With("limits: {", "limits: {packs: [california-title-24], ")).Verdict);
    }

    [Fact]
    public void The_raters_pack_widens_the_tolerance()
    {
        // 13.5 °F against 10 ± 3 °F (installer) fails, against 10 ± 4 °F (rater, from memory) passes.
        var yaml = Valve("limits: {subcooling: {target: 10 °F, from: unit plate}}").With("liquid line: 95.0", "liquid line: 91.5");
        Assert.Equal(Verdict.Fail, Judge(yaml).Verdict);
        Assert.Equal(Verdict.PassWithinUncertainty, Judge(yaml.With("limits: {", "limits: {packs: [california-title-24-rater], ")).Verdict);
    }

    [Fact]
    public void A_blend_with_estimated_pairs_is_trusted_less()
    {
        // R-438A holds pairs without published parameters: 2 % of the pressure instead of 0.5 %.
        double Model(string refrigerant) => Judge(Valve().With("refrigerant: R-410A", $"refrigerant: {refrigerant}")
            .With("liquid pressure: 341.88", "liquid pressure: 250.0").With("liquid line: 95.0", "liquid line: 90.0"))
            .Budget.Single(b => b.Cause.EndsWith("equations of state", StringComparison.Ordinal)).ContributionSi;
        Assert.InRange(Model("R-438A") / Model("R-407C"), 3.5, 4.5);
    }
}
