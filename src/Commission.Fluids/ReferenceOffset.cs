using System.Runtime.InteropServices;

namespace Commission.Fluids;

/// <summary>What is added to enthalpy (J/kg) and entropy (J/(kg K)) of the equations.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct ReferenceOffset(bool IsIir, double Enthalpy, double Entropy);
