using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>Something that happened during the evacuation.</summary>
public sealed record EvacuationEvent : JobPart
{
    /// <summary>When.</summary>
    public required Given<JobTime> At { get; init; }

    /// <summary>What.</summary>
    public required Given<EvacuationEventKind> What { get; init; }

    /// <summary>To what pressure vacuum was broken.</summary>
    public Given<StatedPressure>? To { get; init; }

    /// <summary>How long it was left there.</summary>
    public Given<Duration>? Held { get; init; }

    /// <summary>Anything worth telling.</summary>
    public Given<string>? Note { get; init; }
}
