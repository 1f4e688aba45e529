using Commission.Jobs.Model.Words;

namespace Commission.Jobs.Model;

/// <summary>What a number without a unit means, and the units the record prints.</summary>
public sealed record UnitChoice : JobPart
{
    /// <summary>The set of units.</summary>
    public required Given<UnitPreset> Preset { get; init; }

    /// <summary>Unit of bare refrigerant and nitrogen pressures: gauge.</summary>
    public Given<string>? Pressure { get; init; }

    /// <summary>Unit of bare vacuum levels.</summary>
    public Given<string>? Vacuum { get; init; }

    /// <summary>Unit of a bare station pressure.</summary>
    public Given<string>? AtmosphericPressure { get; init; }

    /// <summary>Unit of bare pressure differences.</summary>
    public Given<string>? PressureDifference { get; init; }

    /// <summary>Unit of bare duct pressures.</summary>
    public Given<string>? StaticPressure { get; init; }

    /// <summary>Unit of bare temperatures.</summary>
    public Given<string>? Temperature { get; init; }

    /// <summary>Unit of bare temperature differences.</summary>
    public Given<string>? TemperatureDifference { get; init; }

    /// <summary>Unit of bare refrigerant masses.</summary>
    public Given<string>? Mass { get; init; }

    /// <summary>Unit of bare lengths.</summary>
    public Given<string>? Length { get; init; }

    /// <summary>Unit of a bare elevation.</summary>
    public Given<string>? Elevation { get; init; }

    /// <summary>Unit of bare tube diameters.</summary>
    public Given<string>? TubeDiameter { get; init; }

    /// <summary>Unit of bare air flows.</summary>
    public Given<string>? AirFlow { get; init; }

    /// <summary>Unit of bare heat capacities.</summary>
    public Given<string>? Capacity { get; init; }
}
