using System.Globalization;
using Commission.Checks.NitrogenAnalysis;
using Commission.Fluids;
using Commission.Measurement.Uncertainty;
using Xunit;

namespace Commission.Checks.Tests.NitrogenAnalysis;

public sealed class NitrogenHoldTests(ITestOutputHelper output)
{
    private const double Psi = 6894.757293168361;
    private const double Atmosphere = 101_325;

    private static readonly NitrogenErrors Errors = new()
    {
        Resolution = Psi,
        Repeatability = 0.8 * Psi,
        AtmosphereChange = 100,
        Zero = 2 * Psi,
        Gain = 0.005,
    };

    /// <summary>
    /// Tight systems: pressure of a constant mass of nitrogen in a constant volume after a change of temperature, computed by an independent
    /// program from the equation of Span et al., J. Phys. Chem. Ref. Data 29 (2000) 1361. The loss must be nothing within 0.005 %.
    /// </summary>
    [Theory]
    [InlineData(150, 70, 90, 156.388, 156.219)]
    [InlineData(300, 70, 50, 287.494, 288.117)]
    [InlineData(450, 70, 90, 468.885, 467.547)]
    [InlineData(450, 95, 65, 423.128, 424.866)]
    [InlineData(600, 70, 100, 638.306, 634.816)]
    public void A_tight_system_has_lost_nothing_psig(double fill, double from, double to, double real, double ideal)
    {
        var start = Reading(fill * Psi, Fahrenheit(from));
        var loss = Loss(start, Reading(real * Psi, Fahrenheit(to)));
        Assert.Equal(0, loss.Loss.Value, 5e-5);
        Assert.Equal(start.Absolute, loss.ReferredPressure, 5e-5 * start.Absolute);

        // The printed ideal-gas pressure gives no loss by the ideal law, and the ideal law on the real one gives its bias.
        Assert.Equal(0, Loss(start, Reading(ideal * Psi, Fahrenheit(to))).IdealLoss, 5e-6);
        Assert.True(Math.Abs(loss.IdealLoss) > 5e-4);
    }

    [Theory]
    [InlineData(10, 20, 30, 10.3857)]
    [InlineData(28, 20, 10, 26.9404)]
    [InlineData(42, 20, 15, 41.1901)]
    [InlineData(43, 15, 30, 45.5427)]
    public void A_tight_system_has_lost_nothing_bar(double fill, double from, double to, double real) =>
        Assert.Equal(0, Loss(Reading(fill * 1e5, 273.15 + from), Reading(real * 1e5, 273.15 + to)).Loss.Value, 5e-5);

    [Fact]
    public void Loss_is_the_ratio_of_densities()
    {
        // Span 2000 by the same independent program: 42 bar 20 °C 48.558, 10 bar 20 °C 11.5184 kg/m³ (printed to five digits).
        var loss = Loss(Absolute(42e5, 293.15), Absolute(10e5, 293.15));
        Assert.Equal(1 - 11.5184 / 48.558, loss.Loss.Value, 2e-5);
    }

    [Fact]
    public void Sensitivities_at_450_psig()
    {
        // From compressibility factors of the same independent program at 20 °C (1.01325, 10, 42 bar: 0.999757, 0.997815, 0.994094):
        // Z = 1 + b·p + c·p² through the last two, so that ∂lnρ/∂p = (1 − (b·p + 2c·p²)/Z)/p at 464.7 psia.
        var state = Reading(450 * Psi, 293.15);
        var bar = state.Absolute / 1e5;
        var c = ((0.994094 - 1) / 42 - (0.997815 - 1) / 10) / (42 - 10);
        var b = (0.997815 - 1) / 10 - c * 10;
        var z = 1 + b * bar + c * bar * bar;
        var expected = (1 - (b * bar + 2 * c * bar * bar) / z) / state.Absolute;
        var loss = Loss(state, state);
        Assert.Equal(-expected, loss.PerPascal, 1e-3 * expected);

        // Pressure per temperature at constant density: 0.945 psi/°F for real nitrogen at 450 psig and 70 °F, 0.319 at 150, 1.278 at 600.
        Assert.Equal(0.945, PerFahrenheit(450), 0.002);
        Assert.Equal(0.319, PerFahrenheit(150), 0.002);
        Assert.Equal(1.278, PerFahrenheit(600), 0.002);

        static double PerFahrenheit(double psig)
        {
            var at = Reading(psig * Psi, Fahrenheit(70));
            var l = Loss(at, at);
            return -l.PerKelvin / 1.8 / (l.PerPascal * Psi);
        }
    }

