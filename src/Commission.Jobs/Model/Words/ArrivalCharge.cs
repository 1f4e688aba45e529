namespace Commission.Jobs.Model.Words;

/// <summary>What the outdoor unit held when it arrived.</summary>
public enum ArrivalCharge
{
    /// <summary>The factory charge.</summary>
    Charged,

    /// <summary>Nitrogen: the scale sees the whole charge.</summary>
    NitrogenHoldingCharge,

    /// <summary>Nothing: the scale sees the whole charge.</summary>
    RecoveredAndEvacuated,

    /// <summary>Nobody knows.</summary>
    Unknown,
}
