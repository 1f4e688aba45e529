using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>Design pressures of the two sides.</summary>
public sealed record DesignPressure : JobPart
{
    /// <summary>Low side.</summary>
    public Given<StatedPressure>? Low { get; init; }

    /// <summary>High side.</summary>
    public Given<StatedPressure>? High { get; init; }
}