    [Fact]
    public void One_gauge_at_both_ends_cancels_its_zero_and_gain()
    {
        var start = Reading(450 * Psi, Fahrenheit(70));
        var end = Reading(449 * Psi, Fahrenheit(70));
        double Share(NitrogenErrors e) => Loss(start, end, e).Loss.Budget
            .Where(b => b.Cause.ToString().StartsWith("zero", StringComparison.Ordinal) || b.Cause.ToString().StartsWith("gain", StringComparison.Ordinal))
            .Sum(b => b.Share);
        Assert.True(Share(Errors) < 1e-3);
        Assert.True(Share(Errors with { SameGauge = false }) > 0.5);
    }

    [Fact]
    public void Temperature_error_follows_the_change_unless_stated()
    {
        var start = Reading(450 * Psi, Fahrenheit(70));
        double Bound(double kelvinLater, double? stated) => Loss(
                start, new NitrogenReading(450 * Psi, Atmosphere, start.Temperature + kelvinLater), Errors with { GasMinusClamp = stated })
            .Loss.Budget.Single(b => b.Cause.ToString() == "mean gas less clamp, start").Cause.StandardUncertainty * Math.Sqrt(3);
        Assert.Equal(0.5, Bound(1, null), 1e-9);
        Assert.Equal(3, Bound(-10, null), 1e-9);
        Assert.Equal(0.2, Bound(-10, 0.2), 1e-9);
    }

    [Fact]
    public void Budget_by_hand()
    {
        // Steps and repeatability of 1 psi and 0.8 psi at both ends, 0.5 K rectangular at both ends, 100 Pa of weather.
        var state = Reading(450 * Psi, Fahrenheit(70));
        var loss = Loss(state, state);
        var perPsi = 0.2158e-2;
        var perKelvin = 0.945 * 1.8 * perPsi;
        var pressure = perPsi * Math.Sqrt(2 * (1.0 / 12 + 0.64 / 3) + Math.Pow(100 / Psi, 2) / 3);
        var temperature = perKelvin * Math.Sqrt(2 * 0.25 / 3);
        Assert.Equal(Math.Sqrt(pressure * pressure + temperature * temperature), loss.Loss.StandardUncertainty, 2e-5);
        Assert.Equal(1.645 * loss.Loss.StandardUncertainty, loss.DecisionThreshold, 1e-12);
        Assert.Equal(3.29 * loss.Loss.StandardUncertainty, loss.SmallestDetectable, 1e-12);
        Assert.Equal(2.0, loss.Loss.CoverageFactor, 1e-4);
    }

    [Fact]
    public void Linear_and_Monte_Carlo_agree()
    {
        var start = Reading(450 * Psi, Fahrenheit(70));
        var end = Reading(455 * Psi, Fahrenheit(78));
        var linear = Loss(start, end).Loss;
        var sampling = new SamplingScope(new Random(5));
        var values = new double[20_000];
        for (var i = 0; i < values.Length; i++)
        {
            sampling.NextTrial();
            values[i] = Fast(start, end, sampling);
        }

        var (mean, deviation) = TypeA.Moments(values);

        // 20,000 draws know a standard deviation to 0.5 %; two digits are asked for.
        Assert.Equal(linear.Value, mean, 0.03 * linear.StandardUncertainty);
        Assert.Equal(linear.StandardUncertainty, deviation, 0.02 * linear.StandardUncertainty);

        double Fast(NitrogenReading a, NitrogenReading b, SamplingScope scope) =>
            NitrogenHold.Between(a, b, Errors, FastDensity, scope)!.Loss.Value;
    }

    [Fact]
    public void Verdicts()
    {
        var start = Reading(450 * Psi, Fahrenheit(70));
        NitrogenLoss At(double psi) => Loss(start, Reading(psi * Psi, Fahrenheit(70)));
        var u = At(450).Loss.Expanded;
        Assert.InRange(u, 0.004, 0.006);
        Assert.Equal(NitrogenVerdict.Held, At(450).Judge(0.01));
        Assert.Equal(NitrogenVerdict.NotShown, At(450).Judge(0.003));
        Assert.Equal(NitrogenVerdict.NotShown, At(447).Judge(0.01));
        Assert.Equal(NitrogenVerdict.Lost, At(440).Judge(0.01));
        Assert.Equal(NitrogenVerdict.TemperatureOrGauge, At(453).Judge(0.01));
        Assert.True(At(440).LossShown);
        Assert.False(At(449).LossShown);
    }

