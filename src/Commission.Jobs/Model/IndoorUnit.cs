using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>An indoor unit.</summary>
public sealed record IndoorUnit : JobPart
{
    /// <summary>A short name used in piping and rooms.</summary>
    public Given<string>? Id { get; init; }

    /// <summary>The maker.</summary>
    public Given<string>? Maker { get; init; }

    /// <summary>The model.</summary>
    public Given<string>? Model { get; init; }

    /// <summary>The serial number.</summary>
    public Given<string>? Serial { get; init; }

    /// <summary>Rated capacity.</summary>
    public Given<Power>? Capacity { get; init; }

    /// <summary>The room it serves.</summary>
    public Given<string>? Room { get; init; }

    /// <summary>Where it stands.</summary>
    public Given<UnitPlace>? Place { get; init; }
}
