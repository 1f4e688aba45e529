using System.Collections.Immutable;
using System.Globalization;
using Commission.Fluids;
using Commission.Measurement.Atmosphere;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;

namespace Commission.Checks.Sheets;

/// <summary>What is known of refrigerants: the list of all, and one with its pressure–temperature table.</summary>
public static class RefrigerantSheets
{
    private const double ColdestRow = 233.15;
    private const int Rows = 21;

    /// <summary>Every refrigerant, with the reason where one cannot be computed.</summary>
    public static Sheet All()
    {
        var pure = RefrigerantCatalogue.All.Where(r => !r.IsBlend).ToList();
        var blends = RefrigerantCatalogue.All.Where(r => r.IsBlend).ToList();
        ImmutableArray<string> head = ["refrigerant", "safety", "GWP AR4", "GWP AR5", "composition or name"];
        return new Sheet(
            string.Create(CultureInfo.InvariantCulture, $"{pure.Count} fluids and {blends.Count(b => b.IsComputable)} blends that can be computed"),
            [
                new SheetPart(string.Create(CultureInfo.InvariantCulture, $"Fluids ({pure.Count})"), head, [.. pure.Select(Row)]),
                new SheetPart(string.Create(CultureInfo.InvariantCulture, $"Blends ({blends.Count(b => b.IsComputable)})"), head, [.. blends.Where(b => b.IsComputable).Select(Row)]),
                new SheetPart("Not computed", ["refrigerant", "why"], [.. blends.Where(b => !b.IsComputable).Select(b => ImmutableArray.Create(b.Designation, b.NotComputable!))]),
            ]);
    }

    /// <summary>One refrigerant: identity, class, GWP, validity, papers, bubble and dew pressures over temperature.</summary>
    /// <param name="info">The refrigerant.</param>
    /// <param name="units">Units of the table.</param>
    /// <param name="elevation">Elevation of the site, for gauge pressures.</param>
    public static Sheet One(RefrigerantInfo info, UnitSystem units, Length elevation)
    {
        ArgumentNullException.ThrowIfNull(info);
        ArgumentNullException.ThrowIfNull(units);
        var parts = ImmutableArray.CreateBuilder<SheetPart>();
        parts.Add(SheetPart.Lines(
            "",
            info.CompositionText + (info.CompositionSource is { } source ? $"; composition {source.Mark}: {source.Source}" : ""),
            info.Aliases.IsEmpty ? null : "also written " + string.Join(", ", info.Aliases),
            info.SafetyGroup is { } group ? $"safety group {group.Value} ({group.Mark}: {group.Source})" : "safety group not known here",
            Gwp("AR4", info.GwpAr4), Gwp("AR5", info.GwpAr5), Gwp("AR6", info.GwpAr6),
            info.LowerFlammabilityLimit is { } lfl ? string.Create(CultureInfo.InvariantCulture, $"lower flammability limit {lfl.Value:0.###} kg/m³ ({lfl.Mark}: {lfl.Source})") : null));
        if (!info.IsComputable)
        {
            parts.Add(SheetPart.Lines("Not computed", info.NotComputable));
            return new Sheet(info.Designation, parts.ToImmutable());
        }

        var fluid = Refrigerant.Load(info.Designation);
        var atmosphere = StandardAtmosphere.At(elevation);
        string T(double k) => QuantityFormat.Format(k, units[DisplayKind.Temperature]);
        string Abs(double p) => QuantityFormat.Format(p, units[DisplayKind.AbsolutePressure]);
        var normalBubble = fluid.BubbleAtPressure(101_325);
        var normalDew = fluid.DewAtPressure(101_325);
        var difference = fluid.CompareWithListedBoilingRange();
        parts.Add(SheetPart.Lines(
            "Properties",
            string.Create(CultureInfo.InvariantCulture, $"molar mass {1000 * fluid.MolarMass:0.###} g/mol, gas constant used {fluid.GasConstant:0.#########} J/(mol·K)"),
            fluid.CriticalPoint is { Ok: true, Value: var c } ? $"critical point {T(c.Temperature)}, {Abs(c.Pressure)}" : null,
            normalBubble.Ok && normalDew.Ok ? $"boils at 101.325 kPa from {T(normalBubble.Value.Temperature)} (bubble) to {T(normalDew.Value.Temperature)} (dew)" : null,
            difference.Ok ? string.Create(CultureInfo.InvariantCulture, $"ASHRAE 34 lists it {-difference.Value.Bubble:+0.00;-0.00} K (bubble) and {-difference.Value.Dew:+0.00;-0.00} K (dew) from here ({info.ListedBoilingRange!.Mark})") : null,
            $"valid from {T(fluid.LowestTemperature)} to {T(fluid.HighestTemperature)}, to {Abs(fluid.HighestPressure)}",
            fluid.EstimatedPairs.IsEmpty ? null : "estimated pairs, larger uncertainty: " + string.Join(", ", fluid.EstimatedPairs)));
        parts.Add(Table(fluid, units, atmosphere));
        parts.Add(SheetPart.Lines("Papers", fluid.Papers.Select(p => p.Citation)));
        return new Sheet(info.Designation, parts.ToImmutable());
    }

