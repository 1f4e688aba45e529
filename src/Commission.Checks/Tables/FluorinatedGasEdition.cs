namespace Commission.Checks.Tables;

/// <summary>Which European regulation on fluorinated gases.</summary>
internal enum FluorinatedGasEdition
{
    /// <summary>Regulation (EU) 517/2014: thresholds in t CO2e only.</summary>
    Regulation517Of2014,

    /// <summary>Regulation (EU) 2024/573: thresholds in t CO2e, and in kg for the unsaturated gases of Annex II section 1.</summary>
    Regulation573Of2024,
}
