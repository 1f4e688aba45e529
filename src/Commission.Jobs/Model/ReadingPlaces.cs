using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>Where readings were taken.</summary>
public sealed record ReadingPlaces : JobPart
{
    /// <summary>Where the vapor pressure was read.</summary>
    public Given<VaporPressurePlace>? VaporPressure { get; init; }

    /// <summary>Where the liquid pressure was read.</summary>
    public Given<LiquidPressurePlace>? LiquidPressure { get; init; }

    /// <summary>Where the vapor line was read.</summary>
    public Given<VaporLinePlace>? VaporLine { get; init; }

    /// <summary>Where the liquid line was read.</summary>
    public Given<LiquidLinePlace>? LiquidLine { get; init; }

    /// <summary>How far from the compressor the discharge line was read.</summary>
    public Given<Length>? DischargeLine { get; init; }
}
