using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>Torque for one tube diameter.</summary>
public sealed record FlareLimit : JobPart
{
    /// <summary>Outside diameter.</summary>
    public required Given<Length> Od { get; init; }

    /// <summary>Least torque.</summary>
    public required Given<Torque> Minimum { get; init; }

    /// <summary>Largest torque.</summary>
    public required Given<Torque> Maximum { get; init; }

    /// <summary>Where the figure is written.</summary>
    public required Given<string> From { get; init; }
}
