namespace Commission.Records.Series;

/// <summary>What a curve means; the plot chooses colour and line style from it.</summary>
public enum CurveRole
{
    /// <summary>Readings.</summary>
    Measured,

    /// <summary>A fitted or computed course.</summary>
    Model,

    /// <summary>A limit that changes along the axis.</summary>
    Limit,

    /// <summary>The saturation dome of a refrigerant.</summary>
    Dome,

    /// <summary>A line of constant temperature.</summary>
    Isotherm,

    /// <summary>States of the cycle, joined in order.</summary>
    State,

    /// <summary>What is left after a correction or a fit.</summary>
    Residual,
}
