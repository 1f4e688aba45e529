using Commission.Measurement.Quantities;

namespace Commission.Measurement.Atmosphere;

/// <summary>The standard atmosphere, U.S. Standard Atmosphere 1976 = ISO 2533 in its two lowest layers: what a barometer shows at an elevation on an average day.</summary>
/// <remarks>Elevation is taken as geopotential; below 3000 m that changes the pressure by less than 0.02 %. Constants from memory of the two documents, checked in the tests against printed rows.</remarks>
public static class StandardAtmosphere
{
    /// <summary>Lowest elevation it is used for.</summary>
    public static readonly Length Lowest = Length.FromMeters(-2000);

    /// <summary>Highest elevation it is defined for here.</summary>
    public static readonly Length Highest = Length.FromMeters(20000);

    private const double SeaLevelPressure = 101325;
    private const double SeaLevelTemperature = 288.15;
    private const double LapseRate = 0.0065;
    private const double Tropopause = 11000;
    private const double Gravity = 9.80665;

    // R*/M0 of the 1976 standard: 8314.32 N·m/(kmol·K) over 28.9644 kg/kmol.
    private const double GasConstant = 8314.32 / 28.9644;

    /// <summary>Whether it is defined for an elevation.</summary>
    /// <param name="elevation">Elevation above sea level.</param>
    public static bool Covers(Length elevation) => elevation.Si >= Lowest.Si && elevation.Si <= Highest.Si;

    /// <summary>Standard pressure at an elevation: p = 101325·(1 − 0.0065·h/288.15)^5.25588 to 11 km, exponential above.</summary>
    /// <param name="elevation">Elevation above sea level; ask <see cref="Covers"/> first.</param>
    /// <exception cref="ArgumentOutOfRangeException">The elevation is not covered.</exception>
    public static Pressure At(Length elevation)
    {
        if (!Covers(elevation))
            throw new ArgumentOutOfRangeException(nameof(elevation), elevation, "The standard atmosphere is used from −2 km to 20 km.");
        var h = elevation.Meters;
        var troposphere = Math.Min(h, Tropopause);
        var temperature = SeaLevelTemperature - (LapseRate * troposphere);
        var pressure = SeaLevelPressure * Math.Pow(temperature / SeaLevelTemperature, Gravity / (GasConstant * LapseRate));
        return Pressure.FromPascals(h > Tropopause ? pressure * Math.Exp(-Gravity * (h - Tropopause) / (GasConstant * temperature)) : pressure);
    }
}
