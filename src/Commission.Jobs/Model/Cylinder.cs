using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>A refrigerant cylinder.</summary>
public sealed record Cylinder : JobPart
{
    /// <summary>A short name.</summary>
    public required Given<string> Id { get; init; }

    /// <summary>What is in it.</summary>
    public Given<string>? Refrigerant { get; init; }

    /// <summary>What kind of refrigerant.</summary>
    public Given<CylinderContents>? Contents { get; init; }

    /// <summary>Water capacity.</summary>
    public Given<Mass>? WaterCapacity { get; init; }

    /// <summary>Tare.</summary>
    public Given<Mass>? Tare { get; init; }

    /// <summary>Gross mass before.</summary>
    public Given<Mass>? Before { get; init; }

    /// <summary>Gross mass after.</summary>
    public Given<Mass>? After { get; init; }

    /// <summary>Supplier or facility.</summary>
    public Given<string>? Supplier { get; init; }

    /// <summary>Supplier's or facility's certificate number.</summary>
    public Given<string>? Certificate { get; init; }

    /// <summary>Batch or serial number.</summary>
    public Given<string>? Batch { get; init; }
}
