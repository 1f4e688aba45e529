namespace Commission.Measurement.Quantities;

/// <summary>A pressure as it was written, with what it is counted from. It becomes a <see cref="Pressure"/> only with the atmosphere at the site.</summary>
/// <remarks>Range: any. Default: zero, absolute. Equality compares value and reference. NaN propagates.</remarks>
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
    public PressureDifference ToGauge(Pressure atmosphere) => ToAbsolute(atmosphere) - atmosphere;
}
