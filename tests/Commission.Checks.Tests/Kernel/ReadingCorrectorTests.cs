using Commission.Checks.Kernel;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Xunit;

namespace Commission.Checks.Tests.Kernel;

/// <summary>
/// From what was written to what is judged. Worked by hand: a bound ± a has u = a/√3, one step d of an indication u = d/√12, independent
/// causes add in squares (JCGM 100, 4.3.7, F.2.2.1 and 5.1.2); 1 inHg = 3386.389 Pa, 1 psi = 6894.757 Pa.
/// </summary>
public sealed class ReadingCorrectorTests
{
    private const double Psi = 6894.757293168;
    private const double InchOfMercury = 3386.388640;

    [Fact]
    public void A_depth_below_the_atmosphere_is_taken_from_it_with_the_doubt_of_both()
    {
        // 100 kPa ± 0.4 (u 200 Pa) less 10 inHg, ± 0.6 inHg stated (u 0.3 inHg = 1015.9 Pa): 66 136 Pa, u = √(200² + 1015.9²) = 1035.4 Pa.
        var read = Pressure("10 inHg vac +/- 0.6 inHg");
        Assert.Equal(100_000 - (10 * InchOfMercury), read.Value.Value, 0.01);
        Assert.Equal(1035.4, read.Value.StandardUncertainty, 0.1);
        Assert.Equal(read.Value.Value, read.AfterZero, 1e-9);
        Assert.Equal(2, read.Value.Budget.Count);
        Assert.Contains(read.Steps, s => s.Formula == "p_atm − depth");
    }

    [Fact]
    public void A_gauge_pressure_stands_on_the_atmosphere_and_its_doubt()
    {
        // 100 psig ± 1 psi (u 3447.4 Pa) on 100 kPa (u 200 Pa): u = 3453.2 Pa.
        var read = Pressure("100 psig +/- 1 psi");
        Assert.Equal(100_000 + (100 * Psi), read.Value.Value, 0.01);
        Assert.Equal(3453.2, read.Value.StandardUncertainty, 0.1);
        Assert.Equal(["vapor pressure", "station pressure"], read.Uses.Select(u => u.Name));
    }

    [Fact]
    public void An_absolute_pressure_needs_no_atmosphere()
    {
        var read = Pressure("100 psia +/- 1 psi");
        Assert.Equal(100 * Psi, read.Value.Value, 0.01);
        Assert.Equal(Psi / 2, read.Value.StandardUncertainty, 0.01);
        Assert.Equal(["vapor pressure"], read.Uses.Select(u => u.Name));
        Assert.Empty(read.Steps);
    }

    [Fact]
    public void Two_gauges_share_one_atmosphere()
    {
        // Their difference has the doubt of the two gauges, √2·0.5 psi, and none of the atmosphere.
        var context = Context("");
        var first = context.Readings.Pressure("a", ReadingName.VaporPressure, context.Job.Charging!.Readings[0].VaporPressure!);
        var second = context.Readings.Pressure("b", ReadingName.LiquidPressure, context.Job.Charging!.Readings[0].LiquidPressure!);
        Assert.Equal(Math.Sqrt(2) * Psi / 2, (second.Value - first.Value).StandardUncertainty, 0.01);
    }

    [Fact]
    public void A_zero_takes_the_offset_off_and_leaves_the_part_of_the_place()
    {
        // 0.5 % of 500 psi is 2.5 psi: u 1.4434 psi, half of its variance in common, which the zero knows: 1.0206 psi stay; step 0.1 psi at reading and zero: 0.1/√12 each.
        var read = Pressure("100.0 psig", "{id: low, kind: pressure gauge, accuracy: 0.5 % of full scale, full scale: 500 psig, resolution: 0.1 psi, reads: [vapor pressure], checks: {zero: 2.0 psig}}");
        Assert.Equal(100_000 + (98 * Psi), read.Value.Value, 0.01);
        Assert.Equal(read.Value.Value, read.AfterZero, 1e-6);
        var u = Math.Sqrt((1.020621 * 1.020621) + (2 * 0.1 * 0.1 / 12));
        Assert.Equal(Math.Sqrt((u * u * Psi * Psi) + (200 * 200)), read.Value.StandardUncertainty, 0.1);
        Assert.True(read.AccuracyKnown);
        Assert.Equal("low", read.Instrument);
        Assert.Contains(read.Uses, x => x.Name == "low: reading open to air");
    }

