using Commission.Checks.Formulas;
using Commission.Measurement.Quantities;
using Xunit;

namespace Commission.Checks.Tests.Formulas;

public sealed class SuperheatFormulaTests
{
    // Written (wet bulb, outdoor), worked by hand.
    [Theory]
    [InlineData(67, 95, 13.0)]
    [InlineData(70, 95, 17.5)]
    [InlineData(64, 96, 8.0)]
    [InlineData(66, 90, 14.0)]
    [InlineData(55, 75, 5.0)]
    [InlineData(63, 95, 7.0)]
    [InlineData(60, 85, 7.5)]
    [InlineData(64, 100, 6.0)]
    [InlineData(76, 115, 16.5)]
    public void Worked_values(double wetBulb, double outdoor, double superheat) =>
        Assert.Equal(superheat, At(outdoor, wetBulb), 9);

    [Fact]
    public void Against_the_printed_five_degree_rows_it_departs_as_far_as_stated()
    {
        // Recomputed by an independent program: 224 cells, mean -0.5, rms 1.5 °F; 94 % within 3 °F, 98.7 % within 5 °F.
        var departures = PrintedCaliforniaTables.Cells(PrintedCaliforniaTables.Superheat, 50, 1)
            .Where(cell => cell.Value is not null)
            .Select(cell => At(cell.Row, cell.Column) - cell.Value!.Value)
            .ToList();
        Assert.Equal(224, departures.Count);
        Assert.Equal(-0.5, departures.Average(), 0.05);
        Assert.Equal(1.5, Math.Sqrt(departures.Average(d => d * d)), 0.05);
        Assert.Equal(0.94, departures.Count(d => Math.Abs(d) <= 3) / 224.0, 0.005);
        Assert.Equal(0.987, departures.Count(d => Math.Abs(d) <= 5) / 224.0, 0.0005);
        Assert.Equal(-6.4, departures.Min(), 0.05);
        Assert.Equal(2.9, departures.Max(), 0.05);
    }

    private static double At(double outdoor, double wetBulb) =>
        SuperheatFormula.At(Temperature.FromFahrenheit(outdoor), Temperature.FromFahrenheit(wetBulb)).FahrenheitDegrees;
}
