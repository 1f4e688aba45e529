using System.Globalization;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using CsCheck;

namespace Commission.Measurement.Tests.Units;

public sealed class QuantityFormatTests
{
    private static readonly Unit Fahrenheit = UnitTable.Find("°F", Dimension.Temperature)!;
    private static readonly Unit FahrenheitDifference = UnitTable.Find("°F", Dimension.TemperatureDifference)!;

    [Theory]
    [InlineData(13.1, 1.52, "13.1 ± 1.5 °F")]
    [InlineData(13.149, 0.0432, "13.149 ± 0.043 °F")]
    [InlineData(13.149, 0.0996, "13.15 ± 0.10 °F")]
    [InlineData(13.149, 9.96, "13 ± 10 °F")]
    [InlineData(13149, 27.4, "13149 ± 27 °F")]
    [InlineData(13149, 1234, "13100 ± 1200 °F")]
    [InlineData(-0.004, 0.1, "0.00 ± 0.10 °F")]
    [InlineData(-3.96, 1.04, "−4.0 ± 1.0 °F")]
    public void Value_and_uncertainty_have_the_same_decimals(double value, double expanded, string text) =>
        Assert.Equal(text, QuantityFormat.Format(FahrenheitDifference.ToSi(value), FahrenheitDifference.ToSi(expanded), FahrenheitDifference));

    [Fact]
    public void Uncertainty_of_a_temperature_has_no_offset() =>
        Assert.Equal("45.2 ± 1.0 °F", QuantityFormat.Format(Fahrenheit.ToSi(45.2), 1.0 / 1.8, Fahrenheit));

    [Theory]
    [InlineData(11.25, "11 lb 4.0 oz")]
    [InlineData(0.5, "8.0 oz")]
    [InlineData(0.9999, "1 lb 0.0 oz")]
    [InlineData(2.99999, "3 lb 0.0 oz")]
    [InlineData(-1.5, "−1 lb 8.0 oz")]
    [InlineData(-0.0001, "0.0 oz")]
    public void Pounds_and_ounces_carry(double pounds, string text) =>
        Assert.Equal(text, QuantityFormat.Format(Mass.FromPounds(pounds).Si, UnitSystem.Us[DisplayKind.Mass]));

    [Fact]
    public void A_compound_keeps_its_uncertainty_in_the_smaller_unit()
    {
        Assert.Equal("11 lb 4.0 oz ± 0.5 oz", QuantityFormat.Format(Mass.FromPounds(11.25).Si, Mass.FromOunces(0.5).Si, UnitSystem.Us[DisplayKind.Mass] with { Decimals = 0 }));
        Assert.Equal("11 lb 4.00 oz ± 0.50 oz", QuantityFormat.Format(Mass.FromPounds(11.25).Si, Mass.FromOunces(0.5).Si, UnitSystem.Us[DisplayKind.Mass]));
    }

    [Theory]
    [InlineData(0.285, 2, "0.29")]
    [InlineData(2.5, 0, "3")]
    [InlineData(-2.5, 0, "−3")]
    [InlineData(-0.04, 1, "0.0")]
    [InlineData(1250, -2, "1300")]
    [InlineData(1e-20, 3, "0.000")]
    [InlineData(1234567890123456, 0, "1234567890123456")]
    public void Numbers_round_half_away_from_zero(double value, int decimals, string text) => Assert.Equal(text, QuantityFormat.Number(value, decimals));

    [Fact]
    public void A_written_number_survives_SI_and_back() => Gen.Select(Gen.Int[-4596, 30000], Gen.OneOf(Gen.Const("°F"), Gen.Const("°C"), Gen.Const("K"), Gen.Const("°R"))).Sample((tenths, symbol) =>
    {
        var unit = UnitTable.Find(symbol, Dimension.Temperature)!;
        var text = (tenths / 10.0).ToString("F1", CultureInfo.InvariantCulture);
        return unit.ToSi(tenths / 10.0) < 0 || QuantityFormat.Number(unit.FromSi(unit.ToSi(tenths / 10.0)), 1) == (text == "-0.0" ? "0.0" : text.Replace('-', '−'));
    });

    [Fact]
    public void The_machines_language_does_not_matter()
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("de-DE");
            Assert.Equal("13.1 ± 1.5 °F", QuantityFormat.Format(FahrenheitDifference.ToSi(13.1), FahrenheitDifference.ToSi(1.5), FahrenheitDifference));
            Assert.Equal(280.4833333, QuantityParser.Parse("45.2 °F", Dimension.Temperature).Value!.Si, 1e-6);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
