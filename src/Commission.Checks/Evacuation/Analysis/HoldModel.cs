namespace Commission.Checks.EvacuationAnalysis;

/// <summary>The curves a hold is compared with.</summary>
public enum HoldModel
{
    /// <summary>p = p0.</summary>
    Flat,

    /// <summary>p = p0 + a·t: a steady inflow.</summary>
    Line,

    /// <summary>p = p∞ − (p∞ − p0)·e^(−t/τ): a source that runs towards an equilibrium.</summary>
    Source,

    /// <summary>The sum of a steady inflow and a source.</summary>
    LineAndSource,
}
