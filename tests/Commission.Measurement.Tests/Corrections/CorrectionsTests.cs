using Commission.Measurement.Corrections;
using Commission.Measurement.Quantities;
using Commission.Measurement.Thermocouples;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;

namespace Commission.Measurement.Tests.Corrections;

/// <summary>Numbers worked by hand from the rules: a gauge that shows −0.3 psi at zero and 301.1 psig at 300.0 ± 0.6 psig.</summary>
public sealed class CorrectionsTests
{
    private const double Psi = 6894.757293168361;

    private static readonly CorrectionPrinter Psig = CorrectionPrinter.For(
        UnitTable.Find("psig", Dimension.Pressure)!, UnitTable.Find("psi", Dimension.PressureDifference)!, 1);

    private static readonly CorrectionPrinter Fahrenheit = CorrectionPrinter.For(
        UnitTable.Find("°F", Dimension.Temperature)!, UnitTable.Find("°F", Dimension.TemperatureDifference)!, 1);

    private static readonly ZeroCheck Zero = new("high", -0.3 * Psi, 0.1 * Psi);

    [Fact]
    public void A_zero_is_always_removed_and_shared_by_all_readings()
    {
        var first = Zero.Correct(LinearScope.Instance, Digits(340.8), Psig);
        Assert.Equal(341.1, first.Value.Value / Psi, 1e-9);
        Assert.Equal("high showed −0.30 psi at zero: 340.8 psig becomes 341.1 psig.", Assert.Single(first.Steps).Text.Said());

        // Two rectangles of one step make the triangle d/√6.
        Assert.Equal(0.1 / Math.Sqrt(6), first.Value.StandardUncertainty / Psi, 1e-9);

        // A difference of two readings of one gauge forgets the zero.
        var second = Zero.Correct(LinearScope.Instance, Digits(341.5), Psig);
        Assert.Equal(0.1 / Math.Sqrt(6), (second.Value - first.Value).StandardUncertainty / Psi, 1e-9);
    }

    [Fact]
    public void A_reference_with_uncertainty_corrects_the_gain()
    {
        var check = new PointToPointCheck("high", Zero, [new KnownPoint(300 * Psi, 301.1 * Psi, 0.3 * Psi, "test gauge")], 0.1 * Psi, 0.2);
        var corrected = check.Correct(LinearScope.Instance, Digits(340.8), Psig);

        // 341.1·300/301.4: beyond 301.4 by less than a quarter.
        Assert.Equal(341.1 * 300 / 301.4, corrected.Value.Value / Psi, 1e-9);
        Assert.Equal(-1.584, (corrected.Value.Value / Psi) - 341.1, 0.001);
        Assert.Equal([CorrectionKind.Zero, CorrectionKind.KnownPoints], corrected.Steps.Select(s => s.Kind));
        Assert.All(corrected.Steps, s => Assert.True(s.Applied));
        Assert.Equal("high read 301.1 psig at 300.0 psig (test gauge): 341.1 psig becomes 339.5 psig (beyond the points, within a quarter of their span).", corrected.Steps[1].Text.Said());

        // The known point's own uncertainty grows with the lever: 0.3·341.1/301.4.
        var lever = corrected.Value.Budget.Single(l => string.Equals(l.Cause.ToString(), "high: known point 1", StringComparison.Ordinal));
        Assert.Equal(0.3 * 341.1 / 301.4, lever.Contribution / Psi, 1e-6);

        // At the known point the instrument tells the known value.
        Assert.Equal(300, check.Correct(LinearScope.Instance, Digits(301.1), Psig).Value.Value / Psi, 1e-9);
        Assert.Equal(0, check.Correct(LinearScope.Instance, Digits(-0.3), Psig).Value.Value / Psi, 1e-9);
        Assert.Equal(150, check.Correct(LinearScope.Instance, Digits(150.4), Psig).Value.Value / Psi, 1e-9);
    }

