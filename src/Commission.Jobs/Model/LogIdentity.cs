namespace Commission.Jobs.Model;

/// <summary>Which gauge logged.</summary>
public sealed record LogIdentity : JobPart
{
    /// <summary>Serial number of the gauge.</summary>
    public Given<string>? GaugeSerial { get; init; }

    /// <summary>Whether its clock was right.</summary>
    public Given<bool>? ClockSet { get; init; }
}
