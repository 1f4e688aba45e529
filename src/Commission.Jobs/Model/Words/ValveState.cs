namespace Commission.Jobs.Model.Words;

/// <summary>How a valve stood.</summary>
public enum ValveState
{
    /// <summary>Open.</summary>
    Open,

    /// <summary>Closed.</summary>
    Closed,

    /// <summary>Driven open by the board.</summary>
    DrivenOpen,

    /// <summary>Held open by a service magnet.</summary>
    OpenedByMagnet,

    /// <summary>Coil energised.</summary>
    Energised,

    /// <summary>Coil not energised.</summary>
    NotEnergised,

    /// <summary>Between two positions.</summary>
    MidPosition,

    /// <summary>Nobody looked.</summary>
    NotKnown,

    /// <summary>There is no such valve.</summary>
    None,
}