    [Fact]
    public void A_known_pressure_with_an_uncertainty_ties_the_gauge_down()
    {
        // Read 201 at 200 psig: 100.5 psig shown is 100.0. Of the maker's 2.5 psi the half that all readings share goes; linearity and hysteresis stay
        // (2.5/√3·√½ = 1.0206 psi), so does 0.1 % of full scale (0.5 psi, u 0.2887 psi), the reference
        // at half its distance (0.4/2·0.5 = 0.1 psi), the steps of reading (0.1/√12 = 0.02887) and of the known point (half of it, × 200/201).
        var read = Pressure("100.5 psig", "{id: low, kind: pressure gauge, accuracy: 0.5 % of full scale, full scale: 500 psig, resolution: 0.1 psi, reads: [vapor pressure], checks: {zero: 0.0 psig, known pressure: {applied: 200.0 psig +/- 0.4, read: 201.0 psig}}}");
        Assert.Equal(100_000 + (100 * Psi), read.Value.Value, 0.01);
        Assert.Equal(100_000 + (100.5 * Psi), read.AfterZero, 0.01);
        var psi = Math.Sqrt((1.020621 * 1.020621) + (0.288675 * 0.288675) + (0.1 * 0.1) + (0.028868 * 0.028868) + (0.0144 * 0.0144) + (0.0144 * 0.0144));
        Assert.Equal(Math.Sqrt((psi * psi * Psi * Psi) + (200 * 200)), read.Value.StandardUncertainty, 0.005 * psi * Psi);
        Assert.DoesNotContain(read.Value.Budget, line => line.Cause.ToString() == "low: accuracy");
    }

    [Theory]
    [InlineData("249.0 psig", false)]
    [InlineData("251.0 psig", true)]
    public void A_quarter_beyond_the_known_pressure_the_makers_statement_counts_again(string read, bool makers) =>
        Assert.Equal(makers, Pressure(read, "{id: low, kind: pressure gauge, accuracy: 1 % of reading, full scale: 500 psig, resolution: 0.1 psi, reads: [vapor pressure], checks: {zero: 0.0 psig, known pressure: {applied: 200.0 psig +/- 0.4, read: 200.0 psig}}}")
            .Value.Budget.Any(line => line.Cause.ToString() == "low: accuracy"));

    [Fact]
    public void What_is_stated_with_the_reading_comes_before_the_instrument()
    {
        var read = Temperature("50.0 °F +/- 0.9 °F", "{id: probe, kind: thermometer, accuracy: 5 °F, resolution: 0.1 °F, reads: [vapor line]}");
        // U 0.9 °F = 0.5 K, u 0.25 K.
        Assert.Equal(0.25, read.Value.StandardUncertainty, 1e-9);
        Assert.True(read.AccuracyKnown);
    }

    [Fact]
    public void Without_an_instrument_the_last_digit_alone_is_known()
    {
        // 50.0 °F: step 0.1 °F = 0.05556 K, /√12 = 0.016038 K.
        var read = Temperature("50.0 °F", "");
        Assert.Equal(283.15, read.Value.Value, 1e-9);
        Assert.Equal(0.016038, read.Value.StandardUncertainty, 1e-6);
        Assert.False(read.AccuracyKnown);
        Assert.Null(read.Instrument);
    }

