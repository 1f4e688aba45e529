namespace Commission.Jobs.Model;

/// <summary>Before covers were opened.</summary>
public sealed record ProvedDead : JobPart
{
    /// <summary>Whether the meter was proved live, the circuit dead, the meter live again.</summary>
    public Given<bool>? LiveDeadLive { get; init; }

    /// <summary>Whether the disconnect was locked and tagged.</summary>
    public Given<bool>? LockedOut { get; init; }

    /// <summary>When.</summary>
    public Given<JobTime>? At { get; init; }

    /// <summary>Who.</summary>
    public Given<string>? By { get; init; }
}
