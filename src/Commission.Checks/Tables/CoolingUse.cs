namespace Commission.Checks.Tables;

/// <summary>What a circuit cools, in the words of the United States leak-repair rules.</summary>
internal enum CoolingUse
{
    /// <summary>Comfort cooling.</summary>
    Comfort,

    /// <summary>Commercial refrigeration.</summary>
    CommercialRefrigeration,

    /// <summary>Industrial process refrigeration.</summary>
    IndustrialProcess,
}
