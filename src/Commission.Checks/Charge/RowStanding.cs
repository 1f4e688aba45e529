namespace Commission.Checks.Charge;

/// <summary>Whether a reading may be judged, by the time since the start and since the last change of charge.</summary>
internal enum RowStanding
{
    /// <summary>Long enough after both.</summary>
    Settled,

    /// <summary>Too soon after the start or after the last change of charge.</summary>
    TooEarly,

    /// <summary>Refrigerant was added or removed after it: it does not show the charge that was left.</summary>
    BeforeChange,

    /// <summary>Neither the start nor a change of charge has a time.</summary>
    NotKnown,
}
