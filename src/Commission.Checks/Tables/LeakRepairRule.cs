namespace Commission.Checks.Tables;

/// <summary>Which United States leak-repair rule a circuit falls under.</summary>
internal enum LeakRepairRule
{
    /// <summary>None.</summary>
    None,

    /// <summary>40 CFR 82.157: ozone-depleting refrigerant, full charge of 50 lb or more.</summary>
    Section82157,

    /// <summary>40 CFR 84.106: substitute with GWP above 53, full charge of 15 lb or more, from 1 January 2026.</summary>
    Section84106,
}
