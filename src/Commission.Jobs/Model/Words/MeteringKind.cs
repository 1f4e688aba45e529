namespace Commission.Jobs.Model.Words;

/// <summary>What feeds the evaporator.</summary>
public enum MeteringKind
{
    /// <summary>A piston or other fixed orifice.</summary>
    FixedOrifice,

    /// <summary>A capillary tube.</summary>
    Capillary,

    /// <summary>A thermostatic expansion valve.</summary>
    TXV,

    /// <summary>An electronic expansion valve.</summary>
    EEV,
}
