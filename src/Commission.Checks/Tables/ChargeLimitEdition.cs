namespace Commission.Checks.Tables;

/// <summary>Which form of the charge limits of IEC (UL) 60335-2-40 applies.</summary>
internal enum ChargeLimitEdition
{
    /// <summary>Editions before 2018: m1, m2, m3 = 4, 26, 130 m³·LFL for every class, quadratic room limit.</summary>
    Before2018,

    /// <summary>2018 and later: 6, 52, 260 m³·LFL for A2L; the room limit is the lesser of the quadratic and the linear form.</summary>
    From2018,
}
