using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>A known heat and the rise it makes.</summary>
public sealed record HeatRise : JobPart
{
    /// <summary>Electrical input.</summary>
    public Given<Power>? Input { get; init; }

    /// <summary>Or the voltage across the heater, with amps.</summary>
    public Given<Voltage>? Volts { get; init; }

    /// <summary>The current through the heater, with volts.</summary>
    public Given<ElectricCurrent>? Amps { get; init; }

    /// <summary>Or the output of a furnace.</summary>
    public Given<Power>? Output { get; init; }

    /// <summary>Return air.</summary>
    public required Given<Temperature> Return { get; init; }

    /// <summary>Supply air.</summary>
    public required Given<Temperature> Supply { get; init; }
}
