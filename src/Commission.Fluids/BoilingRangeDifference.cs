using System.Runtime.InteropServices;

namespace Commission.Fluids;

/// <summary>Computed minus listed temperatures at 101.325 kPa: what the model and the list (often older) differ by.</summary>
/// <param name="Bubble">K.</param>
/// <param name="Dew">K.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct BoilingRangeDifference(double Bubble, double Dew);
