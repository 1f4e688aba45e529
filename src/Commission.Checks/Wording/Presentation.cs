using System.Collections.Immutable;
using System.Globalization;
using System.Runtime.CompilerServices;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records;
using Commission.Records.Findings;
using QuantityValue = Commission.Messages.QuantityValue;

namespace Commission.Checks.Wording;

/// <summary>
/// How the numbers of one job are printed: its units, the decimals that the uncertainty allows. All text of numbers in a
/// record is made here, so that pages print fields and compute nothing.
/// </summary>
internal sealed class Presentation
{
    private readonly PhraseBook _phrases;

    private Presentation(UnitSystem units, Language language)
    {
        Units = units;
        _phrases = new PhraseBook(language);
    }

    /// <summary>Units and decimals for each kind of number.</summary>
    public UnitSystem Units { get; }

    /// <summary>The language of the record.</summary>
    public Language Language => _phrases.Language;

    /// <summary>Every text made here and what it is made of.</summary>
    public ImmutableArray<Phrase> Phrases => _phrases.Entries();

    /// <summary>The preset: <c>us</c> or <c>si</c>.</summary>
    public string Preset => Units.Preset;

    /// <summary>The presentation a job asks for: its <c>units</c>, or, when it has none, the units its readings are written in.</summary>
    /// <param name="job">The job.</param>
    /// <param name="language">The language of the record.</param>
    public static Presentation For(Job job, Language language)
    {
        ArgumentNullException.ThrowIfNull(job);
        if (job.Units is not { } choice)
            return new Presentation(WritesMetric(job) ? UnitSystem.Si : UnitSystem.Us, language);
        var system = choice.Preset.Value == UnitPreset.Si ? UnitSystem.Si : UnitSystem.Us;
        foreach (var (key, unit) in Overrides(choice))
        {
            // A unit that fits a bare number need not be fit for display (psia for a gauge pressure); the preset's then stays.
            if (unit is not null && system.With(key, unit.Value) is { Ok: true, Value: { } changed })
                system = changed;
        }

        return new Presentation(system, language);
    }

    /// <summary>A number with its unit: <c>13.1 °F</c>. A gauge pressure is given above the atmosphere, an absolute one as such.</summary>
    /// <param name="si">The number in SI.</param>
    /// <param name="kind">What it is.</param>
    public string Text(double si, DisplayKind kind) => Symbols(QuantityFormat.Format(si, Units[kind]));

    /// <summary>A number with its unit and a stated number of decimals.</summary>
    /// <param name="si">The number in SI.</param>
    /// <param name="kind">What it is.</param>
    /// <param name="decimals">Decimals.</param>
    public string Text(double si, DisplayKind kind, int decimals) => Symbols(QuantityFormat.Format(si, Units[kind].Unit, decimals));

    /// <summary>A target with its tolerance, in one unit: <c>0.220 ± 0.040 kg</c>.</summary>
    /// <param name="si">The target in SI.</param>
    /// <param name="halfSi">Half the width of the tolerance, an SI difference.</param>
    /// <param name="kind">What it is.</param>
    public string Text(double si, double halfSi, DisplayKind kind) => Symbols(QuantityFormat.Format(si, halfSi, Units[kind]));

    /// <summary>A number with its expanded uncertainty: <c>13.1 ± 1.5 °F</c>.</summary>
    public string Text(Uncertain y, DisplayKind kind)
    {
        ArgumentNullException.ThrowIfNull(y);
        return HasDoubt(y) ? Symbols(QuantityFormat.Format(y.Value, y.Expanded, Units[kind])) : Text(y.Value, kind);
    }

    /// <summary>A usual band, in whole units: <c>33 ± 7 °F</c>.</summary>
    /// <param name="middleSi">Its middle in SI.</param>
    /// <param name="halfSi">Half its width, an SI difference.</param>
    /// <param name="kind">What it is.</param>
    public QuantityValue Band(double middleSi, double halfSi, DisplayKind kind) => Value(middleSi, kind, 0) with { Expanded = Math.Round(halfSi / Units[kind].Unit.Factor) };

    /// <summary>A number with its unit as a message carries it, printed as all numbers of its kind are, compounds included.</summary>
    /// <param name="si">The number in SI.</param>
    /// <param name="kind">What it is.</param>
    public QuantityValue InMessage(double si, DisplayKind kind) => QuantityWriter.Of(si, Units[kind]);

