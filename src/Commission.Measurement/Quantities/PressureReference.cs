namespace Commission.Measurement.Quantities;

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
