namespace Commission.Checks.EvacuationAnalysis;

/// <summary>How gas passes a leak.</summary>
public enum LeakFlow
{
    /// <summary>Viscous: the molecules meet each other (inflow of air ≥ 1e-6 Pa·m³/s).</summary>
    Viscous,

    /// <summary>Between the two.</summary>
    Transitional,

    /// <summary>Molecular: they meet the wall only (≤ 1e-8 Pa·m³/s).</summary>
    Molecular,
}