    [Fact]
    public void Far_beyond_the_points_only_the_zero_is_removed()
    {
        var check = new PointToPointCheck("high", Zero, [new KnownPoint(300 * Psi, 301.1 * Psi, 0.3 * Psi, "test gauge")], 0.1 * Psi, 0.2);
        var corrected = check.Correct(LinearScope.Instance, Digits(440), Psig);
        Assert.Equal(440.3, corrected.Value.Value / Psi, 1e-9);
        Assert.False(corrected.Steps[1].Applied);
        Assert.EndsWith("lies more than a quarter of the checked span beyond, so nothing more is corrected.", corrected.Steps[1].Text.Said(), StringComparison.Ordinal);

        // 301.4·1.25 = 376.75 is the last that is followed.
        Assert.True(check.Correct(LinearScope.Instance, Digits(376.4), Psig).Steps[1].Applied);
        Assert.False(check.Correct(LinearScope.Instance, Digits(376.5), Psig).Steps[1].Applied);
    }

    [Fact]
    public void A_reference_without_uncertainty_is_reported_only()
    {
        var check = new PointToPointCheck("high", Zero, [new KnownPoint(300 * Psi, 301.1 * Psi, null, "cylinder")], 0.1 * Psi, 0.2);
        var corrected = check.Correct(LinearScope.Instance, Digits(340.8), Psig);
        Assert.Equal(341.1, corrected.Value.Value / Psi, 1e-9);
        Assert.Equal("high read 301.1 psig at 300.0 psig (cylinder), 1.40 psi off after its zero; the reference states no uncertainty, so this is reported and not corrected.", corrected.Steps[1].Text.Said());
    }

    [Fact]
    public void Between_several_points_the_line_bends()
    {
        var check = new PointToPointCheck("probe", null, [new KnownPoint(40, 42, 0.1, "bath"), new KnownPoint(0, 1, 0.1, "ice"), new KnownPoint(80, 81, 0.1, "bath")], null, 0.2);
        Assert.Equal(20, Read(21.5), 1e-12);
        Assert.Equal(60, Read(61.5), 1e-12);
        Assert.Equal(0, Read(1), 1e-12);
        Assert.Equal(80 + (10 * 40 / 39.0), Read(91), 1e-12);

        double Read(double value) => check.Correct(LinearScope.Instance, Uncertain.Exact(value), Fahrenheit).Value.Value;
    }

    [Fact]
    public void One_point_without_a_zero_shifts()
    {
        var check = new PointToPointCheck("probe", null, [new KnownPoint(40, 41, 0.1, "bath")], null, 0.2);
        var corrected = check.Correct(LinearScope.Instance, Uncertain.Exact(48), Fahrenheit);
        Assert.Equal(47, corrected.Value.Value, 1e-12);
        Assert.Equal(0.1, corrected.Value.StandardUncertainty, 1e-12);

        // 20 % of 40 from the 41 that was read: 33 to 49; further away one point says nothing.
        Assert.True(check.Correct(LinearScope.Instance, Uncertain.Exact(48.9), Fahrenheit).Steps[0].Applied);
        Assert.False(check.Correct(LinearScope.Instance, Uncertain.Exact(49.1), Fahrenheit).Steps[0].Applied);
        Assert.False(check.Correct(LinearScope.Instance, Uncertain.Exact(32.9), Fahrenheit).Steps[0].Applied);
    }

    [Fact]
    public void A_type_K_clamp_after_an_ice_point()
    {
        // Shows 32.1 °F in ice after adjustment; class 2, 57.2 °F read: 0.1 °F off; wire 0.75 % of 25.1 °F; bath 0.05 K; steps of 0.1 °F.
        var check = new IcePointCheck("vapor clamp", Temperature.FromFahrenheit(32.1).Si, 0.1 / 1.8, TypeKTolerance.Slope(ToleranceClass.Iec2), isThermocouple: true);
        var corrected = check.Correct(LinearScope.Instance, Reading(57.2), Fahrenheit);
        Assert.Equal(57.1, Temperature.FromSi(corrected.Value.Value).Fahrenheit, 1e-9);
        var expected = Math.Sqrt(
            (Math.Pow(0.1 / 1.8, 2) / 6)
            + (Math.Pow(0.05, 2) / 3)
            + (Math.Pow(0.0075 * 25.1 / 1.8, 2) / 3));
        Assert.Equal(expected, corrected.Value.StandardUncertainty, 1e-9);
        Assert.Equal("vapor clamp showed 0.10 °F too much in ice: 57.2 °F becomes 57.1 °F.", corrected.Steps[0].Text.Said());

        // Ten kelvin of the meter itself move the cold junction by ±0.3 K.
        var warm = check.Correct(LinearScope.Instance, Reading(57.2), Fahrenheit, instrumentWarming: 10);
        Assert.Equal(Math.Sqrt((expected * expected) + (0.09 / 3)), warm.Value.StandardUncertainty, 1e-9);

        // Without a slope bath and digits remain; with one, a thermistor of ± 0.5 K has got a quarter of it back 12.5 K from ice (0.5/50 for each kelvin).
        var plain = new IcePointCheck("probe", 273.15, null, slope: null, isThermocouple: false);
        Assert.Equal(0.05 / Math.Sqrt(3), plain.Correct(LinearScope.Instance, Uncertain.Exact(300), Fahrenheit).Value.StandardUncertainty, 1e-12);
        var thermistor = new IcePointCheck("probe", 273.15, null, slope: 0.5 / 50, isThermocouple: false);
        Assert.Equal(double.Hypot(0.05, 0.125) / Math.Sqrt(3), thermistor.Correct(LinearScope.Instance, Uncertain.Exact(285.65), Fahrenheit, 10).Value.StandardUncertainty, 1e-12);
    }

