using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Messages;

namespace Commission.Measurement.Tests.Units;

/// <summary>Half-widths worked out by hand: 0.5 % of 500 psi is 2.5 psi.</summary>
public sealed class AccuracyStatementTests
{
    private const double Psi = 6894.757293168361;

    [Theory]
    [InlineData("0.5 % of full scale", Dimension.Pressure, "psig", 118.4, 500 * Psi, 0.1 * Psi, 2.5 * Psi, "0.5 % of full scale")]
    [InlineData("±0.5% FS", Dimension.Pressure, "psig", 118.4, 500 * Psi, 0.1 * Psi, 2.5 * Psi, "0.5 % of full scale")]
    [InlineData("10 % of reading", Dimension.VacuumLevel, "micron", 500.0, 0.0, 0.0, 50 * 0.133322387415, "10 % of reading")]
    [InlineData("1.5 % of reading + 3 digits", Dimension.ElectricCurrent, "A", 14.9, 0.0, 0.1, 0.5235, "1.5 % of reading + 3 digits")]
    [InlineData("+/- (1.5 % rdg + 3 dgt)", Dimension.ElectricCurrent, "A", 14.9, 0.0, 0.1, 0.5235, "1.5 % of reading + 3 digits")]
    [InlineData("±1.5 % of reading ± 3 digits", Dimension.ElectricCurrent, "A", 14.9, 0.0, 0.1, 0.5235, "1.5 % of reading + 3 digits")]
    [InlineData("0.9 °F", Dimension.Temperature, "°F", 57.2, 0.0, 0.0, 0.5, "0.9 °F")]
    [InlineData("±0.5 K (k=2)", Dimension.Temperature, "°F", 57.2, 0.0, 0.0, 0.5, "0.5 K (k = 2)")]
    [InlineData("0.1 psi + 0.2 % of reading", Dimension.Pressure, "psig", 118.4, 0.0, 0.0, 0.3368 * Psi, "0.1 psi + 0.2 % of reading")]
    [InlineData("0.1 % of reading + 1.3 °F", Dimension.Temperature, "°F", 100.0, 0.0, 0.0, 1.4 / 1.8, "0.1 % of reading + 1.3 °F")]
    [InlineData("1.1 °C or 0.4 % of reading, whichever is greater", Dimension.Temperature, "°C", 100.0, 0.0, 0.0, 1.1, "1.1 °C or 0.4 % of reading")]
    [InlineData("1.1 °C or 0.4 % of reading", Dimension.Temperature, "°C", 500.0, 0.0, 0.0, 2.0, "1.1 °C or 0.4 % of reading")]
    [InlineData("2 % RH", Dimension.Ratio, "%", 50.0, 0.0, 0.0, 0.02, "2 %")]
    [InlineData("2 % of reading", Dimension.Ratio, "%", 50.0, 0.0, 0.0, 0.01, "2 % of reading")]
    [InlineData("0.5 oz", Dimension.Mass, "oz", 16.3, 0.0, 0.0, 0.5 * 0.028349523125, "0.5 oz")]
    [InlineData("1 digit", Dimension.Pressure, "psig", 16.3, 0.0, Psi, Psi, "1 digit")]
    public void Bounds_of_a_reading(string text, Dimension dimension, string unit, double reading, double fullScale, double resolution, double halfWidth, string canonical)
    {
        var result = AccuracyStatement.Parse(text, dimension);
        Assert.True(result.Ok, result.Fault?.Text(Language.English));
        Assert.Equal(canonical, result.Value.Canonical);
        Assert.Equal(halfWidth, result.Value.HalfWidthAt(reading, UnitTable.Find(unit, dimension)!, fullScale, resolution)!.Value, halfWidth * 1e-9);
    }

    [Theory]
    [InlineData("1.5 % + 3 digits", Dimension.ElectricCurrent, "\"1.5 %\" does not say of what.", 0, 5)]
    [InlineData("0.9", Dimension.Temperature, "\"0.9\" has no unit.", 0, 3)]
    [InlineData("good", Dimension.Temperature, "\"good\" does not begin with a number.", 0, 4)]
    [InlineData("0.5 % of full scale + 2 psig + 3 in", Dimension.Pressure, "\"3 in\" is a length.", 31, 4)]
    [InlineData("0,5 % of full scale", Dimension.Pressure, "\"0,5\" has a comma in the number.", 0, 3)]
    [InlineData("", Dimension.Pressure, "Nothing is written.", 0, 1)]
    public void Refuses_what_cannot_be_read(string text, Dimension dimension, string found, int offset, int length)
    {
        var fault = AccuracyStatement.Parse(text, dimension).Fault;
        Assert.NotNull(fault);
        Assert.Equal((found, offset, length), (fault.Found.Said(), fault.Offset, fault.Length));
    }

    [Fact]
    public void Without_the_full_scale_it_needs_there_is_no_bound()
    {
        var statement = AccuracyStatement.Parse("0.5 % of full scale", Dimension.Pressure).Value!;
        Assert.Null(statement.HalfWidthAt(118.4, UnitTable.Find("psig", Dimension.Pressure)!));
        Assert.Null(AccuracyStatement.Parse("3 digits", Dimension.Pressure).Value!.HalfWidthAt(118.4, UnitTable.Find("psig", Dimension.Pressure)!));
    }

    [Fact]
    public void A_bound_is_rectangular_unless_it_gives_k()
    {
        Assert.Equal(1 / Math.Sqrt(3), AccuracyStatement.Parse("0.9 °F", Dimension.Temperature).Value!.ToRootCause("probe".Plain(), "maker".Plain()).StandardUncertainty, 1e-12);
        Assert.Equal(0.5, AccuracyStatement.Parse("0.9 °F (k=2)", Dimension.Temperature).Value!.ToRootCause("probe".Plain(), "certificate".Plain()).StandardUncertainty, 1e-12);
    }

    [Theory]
    [InlineData("1.5 % of reading + 3 digits", true)]
    [InlineData("1.5 % of reading", false)]
    public void It_says_whether_digits_are_in_it(string text, bool digits) =>
        Assert.Equal(digits, AccuracyStatement.Parse(text, Dimension.ElectricCurrent).Value!.IncludesDigits);
}
