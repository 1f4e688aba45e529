using Commission.Checks.Kernel;
using Commission.Checks.VacuumAnalysis;
using Commission.Checks.Wording;
using Xunit;

namespace Commission.Checks.Tests.Evacuation;

/// <summary>Levels and rates as printed: at least two digits that mean something down to the fourth decimal (this project's rule, no source).</summary>
public sealed class VacuumTextTests
{
    private const double Micron = 0.133322387415;

    [Theory]
    [InlineData("us", 0, "0 micron")]
    [InlineData("us", 1234.4, "1234 micron")]
    [InlineData("us", 12.4, "12 micron")]
    [InlineData("us", 9.94, "9.9 micron")]
    [InlineData("us", 1.04, "1.0 micron")]
    [InlineData("us", 0.994, "0.99 micron")]
    [InlineData("us", 0.0456, "0.046 micron")]
    [InlineData("us", 0.000456, "0.0005 micron")]
    [InlineData("us", -0.994, "-0.99 micron")]
    [InlineData("si", 0, "0 Pa")]
    [InlineData("si", 7.8758, "1.1 Pa")]
    public void A_level_keeps_two_digits(string units, double micron, string text) =>
        Assert.Equal(text, VacuumText.Level(Present(units), micron * Micron).Replace('−', '-'));

    // A rate has decimals of its own; one of them is kept for none at all.
    [Theory]
    [InlineData("us", 0, "0.0 micron/min")]
    [InlineData("us", 12.4, "12 micron/min")]
    [InlineData("us", 0.45, "0.45 micron/min")]
    [InlineData("si", 0, "0.0 Pa/min")]
    public void A_rate_keeps_two_digits(string units, double micronPerMinute, string text) =>
        Assert.Equal(text, VacuumText.Rate(Present(units), micronPerMinute * Micron / 60));

    private static Presentation Present(string units) => JobText.Context(JobLines.Of(units: units)).Present;
}
