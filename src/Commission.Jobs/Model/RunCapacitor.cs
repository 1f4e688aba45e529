using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>A run capacitor.</summary>
public sealed record RunCapacitor : JobPart
{
    /// <summary>What it serves.</summary>
    public Given<string>? For { get; init; }

    /// <summary>What its label says.</summary>
    public required Given<Capacitance> Label { get; init; }

    /// <summary>The tolerance on its label.</summary>
    public Given<Ratio>? Tolerance { get; init; }

    /// <summary>What was measured, off the circuit.</summary>
    public Given<Capacitance>? Read { get; init; }

    /// <summary>Or, running: the current through it.</summary>
    public Given<ElectricCurrent>? RunningCurrent { get; init; }

    /// <summary>And the voltage across it.</summary>
    public Given<Voltage>? RunningVoltage { get; init; }
}
