using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>Where the system stands.</summary>
public sealed record Site : JobPart
{
    /// <summary>The site's name.</summary>
    public Given<string>? Name { get; init; }

    /// <summary>The address.</summary>
    public Given<string>? Address { get; init; }

    /// <summary>Height above sea level; gives the atmosphere when no barometer was read.</summary>
    public Given<Length>? Elevation { get; init; }

    /// <summary>A barometer read on site, not the weather report: that one is corrected to sea level.</summary>
    public Given<Pressure>? StationPressure { get; init; }
}
