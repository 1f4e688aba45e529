namespace Commission.Measurement.Quantities;

/// <summary>Absolute pressure. A gauge reading becomes one only through <see cref="StatedPressure.ToAbsolute"/> with the atmosphere at the site.</summary>
/// <remarks>pascal, Pa; zero (a perfect vacuum) and above.</remarks>
public readonly record struct Pressure : IQuantity<Pressure>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Pressure;

    /// <inheritdoc/>
    public double Si { get; private init; }

    /// <inheritdoc/>
    public static Pressure FromSi(double si) => new() { Si = si };

    /// <summary>From a value in Pa.</summary>
    public static Pressure FromPascals(double value) => FromSi(value);
}

/// <summary>A difference of two pressures: a drop, a rise, a static pressure against the room.</summary>
/// <remarks>pascal, Pa; any sign.</remarks>
public readonly record struct PressureDifference : IQuantity<PressureDifference>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.PressureDifference;

    /// <inheritdoc/>
    public double Si { get; private init; }

    /// <inheritdoc/>
    public static PressureDifference FromSi(double si) => new() { Si = si };

    /// <summary>From a value in Pa.</summary>
    public static PressureDifference FromPascals(double value) => FromSi(value);
}

/// <summary>What a stated pressure is counted from.</summary>
public enum PressureReference
{
    /// <summary>From a perfect vacuum: psia, kPaa, bar(a), micron, Torr.</summary>
    Absolute,

    /// <summary>From the local atmosphere upward: psig, kPag, bar(g).</summary>
    Gauge,

    /// <summary>From the local atmosphere downward: the depth a compound gauge shows, inHg vac.</summary>
    BelowAtmosphere,
}

/// <summary>A pressure as it was written, with what it is counted from. It becomes a <see cref="Pressure"/> only with the atmosphere at the site.</summary>
/// <param name="Pascals">Number as written, in Pa. A depth below atmosphere is positive.</param>
/// <param name="Reference">What it is counted from.</param>
public readonly record struct StatedPressure(double Pascals, PressureReference Reference)
{
    /// <summary>The absolute pressure under this atmosphere. May be negative for a depth greater than the atmosphere: the caller reports that as a problem.</summary>
    /// <param name="atmosphere">Atmospheric pressure at the site, absolute.</param>
    public Pressure ToAbsolute(Pressure atmosphere) => Reference switch
    {
        PressureReference.Absolute => Pressure.FromPascals(Pascals),
        PressureReference.Gauge => Pressure.FromPascals(atmosphere.Si + Pascals),
        _ => Pressure.FromPascals(atmosphere.Si - Pascals),
    };

    /// <summary>The pressure above this atmosphere; negative below it.</summary>
    /// <param name="atmosphere">Atmospheric pressure at the site, absolute.</param>
    public PressureDifference ToGauge(Pressure atmosphere) => PressureDifference.FromPascals(ToAbsolute(atmosphere).Si - atmosphere.Si);
}
