using System.Runtime.InteropServices;
using Commission.Messages;

namespace Commission.Fluids.Air;

/// <summary>
/// Moist air by the perfect-gas relations of the ASHRAE Handbook — Fundamentals, chapter 1, in their SI form (the I-P form differs by
/// up to 0.03 % in humidity ratio: never mix the two). Real moist air differs from them by up to 0.55 % in humidity ratio, 0.65 kJ/kg
/// and 0.03 K in wet bulb. Valid from −100 °C to 200 °C. A wick at or below 0 °C is taken as frozen: between about −0.4 and +0.5 °C
/// some air has two wet bulbs, over ice and over undercooled or warming water, and the one over ice is answered wherever it exists.
/// </summary>
public static class MoistAir
{
    private const double Freezing = 273.15;

    /// <summary>The state from dry bulb and wet bulb (a sling psychrometer).</summary>
    /// <param name="dryBulb">K.</param>
    /// <param name="wetBulb">K, not above the dry bulb; over ice at or below 0 °C.</param>
    /// <param name="pressure">Pa absolute.</param>
    public static FluidResult<MoistAirState> FromWetBulb(double dryBulb, double wetBulb, double pressure)
    {
        if (Bad(dryBulb, pressure) is { } reason)
            return FluidResult<MoistAirState>.None(reason);
        if (!InRange(wetBulb) || wetBulb > dryBulb)
            return FluidResult<MoistAirState>.None(FluidsMessages.WetAboveDry(FluidText.Celsius(wetBulb), FluidText.Celsius(dryBulb)));
        if (SaturationRatio(wetBulb, pressure) is not double saturated)
            return FluidResult<MoistAirState>.None(FluidsMessages.WetBoils(FluidText.Celsius(wetBulb), FluidText.Kilopascals(pressure)));
        var w = RatioFromWetBulb(dryBulb, wetBulb, saturated);
        // A last-digit negative is dry air; more is a wet bulb that no air can have.
        if (w < -1e-12)
            return FluidResult<MoistAirState>.None(FluidsMessages.WetBelowDryAir(FluidText.Celsius(wetBulb), FluidText.Celsius(dryBulb)));
        return FluidResult<MoistAirState>.Of(State(dryBulb, Math.Max(w, 0), pressure, wetBulb));
    }

    /// <summary>The state from dry bulb and relative humidity.</summary>
    /// <param name="dryBulb">K.</param>
    /// <param name="relativeHumidity">0…1.</param>
    /// <param name="pressure">Pa absolute.</param>
    public static FluidResult<MoistAirState> FromRelativeHumidity(double dryBulb, double relativeHumidity, double pressure)
    {
        if (Bad(dryBulb, pressure) is { } reason)
            return FluidResult<MoistAirState>.None(reason);
        if (!(relativeHumidity is >= 0 and <= 1))
            return FluidResult<MoistAirState>.None(FluidsMessages.HumidityRange);
        return FromVaporPressure(dryBulb, relativeHumidity * Math.Exp(LnSaturationPressure(dryBulb, out _)), pressure);
    }

    /// <summary>The state from dry bulb and humidity ratio.</summary>
    /// <param name="dryBulb">K.</param>
    /// <param name="humidityRatio">kg of water per kg of dry air, at most that of saturation.</param>
    /// <param name="pressure">Pa absolute.</param>
    public static FluidResult<MoistAirState> FromHumidityRatio(double dryBulb, double humidityRatio, double pressure)
    {
        if (Bad(dryBulb, pressure) is { } reason)
            return FluidResult<MoistAirState>.None(reason);
        if (!(humidityRatio >= 0))
            return FluidResult<MoistAirState>.None(FluidsMessages.HumidityRatioNegative);
        return FromVaporPressure(dryBulb, pressure * humidityRatio / (0.621945 + humidityRatio), pressure);
    }

    private static FluidResult<MoistAirState> FromVaporPressure(double dryBulb, double vapor, double pressure)
    {
        var saturation = Math.Exp(LnSaturationPressure(dryBulb, out _));
        if (vapor > saturation * (1 + 1e-9))
            return FluidResult<MoistAirState>.None(FluidsMessages.MoreThanSaturated(FluidText.Celsius(dryBulb)));
        if (vapor >= pressure)
            return FluidResult<MoistAirState>.None(FluidsMessages.VaporAbovePressure(FluidText.Kilopascals(pressure)));
        var w = 0.621945 * vapor / (pressure - vapor);
        return FluidResult<MoistAirState>.Of(State(dryBulb, w, pressure, WetBulb(dryBulb, w, pressure)));
    }

    private static MoistAirState State(double dryBulb, double w, double pressure, double wetBulb)
    {
        var t = dryBulb - Freezing;
        var vapor = pressure * w / (0.621945 + w);
        return new MoistAirState(
            pressure,
            dryBulb,
            w,
            wetBulb,
            w > 0 ? DewPoint(vapor) : null,
            vapor / Math.Exp(LnSaturationPressure(dryBulb, out _)),
            1000 * (1.006 * t + w * (2501 + 1.86 * t)),
            287.042 * dryBulb * (1 + 1.607858 * w) / pressure);
    }