    [Fact]
    public void An_ice_point_takes_its_residual_off()
    {
        // 33.4 °F in ice: 1.4 °F too much; 51.4 °F is 50.0 °F. Sensor ± 0.9 °F (0.5 K): its place keeps 0.5/√3·√½ = 0.204124 K,
        // 10 K from ice bring back 10/50 of 0.5 K as slope (0.057735), bath ± 0.05 K (0.028868), two steps 0.016038.
        var read = Temperature("51.4 °F", "{id: probe, kind: thermometer, accuracy: 0.9 °F, resolution: 0.1 °F, reads: [vapor line], checks: {ice point: {read: 33.4 °F}}}");
        Assert.Equal(283.15, read.Value.Value, 1e-6);
        Assert.Equal(283.15, read.AfterZero, 1e-6);
        Assert.Equal(Math.Sqrt((0.204124 * 0.204124) + (0.057735 * 0.057735) + (0.028868 * 0.028868) + (2 * 0.016038 * 0.016038)), read.Value.StandardUncertainty, 1e-5);
    }

    [Theory]
    [InlineData("yes", 49.87, 0.5)]
    [InlineData("no", 48.70, 5)]
    public void A_clamp_is_corrected_toward_the_air_by_the_middle_of_its_range(string insulated, double fahrenheit, double share)
    {
        // Range 0 to 1 % (insulated) or 10 % (bare) of 26 °F; half the range stays as a bound: share/100·26/1.8/√3 K, beside the stated clamp.
        var context = Context($"{{id: clamp, kind: pipe clamp, accuracy: 0.9 °F, insulated: {insulated}, reads: [vapor line]}}", "vapor line: 50 °F, return dry bulb: 76 °F +/- 0.001 °F");
        var row = context.Job.Charging!.Readings[0];
        var air = context.Readings.Temperature("return", ReadingName.ReturnAir, row.ReturnDryBulb!);
        var read = context.Readings.Temperature("vapor line", ReadingName.VaporLine, row.VaporLine!, air);
        Assert.Equal(fahrenheit, ((read.Value.Value - 273.15) * 1.8) + 32, 5e-4);
        Assert.Equal(283.15, read.AfterZero, 1e-9);
        var line = Assert.Single(read.Value.Budget, b => b.Cause.ToString().EndsWith("air around the clamp", StringComparison.Ordinal));
        Assert.Equal(share / 100 * 26 / 1.8 / Math.Sqrt(3), Math.Abs(line.Contribution), 1e-3);
        Assert.Equal(["vapor line", "return", "clamp: insulated"], read.Uses.Select(u => u.Name));
    }

    [Fact]
    public void A_thermometer_in_the_pipe_has_no_air_around_it() =>
        Assert.Equal(283.15, Temperature("50 °F", "{id: probe, kind: thermometer, accuracy: 0.9 °F, reads: [vapor line]}", air: true).Value.Value, 1e-9);

    [Fact]
    public void The_same_reading_is_corrected_once()
    {
        var context = Context("");
        var given = context.Job.Charging!.Readings[0].VaporPressure!;
        Assert.Same(context.Readings.Pressure("a", ReadingName.VaporPressure, given), context.Readings.Pressure("b", ReadingName.VaporPressure, given));
    }

    [Fact]
    public void A_plain_quantity_keeps_its_accuracy_and_step()
    {
        // 1.5 % of 24.0 A is 0.36 A (u 0.20785), step 0.1 A (u 0.028868): 0.20984 A.
        var context = JobText.Context(JobLines.Of("instruments:\n  - {id: meter, kind: clamp meter, accuracy: 1.5 % of reading, resolution: 0.1 A, reads: [electrical]}\nelectrical: {total: 24.0 A}"));
        var read = context.Readings.Plain("total", ReadingName.Current, context.Job.Electrical!.Total!, DisplayKind.Current);
        Assert.Equal(24, read.Value.Value);
        Assert.Equal(0.20984, read.Value.StandardUncertainty, 1e-4);
        Assert.Equal(24, read.AfterZero);
    }

    private const string Low = "{id: low, kind: pressure gauge, accuracy: 0.5 % of full scale, full scale: 500 psig, resolution: 0.1 psi, reads: [vapor pressure], checks: {CHECKS}}";

    private static string Gauge(string checks) => Low.Replace("CHECKS", checks, StringComparison.Ordinal);