    private static SheetPart Table(Refrigerant fluid, UnitSystem units, Pressure atmosphere)
    {
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
                    rows.Add([QuantityFormat.Format(kelvin, units[DisplayKind.Temperature]), "–", bubble.Reason ?? dew.Reason ?? ""]);
                    break;
                }

                continue;
            }

            rows.Add([
                QuantityFormat.Format(kelvin, units[DisplayKind.Temperature]),
                QuantityFormat.Format(bubble.Value.Pressure - atmosphere.Si, gauge),
                QuantityFormat.Format(dew.Value.Pressure - atmosphere.Si, gauge),
            ]);
        }

        return new SheetPart(
            $"Saturation at an atmosphere of {QuantityFormat.Format(atmosphere.Si, units[DisplayKind.AbsolutePressure].Unit, 3)}",
            ["temperature", "bubble (subcooling)", "dew (superheat)"],
            rows.ToImmutable());
    }

    private static ImmutableArray<string> Row(RefrigerantInfo info) =>
    [
        info.Designation, info.SafetyGroup?.Value ?? "", Number(info.GwpAr4), Number(info.GwpAr5), info.CompositionText,
    ];

    private static string Number(SourcedValue? value) => value is null ? "" : value.Value.ToString("0.#", CultureInfo.InvariantCulture);

    private static string? Gwp(string edition, SourcedValue? value) =>
        value is null ? null : string.Create(CultureInfo.InvariantCulture, $"GWP {edition} {value.Value:0.#} ({value.Mark}: {value.Source})");
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
    public static Sheet Make(RefrigerantInfo info, Pressure pressure, Temperature temperature, Pressure atmosphere, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(info);
        ArgumentNullException.ThrowIfNull(units);
        var fluid = Refrigerant.Load(info.Designation);
        string Show(double si, DisplayKind kind) => QuantityFormat.Format(si, units[kind]);
        var lines = new List<string?>
        {
            $"{Show(pressure.Si - atmosphere.Si, DisplayKind.Pressure)} = {QuantityFormat.Format(pressure.Si, units[DisplayKind.AbsolutePressure].Unit, 3)}, {Show(temperature.Si, DisplayKind.Temperature)}",
            $"atmosphere {QuantityFormat.Format(atmosphere.Si, units[DisplayKind.AbsolutePressure].Unit, 3)}",
        };
        var bubble = fluid.BubbleAtPressure(pressure.Si);
        var dew = fluid.DewAtPressure(pressure.Si);
        var phase = Phase.Supercritical;
        if (bubble.Ok && dew.Ok)
        {
            var superheat = temperature.Si - dew.Value.Temperature;
            var subcooling = bubble.Value.Temperature - temperature.Si;
            lines.Add($"bubble {QuantityFormat.Format(bubble.Value.Temperature, units[DisplayKind.Temperature].Unit, 2)}, dew {QuantityFormat.Format(dew.Value.Temperature, units[DisplayKind.Temperature].Unit, 2)}");
            lines.Add(superheat > OnTheCurve ? $"superheat {QuantityFormat.Format(superheat, units[DisplayKind.TemperatureDifference].Unit, 2)}"
                : subcooling > OnTheCurve ? $"subcooling {QuantityFormat.Format(subcooling, units[DisplayKind.TemperatureDifference].Unit, 2)}"
                : "between bubble and dew: pressure and temperature alone do not fix the state");
            phase = superheat > OnTheCurve ? Phase.Vapor : subcooling > OnTheCurve ? Phase.Liquid : Phase.TwoPhase;
        }
        else
        {
            lines.Add($"no saturation at this pressure: {bubble.Reason ?? dew.Reason}");
        }

        if (phase != Phase.TwoPhase)
        {
            var state = fluid.At(temperature.Si, pressure.Si, phase);
            if (!state.Ok)
            {
                lines.Add(state.Reason);
            }
            else
            {
                var s = state.Value;
                lines.Add($"{s.Phase.ToString().ToLowerInvariant()}, density {Show(s.Density, DisplayKind.Density)}");
                lines.Add(string.Create(CultureInfo.InvariantCulture, $"enthalpy {Show(s.Enthalpy, DisplayKind.Enthalpy)}, entropy {s.Entropy / 1000:0.0000} kJ/(kg·K)"));
                if (s.IsobaricHeatCapacity is { } cp && s.SpeedOfSound is { } w)
                    lines.Add(string.Create(CultureInfo.InvariantCulture, $"c_p {cp / 1000:0.0000} kJ/(kg·K), speed of sound {w:0.0} m/s"));
                lines.Add("enthalpy and entropy count from " + fluid.ReferenceState);
            }
        }

        return new Sheet($"{info.Designation} ({info.CompositionText})", [SheetPart.Lines("", lines), SheetPart.Lines("Papers", fluid.Papers.Select(p => p.Citation))]);
    }
}
