namespace Commission.Checks.Charge;

/// <summary>Where a number lies against what is usual for it.</summary>
internal enum ChargeLevel
{
    /// <summary>Below.</summary>
    Low,

    /// <summary>Inside.</summary>
    Normal,

    /// <summary>Above.</summary>
    High,
}