    /// <summary>A number with its expanded uncertainty as a message carries it.</summary>
    /// <param name="y">The number.</param>
    /// <param name="kind">What it is.</param>
    public QuantityValue InMessage(Uncertain y, DisplayKind kind)
    {
        ArgumentNullException.ThrowIfNull(y);
        return HasDoubt(y) ? QuantityWriter.Of(y.Value, y.Expanded, Units[kind]) : InMessage(y.Value, kind);
    }

    /// <summary>A number with its unit as a message carries it.</summary>
    /// <param name="si">The number in SI.</param>
    /// <param name="kind">What it is.</param>
    /// <param name="decimals">Decimals.</param>
    public QuantityValue Value(double si, DisplayKind kind, int decimals) => QuantityWriter.Of(si, Units[kind].Unit, decimals);

    /// <summary>A message or another value as text, in the language of the record.</summary>
    /// <param name="value">The message.</param>
    public string Text(MessageValue value) => _phrases.Text(value);

    /// <summary>Numbers, units and symbols in a row, in the language of the record.</summary>
    /// <param name="invariant">The row, with a point for decimals.</param>
    public string Symbols(string invariant) => _phrases.Symbols(invariant);

    /// <summary>The number alone, without its unit, for cells of tables whose head names the unit. A compound prints its unit all the same.</summary>
    /// <param name="si">The number in SI.</param>
    /// <param name="kind">What it is.</param>
    public string Number(double si, DisplayKind kind)
    {
        var display = Units[kind];
        return Symbols(display.Smaller is null
            ? QuantityFormat.Number(display.Unit.FromSi(si), display.Decimals)
            : QuantityFormat.Format(si, display));
    }

    /// <summary>The value in the unit of display, for figures.</summary>
    /// <param name="si">The number in SI.</param>
    /// <param name="kind">What it is.</param>
    public double Value(double si, DisplayKind kind) => Units[kind].Unit.FromSi(si);

    /// <summary>The symbol of the unit of display.</summary>
    /// <param name="kind">What is displayed.</param>
    public string Unit(DisplayKind kind) => Units[kind].Unit.Symbol is "1" ? "" : Units[kind].Unit.Symbol;

    /// <summary>A number as the record keeps it.</summary>
    /// <param name="si">The number in SI.</param>
    /// <param name="kind">What it is.</param>
    public DisplayQuantity Quantity(double si, DisplayKind kind) => Quantity(si, kind, Units[kind].At(si).Decimals, Text(si, kind));

    /// <summary>A measured number as the record keeps it: value and U in the same decimals.</summary>
    public MeasuredQuantity Measured(Uncertain y, DisplayKind kind)
    {
        ArgumentNullException.ThrowIfNull(y);
        if (!(y.StandardUncertainty > 0))
            return new MeasuredQuantity(Quantity(y.Value, kind), null, null, null, null, Text(y.Value, kind), null);
        var display = Units[kind].At(y.Value);
        var fine = display.Smaller ?? display.Unit;
        var decimals = Math.Max(0, QuantityFormat.DecimalsFor(y.Expanded / fine.Factor, display.Decimals + 1));
        var valueText = !HasDoubt(y) ? Text(y.Value, kind) : Symbols(display.Smaller is null
            ? QuantityFormat.Format(y.Value, display.Unit, decimals)
            : QuantityFormat.Format(y.Value, display with { Decimals = decimals }));
        double? freedom = double.IsFinite(y.DegreesOfFreedom) ? y.DegreesOfFreedom : null;
        return new MeasuredQuantity(
            Quantity(y.Value, kind, decimals, valueText),
            y.StandardUncertainty,
            y.Expanded,
            y.CoverageFactor,
            freedom,
            Text(y, kind),
            Symbols(QuantityFormat.Format(DifferenceSi(y.Expanded, fine), fine, decimals)))
        {
            CoverageText = PrintedNumbers.Coverage(y.CoverageFactor, freedom) is { } coverage ? Symbols(coverage) : null,
        };
    }

    // 25 ft is 25 ft: where nothing but last digits of what somebody wrote stands behind a number, a ± would claim an instrument that nobody named.
    private static bool HasDoubt(Uncertain y) => y.StandardUncertainty > 0 && y.Budget.Any(line => line.Cause.Kind != CauseKind.LastDigit);

    // A temperature's U is a difference: the unit's offset must not enter.
    private static double DifferenceSi(double si, Unit unit) => si + (unit.Offset * unit.Factor);

    private static DisplayQuantity QuantityOf(double si, DisplayUnit display, int decimals, string text) => new(
        si,
        WordsOf(display.Unit.Dimension),
        display.Unit.Symbol,
        Rounded(display.Unit.FromSi(si), decimals),
        decimals,
        text);