    // A check that was put right counts as it was left: 0.5 of 2.0 psi, and 200.4 of 203.0 at 200 psig, which without a zero moves every reading near by 0.4.
    [Fact]
    public void What_was_adjusted_counts_as_it_was_left()
    {
        Assert.Equal(100_000 + (99.5 * Psi), Pressure("100.0 psig", Gauge("zero: {read: 2.0 psig, adjusted: 0.5 psig}")).Value.Value, 0.01);
        var known = Pressure("190.2 psig", Gauge("known pressure: {applied: 200.0 psig +/- 0.4, read: 203.0 psig, adjusted: 200.4 psig}"));
        Assert.Equal(100_000 + (189.8 * Psi), known.Value.Value, 0.01);
        Assert.Equal(100_000 + (190.2 * Psi), known.AfterZero, 0.01);
        // Half the pressure away one point says nothing.
        Assert.Equal(100_000 + (100.2 * Psi), Pressure("100.2 psig", Gauge("known pressure: {applied: 200.0 psig +/- 0.4, read: 200.4 psig}")).Value.Value, 0.01);
        Assert.Equal(["vapor pressure", "low: known pressure applied", "low: known pressure read", "station pressure"], known.Uses.Select(u => u.Name));
        Assert.Equal("200.4 psig", known.Uses[2].Text);
        Assert.True(known.AccuracyKnown);
        var ice = Temperature("51.4 °F", "{id: probe, kind: thermometer, accuracy: 0.9 °F, resolution: 0.1 °F, reads: [vapor line], checks: {ice point: {read: 36.0 °F, adjusted: 33.4 °F}}}");
        Assert.Equal(283.15, ice.Value.Value, 1e-6);
        Assert.Equal("33.4 °F", ice.Uses.Single(u => u.Name == "probe: ice point").Text);
        Assert.Equal("36.0 °F", Temperature("51.4 °F", "{id: probe, kind: thermometer, accuracy: 0.9 °F, resolution: 0.1 °F, reads: [vapor line], checks: {ice point: {read: 36.0 °F}}}").Uses.Single(u => u.Name == "probe: ice point").Text);
    }

    [Fact]
    public void A_zero_in_the_air_is_none_of_an_absolute_reading() =>
        Assert.Equal(100 * Psi, Pressure("100.0 psia", Gauge("zero: 2.0 psig")).Value.Value, 0.01);

    [Fact]
    public void A_stated_doubt_comes_before_a_known_pressure_too()
    {
        var read = Pressure("100.5 psig +/- 2 psi", Gauge("zero: 0.0 psig, known pressure: {applied: 200.0 psig +/- 0.4, read: 201.0 psig}"));
        Assert.Contains(read.Value.Budget, b => b.Cause.ToString() == "vapor pressure: as stated");
        Assert.DoesNotContain(read.Value.Budget, b => b.Cause.ToString() == "low: repeatability");
    }

    // The gauge moves in tenths whatever the crew wrote; without a word of its steps the digits written count.
    [Theory]
    [InlineData("{id: low, kind: pressure gauge, accuracy: 1 psi, resolution: 0.1 psi, reads: [vapor pressure]}", "100 psig", 0.1)]
    [InlineData("{id: low, kind: pressure gauge, accuracy: 1 psi, reads: [vapor pressure]}", "100 psig", 1)]
    [InlineData("{id: low, kind: pressure gauge, reads: [vapor pressure]}", "100.0 psig", 0.1)]
    public void The_step_is_the_instruments_else_the_last_digit(string instrument, string read, double psi) => Assert.Equal(
        psi * Psi / Math.Sqrt(12),
        Pressure(read, instrument).Value.Budget.Single(b => b.Cause.ToString() == "vapor pressure: resolution").Contribution,
        1e-6 * Psi);

    [Fact]
    public void A_gauge_that_is_tied_down_keeps_its_own_step()
    {
        var read = Pressure("100 psig", Gauge("zero: 0.0 psig, known pressure: {applied: 200.0 psig +/- 0.4, read: 200.0 psig}"));
        Assert.Equal(0.1 * Psi / Math.Sqrt(12), read.Value.Budget.Single(b => b.Cause.ToString() == "vapor pressure: resolution").Contribution, 1e-6 * Psi);
        Assert.True(read.AccuracyKnown);
    }

