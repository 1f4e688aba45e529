using Commission.Checks.Limits;
using Commission.Measurement.Uncertainty;

namespace Commission.Checks;

/// <summary>What an evaluation needs beyond the job.</summary>
/// <param name="AsOf">The day the record speaks for: calibrations and due dates are judged at it.</param>
public sealed record CheckSettings(DateOnly AsOf)
{
    /// <summary>How readings get their uncertainty: propagated, unless a Monte Carlo run draws them.</summary>
    public IUncertaintyScope Scope { get; init; } = LinearScope.Instance;

    /// <summary>The packs a job may name.</summary>
    internal LimitLibrary Library { get; init; } = LimitLibrary.Embedded;
}
