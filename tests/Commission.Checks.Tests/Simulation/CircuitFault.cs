namespace Commission.Checks.Tests.Simulation;

/// <summary>What is wrong with a circuit.</summary>
internal enum FaultKind
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>Severity: share of the charge that is missing.</summary>
    LowCharge,

    /// <summary>Severity: share of the charge that is too much.</summary>
    Overcharge,

    /// <summary>A plugged drier. Severity: its loss at design flow over the design's condensing less evaporating pressure.</summary>
    LiquidLineRestriction,

    /// <summary>Severity: share of the indoor air that is missing.</summary>
    LowIndoorAirflow,

    /// <summary>A dirty condenser. Severity: share of its air that is missing.</summary>
    CondenserDirt,

    /// <summary>Air or nitrogen. Severity: its partial pressure in the running condenser over the design's condensing pressure.</summary>
    NonCondensables,

    /// <summary>The valve does not open further. Severity: share of the design opening that is missing.</summary>
    ValveUnderfeeding,

    /// <summary>A loose bulb. Severity, K: how much more superheat it feels than there is.</summary>
    ValveOverfeeding,

    /// <summary>Severity: share of the flow that leaks back inside.</summary>
    WeakCompressor,

    /// <summary>Hot gas passes to the suction. Severity: share of the compressor's flow.</summary>
    PassingReversingValve,
}

/// <summary>One fault of a known size.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="Severity">How much, see <see cref="FaultKind"/>.</param>
internal sealed record CircuitFault(FaultKind Kind, double Severity)
{
    /// <summary>Nothing wrong.</summary>
    public static CircuitFault None { get; } = new(FaultKind.None, 0);

    /// <summary>The severity where it is this fault, else 0.</summary>
    public double Of(FaultKind kind) => kind == Kind ? Severity : 0;
}
