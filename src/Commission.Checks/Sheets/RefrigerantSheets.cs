using System.Collections.Immutable;
using System.Globalization;
using Commission.Fluids;
using Commission.Measurement.Atmosphere;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records;
using QuantityValue = Commission.Messages.QuantityValue;

namespace Commission.Checks.Sheets;

/// <summary>What is known of refrigerants: the list of all, and one with its pressure–temperature table.</summary>
public static class RefrigerantSheets
{
    private const double ColdestRow = 233.15;
    private const int Rows = 21;

    /// <summary>Every refrigerant, with the reason where one cannot be computed.</summary>
    /// <param name="language">The language of the sheet.</param>
    public static Sheet All(Language language)
    {
        string Text(Message message) => RecordWords.Text(message, language);
        var pure = RefrigerantCatalogue.All.Where(r => !r.IsBlend).ToList();
        var blends = RefrigerantCatalogue.All.Where(r => r.IsBlend).ToList();
        var computed = blends.Count(b => b.IsComputable);
        ImmutableArray<string> head = [Text(SheetsMessages.ColumnRefrigerant), Text(SheetsMessages.ColumnSafety), "GWP AR4", "GWP AR5", Text(SheetsMessages.ColumnComposition)];
        return new Sheet(
            Text(SheetsMessages.Refrigerants(pure.Count, computed)),
            [
                new SheetPart(Text(SheetsMessages.Fluids(pure.Count)), head, [.. pure.Select(r => Row(r, language))]),
                new SheetPart(Text(SheetsMessages.Blends(computed)), head, [.. blends.Where(b => b.IsComputable).Select(r => Row(r, language))]),
                new SheetPart(
                    Text(SheetsMessages.NotComputed), [Text(SheetsMessages.ColumnRefrigerant), Text(SheetsMessages.ColumnWhy)],
                    [.. blends.Where(b => !b.IsComputable).Select(b => ImmutableArray.Create(b.Designation, Text(RefrigerantMessages.NoEquation(new(b.LacksEquationOf!)))))]),
            ]);
    }

    /// <summary>One refrigerant: identity, class, GWP, validity, papers, bubble and dew pressures over temperature.</summary>
    /// <param name="info">The refrigerant.</param>
    /// <param name="units">Units of the table.</param>
    /// <param name="elevation">Elevation of the site, for gauge pressures.</param>
    /// <param name="language">The language of the sheet.</param>
    public static Sheet One(RefrigerantInfo info, UnitSystem units, Length elevation, Language language)
    {
        ArgumentNullException.ThrowIfNull(info);
        ArgumentNullException.ThrowIfNull(units);
        ArgumentNullException.ThrowIfNull(language);
        string Text(Message message) => RecordWords.Text(message, language);
        string Number(double value, string format) => language.Number(value.ToString(format, CultureInfo.InvariantCulture));
        string? Gwp(string edition, SourcedValue? value) =>
            value is null ? null : Text(SheetsMessages.WarmingPotential(new(edition), new(Number(value.Value, "0.#")), new(value.Mark), new(value.Source)));
        var parts = ImmutableArray.CreateBuilder<SheetPart>();
        parts.Add(SheetPart.Lines(
            "",
            info.CompositionSource is { } source ? Text(SheetsMessages.Composition(new(info.CompositionText), new(source.Mark), new(source.Source))) : info.CompositionText,
            info.Aliases.IsEmpty ? null : Text(SheetsMessages.Aliases(new([.. info.Aliases.Select(a => new NameValue(a))], ListJoin.Comma))),
            Text(info.SafetyGroup is { } group ? SheetsMessages.SafetyGroup(new(group.Value), new(group.Mark), new(group.Source)) : SheetsMessages.SafetyGroupUnknown),
            Gwp("AR4", info.GwpAr4), Gwp("AR5", info.GwpAr5), Gwp("AR6", info.GwpAr6),
            info.LowerFlammabilityLimit is { } lfl ? Text(SheetsMessages.LowerFlammabilityLimit(new(Number(lfl.Value, "0.###")), new(lfl.Mark), new(lfl.Source))) : null));
        if (!info.IsComputable)
        {
            parts.Add(SheetPart.Lines(Text(SheetsMessages.NotComputed), Text(RefrigerantMessages.NoEquation(new(info.LacksEquationOf!)))));
            return new Sheet(info.Designation, parts.ToImmutable());
        }

        var fluid = Refrigerant.Load(info.Designation);
        var atmosphere = StandardAtmosphere.At(elevation);
        QuantityValue T(double k) => QuantityWriter.Of(k, units[DisplayKind.Temperature]);
        QuantityValue Abs(double p) => QuantityWriter.Of(p, units[DisplayKind.AbsolutePressure]);
        var normalBubble = fluid.BubbleAtPressure(101_325);
        var normalDew = fluid.DewAtPressure(101_325);
        var difference = fluid.CompareWithListedBoilingRange();
        parts.Add(SheetPart.Lines(
            Text(SheetsMessages.Properties),
            Text(SheetsMessages.MolarMass(new(Number(1000 * fluid.MolarMass, "0.###")), new(Number(fluid.GasConstant, "0.#########")))),
            fluid.CriticalPoint is { Ok: true, Value: var c } ? Text(SheetsMessages.CriticalPoint(T(c.Temperature), Abs(c.Pressure))) : null,
            normalBubble.Ok && normalDew.Ok ? Text(SheetsMessages.NormalBoiling(T(normalBubble.Value.Temperature), T(normalDew.Value.Temperature))) : null,
            difference.Ok ? Text(SheetsMessages.ListedBoiling(new(Number(-difference.Value.Bubble, "+0.00;-0.00")), new(Number(-difference.Value.Dew, "+0.00;-0.00")), new(info.ListedBoilingRange!.Mark))) : null,
            Text(SheetsMessages.ValidRange(T(fluid.LowestTemperature), T(fluid.HighestTemperature), Abs(fluid.HighestPressure))),
            fluid.EstimatedPairs.IsEmpty ? null : Text(SheetsMessages.EstimatedPairs(new([.. fluid.EstimatedPairs.Select(e => new TextValue(e))], ListJoin.Comma)))));
        parts.Add(Table(fluid, units, atmosphere, language));
        parts.Add(SheetPart.Lines(Text(SheetsMessages.Papers), fluid.Papers.Select(p => p.Citation)));
        return new Sheet(info.Designation, parts.ToImmutable());
    }

