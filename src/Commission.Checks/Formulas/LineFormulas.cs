using Commission.Measurement.Quantities;

namespace Commission.Checks.Formulas;

/// <summary>
/// Walls of air-conditioning and refrigeration copper tube by outside diameter: ASTM B280, type ACR, annealed up to 3/4 in and hard drawn
/// above (from memory). Used where a job gives an outside diameter alone.
/// </summary>
internal static class AcrTube
{
    /// <summary>Where the walls come from.</summary>
    public const string Source = "ASTM B280, type ACR (from memory)";

    // Wide enough for 15.9 mm as the name of 5/8 in, too narrow for a 16 mm tube, whose wall is another.
    private const double Match = 0.06e-3;

    private static readonly (double Outside, double Wall)[] Inches =
    [
        (0.250, 0.030), (0.3125, 0.032), (0.375, 0.032), (0.500, 0.032), (0.625, 0.035), (0.750, 0.035),
        (0.875, 0.045), (1.125, 0.050), (1.375, 0.055), (1.625, 0.060), (2.125, 0.070),
    ];

    /// <summary>Bore of a tube of standard size.</summary>
    /// <returns>Inside diameter; null when the size is not in the list (a metric tube with its own wall).</returns>
    public static Length? Bore(Length outsideDiameter)
    {
        foreach (var (outside, wall) in Inches)
        {
            if (Math.Abs(outsideDiameter.Si - (outside * ConversionFactors.Inch)) <= Match)
                return Length.FromSi((outside - (2 * wall)) * ConversionFactors.Inch);
        }

        return null;
    }
}

/// <summary>Charge that a line set needs beyond what the factory put in, in SI doubles so that uncertainty passes through.</summary>
internal static class LineCharge
{
    /// <summary>Adjustment for one line: positive is added, negative is recovered.</summary>
    /// <param name="kilogramsPerMetre">The maker's figure for this tube, kg/m.</param>
    /// <param name="metres">Installed length, m.</param>
    /// <param name="allowanceKilograms">What the factory charge already holds for the line set, kg.</param>
    /// <returns>Mass, kg.</returns>
    public static double Adjustment(double kilogramsPerMetre, double metres, double allowanceKilograms) =>
        (kilogramsPerMetre * metres) - allowanceKilograms;

    /// <summary>What the factory charge holds when the maker gives a length instead of a mass.</summary>
    /// <param name="kilogramsPerMetre">The maker's figure for this tube, kg/m.</param>
    /// <param name="coveredMetres">Length covered by the factory charge, m.</param>
    /// <returns>Mass, kg.</returns>
    public static double Allowance(double kilogramsPerMetre, double coveredMetres) => kilogramsPerMetre * coveredMetres;
}

/// <summary>Mean velocity of refrigerant in a line.</summary>
internal static class LineVelocity
{
    /// <summary>The formula, as a trace prints it.</summary>
    public const string Formula = "v = ṁ / (ρ·π·d²/4)";
}

/// <summary>Pressure that a column of liquid refrigerant costs on the way up.</summary>
internal static class LiquidHead
{
    /// <summary>The formula, as a trace prints it.</summary>
    public const string Formula = "Δp = ρ·g·h";

    /// <summary>The loss.</summary>
    /// <param name="density">Density of the liquid, kg/m³.</param>
    /// <param name="riseMetres">Height gained, m; negative for a drop.</param>
    /// <returns>Pa; negative for a gain.</returns>
    public static double Loss(double density, double riseMetres) => density * ConversionFactors.StandardGravity * riseMetres;
}
