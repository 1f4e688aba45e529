using Commission.Fluids.Saturation;
using Xunit;

namespace Commission.Fluids.Tests.Saturation;

/// <summary>Expansions of functions whose values, or whose coefficients, are known without one: T₂(u) = 2u² − 1, T₃(u) = 4u³ − 3u (handbooks of mathematical functions, from memory).</summary>
public sealed class ChebyshevSeriesTests
{
    // On [1, 5] u = (x − 3)/2. The highest coefficient that is not nothing ends the series.
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(7)]
    [InlineData(29)]
    public void A_polynomial_of_Chebyshev_keeps_its_degree_and_one_coefficient_more(int degree)
    {
        var series = ChebyshevSeries.Fit(x => Math.Cos(degree * Math.Acos(Math.Clamp((x - 3) / 2, -1, 1))), 1, 5, 1e-12)!;
        Assert.Equal(degree + 1, series.Length);
        Assert.Equal((1.0, 5.0), (series.Low, series.High));
        Assert.Equal(1, series.At(5), 1e-12);
        Assert.Equal(degree % 2 == 0 ? 1 : -1, series.At(1), 1e-12);
    }

    // At least two coefficients stay, of a constant too.
    [Fact]
    public void A_constant_is_two_coefficients_long()
    {
        var series = ChebyshevSeries.Fit(_ => 7, 1, 5, 1e-12)!;
        Assert.Equal(2, series.Length);
        foreach (var x in new[] { 1, 2.2, 3, 5 })
            Assert.Equal(7, series.At(x), 1e-13);
    }

    [Theory]
    [InlineData(1.0)]
    [InlineData(1.3)]
    [InlineData(2.999)]
    [InlineData(4.9)]
    [InlineData(5.0)]
    public void Between_and_on_its_points_it_is_the_function(double x)
    {
        Assert.Equal((4 * Math.Pow((x - 3) / 2, 3)) - (3 * (x - 3) / 2) + 2, ChebyshevSeries.Fit(v => (4 * Math.Pow((v - 3) / 2, 3)) - (3 * (v - 3) / 2) + 2, 1, 5, 1e-12)!.At(x), 1e-12);
        Assert.Equal(Math.Exp(x), ChebyshevSeries.Fit(Math.Exp, 1, 5, 1e-10)!.At(x), 1e-9);
        Assert.Equal(Math.Sin(9 * x), ChebyshevSeries.Fit(v => Math.Sin(9 * v), 1, 5, 1e-10)!.At(x), 1e-9);
    }

    // e^x on [−1, 1] has the coefficients 2·I_k(1): 1.266066 (half of the first), 1.130318, 0.271495, 0.044337, 0.005474, 0.000543 (tables of Bessel functions).
    [Theory]
    [InlineData(0.04, 4)]
    [InlineData(0.05, 3)]
    [InlineData(0.005, 5)]
    [InlineData(0.006, 4)]
    public void Coefficients_below_a_tenth_of_the_tolerance_are_dropped(double tenth, int length) =>
        Assert.Equal(length, ChebyshevSeries.Fit(Math.Exp, -1, 1, 10 * tenth)!.Length);

    // 33, then 65, then 129 points: what waves faster than those can follow has no expansion.
    [Theory]
    [InlineData(20, true)]
    [InlineData(40, true)]
    [InlineData(80, true)]
    [InlineData(400, false)]
    public void A_function_that_waves_too_fast_has_none(double frequency, bool expands)
    {
        var series = ChebyshevSeries.Fit(v => Math.Sin(frequency * v), -1, 1, 1e-9);
        Assert.Equal(expands, series is not null);
        if (series is not null)
            Assert.Equal(Math.Sin(frequency * 0.37), series.At(0.37), 1e-8);
    }

    [Fact]
    public void A_corner_or_a_hole_has_none()
    {
        Assert.Null(ChebyshevSeries.Fit(Math.Abs, -1, 1, 1e-9));
        Assert.Null(ChebyshevSeries.Fit(v => v > 0.9 ? double.NaN : v, -1, 1, 1e-9));
        Assert.Null(ChebyshevSeries.Fit(_ => double.NaN, -1, 1, 1e-9));
    }
}
