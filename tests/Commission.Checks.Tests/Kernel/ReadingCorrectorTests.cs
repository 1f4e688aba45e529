using Commission.Checks.Kernel;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Units;
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
    public void A_zero_is_taken_off_and_the_makers_statement_stays()
    {
        // 0.5 % of 500 psi is 2.5 psi: u 1.4434 psi; step 0.1 psi at reading and zero: 0.1/√12 each.
        var read = Pressure("100.0 psig", "{id: low, kind: pressure gauge, accuracy: 0.5 % of full scale, full scale: 500 psig, resolution: 0.1 psi, reads: [vapor pressure], checks: {zero: 2.0 psig}}");
        Assert.Equal(100_000 + (98 * Psi), read.Value.Value, 0.01);
        Assert.Equal(read.Value.Value, read.AfterZero, 1e-6);
        var u = Math.Sqrt((1.443376 * 1.443376) + (2 * 0.1 * 0.1 / 12));
        Assert.Equal(Math.Sqrt((u * u * Psi * Psi) + (200 * 200)), read.Value.StandardUncertainty, 0.1);
        Assert.True(read.AccuracyKnown);
        Assert.Equal("low", read.Instrument);
        Assert.Contains(read.Uses, x => x.Name == "low: reading open to air");
    }

    [Fact]
    public void A_known_pressure_with_an_uncertainty_ties_the_gauge_down()
    {
        // Read 201 at 200 psig: 100.5 psig shown is 100.0. The maker's 2.5 psi go; 0.1 % of full scale stays (0.5 psi, u 0.2887 psi), the reference
        // at half its distance (0.4/2·0.5 = 0.1 psi), the steps of reading (0.1/√12 = 0.02887) and of the known point (half of it, × 200/201).
        var read = Pressure("100.5 psig", "{id: low, kind: pressure gauge, accuracy: 0.5 % of full scale, full scale: 500 psig, resolution: 0.1 psi, reads: [vapor pressure], checks: {zero: 0.0 psig, known pressure: {applied: 200.0 psig +/- 0.4, read: 201.0 psig}}}");
        Assert.Equal(100_000 + (100 * Psi), read.Value.Value, 0.01);
        Assert.Equal(100_000 + (100.5 * Psi), read.AfterZero, 0.01);
        var psi = Math.Sqrt((0.288675 * 0.288675) + (0.1 * 0.1) + (0.028868 * 0.028868) + (0.0144 * 0.0144) + (0.0144 * 0.0144));
        Assert.Equal(Math.Sqrt((psi * psi * Psi * Psi) + (200 * 200)), read.Value.StandardUncertainty, 0.005 * psi * Psi);
        Assert.DoesNotContain(read.Value.Budget, line => line.Cause.Name == "low: accuracy");
    }

    [Theory]
    [InlineData("249.0 psig", false)]
    [InlineData("251.0 psig", true)]
    public void A_quarter_beyond_the_known_pressure_the_makers_statement_counts_again(string read, bool makers) =>
        Assert.Equal(makers, Pressure(read, "{id: low, kind: pressure gauge, accuracy: 0.5 % of full scale, full scale: 500 psig, resolution: 0.1 psi, reads: [vapor pressure], checks: {zero: 0.0 psig, known pressure: {applied: 200.0 psig +/- 0.4, read: 200.0 psig}}}")
            .Value.Budget.Any(line => line.Cause.Name == "low: accuracy"));

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
        // 33.4 °F in ice: 1.4 °F too much; 51.4 °F is 50.0 °F. Sensor ± 0.9 °F (0.5 K, u 0.288675), bath ± 0.05 K (0.028868), two steps 0.016038.
        var read = Temperature("51.4 °F", "{id: probe, kind: thermometer, accuracy: 0.9 °F, resolution: 0.1 °F, reads: [vapor line], checks: {ice point: {read: 33.4 °F}}}");
        Assert.Equal(283.15, read.Value.Value, 1e-6);
        Assert.Equal(283.15, read.AfterZero, 1e-6);
        Assert.Equal(Math.Sqrt((0.288675 * 0.288675) + (0.028868 * 0.028868) + (2 * 0.016038 * 0.016038)), read.Value.StandardUncertainty, 1e-5);
    }

    [Theory]
    [InlineData("yes", 49.87, 0.5)]
    [InlineData("no", 49.61, 1.5)]
    public void A_clamp_is_corrected_toward_the_air_by_the_middle_of_its_range(string insulated, double fahrenheit, double share)
    {
        // Range 0 to 1 % (insulated) or 3 % (bare) of 26 °F; half the range stays as a bound: share/100·26/1.8/√3 K, beside the stated clamp.
        var context = Context($"{{id: clamp, kind: pipe clamp, accuracy: 0.9 °F, insulated: {insulated}, reads: [vapor line]}}", "vapor line: 50 °F, return dry bulb: 76 °F +/- 0.001 °F");
        var row = context.Job.Charging!.Readings[0];
        var air = context.Readings.Temperature("return", ReadingName.ReturnAir, row.ReturnDryBulb!);
        var read = context.Readings.Temperature("vapor line", ReadingName.VaporLine, row.VaporLine!, air);
        Assert.Equal(fahrenheit, ((read.Value.Value - 273.15) * 1.8) + 32, 5e-4);
        Assert.Equal(283.15, read.AfterZero, 1e-9);
        var line = Assert.Single(read.Value.Budget, b => b.Cause.Name.EndsWith("air around the clamp", StringComparison.Ordinal));
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