    [Fact]
    public void A_clamp_reads_toward_the_air()
    {
        // 0.005·(91.7 − 57.2) = 0.17 °F for an insulated clamp, 0.52 °F for a bare one.
        var ambient = Uncertain.Exact(Temperature.FromFahrenheit(91.7).Si);
        var insulated = new ClampCoupling("vapor clamp", 0, 0.01, "insulated".Plain()).Correct(LinearScope.Instance, Uncertain.Exact(Temperature.FromFahrenheit(57.2).Si), ambient, Fahrenheit);
        Assert.Equal(57.2 - 0.1725, Temperature.FromSi(insulated.Value.Value).Fahrenheit, 1e-9);
        Assert.Equal(0.1725 / Math.Sqrt(3), insulated.Value.StandardUncertainty * 1.8, 1e-9);
        Assert.Equal("vapor clamp in air of 91.7 °F reads 0.17 °F toward it: 57.2 °F becomes 57.0 °F.", insulated.Steps[0].Text.Said());
        var bare = new ClampCoupling("vapor clamp", 0, 0.03, "bare".Plain()).Correct(LinearScope.Instance, Uncertain.Exact(Temperature.FromFahrenheit(57.2).Si), ambient, Fahrenheit);
        Assert.Equal(0.5175, insulated.Steps[0].Before * 1.8 - (bare.Value.Value * 1.8), 1e-9);
    }

    [Fact]
    public void Corrections_run_in_a_sampling_scope_too()
    {
        var check = new PointToPointCheck("high", Zero, [new KnownPoint(300 * Psi, 301.1 * Psi, 0.3 * Psi, "test gauge")], 0.1 * Psi, 0.2);
        var digits = RootCause.FromResolution("digits".Plain(), "".Plain(), 0.1 * Psi);
        Uncertain Model(IUncertaintyScope scope) => check.Correct(scope, scope.Reading(340.8 * Psi, digits), Psig).Value;
        var linear = Model(LinearScope.Instance);
        var trials = MonteCarlo.Run(Model, new Random(11), 50_000);
        Assert.Equal(linear.Value, trials.Mean, 0.01 * Psi);
        Assert.Equal(linear.StandardUncertainty, trials.StandardUncertainty, 0.01 * linear.StandardUncertainty);

        var ice = new IcePointCheck("clamp", 273.2, 0.05, TypeKTolerance.Slope(ToleranceClass.Iec2), isThermocouple: true);
        var coupling = new ClampCoupling("clamp", 0, 0.03, "bare".Plain());
        var step = RootCause.FromResolution("digits".Plain(), "".Plain(), 0.05);
        Uncertain Clamp(IUncertaintyScope scope) => ice.Correct(scope, scope.Reading(287, step), Fahrenheit, 5)
            .Then(v => coupling.Correct(scope, v, scope.Reading(306, step), Fahrenheit)).Value;
        var line = Clamp(LinearScope.Instance);
        var drawn = MonteCarlo.Run(Clamp, new Random(12), 50_000);
        Assert.Equal(line.Value, drawn.Mean, 0.005);
        Assert.Equal(line.StandardUncertainty, drawn.StandardUncertainty, 0.02 * line.StandardUncertainty);
    }

