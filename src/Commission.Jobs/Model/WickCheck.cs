using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>The wick of a wet bulb.</summary>
public sealed record WickCheck : JobPart
{
    /// <summary>Whether it was clean.</summary>
    public Given<bool>? Clean { get; init; }

    /// <summary>Whether it was wet.</summary>
    public Given<bool>? Wetted { get; init; }

    /// <summary>Speed of the air over it.</summary>
    public Given<Velocity>? AirSpeed { get; init; }
}
