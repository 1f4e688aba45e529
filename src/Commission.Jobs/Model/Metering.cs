using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>The metering device.</summary>
public sealed record Metering : JobPart
{
    /// <summary>What it is.</summary>
    public required Given<MeteringKind> Kind { get; init; }

    /// <summary>Size of the orifice that is installed.</summary>
    public Given<Length>? Size { get; init; }

    /// <summary>Size of the orifice the maker asks for.</summary>
    public Given<Length>? PlateSize { get; init; }

    /// <summary>The model.</summary>
    public Given<string>? Model { get; init; }
}
