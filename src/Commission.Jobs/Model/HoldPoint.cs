using System.Collections.Immutable;
using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>Pressure and temperature at one time.</summary>
public sealed record HoldPoint : JobPart
{
    /// <summary>When.</summary>
    public required Given<JobTime> At { get; init; }

    /// <summary>The pressure.</summary>
    public required Given<StatedPressure> Pressure { get; init; }

    /// <summary>The temperature, or two of them. Empty when not written.</summary>
    public ImmutableArray<Given<Temperature>> Temperature { get; init; } = [];

    /// <summary>How long the gas had rested since filling.</summary>
    public Given<Duration>? Settled { get; init; }

    /// <summary>The barometer at this time, if it was read.</summary>
    public Given<Pressure>? StationPressure { get; init; }
}
