using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>A pressure held for a while.</summary>
public sealed record TestStage : JobPart
{
    /// <summary>The pressure.</summary>
    public required Given<StatedPressure> Pressure { get; init; }

    /// <summary>When it was reached.</summary>
    public Given<JobTime>? At { get; init; }

    /// <summary>How long it was held.</summary>
    public Given<Duration>? Held { get; init; }

    /// <summary>How far it dropped.</summary>
    public Given<PressureDifference>? Drop { get; init; }

    /// <summary>What the search found.</summary>
    public Given<LeakResult>? Result { get; init; }
}
