using Commission.Measurement.Quantities;

namespace Commission.Checks.Tables;

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

    private const double Inch = 0.0254;

    private static readonly (double Outside, double Wall)[] Inches =
    [
        (0.250, 0.030), (0.3125, 0.032), (0.375, 0.032), (0.500, 0.032), (0.625, 0.035), (0.750, 0.035),
        (0.875, 0.045), (1.125, 0.050), (1.375, 0.055), (1.625, 0.060), (2.125, 0.070),
    ];

    /// <summary>Bore of a tube of standard size.</summary>
    /// <param name="outsideDiameter">Outside diameter.</param>
    /// <returns>Inside diameter; null when the size is not in the list (a metric tube with its own wall).</returns>
    public static Length? Bore(Length outsideDiameter)
    {
        foreach (var (outside, wall) in Inches)
        {
            if (Math.Abs(outsideDiameter.Si - (outside * Inch)) <= Match) return Length.FromSi((outside - (2 * wall)) * Inch);
        }

        return null;
    }
}
