using Commission.Measurement.Units;
using Commission.Messages;
using CsCheck;
using Xunit;

namespace Commission.Measurement.Tests.Units;

/// <summary>A quantity of a message reads as the same quantity everywhere else in the record.</summary>
public sealed class QuantityWriterTests
{
    private static readonly DisplayKind[] Kinds = Enum.GetValues<DisplayKind>();

    private static readonly Gen<(UnitSystem System, DisplayKind Kind, double Number, double Expanded)> Case =
        Gen.Select(Gen.Bool.Select(us => us ? UnitSystem.Us : UnitSystem.Si), Gen.Int[0, Kinds.Length - 1].Select(i => Kinds[i]), Gen.Double[-5000, 5000], Gen.Double[1e-4, 300]);

    [Fact]
    public void It_prints_what_pages_print() => Case.Sample((system, kind, number, _) =>
    {
        var display = system[kind];
        var si = display.Unit.ToSi(number);
        Assert.Equal(QuantityFormat.Format(si, display), Write(QuantityWriter.Of(si, display)));
        Assert.Equal(QuantityFormat.Format(si, display.Unit, -1), Write(QuantityWriter.Of(si, display.Unit, -1)));
    });

    [Fact]
    public void It_prints_uncertainties_as_pages_do() => Case.Sample((system, kind, number, expanded) =>
    {
        var display = system[kind];
        var (si, u) = (display.Unit.ToSi(number), expanded * display.Unit.Factor);
        Assert.Equal(QuantityFormat.Format(si, u, display), Write(QuantityWriter.Of(si, u, display)));
    });

    // 1 lb = 16 oz; 11 lb 4 oz are 180 oz; the avoirdupois pound is 0.45359237 kg (international agreement of 1959).
    [Fact]
    public void Pounds_and_ounces_are_kept_in_ounces()
    {
        var quantity = QuantityWriter.Of(11.25 * 0.45359237, 0.5 / 16 * 0.45359237, UnitSystem.Us[DisplayKind.Mass]);
        Assert.Equal(("oz", "lb", 180.0, 2), (quantity.Unit, quantity.Larger, quantity.Value, quantity.Decimals));
        Assert.Equal("11 lb 4.00 oz ± 0.50 oz", Write(quantity));
        Assert.Equal("11 lb 4,00 oz ± 0,50 oz", QuantityWriter.Instance.Write(quantity, Language.German));
    }

    // 1 Torr = 101325/760 Pa; 1000 micron are 1 Torr.
    [Fact]
    public void The_language_decides_the_decimal_sign_and_not_the_unit()
    {
        var quantity = QuantityWriter.Of(101325.0 / 760, UnitSystem.Us[DisplayKind.Vacuum].Unit, 1);
        Assert.Equal("1000.0 micron", Write(quantity));
        Assert.Equal("1000,0 micron", QuantityWriter.Instance.Write(quantity, Language.Spanish));
        Assert.Equal("pressure", quantity.Dimension);
    }

    [Fact]
    public void A_unit_that_nobody_knows_is_told() =>
        Assert.Equal("stone: mass", Assert.Throws<FormatException>(() => Write(new QuantityValue(1, "mass", "oz", 1, 0) { Larger = "stone" })).Message);

    private static string Write(QuantityValue quantity) => QuantityWriter.Instance.Write(quantity, Language.English);
}
