using System.Collections.Immutable;
using Commission.Jobs.Model.Words;

namespace Commission.Jobs.Model;

/// <summary>Pressure and temperature at the start and at the end, or a series.</summary>
public sealed record PressureHold : JobPart
{
    /// <summary>The start.</summary>
    public HoldPoint? From { get; init; }

    /// <summary>The end.</summary>
    public HoldPoint? To { get; init; }

    /// <summary>Readings in between. Empty when not written.</summary>
    public ImmutableArray<HoldPoint> Readings { get; init; } = [];

    /// <summary>A pressure log.</summary>
    public LogFile? Series { get; init; }

    /// <summary>A temperature log.</summary>
    public LogFile? TemperatureSeries { get; init; }

    /// <summary>Where the temperature was taken.</summary>
    public Given<TemperaturePlace>? TemperatureTaken { get; init; }

    /// <summary>Whether that place was out of the sun the whole time.</summary>
    public Given<bool>? Shaded { get; init; }
}
