using Commission.Measurement.Regression;
using Commission.Measurement.Uncertainty;

namespace Commission.Measurement.Tests.Regression;

public sealed class StraightLineTests
{
    // GUM H.3, table H.6: a thermometer and its corrections.
    private static readonly double[] Temperatures = [21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511];
    private static readonly double[] Corrections = [-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160];

    [Fact]
    public void Gum_H3()
    {
        var line = StraightLine.Fit("thermometer", Temperatures, Corrections, origin: 20)!;
        Printed.Agrees("-0.1712", line.Intercept.Value);
        Printed.Agrees("0.0029", line.Intercept.StandardUncertainty);
        Printed.Agrees("0.00218", line.Slope.Value);
        Printed.Agrees("0.00067", line.Slope.StandardUncertainty);
        Printed.Agrees("-0.930", line.Intercept.CorrelationWith(line.Slope));
        Printed.Agrees("0.0035", line.ResidualStandardDeviation);
        Printed.Agrees("-0.1494", line.At(30).Value);
        Printed.Agrees("0.0041", line.At(30).StandardUncertainty);
        Assert.Equal(9, line.At(30).DegreesOfFreedom, 1e-9);
        Assert.Equal(9, line.Slope.DegreesOfFreedom, 1e-9);
    }

    [Fact]
    public void An_uncertain_place_adds_its_own_part()
    {
        var line = StraightLine.Fit("thermometer", Temperatures, Corrections)!;
        var at = line.At(Uncertain.From(30, new RootCause("t", "", 1)));
        Assert.Equal(Math.Sqrt(Math.Pow(line.At(30).StandardUncertainty, 2) + Math.Pow(line.Slope.Value, 2)), at.StandardUncertainty, 1e-15);
    }

    // NIST StRD linear regression, Norris: data and certified values from memory of the public data set; the certified digits confirm each other.
    [Fact]
    public void Nist_norris()
    {
        double[] y =
        [
            0.1, 338.8, 118.1, 888.0, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3, 0.1, 778.1, 668.8, 339.3, 448.9, 10.8,
            557.7, 228.3, 998.0, 888.8, 119.6, 0.3, 0.6, 557.6, 339.3, 888.0, 998.5, 778.9, 10.2, 117.6, 228.9, 668.4, 449.2, 0.2,
        ];
        double[] x =
        [
            0.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777.0, 558.2, 0.4, 0.6, 775.5, 666.9, 338.0, 447.5, 11.6,
            556.0, 228.1, 995.8, 887.6, 120.2, 0.3, 0.3, 556.8, 339.1, 887.2, 999.0, 779.0, 11.1, 118.3, 229.2, 669.1, 448.9, 0.5,
        ];
        var line = StraightLine.Fit("Norris", x, y)!;
        Printed.Agrees("-0.26232307377", line.Intercept.Value);
        Printed.Agrees("1.0021168180204", line.Slope.Value);
        Printed.Agrees("0.23281823430", line.Intercept.StandardUncertainty);
        Printed.Agrees("0.00042979684820", line.Slope.StandardUncertainty);
        Printed.Agrees("0.88479639614", line.ResidualStandardDeviation);
    }

    [Fact]
    public void Known_uncertainties_weigh_and_the_scatter_does_not()
    {
        // Three points, the middle one twice as good; worked by hand: weights 1, 4, 1.
        var line = StraightLine.FitWeighted("w", [0.0, 1, 2], [0.0, 1.3, 2], [1.0, 0.5, 1])!;
        Assert.Equal(1, line.Slope.Value, 1e-14);
        Assert.Equal(Math.Sqrt(0.5), line.Slope.StandardUncertainty, 1e-14);
        Assert.Equal(((4 * 1.3) + 2) / 6, line.At(1).Value, 1e-14);
        Assert.Equal(Math.Sqrt(1 / 6.0), line.At(1).StandardUncertainty, 1e-14);
        Assert.True(double.IsPositiveInfinity(line.Slope.DegreesOfFreedom));
        Assert.Equal(0.12, line.ResidualSumOfSquares, 1e-12);
    }

    [Fact]
    public void Too_little_gives_no_line()
    {
        Assert.Null(StraightLine.Fit("two", [1.0, 2], [1.0, 2]));
        Assert.Null(StraightLine.Fit("one place", [1.0, 1, 1], [1.0, 2, 3]));
    }
}