    private static SheetPart Table(Refrigerant fluid, UnitSystem units, Pressure atmosphere, Language language)
    {
        string Show(double si, DisplayUnit unit) => QuantityWriter.Instance.Write(QuantityWriter.Of(si, unit), language);
        string Text(Message message) => RecordWords.Text(message, language);

        // Round steps of the crew's own scale: 10 °F or 5 °C.
        var step = units.Preset == "us" ? 50.0 / 9.0 : 5.0;
        var gauge = units[DisplayKind.Pressure];
        var rows = ImmutableArray.CreateBuilder<ImmutableArray<string>>();
        for (var i = 0; i < 2 * Rows; i++)
        {
            var kelvin = ColdestRow + (i * step);
            var bubble = fluid.BubbleAtTemperature(kelvin);
            var dew = fluid.DewAtTemperature(kelvin);
            if (!bubble.Ok || !dew.Ok)
            {
                if (rows.Count > 0)
                {
                    rows.Add([Show(kelvin, units[DisplayKind.Temperature]), "–", Text((bubble.Reason ?? dew.Reason)!)]);
                    break;
                }

                continue;
            }

            rows.Add([
                Show(kelvin, units[DisplayKind.Temperature]),
                Show(bubble.Value.Pressure - atmosphere.Si, gauge),
                Show(dew.Value.Pressure - atmosphere.Si, gauge),
            ]);
        }

        return new SheetPart(
            Text(SheetsMessages.Saturation(QuantityWriter.Of(atmosphere.Si, units[DisplayKind.AbsolutePressure].Unit, 3))),
            [Text(SheetsMessages.ColumnTemperature), Text(SheetsMessages.ColumnBubble), Text(SheetsMessages.ColumnDew)],
            rows.ToImmutable());
    }

    private static ImmutableArray<string> Row(RefrigerantInfo info, Language language)
    {
        string Number(SourcedValue? value) => value is null ? "" : language.Number(value.Value.ToString("0.#", CultureInfo.InvariantCulture));
        return [info.Designation, info.SafetyGroup?.Value ?? "", Number(info.GwpAr4), Number(info.GwpAr5), info.CompositionText];
    }
}

