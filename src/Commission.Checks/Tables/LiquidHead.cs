namespace Commission.Checks.Tables;

/// <summary>Pressure that a column of liquid refrigerant costs on the way up.</summary>
internal static class LiquidHead
{
    /// <summary>The formula, as a trace prints it.</summary>
    public const string Formula = "Δp = ρ·g·h";

    private const double StandardGravity = 9.80665;

    /// <summary>The loss.</summary>
    /// <param name="density">Density of the liquid, kg/m³.</param>
    /// <param name="riseMetres">Height gained, m; negative for a drop.</param>
    /// <returns>Pa; negative for a gain.</returns>
    public static double Loss(double density, double riseMetres) => density * StandardGravity * riseMetres;
}
