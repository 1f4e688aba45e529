using System.Collections.Immutable;
using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>A flare nut.</summary>
public sealed record FlareCheck : JobPart
{
    /// <summary>Where.</summary>
    public Given<string>? Place { get; init; }

    /// <summary>Outside diameter of the tube.</summary>
    public required Given<Length> Od { get; init; }

    /// <summary>Torque used.</summary>
    public Given<Torque>? Torque { get; init; }

    /// <summary>Or the angle turned after contact.</summary>
    public Given<string>? TurnAfterContact { get; init; }

    /// <summary>The torque wrench. Empty when not written.</summary>
    public ImmutableArray<Given<string>> With { get; init; } = [];

    /// <summary>Whether oil was put on the flare's face only.</summary>
    public Given<bool>? OilOnFlareFaceOnly { get; init; }

    /// <summary>Whether the flare was made anew.</summary>
    public Given<bool>? Remade { get; init; }
}
