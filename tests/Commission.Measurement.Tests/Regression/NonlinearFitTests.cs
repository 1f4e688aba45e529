using Commission.Measurement.Regression;

namespace Commission.Measurement.Tests.Regression;

public sealed class NonlinearFitTests
{
    // NIST StRD nonlinear regression, Misra1a, y = b1·(1 − exp(−b2·x)): data and certified values from memory of the public data set; both published starts.
    [Theory]
    [InlineData(500, 0.0001)]
    [InlineData(250, 0.0005)]
    public void Nist_misra1a(double b1, double b2)
    {
        double[] y = [10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.40, 75.47, 81.78];
        double[] x = [77.6, 114.9, 141.1, 190.8, 239.9, 289.0, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760.0];
        var fit = NonlinearFit.Fit(
            "Misra1a",
            (b, v) => b[0] * (1 - Math.Exp(-b[1] * v)),
            (b, v) => [1 - Math.Exp(-b[1] * v), b[0] * v * Math.Exp(-b[1] * v)],
            x,
            y,
            [b1, b2])!;
        Printed.Agrees("238.94212918", fit.Parameters[0].Value);
        Printed.Agrees("5.5015643181e-4", fit.Parameters[1].Value);
        Printed.Agrees("2.7070075241", fit.Parameters[0].StandardUncertainty);
        Printed.Agrees("7.2668688436e-6", fit.Parameters[1].StandardUncertainty);
        Printed.Agrees("0.12455138894", fit.ResidualSumOfSquares);
        Printed.Agrees("0.10187876330", fit.ResidualStandardDeviation);
        Assert.Equal(12, fit.Parameters[0].DegreesOfFreedom, 1e-9);
    }

    [Fact]
    public void A_source_without_noise_is_found_exactly()
    {
        var t = Enumerable.Range(0, 200).Select(i => i * 5.0).ToArray();
        var y = t.Select(v => 40 + (25 * (1 - Math.Exp(-v / 180)))).ToArray();
        var rise = ExponentialRise.Of("hold", t, y, withLine: false, 10, 500)!;
        Assert.Equal(40, rise.Start.Value, 1e-8);
        Assert.Equal(25, rise.Rise.Value, 1e-8);
        Assert.Equal(65, rise.Final.Value, 1e-8);
        Assert.Equal(180, rise.TimeConstant.Value, 1e-6);
        Assert.Null(rise.Slope);

        // A steady rise that is not there comes out as nothing.
        Assert.Equal(0, ExponentialRise.Of("hold", t, y, withLine: true, 10, 500)!.Slope!.Value, 1e-8);
        Assert.False(rise.TimeConstantAtBound);
    }

    [Fact]
    public void A_source_and_a_steady_rise_are_told_apart()
    {
        var random = new Random(7);
        var t = Enumerable.Range(0, 240).Select(i => i * 10.0).ToArray();
        var y = t.Select(v => 40 + (25 * (1 - Math.Exp(-v / 300))) + (0.004 * v) + (0.2 * (random.NextDouble() - 0.5))).ToArray();
        var rise = ExponentialRise.Of("hold", t, y, withLine: true, 20, 1200)!;
        Within(rise.Start, 40);
        Within(rise.Rise, 25);
        Within(rise.TimeConstant, 300);
        Within(rise.Slope!, 0.004);
        Assert.Equal(0.2 / Math.Sqrt(12), rise.Fit.ResidualStandardDeviation, 0.005);

        static void Within(Commission.Measurement.Uncertainty.Uncertain found, double truth)
        {
            Assert.True(Math.Abs(found.Value - truth) < 3.5 * found.StandardUncertainty, $"{found} against {truth}");
            Assert.True(found.StandardUncertainty < 0.05 * truth, $"{found} is too vague");
        }
    }

    [Fact]
    public void A_straight_line_has_no_time_constant()
    {
        var t = Enumerable.Range(0, 60).Select(i => i * 10.0).ToArray();
        var y = t.Select(v => 40 + (0.01 * v)).ToArray();
        var rise = ExponentialRise.Of("hold", t, y, withLine: false, 20, 300);
        Assert.True(rise is null || rise.TimeConstantAtBound);
    }

    [Fact]
    public void A_flat_hold_cannot_tell_the_parameters_apart()
    {
        var t = Enumerable.Range(0, 60).Select(i => i * 10.0).ToArray();
        Assert.Null(ExponentialRise.Of("hold", t, [.. t.Select(_ => 40.0)], withLine: false, 20, 300));
        Assert.Null(ExponentialRise.Of("hold", [0, 1, 2], [1, 2, 3], withLine: false, 20, 300));
    }
}
