using Commission.Measurement.Uncertainty;
using Commission.Messages;

namespace Commission.Measurement.Tests.Uncertainty;

/// <summary>Worked examples of the GUM (JCGM 100:2008).</summary>
public sealed class GumTests
{
    // H.2, table H.2 (inputs as reprinted in a public GUM library's documentation) and H.4 (printed results, from memory).
    [Fact]
    public void H2_resistance_and_reactance_measured_together()
    {
        double[] volts = [5.007, 4.994, 5.005, 4.990, 4.999];
        double[] amperes = [19.663e-3, 19.639e-3, 19.640e-3, 19.685e-3, 19.678e-3];
        double[] radians = [1.0456, 1.0438, 1.0468, 1.0428, 1.0433];
        var means = Helpers.SimultaneousMeans(volts, amperes, radians);
        var (v, i, phase) = (means[0], means[1], means[2]);

        Printed.Agrees("4.9990", v.Value);
        Printed.Agrees("0.0032", v.StandardUncertainty);
        Printed.Agrees("19.6610", i.Value * 1000);
        Printed.Agrees("0.0095", i.StandardUncertainty * 1000);
        Printed.Agrees("1.04446", phase.Value);
        Printed.Agrees("0.00075", phase.StandardUncertainty);
        Printed.Agrees("-0.36", v.CorrelationWith(i));
        Printed.Agrees("0.86", v.CorrelationWith(phase));
        Printed.Agrees("-0.65", i.CorrelationWith(phase));

        var z = v / i;
        var r = z * Uncertain.Apply(Math.Cos, phase);
        var x = z * Uncertain.Apply(Math.Sin, phase);
        Printed.Agrees("127.732", r.Value);
        Printed.Agrees("0.071", r.StandardUncertainty);
        Printed.Agrees("219.847", x.Value);
        Printed.Agrees("0.295", x.StandardUncertainty, 1); // 0.295 in one table and 0.296 in the other: the GUM rounds on the way
        Printed.Agrees("254.260", z.Value);
        Printed.Agrees("0.236", z.StandardUncertainty);
        Printed.Agrees("-0.588", r.CorrelationWith(x));
        Printed.Agrees("-0.485", r.CorrelationWith(z));
        Printed.Agrees("0.993", x.CorrelationWith(z));
    }

    // H.1, table H.1, from memory: end gauge compared with a standard of 50 mm.
    [Fact]
    public void H1_end_gauge()
    {
        const double Expansion = 11.5e-6;
        var standard = new RootCause("calibration of the standard".Plain(), "certificate".Plain(), 25, 18);
        var repeats = new RootCause("repeated observations".Plain(), "pooled, 25 observations".Plain(), 5.8, 24);
        var random = new RootCause("random effects of the comparator".Plain(), "certificate, U 10 nm".Plain(), 3.9, 5);
        var systematic = new RootCause("systematic effects of the comparator".Plain(), "certificate, 20 nm at 3σ".Plain(), 6.7, 8);
        var expansionDifference = new RootCause("difference of expansion coefficients".Plain(), "bound ±1e-6, known to 10 %".Plain(), 1e-6 / Math.Sqrt(3), 50, Distribution.Rectangular);
        var temperatureDifference = new RootCause("difference of temperatures".Plain(), "bound ±0.05 °C, known to 50 %".Plain(), 0.05 / Math.Sqrt(3), 2, Distribution.Rectangular);

        var ls = Uncertain.From(50_000_623, standard);
        var d = Uncertain.From(215, repeats, random, systematic);
        var deltaAlpha = Uncertain.From(0, expansionDifference);
        var deltaTheta = Uncertain.From(0, temperatureDifference);
        const double ThetaMean = -0.1;
        var l = ls + d - (ls * ((deltaAlpha * ThetaMean) + (deltaTheta * Expansion)));

        Printed.Agrees("50.000 838", l.Value / 1e6);
        Assert.Equal(32, Math.Round(l.StandardUncertainty));
        Printed.Agrees("25", Amount(l, standard));
        Printed.Agrees("9.7", d.StandardUncertainty);
        Printed.Agrees("2.9", Amount(l, expansionDifference));
        Printed.Agrees("16.6", Amount(l, temperatureDifference));

        // The GUM truncates 16.7 to 16 before it looks t up: k 2.92 for 99 %, U 93 nm.
        Assert.Equal(16, Math.Truncate(l.DegreesOfFreedom));
        var k = Helpers.Quantile(0.99, Math.Truncate(l.DegreesOfFreedom));
        Printed.Agrees("2.92", k);
        Assert.Equal(93, Math.Round(k * 32));

        static double Amount(Uncertain y, RootCause cause) => Math.Abs(y.Budget.Single(b => ReferenceEquals(b.Cause, cause)).Contribution);
    }

    // G.4.1, from memory: a product of three readings with relative standard uncertainties 0.25, 0.57, 0.82 % and n 10, 5, 15.
    [Fact]
    public void G41_welch_satterthwaite()
    {
        var a = Uncertain.From(1, new RootCause("a".Plain(), "10 readings".Plain(), 0.0025, 9));
        var b = Uncertain.From(1, new RootCause("b".Plain(), "5 readings".Plain(), 0.0057, 4));
        var c = Uncertain.From(1, new RootCause("c".Plain(), "15 readings".Plain(), 0.0082, 14));
        var y = a * b * c;
        Printed.Agrees("1.03", 100 * y.StandardUncertainty);
        Printed.Agrees("19.0", y.DegreesOfFreedom);
        Printed.Agrees("2.09", Helpers.Quantile(0.95, 19));
        Printed.Agrees("2.2", 100 * Helpers.Quantile(0.95, y.DegreesOfFreedom) * y.StandardUncertainty);
    }

    // Table G.2, column 95.45 %, from memory.
    [Theory]
    [InlineData(1, "13.97")]
    [InlineData(2, "4.53")]
    [InlineData(3, "3.31")]
    [InlineData(4, "2.87")]
    [InlineData(5, "2.65")]
    [InlineData(6, "2.52")]
    [InlineData(8, "2.37")]
    [InlineData(10, "2.28")]
    [InlineData(20, "2.13")]
    [InlineData(30, "2.09")]
    [InlineData(50, "2.05")]
    [InlineData(100, "2.025")]
    [InlineData(double.PositiveInfinity, "2.000")]
    public void Table_G2(double degreesOfFreedom, string printed) => Printed.Agrees(printed, CoverageFactor.For(degreesOfFreedom));
}
