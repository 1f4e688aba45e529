namespace Commission.Fluids;

/// <summary>A component of a refrigerant.</summary>
/// <param name="Designation">e.g. "R-32".</param>
/// <param name="MassFraction">kg/kg, 0…1.</param>
public sealed record BlendComponent(string Designation, double MassFraction);
