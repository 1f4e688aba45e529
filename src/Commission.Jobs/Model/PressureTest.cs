using System.Collections.Immutable;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>The test with dry nitrogen.</summary>
public sealed record PressureTest : JobPart
{
    /// <summary>The gas.</summary>
    public required Given<TestGas> Gas { get; init; }

    /// <summary>A tracer in the nitrogen.</summary>
    public Tracer? Tracer { get; init; }

    /// <summary>What the regulator was set to.</summary>
    public Given<StatedPressure>? RegulatorSet { get; init; }

    /// <summary>What the relief device was set to.</summary>
    public Given<StatedPressure>? ReliefSet { get; init; }

    /// <summary>What was under test.</summary>
    public Given<CircuitSection>? Section { get; init; }

    /// <summary>The section's own name.</summary>
    public Given<string>? SectionName { get; init; }

    /// <summary>How the valves stood.</summary>
    public Valves? Valves { get; init; }

    /// <summary>The part with the lowest rating in the section.</summary>
    public WeakestPart? WeakestPart { get; init; }

    /// <summary>When filling began; elapsed times count from here.</summary>
    public Given<JobTime>? Started { get; init; }

    /// <summary>Stages on the way up. Empty when not written.</summary>
    public ImmutableArray<TestStage> Stages { get; init; } = [];

    /// <summary>The strength test.</summary>
    public TestStage? Strength { get; init; }

    /// <summary>The hold for tightness.</summary>
    public PressureHold? Tightness { get; init; }

    /// <summary>Each field joint. Empty when not written.</summary>
    public ImmutableArray<Joint> Joints { get; init; } = [];

    /// <summary>How joints were brazed.</summary>
    public Brazing? Brazing { get; init; }

    /// <summary>Whether there is oil in the section: it dissolves nitrogen.</summary>
    public Given<bool>? OilInCircuit { get; init; }

    /// <summary>Whether the joints were still open to view.</summary>
    public Given<bool>? JointsVisible { get; init; }

    /// <summary>Whether the vacuum gauge was off the circuit.</summary>
    public Given<bool>? VacuumGaugeDisconnected { get; init; }

    /// <summary>Whether the nitrogen was let out outdoors.</summary>
    public Given<bool>? VentedOutdoors { get; init; }

    /// <summary>The gauge, when it is not the one that reads the pressure test. Empty when not written.</summary>
    public ImmutableArray<Given<string>> With { get; init; } = [];

    /// <summary>Who watched.</summary>
    public Witness? Witnessed { get; init; }

    /// <summary>Anything worth telling.</summary>
    public Given<string>? Notes { get; init; }
}
