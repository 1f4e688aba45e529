using System.Runtime.InteropServices;

namespace Commission.Fluids;

/// <summary>A thermodynamic state of the refrigerant in its designated composition.</summary>
/// <param name="Phase">What it is.</param>
/// <param name="Temperature">K.</param>
/// <param name="Pressure">Pa absolute.</param>
/// <param name="Density">kg/m³ (of both phases together when two-phase).</param>
/// <param name="Enthalpy">J/kg, on the reference state of <see cref="Refrigerant.ReferenceState"/>.</param>
/// <param name="Entropy">J/(kg K).</param>
/// <param name="VaporFraction">Mass of vapour per mass, 0…1; 0 for liquid, 1 for vapour and above the critical temperature.</param>
/// <param name="IsobaricHeatCapacity">cp, J/(kg K); null when two-phase.</param>
/// <param name="IsochoricHeatCapacity">cv, J/(kg K); null when two-phase.</param>
/// <param name="SpeedOfSound">m/s; null when two-phase.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct FluidState(
    Phase Phase,
    double Temperature,
    double Pressure,
    double Density,
    double Enthalpy,
    double Entropy,
    double VaporFraction,
    double? IsobaricHeatCapacity,
    double? IsochoricHeatCapacity,
    double? SpeedOfSound);

/// <summary>Which branch of the equation of state a density is looked for on, or what a state is.</summary>
public enum Phase
{
    /// <summary>Liquid, also compressed and metastable liquid.</summary>
    Liquid,

    /// <summary>Vapour, also superheated and metastable vapour.</summary>
    Vapor,

    /// <summary>Liquid and vapour together.</summary>
    TwoPhase,

    /// <summary>Above the critical temperature: one fluid.</summary>
    Supercritical,
}