    // f between 0.02 and 0.04, air 16 K warmer: 0.03·16 = 0.48 K comes off, and half the range, 0.01/√3·16 = 0.0924 K, stays as doubt (JCGM 100, 4.3.7).
    [Fact]
    public void A_clamp_in_warm_air_read_too_much_and_keeps_half_its_range()
    {
        var clamp = new ClampCoupling("clamp", 0.02, 0.04, "bare".Plain()).Correct(LinearScope.Instance, Uncertain.Exact(287.15), Uncertain.Exact(303.15), Fahrenheit);
        Assert.Equal(286.67, clamp.Value.Value, 9);
        Assert.Equal(0.09238, clamp.Value.StandardUncertainty, 0.00001);
        var step = Assert.Single(clamp.Steps);
        Assert.Equal(-0.48, step.Correction, 9);
        Assert.Equal(286.67, step.After, 9);
    }

    [Theory]
    [InlineData(-0.01, 0.03)]
    [InlineData(0.04, 0.03)]
    [InlineData(0.5, 1)]
    public void A_coupling_lies_between_nothing_and_the_air_itself(double least, double most) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new ClampCoupling("clamp", least, most, "bare".Plain()));

    [Fact]
    public void A_coupling_may_be_known_exactly_and_may_be_none() =>
        Assert.Equal(287.15, new ClampCoupling("clamp", 0, 0, "insulated".Plain()).Correct(LinearScope.Instance, Uncertain.Exact(287.15), Uncertain.Exact(303.15), Fahrenheit).Value.Value, 12);

    // JCGM 100, 4.3: the standard uncertainty of an input has the input's own unit. A part of a distance and kelvin for each kelvin are no temperatures.
    [Fact]
    public void Causes_say_what_their_doubt_is_a_number_of()
    {
        var ambient = Uncertain.Exact(303.15);
        var clamp = new ClampCoupling("clamp", 0, 0.03, "bare".Plain()).Correct(LinearScope.Instance, Uncertain.Exact(287.15), ambient, Fahrenheit);
        Assert.Equal(CauseKind.ShareOfDistance, Assert.Single(clamp.Value.Budget).Cause.Kind);
        Assert.Equal(CorrectionKind.Clamp, Assert.Single(clamp.Steps).Kind);

        var iced = new IcePointCheck("clamp", 273.2, 0.05, TypeKTolerance.Slope(ToleranceClass.Iec2), isThermocouple: true).Correct(LinearScope.Instance, Uncertain.Exact(287.15), Fahrenheit, 5);
        Assert.Equal(CorrectionKind.IcePoint, Assert.Single(iced.Steps).Kind);
        Assert.Equal(
            [CauseKind.Reading, CauseKind.Reading, CauseKind.ShareOfDistance, CauseKind.ColdJunction],
            iced.Value.Budget.Select(line => line.Cause.Kind).Order());

        var statement = AccuracyStatement.Parse("1 % of reading", Dimension.PressureDifference).Value!;
        Assert.Equal(CauseKind.Accuracy, statement.ToRootCause("low".Plain(), "data sheet".Plain()).Kind);
    }

    private static Uncertain Digits(double psig) => Uncertain.From(psig * Psi, RootCause.FromResolution("digits".Plain(), "".Plain(), 0.1 * Psi));

    private static Uncertain Reading(double fahrenheit) =>
        Uncertain.From(Temperature.FromFahrenheit(fahrenheit).Si, RootCause.FromResolution("digits".Plain(), "".Plain(), 0.1 / 1.8));

    // Proportional parts of the classes: IEC 60584-1 class 1 0.004, class 2 0.0075, class 3 0.015; ASTM E230 special 0.4 %, standard 0.75 % (printed tables).
    [Theory]
    [InlineData(ToleranceClass.Iec1, 0.004)]
    [InlineData(ToleranceClass.Iec2, 0.0075)]
    [InlineData(ToleranceClass.Iec3, 0.015)]
    [InlineData(ToleranceClass.AstmSpecial, 0.004)]
    [InlineData(ToleranceClass.AstmStandard, 0.0075)]
    public void Type_K_wire_has_the_slope_of_its_class(ToleranceClass wire, double slope) => Assert.Equal(slope, TypeKTolerance.Slope(wire));
}
