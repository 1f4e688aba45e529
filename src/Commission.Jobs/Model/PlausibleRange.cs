using System.Globalization;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Messages;

namespace Commission.Jobs.Model;

/// <summary>What a key's quantity is a number of, the units of bare numbers, and the range outside which the value cannot be.</summary>
/// <param name="Key">The key.</param>
/// <param name="Dimension">What it is a number of.</param>
/// <param name="UsUnit">Unit of a bare number under <c>units: us</c>; null when a bare number is not taken.</param>
/// <param name="SiUnit">Unit of a bare number under <c>units: si</c>.</param>
/// <param name="UnitOverride">The key of <c>units</c> that names another; null when none does.</param>
/// <param name="Within">The plausible range.</param>
internal sealed record QuantityField(string Key, Dimension Dimension, string? UsUnit, string? SiUnit, string? UnitOverride, PlausibleRange Within)
{
    /// <summary>Whether a pressure that does not say what it is counted from is gauge, as a nameplate's is.</summary>
    public bool IsGauge { get; init; }
}

/// <summary>The range outside which a value is technically impossible, not merely unusual. Its ends are read when they are first needed.</summary>
internal sealed class PlausibleRange(Dimension dimension, string low, string high)
{
    // Gauge and absolute pressures are compared at sea level: the ends leave more room than any height above it takes.
    private const double SeaLevel = 101_325;

    // So far below everything that a range reaches to, a number is a slip of the unit and not next to nothing.
    private const double NextToNothing = 1e-12;

    private ParsedQuantity? _low;
    private ParsedQuantity? _high;

    public Dimension Dimension => dimension;

    /// <summary>Width in SI: no statement of doubt is wider.</summary>
    public double Width => Absolute(High.Si, High.Reference) - Absolute(Low.Si, Low.Reference);

    /// <summary>The greatest value, SI.</summary>
    public double Most => High.Si;

    private ParsedQuantity Low => _low ??= Read(low);

    private ParsedQuantity High => _high ??= Read(high);

    /// <summary>Whether a value lies within.</summary>
    /// <param name="si">The value in SI, a pressure as written.</param>
    /// <param name="reference">What a pressure is counted from.</param>
    public bool Holds(double si, PressureReference? reference)
    {
        var value = Absolute(si, reference);
        var (least, most) = (Absolute(Low.Si, Low.Reference), Absolute(High.Si, High.Reference));
        return value >= least && value <= most && (si == 0 || Math.Abs(si) > NextToNothing * Math.Max(Math.Abs(least), Math.Abs(most)));
    }

    /// <summary>The range in words, in the unit that was written where it can be.</summary>
    public Message InWords(Unit unit)
    {
        var sameKind = unit.Dimension == Low.Unit.Dimension && unit.Reference == Low.Unit.Reference && unit.Reference == High.Unit.Reference;
        return sameKind ? JobMessages.Between(new(Rounded(unit.FromSi(Low.Si), unit)), new(Rounded(unit.FromSi(High.Si), unit))) : JobMessages.Between(new(low), new(high));
    }

    private static double Absolute(double si, PressureReference? reference) => reference switch
    {
        PressureReference.Gauge => SeaLevel + si,
        PressureReference.BelowAtmosphere => SeaLevel - si,
        _ => si,
    };

    private ParsedQuantity Read(string text)
    {
        var parsed = QuantityParser.Parse(text, dimension);
        return parsed.Ok ? parsed.Value : throw new InvalidOperationException($"The schema's range has an end {text}: {parsed.Fault.Found.Id}");
    }

    // Three digits tell the range; what a conversion adds behind them tells nothing.
    private static string Rounded(double value, Unit unit)
    {
        if (value != 0)
        {
            var digits = 2 - (int)Math.Floor(Math.Log10(Math.Abs(value)));
            value = digits is >= 0 and <= 15 ? Math.Round(value, digits) : Math.Round(value * Math.Pow(10, digits)) / Math.Pow(10, digits);
        }

        var number = value.ToString("0.###############", CultureInfo.InvariantCulture);
        return unit.Symbol == "1" ? number : $"{number} {unit.Symbol}";
    }
}
