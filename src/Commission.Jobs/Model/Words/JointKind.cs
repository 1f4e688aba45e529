namespace Commission.Jobs.Model.Words;

/// <summary>How a joint is made.</summary>
public enum JointKind
{
    /// <summary>A flare nut.</summary>
    Flare,

    /// <summary>Brazed.</summary>
    Brazed,

    /// <summary>A press fitting.</summary>
    Press,

    /// <summary>Soft soldered.</summary>
    Soldered,

    /// <summary>A thread.</summary>
    Threaded,

    /// <summary>A flange.</summary>
    Flanged,

    /// <summary>A service or shut-off valve.</summary>
    ServiceValve,

    /// <summary>An access port with its cap.</summary>
    Core,

    /// <summary>Another kind.</summary>
    Other,
}
