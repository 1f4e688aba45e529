namespace Commission.Fluids;

/// <summary>The critical point of a refrigerant.</summary>
/// <param name="Temperature">K.</param>
/// <param name="Pressure">Pa absolute.</param>
/// <param name="Density">kg/m³.</param>
public readonly record struct CriticalPoint(double Temperature, double Pressure, double Density);
