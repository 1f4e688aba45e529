using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>Insulation of the winding, board leads off, never under vacuum.</summary>
public sealed record InsulationTest : JobPart
{
    /// <summary>The resistance.</summary>
    public required Given<Resistance> Read { get; init; }

    /// <summary>The test voltage.</summary>
    public Given<Voltage>? TestVoltage { get; init; }

    /// <summary>Whether leads of boards and inverter were off.</summary>
    public Given<bool>? LeadsOff { get; init; }

    /// <summary>Temperature of the winding or air.</summary>
    public Given<Temperature>? Temperature { get; init; }

    /// <summary>When.</summary>
    public Given<JobTime>? At { get; init; }
}
