using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>Refrigerant added or removed.</summary>
public sealed record ChargeEvent : JobPart
{
    /// <summary>When.</summary>
    public required Given<JobTime> At { get; init; }

    /// <summary>Mass added.</summary>
    public Given<Mass>? Added { get; init; }

    /// <summary>Mass removed.</summary>
    public Given<Mass>? Removed { get; init; }

    /// <summary>Anything worth telling.</summary>
    public Given<string>? Note { get; init; }
}
