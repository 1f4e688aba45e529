using Commission.Measurement.Quantities;
using Commission.Messages;

namespace Commission.Measurement.Units;

/// <summary>
/// Makes the values that messages carry of quantities, and prints them: the same digits and the same units as <see cref="QuantityFormat"/>,
/// with the decimal sign of the language.
/// </summary>
public sealed class QuantityWriter : IQuantityWriter
{
    private QuantityWriter()
    {
    }

    /// <summary>The one writer there is.</summary>
    public static QuantityWriter Instance { get; } = new();

    /// <summary>A quantity in a unit.</summary>
    /// <param name="si">SI value.</param>
    /// <param name="unit">Unit to print in.</param>
    /// <param name="decimals">Decimals; −1 rounds to tens, −2 to hundreds.</param>
    public static QuantityValue Of(double si, Unit unit, int decimals) =>
        new(si, DimensionName.Of(unit.Dimension), unit.Symbol, QuantityFormat.Round(unit.FromSi(si), decimals), Math.Max(0, decimals));

    /// <summary>A quantity as a page prints this kind of number, compounds included.</summary>
    /// <param name="si">SI value.</param>
    /// <param name="display">Unit and decimals.</param>
    public static QuantityValue Of(double si, DisplayUnit display) => display.At(si) switch
    {
        { Smaller: { } smaller } compound => Of(si, smaller, compound.Decimals) with { Larger = compound.Unit.Symbol },
        var single => Of(si, single.Unit, single.Decimals),
    };

    /// <summary>A quantity with its expanded uncertainty, as a page prints this kind of number.</summary>
    /// <param name="si">SI value.</param>
    /// <param name="expandedSi">Expanded uncertainty U, an SI difference.</param>
    /// <param name="display">Unit and decimals.</param>
    public static QuantityValue Of(double si, double expandedSi, DisplayUnit display)
    {
        display = display.At(si);
        var fine = display.Smaller ?? display.Unit;
        var expanded = expandedSi / fine.Factor;
        var decimals = QuantityFormat.DecimalsFor(expanded, display.Decimals + 1);
        if (display.Smaller is not null)
            decimals = Math.Max(0, decimals);
        return Of(si, fine, decimals) with { Expanded = QuantityFormat.Round(expanded, decimals), Larger = display.Smaller is null ? null : display.Unit.Symbol };
    }

    /// <inheritdoc/>
    public string Write(QuantityValue quantity, Language language)
    {
        ArgumentNullException.ThrowIfNull(quantity);
        ArgumentNullException.ThrowIfNull(language);
        var number = language.Number(QuantityFormat.Number(quantity.Value, quantity.Decimals));
        var unit = quantity.Unit == "1" ? "" : " " + quantity.Unit;
        if (quantity.Larger is { } larger)
            return Compound(quantity, larger, language) + (quantity.Expanded is { } u ? $" ± {language.Number(QuantityFormat.Number(u, quantity.Decimals))}{unit}" : "");
        return quantity.Expanded is { } expanded
            ? $"{number} ± {language.Number(QuantityFormat.Number(expanded, quantity.Decimals))}{unit}"
            : number + unit;
    }

    private static string Compound(QuantityValue quantity, string larger, Language language)
    {
        var dimension = Enum.GetValues<Dimension>().First(d => DimensionName.Of(d) == quantity.Dimension);
        var (above, below) = (Unit(larger, dimension), Unit(quantity.Unit, dimension));
        return language.Number(QuantityFormat.Format(below.ToSi(quantity.Value), new DisplayUnit(above, quantity.Decimals, below)));
    }

    private static Unit Unit(string symbol, Dimension dimension) =>
        UnitTable.Find(symbol, dimension) ?? throw new FormatException($"{symbol}: {DimensionName.Of(dimension)}");
}