    [Theory]
    [InlineData("applied: 200.0 psig +/- 0.4, read: 201.0 psig", "point-to-point correction; the reference states its uncertainty")]
    [InlineData("applied: 200.0 psig, read: 201.0 psig", "reported, not corrected")]
    public void Corrections_are_steps_with_their_kind_and_instrument(string known, string source)
    {
        var read = Pressure("100.5 psig", Gauge($"zero: 0.2 psig, known pressure: {{{known}}}"));
        Assert.Equal(["zero", "known points", "p_atm", "p_abs"], read.Steps.Select(s => s.Symbol));
        Assert.Equal((Commission.Measurement.Corrections.CorrectionKind.Zero, "low"), (read.Steps[0].Correction!.Value, read.Steps[0].Instrument));
        Assert.Equal((Commission.Measurement.Corrections.CorrectionKind.KnownPoints, source), (read.Steps[1].Correction!.Value, read.Steps[1].Source));
        Assert.Equal("p + p_atm", read.Steps[3].Formula);
        Assert.Contains("psig at ", read.Steps[3].Substitution, StringComparison.Ordinal);
        Assert.DoesNotContain("psig", Pressure("10 inHg vac").Steps[^1].Substitution, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_cause_of_a_correction_has_a_unit_but_the_makers_bound()
    {
        var gauge = Context(Gauge("zero: 0.2 psig, known pressure: {applied: 200.0 psig +/- 0.4, read: 201.0 psig}"), "vapor pressure: 100.5 psig");
        var pressure = gauge.Readings.Pressure("vapor pressure", ReadingName.VaporPressure, gauge.Job.Charging!.Readings[0].VaporPressure!);
        Assert.All(pressure.Value.Budget, b => Assert.Equal(b.Cause.Kind == CauseKind.Accuracy ? null : DisplayKind.PressureDifference, gauge.Causes.KindOf(b.Cause)));
        var clamp = Context("{id: clamp, kind: pipe clamp, accuracy: 0.9 °F, resolution: 0.1 °F, insulated: yes, reads: [vapor line], checks: {ice point: {read: 33.4 °F}}}", "vapor line: 50 °F, return dry bulb: 76 °F +/- 0.001 °F");
        var row = clamp.Job.Charging!.Readings[0];
        var air = clamp.Readings.Temperature("return", ReadingName.ReturnAir, row.ReturnDryBulb!);
        var line = clamp.Readings.Temperature("vapor line", ReadingName.VaporLine, row.VaporLine!, air);
        Assert.All(line.Value.Budget, b => Assert.Equal(b.Cause.Kind == CauseKind.Accuracy, clamp.Causes.KindOf(b.Cause) is null));
        Assert.Equal(DisplayKind.Percentage, clamp.Causes.KindOf(line.Value.Budget.Single(b => b.Cause.ToString().EndsWith("air around the clamp", StringComparison.Ordinal)).Cause));
        Assert.Equal(["ice point", "clamp"], line.Steps.Select(s => s.Symbol));
        Assert.StartsWith("insulated clamp", MessageWriter.Words.Format(line.Value.Budget.Single(b => b.Cause.ToString().EndsWith("air around the clamp", StringComparison.Ordinal)).Cause.Source, Language.English), StringComparison.Ordinal);
    }

    [Fact]
    public void A_clamp_of_which_nothing_is_said_is_bare()
    {
        // Half of 10 % of 26 °F are 1.30 °F, as above.
        var context = Context("{id: clamp, kind: pipe clamp, accuracy: 0.9 °F, reads: [vapor line]}", "vapor line: 50 °F, return dry bulb: 76 °F +/- 0.001 °F");
        var row = context.Job.Charging!.Readings[0];
        var air = context.Readings.Temperature("return", ReadingName.ReturnAir, row.ReturnDryBulb!);

        // Without the air around it nothing is corrected, whichever is asked for first.
        Assert.Equal(283.15, context.Readings.Temperature("vapor line", ReadingName.VaporLine, row.VaporLine!).Value.Value, 1e-9);
        var read = context.Readings.Temperature("vapor line", ReadingName.VaporLine, row.VaporLine!, air);
        Assert.Equal(48.70, ((read.Value.Value - 273.15) * 1.8) + 32, 5e-4);
        Assert.StartsWith("bare clamp", MessageWriter.Words.Format(read.Value.Budget.Single(b => b.Cause.ToString().EndsWith("air around the clamp", StringComparison.Ordinal)).Cause.Source, Language.English), StringComparison.Ordinal);
    }

    // One rule for all sensors: ice takes the common part; what its place adds (at most 0.6 K, half of the variance) and a slope stay. 50 °F are 10 K from ice:
    // class 2 has 0.75 % of it (IEC 60584-1), a class B resistance (0.3 K at 0 °C) gets 10/50 of 0.3 K back.
    [Fact]
    public void Ice_takes_the_common_part_of_every_sensor()
    {
        const string Probe = "{id: probe, kind: thermometer, sensor: SENSOR, resolution: 0.1 °F, reads: [vapor line], checks: {ice point: {read: 32.0 °F}}}";
        var couple = Temperature("50 °F", Probe.Replace("SENSOR", "thermocouple K class 2", StringComparison.Ordinal));
        Assert.DoesNotContain(couple.Value.Budget, b => b.Cause.ToString() == "probe: accuracy");
        Assert.True(couple.AccuracyKnown);
        Assert.Equal(0.1 / 1.8 / Math.Sqrt(12), couple.Value.Budget.Single(b => b.Cause.ToString() == "vapor line: resolution").Contribution, 1e-9);
        Assert.Equal(0.6 / Math.Sqrt(6), couple.Value.Budget.Single(b => b.Cause.ToString() == "probe: accuracy, vapor line").Contribution, 1e-9);
        Assert.Equal(0.075 / Math.Sqrt(3), couple.Value.Budget.Single(b => b.Cause.ToString() == "probe: away from the ice point").Contribution, 1e-9);
        var resistance = Temperature("50 °F", Probe.Replace("SENSOR", "RTD class B", StringComparison.Ordinal));
        Assert.DoesNotContain(resistance.Value.Budget, b => b.Cause.ToString() == "probe: accuracy");
        Assert.Equal(0.3 / Math.Sqrt(6), resistance.Value.Budget.Single(b => b.Cause.ToString() == "probe: accuracy, vapor line").Contribution, 1e-9);
        Assert.Equal(0.06 / Math.Sqrt(3), resistance.Value.Budget.Single(b => b.Cause.ToString() == "probe: away from the ice point").Contribution, 1e-9);
        var stated = Temperature("50.0 °F +/- 0.9 °F", Probe.Replace("SENSOR", "thermocouple K class 2", StringComparison.Ordinal));
        Assert.Contains(stated.Value.Budget, b => b.Cause.ToString() == "vapor line: as stated");
        Assert.DoesNotContain(stated.Value.Budget, b => b.Cause.ToString() == "vapor line: resolution");
    }

    // 4 °F off in ice is more than may be corrected: 4 °F stay as a bound, u 4/1.8/√3 K; a good ice point leaves none. So with a zero of 20 psi on a 500 psi
    // gauge, and with 30 psi at 200 psig, of which a reading of 100 psig keeps its half, once the gain is corrected.
    [Fact]
    public void A_failed_check_stays_as_doubt()
    {
        const string Probe = "{id: probe, kind: thermometer, accuracy: 0.9 °F, resolution: 0.1 °F, reads: [vapor line], checks: {ice point: {read: READ}}}";
        var failed = Temperature("54.0 °F", Probe.Replace("READ", "36.0 °F", StringComparison.Ordinal));
        Assert.Equal(283.15, failed.Value.Value, 1e-6);
        Assert.Equal(4 / 1.8 / Math.Sqrt(3), failed.Value.Budget.Single(b => b.Cause.ToString() == "probe: failed its ice point").Contribution, 1e-9);
        Assert.DoesNotContain(Temperature("51.4 °F", Probe.Replace("READ", "33.4 °F", StringComparison.Ordinal)).Value.Budget, b => b.Cause.ToString() == "probe: failed its ice point");
        Assert.DoesNotContain(Temperature("51.4 °F", Probe.Replace("READ", "36.0 °F, adjusted: 33.4 °F", StringComparison.Ordinal)).Value.Budget, b => b.Cause.ToString() == "probe: failed its ice point");
        double? Left(string checks) => Pressure("100.0 psig", Gauge(checks)).Value.Budget.SingleOrDefault(b => b.Cause.ToString() == "low: failed its check")?.Contribution / Psi * Math.Sqrt(3);
        Assert.Equal(20, Left("zero: 20.0 psig")!.Value, 1e-6);
        Assert.Null(Left("zero: 1.0 psig"));
        Assert.Equal(15 * 200 / 230.0, Left("zero: 0.0 psig, known pressure: {applied: 200.0 psig +/- 0.4, read: 230.0 psig}")!.Value, 1e-6);
        Assert.Null(Left("zero: 0.0 psig, known pressure: {applied: 200.0 psig +/- 0.4, read: 201.0 psig}"));
    }

    // 1 °F of a maker is 0.5556 K, u 0.32075 K. Return and supply of one meter are two probes and differ by √2 of it; one probe keeps half of the variance in
    // common, so that the difference has 1 times it; the two bulbs are two sensors whatever the meter. Two lines of one set of clamps share half, as one probe does.
    [Theory]
    [InlineData("psychrometer", "", ReadingName.SupplyAir, false, 1.41421)]
    [InlineData("psychrometer", ", probes: 2", ReadingName.SupplyAir, false, 1.41421)]
    [InlineData("psychrometer", ", probes: 1", ReadingName.SupplyAir, false, 1)]
    [InlineData("psychrometer", ", probes: 1", ReadingName.ReturnAir, true, 1.41421)]
    [InlineData("pipe clamp", "", ReadingName.LiquidLine, false, 1)]
    public void What_two_readings_of_one_instrument_share(string kind, string more, ReadingName second, bool wet, double times)
    {
        var context = Context($"{{id: probe, kind: {kind}, accuracy: 1 °F, resolution: 0.0001 °F{more}, reads: [return air, supply air, vapor line, liquid line]}}", "vapor line: 50 °F, liquid line: 50 °F, return dry bulb: 76 °F, return wet bulb: 63 °F, supply dry bulb: 56 °F");
        var row = context.Job.Charging!.Readings[0];
        var (one, other) = kind == "pipe clamp" ? (row.VaporLine!, row.LiquidLine!) : (row.ReturnDryBulb!, wet ? row.ReturnWetBulb! : row.SupplyDryBulb!);
        var a = context.Readings.Temperature("a", kind == "pipe clamp" ? ReadingName.VaporLine : ReadingName.ReturnAir, one);
        var b = context.Readings.Temperature("b", new SensorPlace(second, wet), other);
        Assert.Equal(times * 0.320750, (a.Value - b.Value).StandardUncertainty, 1e-4);
        Assert.Equal(0.320750, a.Value.StandardUncertainty, 1e-4);
    }

    // One gauge, 20 psi off at zero: both lines share that doubt, so their difference carries none of it. 30 psi off at 200 psig of a gauge without a zero, whose
    // reference states nothing: in proportion, 15 psi of one line at 100 psig and 45 at 300, 30 psi of their difference.
    [Theory]
    [InlineData("zero: 20.0 psig", 0)]
    [InlineData("known pressure: {applied: 200.0 psig, read: 230.0 psig}", 30)]
    public void What_a_gauge_was_off_is_one_doubt_of_all_its_readings(string checks, double psi)
    {
        var context = Context($"{{id: low, kind: pressure gauge, accuracy: 0.5 % of full scale, full scale: 500 psig, resolution: 0.1 psi, reads: [vapor pressure, liquid pressure], checks: {{{checks}}}}}", "vapor pressure: 100.0 psig, liquid pressure: 300.0 psig");
        var row = context.Job.Charging!.Readings[0];
        var low = context.Readings.Pressure("a", ReadingName.VaporPressure, row.VaporPressure!);
        var high = context.Readings.Pressure("b", ReadingName.LiquidPressure, row.LiquidPressure!);
        Assert.Contains(low.Value.Budget, b => b.Cause.ToString() == "low: failed its check");
        var left = (high.Value - low.Value).Budget.Where(b => b.Cause.ToString() == "low: failed its check").ToArray();
        Assert.True(left.Length <= 1, "two causes where there is one gauge");
        Assert.Equal(psi, left.Sum(b => b.Contribution) / Psi * Math.Sqrt(3), 1e-6);
    }

    // 5 % of a maker, u 2.88675 %: return and supply of two probes share nothing, of one probe half of the variance.
    [Theory]
    [InlineData("", 1.41421)]
    [InlineData(", probes: 1", 1)]
    public void What_two_humidities_of_one_instrument_share(string more, double times)
    {
        var context = Context($"{{id: probe, kind: psychrometer, accuracy: 1 °F, humidity accuracy: 5 %{more}, reads: [return air, supply air]}}", "return dry bulb: 76 °F");
        var kit = context.Get<InstrumentKit>().All[0];
        var read = new[] { ReadingName.ReturnAir, ReadingName.SupplyAir }.Select(place => context.Scope.Reading(0.5, [.. kit.HumidityAccuracy(0.5, place)!])).ToArray();
        Assert.Equal(times * 0.0288675, (read[1] - read[0]).StandardUncertainty, 1e-6);
        Assert.Equal(0.0288675, read[0].StandardUncertainty, 1e-6);
    }

    [Fact]
    public void Nothing_is_no_reading()
    {
        var context = Context("");
        Assert.Throws<ArgumentNullException>(() => context.Readings.Pressure("a", ReadingName.VaporPressure, null!));
        Assert.Throws<ArgumentNullException>(() => context.Readings.Temperature("a", ReadingName.VaporLine, null!));
    }

    // Half a step is the bound of a display: u = step / √12 (GUM 4.3.7): 0.1 psi gives 0.028868 psi, 1 psi 0.28868 psi.
    [Theory]
    [InlineData("90.0 psig", 0.028868)]
    [InlineData("118 psig", 0.28868)]
    public void The_last_digit_of_a_reading_is_that_of_its_range(string read, double psi)
    {
        const string Ranged = "{id: low, kind: pressure gauge, resolution: [{up to: 100 psig, step: 0.1 psi}, {above: 100 psig, step: 1 psi}], reads: [vapor pressure]}";
        var value = Pressure(read, Ranged).Value;
        Assert.Equal(psi, value.Budget.Single(b => b.Cause.ToString() == "vapor pressure: resolution").Contribution / Psi, 1e-5);
    }

    private static CheckContext Context(string instrument, string reading = "vapor pressure: 100 psig +/- 1 psi, liquid pressure: 300 psig +/- 1 psi") => JobText.Context(JobLines.Of(
        $"{(instrument.Length == 0 ? "" : $"instruments:\n  - {instrument}\n")}charging: {{readings: [{{at: \"10:30\", {reading}}}]}}",
        work: "seasonal check",
        site: ", station pressure: 100 kPa +/- 0.4 kPa"));

    private static CorrectedReading Pressure(string read, string instrument = "")
    {
        var context = Context(instrument, $"vapor pressure: {read}");
        return context.Readings.Pressure("vapor pressure", ReadingName.VaporPressure, context.Job.Charging!.Readings[0].VaporPressure!);
    }

    private static CorrectedReading Temperature(string read, string instrument, bool air = false)
    {
        var context = Context(instrument, $"vapor line: {read}, return dry bulb: 76 °F");
        var row = context.Job.Charging!.Readings[0];
        var around = air ? context.Readings.Temperature("return", ReadingName.ReturnAir, row.ReturnDryBulb!) : null;
        return context.Readings.Temperature("vapor line", ReadingName.VaporLine, row.VaporLine!, around);
    }
}
