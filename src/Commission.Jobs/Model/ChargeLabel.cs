using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>What was written on the unit.</summary>
public sealed record ChargeLabel : JobPart
{
    /// <summary>The refrigerant.</summary>
    public Given<string>? Refrigerant { get; init; }

    /// <summary>Factory charge.</summary>
    public Given<Mass>? Factory { get; init; }

    /// <summary>Charge added on site.</summary>
    public Given<Mass>? Added { get; init; }

    /// <summary>Total charge.</summary>
    public Given<Mass>? Total { get; init; }

    /// <summary>Global warming potential.</summary>
    public Given<double>? GWP { get; init; }

    /// <summary>Mass of carbon dioxide it equals.</summary>
    public Given<Mass>? CO2Equivalent { get; init; }

    /// <summary>Whether it is written on the unit.</summary>
    public Given<bool>? OnUnit { get; init; }

    /// <summary>When.</summary>
    public Given<DateOnly>? Date { get; init; }
}
