namespace Commission.Jobs.Model;

/// <summary>A unit as its nameplate names it.</summary>
public sealed record EquipmentUnit : JobPart
{
    /// <summary>The maker.</summary>
    public Given<string>? Maker { get; init; }

    /// <summary>The model.</summary>
    public Given<string>? Model { get; init; }

    /// <summary>The serial number.</summary>
    public Given<string>? Serial { get; init; }
}