/// <summary>The state of a refrigerant at a pressure and a temperature, with its distance from saturation.</summary>
public static class StateSheet
{
    // Nearer than this to a saturation curve, pressure and temperature do not tell which side the refrigerant is on.
    private const double OnTheCurve = 1e-6;

    /// <summary>Makes the sheet.</summary>
    /// <param name="info">The refrigerant; it can be computed.</param>
    /// <param name="pressure">Absolute pressure.</param>
    /// <param name="temperature">Temperature.</param>
    /// <param name="atmosphere">Atmosphere at the site.</param>
    /// <param name="units">Units of the sheet.</param>
    /// <param name="language">The language of the sheet.</param>
    public static Sheet Make(RefrigerantInfo info, Pressure pressure, Temperature temperature, Pressure atmosphere, UnitSystem units, Language language)
    {
        ArgumentNullException.ThrowIfNull(info);
        ArgumentNullException.ThrowIfNull(units);
        var fluid = Refrigerant.Load(info.Designation);
        string Text(Message message) => RecordWords.Text(message, language);
        QuantityValue Shown(double si, DisplayKind kind) => QuantityWriter.Of(si, units[kind]);
        QuantityValue Fine(double si, DisplayKind kind, int decimals) => QuantityWriter.Of(si, units[kind].Unit, decimals);
        var lines = new List<string?>
        {
            Text(SheetsMessages.StateAt(Shown(pressure.Si - atmosphere.Si, DisplayKind.Pressure), Fine(pressure.Si, DisplayKind.AbsolutePressure, 3), Shown(temperature.Si, DisplayKind.Temperature))),
            Text(SheetsMessages.StateAtmosphere(Fine(atmosphere.Si, DisplayKind.AbsolutePressure, 3))),
        };
        var bubble = fluid.BubbleAtPressure(pressure.Si);
        var dew = fluid.DewAtPressure(pressure.Si);
        var phase = Phase.Supercritical;
        if (bubble.Ok && dew.Ok)
        {
            var superheat = temperature.Si - dew.Value.Temperature;
            var subcooling = bubble.Value.Temperature - temperature.Si;
            lines.Add(Text(SheetsMessages.StateSaturation(Fine(bubble.Value.Temperature, DisplayKind.Temperature, 2), Fine(dew.Value.Temperature, DisplayKind.Temperature, 2))));
            lines.Add(Text(superheat > OnTheCurve ? SheetsMessages.StateSuperheat(Fine(superheat, DisplayKind.TemperatureDifference, 2))
                : subcooling > OnTheCurve ? SheetsMessages.StateSubcooling(Fine(subcooling, DisplayKind.TemperatureDifference, 2))
                : SheetsMessages.StateTwoPhase));
            phase = superheat > OnTheCurve ? Phase.Vapor : subcooling > OnTheCurve ? Phase.Liquid : Phase.TwoPhase;
        }
        else
        {
            lines.Add(Text(SheetsMessages.StateNoSaturation((bubble.Reason ?? dew.Reason)!)));
        }

        if (phase != Phase.TwoPhase)
        {
            var state = fluid.At(temperature.Si, pressure.Si, phase);
            if (!state.Ok)
            {
                lines.Add(Text(CommonMessages.Sentence(state.Reason)));
            }
            else
            {
                var s = state.Value;
                lines.Add(Text(SheetsMessages.StateDensity(s.Phase switch
                {
                    Phase.Liquid => SheetsMessages.StateDensityPhase.Liquid,
                    Phase.Vapor => SheetsMessages.StateDensityPhase.Vapor,
                    _ => SheetsMessages.StateDensityPhase.Supercritical,
                }, Shown(s.Density, DisplayKind.Density))));
                lines.Add(Text(SheetsMessages.StateEnthalpy(Shown(s.Enthalpy, DisplayKind.Enthalpy), new(s.Entropy / 1000, 4))));
                if (s.IsobaricHeatCapacity is { } cp && s.SpeedOfSound is { } w)
                    lines.Add(Text(SheetsMessages.StateHeatCapacity(new(cp / 1000, 4), new(w, 1))));
                lines.Add(Text(SheetsMessages.StateReference(fluid.ReferenceState)));
            }
        }

        return new Sheet(
            Text(SheetsMessages.StateTitle(new(info.Designation), new(info.CompositionText))),
            [SheetPart.Lines("", lines), SheetPart.Lines(Text(SheetsMessages.Papers), fluid.Papers.Select(p => p.Citation))]);
    }
}