    private static double Rounded(double value, int decimals) => double.IsFinite(value) ? Math.Round(value, Math.Clamp(decimals, 0, 12), MidpointRounding.AwayFromZero) : value;

    private static string WordsOf(Dimension dimension) => string.Concat(dimension.ToString().Select((c, i) => i > 0 && char.IsAsciiLetterUpper(c) ? " " + char.ToLowerInvariant(c) : char.ToLowerInvariant(c).ToString()));

    private static IEnumerable<(string Key, Given<string>? Unit)> Overrides(UnitChoice choice) =>
    [
        (UnitSystem.KeyOf(DisplayKind.Pressure), choice.Pressure),
        (UnitSystem.KeyOf(DisplayKind.Vacuum), choice.Vacuum),
        (UnitSystem.KeyOf(DisplayKind.AtmosphericPressure), choice.AtmosphericPressure),
        (UnitSystem.KeyOf(DisplayKind.PressureDifference), choice.PressureDifference),
        (UnitSystem.KeyOf(DisplayKind.StaticPressure), choice.StaticPressure),
        (UnitSystem.KeyOf(DisplayKind.Temperature), choice.Temperature),
        (UnitSystem.KeyOf(DisplayKind.TemperatureDifference), choice.TemperatureDifference),
        (UnitSystem.KeyOf(DisplayKind.Mass), choice.Mass),
        (UnitSystem.KeyOf(DisplayKind.Length), choice.Length),
        (UnitSystem.KeyOf(DisplayKind.Elevation), choice.Elevation),
        (UnitSystem.KeyOf(DisplayKind.TubeDiameter), choice.TubeDiameter),
        (UnitSystem.KeyOf(DisplayKind.AirFlow), choice.AirFlow),
        (UnitSystem.KeyOf(DisplayKind.Capacity), choice.Capacity),
    ];

    private static bool WritesMetric(Job job)
    {
        var texts = new[]
        {
            job.Identity.Site.Elevation?.Text,
            job.Equipment.Nameplate?.FactoryCharge?.Text,
            job.Equipment.Nameplate?.DesignPressure?.Low?.Text,
            job.Charging?.Readings.FirstOrDefault()?.VaporPressure?.Text,
            job.Charging?.Readings.FirstOrDefault()?.VaporLine?.Text,
            job.Evacuation?.Target?.Text,
        };
        var metric = texts.Count(t => t is not null && (t.EndsWith(" m", StringComparison.Ordinal) || t.Contains("kg", StringComparison.Ordinal) || t.Contains("bar", StringComparison.Ordinal) || t.Contains("Pa", StringComparison.Ordinal) || t.Contains("°C", StringComparison.Ordinal)));
        return metric * 2 > texts.Count(t => t is not null);
    }

    private DisplayQuantity Quantity(double si, DisplayKind kind, int decimals, string text) => QuantityOf(si, Units[kind].At(si), decimals, text);
}

/// <summary>
/// Remembers in which unit a root cause is to be read, so that a budget can print "0.72 psi" and "0.15 °F per psi".
/// A cause that nobody entered prints without a unit.
/// </summary>
internal sealed class CauseBook
{
    private readonly ConditionalWeakTable<RootCause, object> _kinds = [];

    /// <summary>Enters a cause.</summary>
    /// <param name="cause">The cause.</param>
    /// <param name="kind">How its standard uncertainty is displayed; a difference for temperatures and pressures.</param>
    /// <returns>The same cause.</returns>
    public RootCause Enter(RootCause cause, DisplayKind kind)
    {
        _kinds.AddOrUpdate(cause, kind);
        return cause;
    }

    /// <summary>How the cause is displayed; null when nobody said.</summary>
    public DisplayKind? KindOf(RootCause cause) => _kinds.TryGetValue(cause, out var kind) ? (DisplayKind)kind : null;
}

/// <summary>
/// A number that equals its limit in every digit anybody wrote, and differs from it in the last bit of a double only: 75.0 °F less 53.0 °F is
/// 22 °F, but not when both were turned into kelvin first.
/// </summary>
internal static class LimitEquality
{
    private const double SameNumber = 1e-9;

    /// <summary>The number, moved onto a bound from which it differs by rounding alone.</summary>
    public static Uncertain On(this Uncertain y, LimitStatement limit)
    {
        foreach (var bound in new[] { limit.LowerSi, limit.UpperSi })
        {
            if (bound is { } at && at != y.Value && Math.Abs(at - y.Value) <= SameNumber * Math.Max(Math.Abs(at), Math.Abs(y.Value)))
                return y + (at - y.Value);
        }

        return y;
    }
}