    /// <summary>Handbook eqs. 33 (liquid on the wick) and 35 (ice at or below 0 °C).</summary>
    private static double RatioFromWetBulb(double dryBulb, double wetBulb, double saturated)
    {
        double t = dryBulb - Freezing, s = wetBulb - Freezing;
        return s > 0
            ? ((2501 - 2.326 * s) * saturated - 1.006 * (t - s)) / (2501 + 1.86 * t - 4.186 * s)
            : ((2830 - 0.24 * s) * saturated - 1.006 * (t - s)) / (2830 + 1.86 * t - 2.1 * s);
    }

    private static double WetBulb(double dryBulb, double w, double pressure)
    {
        double low = Math.Max(173.15, dryBulb - 100), high = dryBulb;
        // W rises with the wet bulb over ice and over water and falls from the one to the other at 0 °C: over ice where ice has it.
        if (dryBulb > Freezing && low < Freezing)
        {
            if (SaturationRatio(Freezing, pressure) is not double atFreezing || w <= RatioFromWetBulb(dryBulb, Freezing, atFreezing))
                high = Freezing;
            else
                low = Freezing;
        }
        for (var i = 0; i < 100 && high - low > 1e-11 * high; i++)
        {
            var middle = 0.5 * (low + high);
            if (SaturationRatio(middle, pressure) is not double saturated || RatioFromWetBulb(dryBulb, middle, saturated) > w)
                high = middle;
            else
                low = middle;
        }
        return 0.5 * (low + high);
    }

    /// <summary>Humidity ratio of air saturated at a wet bulb, over ice at or below 0 °C; null where water boils.</summary>
    private static double? SaturationRatio(double kelvin, double pressure)
    {
        var vapor = Math.Exp(kelvin <= Freezing ? LnOverIce(kelvin, out _) : LnOverWater(kelvin, out _));
        return vapor < pressure ? 0.621945 * vapor / (pressure - vapor) : null;
    }

    /// <summary>The temperature of saturation at a vapour pressure, by Newton's method on ln p in 1/T; null below −100 °C.</summary>
    private static double? DewPoint(double vapor)
    {
        var target = Math.Log(vapor);
        var t = 280.0;
        for (var i = 0; i < 60; i++)
        {
            var error = LnSaturationPressure(t, out var slope) - target;
            var next = 1 / (1 / t + error / (slope * t * t));
            if (!(next > 100 && next < 600))
                return null;
            if (Math.Abs(next - t) < 1e-12 * t)
            {
                t = next;
                break;
            }
            t = next;
        }
        return InRange(t) ? t : null;
    }

    private static double LnSaturationPressure(double kelvin, out double slope) =>
        kelvin < Freezing ? LnOverIce(kelvin, out slope) : LnOverWater(kelvin, out slope);

    private static double LnOverIce(double t, out double slope)
    {
        slope = 5674.5359 / (t * t) - 9.677843e-3 + 2 * 6.2215701e-7 * t + 3 * 2.0747825e-9 * t * t - 4 * 9.484024e-13 * t * t * t + 4.1635019 / t;
        return -5674.5359 / t + 6.3925247 + t * (-9.677843e-3 + t * (6.2215701e-7 + t * (2.0747825e-9 - t * 9.484024e-13))) + 4.1635019 * Math.Log(t);
    }

    private static double LnOverWater(double t, out double slope)
    {
        slope = 5800.2206 / (t * t) - 4.8640239e-2 + 2 * 4.1764768e-5 * t - 3 * 1.4452093e-8 * t * t + 6.5459673 / t;
        return -5800.2206 / t + 1.3914993 + t * (-4.8640239e-2 + t * (4.1764768e-5 - t * 1.4452093e-8)) + 6.5459673 * Math.Log(t);
    }

    private static bool InRange(double kelvin) => kelvin is >= 173.15 and <= 473.15;

    private static Message? Bad(double dryBulb, double pressure)
    {
        if (!InRange(dryBulb))
            return FluidsMessages.AirRange(FluidText.Celsius(dryBulb));
        if (!(pressure > 0) || !double.IsFinite(pressure))
            return FluidsMessages.AirPressure;
        return null;
    }
}

/// <summary>Moist air at a pressure; extensive properties are per kilogram of dry air.</summary>
/// <param name="Pressure">Pa absolute.</param>
/// <param name="DryBulb">K.</param>
/// <param name="HumidityRatio">kg of water per kg of dry air.</param>
/// <param name="WetBulb">Thermodynamic wet-bulb temperature, K.</param>
/// <param name="DewPoint">K (frost point below 0 °C); null for dry air.</param>
/// <param name="RelativeHumidity">0…1.</param>
/// <param name="Enthalpy">J per kg of dry air, 0 for dry air at 0 °C and liquid water at 0 °C.</param>
/// <param name="SpecificVolume">m³ per kg of dry air.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct MoistAirState(
    double Pressure,
    double DryBulb,
    double HumidityRatio,
    double WetBulb,
    double? DewPoint,
    double RelativeHumidity,
    double Enthalpy,
    double SpecificVolume)
{
}
