using System.Collections.Immutable;

namespace Commission.Checks.EvacuationAnalysis;

/// <summary>What the pump is worth at the system.</summary>
/// <param name="SystemPressure">Pressure at the system, Pa.</param>
/// <param name="InletPressure">Pressure at the pump's inlet, Pa.</param>
/// <param name="Speed">Volume flow drawn at the system, m³/s.</param>
/// <param name="PumpSpeed">Speed of the pump at its inlet, m³/s.</param>
/// <param name="Shares">Where the pressure is spent, from the system to the pump.</param>
public sealed record EffectiveSpeed(
    double SystemPressure, double InletPressure, double Speed, double PumpSpeed, ImmutableArray<FlowShare> Shares)
{
    /// <summary>The part that takes the largest share: what limits the speed at this pressure.</summary>
    public FlowShare Limiting => Shares.MaxBy(s => s.Share)!;
}