    [Fact]
    public void States_outside_the_equation_give_nothing()
    {
        var start = Reading(450 * Psi, Fahrenheit(70));
        Assert.Null(NitrogenHold.Between(start, new NitrogenReading(-2e5, Atmosphere, 293), Errors, Density));
        Assert.Null(NitrogenHold.Between(start, new NitrogenReading(3e6, Atmosphere, 50), Errors, Density));
    }

    [Fact]
    public void False_alarms_and_detection_of_a_loss_of_1_65_U()
    {
        // Errors drawn as the page says they are; false alarms at most 5 % and detection at least 95 %, with two standard deviations of
        // a count of 3,000.
        var random = new Random(77);
        const int Draws = 3000;
        var (alarms, detected, covered) = (0, 0, 0);
        for (var i = 0; i < Draws; i++)
        {
            var truth = new NitrogenReading((150 + 450 * random.NextDouble()) * Psi, Atmosphere, 283 + 25 * random.NextDouble());
            var later = truth.Temperature + 8 * (random.NextDouble() - 0.5);
            var tight = Read(truth, later, 0, random);
            alarms += tight.LossShown ? 1 : 0;
            covered += Math.Abs(tight.Loss.Value) <= tight.Loss.Expanded ? 1 : 0;
            var lost = 1.65 * tight.Loss.Expanded;
            detected += Read(truth, later, lost, random).LossShown ? 1 : 0;
        }

        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"false alarms {100.0 * alarms / Draws:0.00} %, detected {100.0 * detected / Draws:0.00} %, covered {100.0 * covered / Draws:0.0} %"));
        var spread = 2 * Math.Sqrt(0.05 * 0.95 / Draws);
        Assert.True(alarms <= (0.05 + spread) * Draws, $"{alarms}");
        Assert.True(detected >= (0.95 - spread) * Draws, $"{detected}");
        Assert.True(covered >= 0.945 * Draws, $"{covered}");
    }

    private static NitrogenLoss Read(NitrogenReading truth, double later, double lost, Random random)
    {
        double Bound(double a) => a * (2 * random.NextDouble() - 1);
        double Round(double p) => Math.Round(p / Psi) * Psi;
        var density = FastDensity(truth.Temperature, truth.Absolute)!.Value * (1 - lost);
        var after = FastPressure(later, density);
        var gas = Math.Max(0.5, 0.3 * Math.Abs(later - truth.Temperature));
        var zero = Bound(2 * Psi);
        var gain = Bound(0.005);
        var start = new NitrogenReading(
            Round(truth.Gauge * (1 + gain) + zero + Bound(0.8 * Psi)), Atmosphere, truth.Temperature + Bound(gas));
        var end = new NitrogenReading(
            Round((after - Atmosphere - Bound(100)) * (1 + gain) + zero + Bound(0.8 * Psi)), Atmosphere, later + Bound(gas));

        // The bound on gas less clamp is stated as drawn: the default would follow the change as read.
        return NitrogenHold.Between(start, end, Errors with { GasMinusClamp = gas }, FastDensity)!;
    }

    private static NitrogenReading Reading(double gauge, double kelvin) => new(gauge, Atmosphere, kelvin);

    private static NitrogenReading Absolute(double pascals, double kelvin) => new(pascals - Atmosphere, Atmosphere, kelvin);

    private static double Fahrenheit(double f) => (f + 459.67) / 1.8;

    private static NitrogenLoss Loss(NitrogenReading start, NitrogenReading end, NitrogenErrors? errors = null) =>
        NitrogenHold.Between(start, end, errors ?? Errors, Density)!;

    private static double? Density(double kelvin, double pascals) =>
        Nitrogen.Density(kelvin, pascals) is { Ok: true } d ? d.Value : null;

    // For thousands of draws: virial equation with B = −10.3 cm³/mol at 273.15 K and −4.5 at 300 K (from memory), C = 1,400 cm⁶/mol².
    private static double FastPressure(double kelvin, double density)
    {
        var n = density / 0.0280134;
        var second = (-10.3 + (kelvin - 273.15) * 5.8 / 26.85) * 1e-6;
        return n * 8.314462618 * kelvin * (1 + second * n + 1.4e-9 * n * n);
    }

    private static double? FastDensity(double kelvin, double pascals)
    {
        var density = pascals * 0.0280134 / (8.314462618 * kelvin);
        for (var i = 0; i < 12; i++)
            density *= pascals / FastPressure(kelvin, density);
        return density;
    }
}
