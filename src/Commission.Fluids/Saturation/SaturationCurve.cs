namespace Commission.Fluids.Saturation;

/// <summary>Which edge of the two-phase region.</summary>
internal enum SaturationCurve
{
    /// <summary>Liquid of the designated composition with the first bubble.</summary>
    Bubble,

    /// <summary>Vapour of the designated composition with the first drop.</summary>
    Dew,
}
