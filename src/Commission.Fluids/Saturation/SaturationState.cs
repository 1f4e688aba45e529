using System.Runtime.InteropServices;

namespace Commission.Fluids.Saturation;

/// <summary>
/// A point on a saturation curve. At a bubble point the liquid has the composition of the blend and the vapour is the first bubble;
/// at a dew point the vapour has it and the liquid is the first drop. For a pure fluid both are the same point.
/// </summary>
/// <param name="Temperature">K.</param>
/// <param name="Pressure">Pa absolute.</param>
/// <param name="LiquidDensity">kg/m³.</param>
/// <param name="VaporDensity">kg/m³.</param>
/// <param name="LiquidEnthalpy">J/kg, on the reference state of <see cref="Refrigerant.ReferenceState"/>.</param>
/// <param name="VaporEnthalpy">J/kg.</param>
/// <param name="LiquidEntropy">J/(kg K).</param>
/// <param name="VaporEntropy">J/(kg K).</param>
/// <param name="PressureSlope">dp/dT along this curve, Pa/K.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct SaturationState(
    double Temperature,
    double Pressure,
    double LiquidDensity,
    double VaporDensity,
    double LiquidEnthalpy,
    double VaporEnthalpy,
    double LiquidEntropy,
    double VaporEntropy,
    double PressureSlope)
{
    /// <summary>dT/dp along this curve, K/Pa.</summary>
    public double TemperatureSlope => 1 / PressureSlope;
}

/// <summary>Which edge of the two-phase region.</summary>
internal enum SaturationCurve
{
    /// <summary>Liquid of the designated composition with the first bubble.</summary>
    Bubble,

    /// <summary>Vapour of the designated composition with the first drop.</summary>
    Dew,
}

/// <summary>The critical point of a refrigerant.</summary>
/// <param name="Temperature">K.</param>
/// <param name="Pressure">Pa absolute.</param>
/// <param name="Density">kg/m³.</param>
public readonly record struct CriticalPoint(double Temperature, double Pressure, double Density);
