namespace Commission.Checks.Tables;

/// <summary>Mean velocity of refrigerant in a line.</summary>
internal static class LineVelocity
{
    /// <summary>The formula, as a trace prints it.</summary>
    public const string Formula = "v = ṁ / (ρ·π·d²/4)";

    /// <summary>The velocity.</summary>
    /// <param name="kilogramsPerSecond">Mass flow, kg/s.</param>
    /// <param name="density">Density, kg/m³.</param>
    /// <param name="boreMetres">Inside diameter, m.</param>
    /// <returns>m/s.</returns>
    public static double Of(double kilogramsPerSecond, double density, double boreMetres) =>
        kilogramsPerSecond / (density * Math.PI / 4 * boreMetres * boreMetres);
}
