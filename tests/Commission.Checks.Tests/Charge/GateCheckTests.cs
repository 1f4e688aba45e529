using Commission.Measurement.Decisions;
using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.Charge;

/// <summary>What comes before any number: air, running condition, steady running, weather.</summary>
public sealed class GateCheckTests
{
    private const string Air = "air: {filter: clean, coil: clean, panels on: yes, blower at cooling speed: yes}";

    private static Finding One(string yaml, string check) => Assert.Single(JobText.Evaluate(yaml, check));

    [Fact]
    public void Prerequisites_shown_by_the_temperature_split_pass()
    {
        // Table RA3.2-3 (from memory) at 80 °F return and 67 °F wet bulb: 18.3 °F; 80.0 − 61.8 = 18.2 °F.
        var finding = One(ChargeJobs.FenRow, "charge.prerequisites");
        Assert.Equal(Verdict.Pass, finding.Verdict);
        Assert.Equal(18.2, finding.Measured!.Value.Si * 1.8, 0.01);
        Assert.Equal(18.3 + 3, finding.Limits[0].UpperSi!.Value * 1.8, 0.01);
    }

    [Theory]
    [InlineData("supply dry bulb: 61.8", "supply dry bulb: 58.0", "means low airflow")]
    [InlineData("filter: clean", "filter: dirty", "the filter is dirty")]
    [InlineData("coil: clean", "coil: dirty", "the indoor coil is dirty")]
    [InlineData("panels on: yes", "panels on: no", "a panel was off")]
    [InlineData("blower at cooling speed: yes", "blower at cooling speed: no", "did not run at its cooling speed")]
    public void Prerequisites_shown_not_to_hold_fail(string from, string to, string why)
    {
        var finding = One(ChargeJobs.FenRow.With(from, to), "charge.prerequisites");
        Assert.Equal(Verdict.Fail, finding.Verdict);
        Assert.Contains(why, finding.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Prerequisites_not_shown_are_a_reservation_and_nothing_at_all_is_not_evaluated()
    {
        Assert.Equal(Verdict.Conditional, One(ChargeJobs.FenRow.With(Air, "air: {filter: clean}"), "charge.prerequisites").Verdict);
        Assert.Equal(Verdict.NotEvaluated, One(ChargeJobs.FenRow.With(Air, "").With(", supply dry bulb: 61.8", ""), "charge.prerequisites").Verdict);

        // Temperatures read too soon show no airflow, and they are written all the same.
        var soon = One(ChargeJobs.FenRow.With(Air, "").With("compressor started: \"10:00\"", "compressor started: \"10:25\""), "charge.prerequisites");
        Assert.Equal((Verdict.NotEvaluated, "of the air side only temperatures are recorded, which show no airflow here: filter, coil, panels and blower are not recorded"), (soon.Verdict, soon.Reason));
    }

    [Theory]
    [InlineData("1200 cfm", Verdict.Pass)]
    [InlineData("850 cfm", Verdict.Fail)]
    public void A_measured_airflow_is_judged_by_capacity(string flow, Verdict verdict)
    {
        // 3 ton: 1200 cfm are 400 cfm/ton, 850 cfm are 283 cfm/ton; at least 300 (California Residential Appendix RA3.2, published).
        var finding = One(ChargeJobs.FenRow
            .With("air: {", $"air: {{airflow: {{method: hood, value: {flow}}}, ")
            .With("instruments:", "instruments:\n  - {id: hood, kind: flow hood, accuracy: 3 % of reading, resolution: 1 cfm, reads: [airflow]}"), "charge.prerequisites");
        Assert.Equal(verdict, finding.Verdict);
    }

    [Fact]
    public void A_cold_room_has_other_measures_of_its_air() =>
        Assert.Empty(JobText.Evaluate(ChargeJobs.FenRow.With("system: split", "system: refrigeration, application: medium temperature"), "charge.prerequisites"));

    [Theory]
    [InlineData("fixed", "full", Verdict.Pass)]
    [InlineData("two-stage", "high stage", Verdict.Pass)]
    [InlineData("two-stage", "unknown", Verdict.Conditional)]
    [InlineData("two-stage", "part", Verdict.NotEvaluated)]
    [InlineData("variable speed", "charging mode", Verdict.Pass)]
    [InlineData("variable speed", "full", Verdict.NotEvaluated)]
    [InlineData("variable speed", "unknown", Verdict.NotEvaluated)]
    public void Running_condition(string compressor, string running, Verdict verdict) =>
        Assert.Equal(verdict, One(ChargeJobs.FenRow.With("compressor: fixed", $"compressor: {compressor}").With("running: full", $"running: {running}"), "charge.running-condition").Verdict);

    [Theory]
    [InlineData("10:15", Verdict.Pass)]
    [InlineData("10:16", Verdict.NotEvaluated)]
    public void Fifteen_minutes_since_the_start(string start, Verdict verdict) =>
        Assert.Equal(verdict, One(ChargeJobs.FenRow.With("compressor started: \"10:00\"", $"compressor started: \"{start}\""), "charge.stabilised").Verdict);

    [Fact]
    public void And_fifteen_more_since_the_last_change_of_charge()
    {
        var events = ChargeJobs.FenRow.With("running: full", "running: full\n  events: [{at: \"10:20\", added: 3 oz}]");
        var finding = One(events, "charge.stabilised");
        Assert.Equal(Verdict.NotEvaluated, finding.Verdict);
        Assert.Contains("10 min after the last change of charge", finding.Statement, StringComparison.Ordinal);
    }

    // A coil with enough air rarely cools it by more than 23 °F (common practice, no source): what is left to judge by where no wet bulb opens the table.
    [Theory]
    [InlineData("58.6", Verdict.Pass)]
    [InlineData("57.6", Verdict.PassWithinUncertainty)]
    [InlineData("56.4", Verdict.Fail)]
    public void Without_a_wet_bulb_a_split_that_is_rarely_exceeded_shows_enough_air(string supply, Verdict verdict)
    {
        var finding = One(ChargeJobs.FenRow.With("return wet bulb: 67.0, ", "").With("supply dry bulb: 61.8", $"supply dry bulb: {supply}"), "charge.prerequisites");
        Assert.Equal(verdict, finding.Verdict);
        Assert.Equal(80 - double.Parse(supply, System.Globalization.CultureInfo.InvariantCulture), finding.Measured!.Value.Si * 1.8, 0.01);
    }

    [Fact]
    public void Without_times_it_is_not_evaluated() =>
        Assert.Equal(Verdict.NotEvaluated, One(ChargeJobs.FenRow.With("  compressor started: \"10:00\"\n", ""), "charge.stabilised").Verdict);

    [Fact]
    public void The_last_two_settled_readings_are_compared_and_what_they_share_cancels()
    {
        // 12.93 − 13.23 = −0.30 °F and 10.49 − 10.24 = 0.25 °F by the hand calculation of Tarn Lane; the zero and gain of a gauge are common. What a steady
        // system moves does not cancel: 0.15 K and 0.3 % of 134 psia · 0.42 °F/psi (0.17 °F) at each reading: 2·√2·√(0.27² + 0.17²) = 0.90 °F.
        var findings = JobText.Evaluate(ChargeJobs.TarnLane, "charge.stabilised");
        var superheat = findings.Single(f => f.Subject == "superheat, 11:20 to 11:35");
        Assert.Equal(-0.30, superheat.Measured!.Value.Si * 1.8, 0.05);
        Assert.Equal(Verdict.PassWithinUncertainty, superheat.Verdict);
        Assert.Equal(0.90, superheat.Measured.ExpandedSi!.Value * 1.8, 0.04);
        Assert.Equal(0.25, findings.Single(f => f.Subject == "subcooling, 11:20 to 11:35").Measured!.Value.Si * 1.8, 0.05);
    }

    [Fact]
    public void A_system_that_still_moves_has_not_settled() =>
        Assert.Equal(Verdict.NotEvaluated, JobText.Evaluate(ChargeJobs.TarnLane.With("liquid line: 97.4", "liquid line: 99.4"), "charge.stabilised").Single(f => f.Subject!.StartsWith("subcooling", StringComparison.Ordinal)).Verdict);

    [Theory]
    [InlineData("outdoor dry bulb: 95.0", "outdoor dry bulb: 54.9", "outdoor dry bulb, 10:30")]
    [InlineData("outdoor dry bulb: 95.0", "outdoor dry bulb: 115.1", "outdoor dry bulb, 10:30")]
    [InlineData("return dry bulb: 80.0", "return dry bulb: 69.0", "return dry bulb, 10:30")]
    [InlineData("return wet bulb: 67.0", "return wet bulb: 76.5", "return wet bulb, 10:30")]
    public void Weather_outside_the_method_is_not_evaluated(string from, string to, string subject)
    {
        var findings = JobText.Evaluate(ChargeJobs.FenRow.With(from, to), "charge.method-validity");
        Assert.Equal(3, findings.Length);
        Assert.Equal(Verdict.NotEvaluated, findings.Single(f => f.Subject == subject).Verdict);
        Assert.All(findings.Where(f => f.Subject != subject), f => Assert.Equal(Verdict.Pass, f.Verdict));
    }

    [Fact]
    public void The_makers_own_range_comes_first() =>
        Assert.Equal(
            Verdict.NotEvaluated,
            JobText.Evaluate(ChargeJobs.FenRow.With("instruments:", "limits: {valid outdoor: 65 to 90 °F}\ninstruments:"), "charge.method-validity").Single(f => f.Subject == "outdoor dry bulb, 10:30").Verdict);

    [Fact]
    public void Air_that_was_not_read_is_told() =>
        Assert.Equal(Verdict.NotEvaluated, JobText.Evaluate(ChargeJobs.FenRow.With("outdoor dry bulb: 95.0, ", ""), "charge.method-validity").Single(f => f.Subject == "outdoor dry bulb, 10:30").Verdict);

    [Theory]
    [InlineData("0.067 in", Verdict.Pass)]
    [InlineData("0.059 in", Verdict.Fail)]
    public void The_installed_orifice_is_the_one_the_maker_asks_for(string size, Verdict verdict)
    {
        var yaml = ChargeJobs.FenRow.With("metering: fixed orifice", $"metering: {{kind: fixed orifice, size: {size}, plate size: 0.067 in}}");
        Assert.Equal(verdict, One(yaml, "charge.match").Verdict);
        Assert.Equal(verdict == Verdict.Pass ? Verdict.Pass : Verdict.Conditional, One(yaml, "charge.superheat").Verdict);
    }

    [Fact]
    public void A_pair_the_maker_does_not_list_makes_a_pass_conditional()
    {
        var yaml = ChargeJobs.FenRow.With("capacity: 3 ton", "capacity: 3 ton, matched: no");
        Assert.Equal(Verdict.Fail, One(yaml, "charge.match").Verdict);
        Assert.Equal(Verdict.Conditional, One(yaml, "charge.superheat").Verdict);
        Assert.Empty(JobText.Evaluate(ChargeJobs.FenRow, "charge.match"));
    }

    [Fact]
    public void Pressure_and_temperature_from_different_places_make_a_pass_conditional()
    {
        var yaml = ChargeJobs.FenRow.With("running: full", "running: full\n  read at: {vapor pressure: service valve, vapor line: evaporator outlet}");
        Assert.Contains("the line between", One(yaml, "charge.superheat").Reservation, StringComparison.Ordinal);
        Assert.Contains("the line between", One(yaml, "charge.superheat-floor").Reservation, StringComparison.Ordinal);
    }

    [Fact]
    public void A_capillary_in_a_cold_room_is_not_judged_by_the_table_of_comfort_cooling()
    {
        var yaml = ChargeJobs.FenRow.With("system: split", "system: refrigeration, application: medium temperature").With("metering: fixed orifice", "metering: capillary");
        Assert.Equal(Verdict.Information, One(yaml, "charge.superheat").Verdict);
        Assert.Equal(Verdict.Pass, One(yaml.With("instruments:", "limits: {superheat: {target: 12 °F, tolerance: 4 °F, from: manual}}\ninstruments:"), "charge.superheat").Verdict);
    }

    [Fact]
    public void A_refrigerant_without_equations_is_told()
    {
        // R-412A holds R-143b, for which no equation of state is at hand.
        var finding = One(ChargeJobs.FenRow.With("refrigerant: R-410A", "refrigerant: R-412A"), "charge.superheat");
        Assert.Equal(Verdict.NotEvaluated, finding.Verdict);
        Assert.Contains("cannot be computed", finding.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_tolerance_in_other_units_is_printed_in_the_jobs_own()
    {
        // 18.3 + 3 °F = 21.3 °F = 11.83 K.
        var yaml = ChargeJobs.FenRow.With("units: us", "units: {preset: us, temperature difference: K}");
        Assert.StartsWith("at most 11.8 K", One(yaml, "charge.prerequisites").Limits[0].Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Airflow_read_with_an_unknown_accuracy_is_a_reservation() =>
        Assert.Contains("accuracy of return dry bulb", One(ChargeJobs.FenRow.With("kind: psychrometer, accuracy: 0.5 °F", "kind: psychrometer"), "charge.prerequisites").Reservation, StringComparison.Ordinal);

    [Fact]
    public void A_row_without_anything_of_the_circuit_is_no_charge_reading()
    {
        var yaml = ChargeJobs.FenRow.With("vapor pressure: 118.35, liquid pressure: 341.88, vapor line: 52.0, liquid line: 95.0, ", "");
        Assert.All(["charge.running-condition", "charge.stabilised", "charge.method-validity", "charge.return-visit", "charge.superheat-floor"], check => Assert.Empty(JobText.Evaluate(yaml, check)));
    }

    [Fact]
    public void A_known_heat_and_its_rise_show_the_airflow()
    {
        // 240 V, 40 A and 30 °F make 1011 cfm at sea level (worked number), with 0.365 W/cfm of the blower 1051 cfm: 350 cfm/ton of 3 ton; with 36 °F 870 cfm, 290 cfm/ton.
        string Heat(double supply) => ChargeJobs.FenRow
            .With("air: {", FormattableString.Invariant($"air: {{airflow: {{method: heat rise, heat rise: {{volts: 240 V, amps: 40 A, return: 70.0 °F, supply: {supply:0.0} °F}}}}, "))
            .With("instruments:", "instruments:\n  - {id: meter, kind: multimeter, accuracy: 1 % of reading, resolution: 0.1 V, reads: [voltage, current]}");
        Assert.Equal(350, One(Heat(100), "charge.prerequisites").Measured!.Value.Value, 5.0);
        Assert.Equal(Verdict.Fail, One(Heat(106), "charge.prerequisites").Verdict);
        Assert.Equal(Verdict.NotEvaluated, One(Heat(106), "charge.superheat").Verdict);
    }

    [Fact]
    public void The_makers_least_airflow_comes_before_the_least_for_the_capacity()
    {
        var yaml = ChargeJobs.FenRow
            .With("air: {", "air: {airflow: {method: hood, value: 1000 cfm}, ")
            .With("instruments:", "limits: {airflow: {minimum: 1050 cfm, maximum: 1350 cfm, from: manual}}\ninstruments:\n  - {id: hood, kind: flow hood, accuracy: 3 % of reading, resolution: 1 cfm, reads: [airflow]}");
        var finding = One(yaml, "charge.prerequisites");
        Assert.Equal(Verdict.Fail, finding.Verdict);
        Assert.Equal("at least 1050 cfm", finding.Limits[0].Text);
    }

    [Fact]
    public void A_split_read_too_soon_shows_nothing()
    {
        var finding = One(ChargeJobs.FenRow.With("compressor started: \"10:00\"", "compressor started: \"10:25\""), "charge.prerequisites");
        Assert.Contains("the airflow is enough", finding.Reservation, StringComparison.Ordinal);
    }
}
