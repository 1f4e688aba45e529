using System.Globalization;
using Commission.Fluids;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;

namespace Commission.Checks.Sheets;

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
