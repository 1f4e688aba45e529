using Commission.Checks.Kernel;
using Commission.Checks.Wording;
using Commission.Measurement.Quantities;
using Commission.Messages;

namespace Commission.Checks.Formulas;

/// <summary>
/// Walls of air-conditioning and refrigeration copper tube by outside diameter, used where a job gives an outside diameter alone: inch sizes
/// of ASTM B280, type ACR, annealed up to 3/4 in and hard drawn above, and metric sizes of EN 12735-1 with their usual wall (both from memory).
/// </summary>
internal static class AcrTube
{
    private static Message AstmSource => Cited.FromMemory("ASTM B280, type ACR");
    private static Message EnSource => Cited.FromMemory("EN 12735-1, usual wall");

    // Wide enough for 15.9 mm as the name of 5/8 in. The nearer size counts: 54 mm is one tube and 2 1/8 in, 53.98 mm, another.
    private const double Match = 0.06e-3;

    private const double Millimetre = 1e-3;

    private static readonly StandardTube[] Sizes =
    [
        Inch(0.250, 0.030), Inch(0.3125, 0.032), Inch(0.375, 0.032), Inch(0.500, 0.032), Inch(0.625, 0.035), Inch(0.750, 0.035),
        Inch(0.875, 0.045), Inch(1.125, 0.050), Inch(1.375, 0.055), Inch(1.625, 0.060), Inch(2.125, 0.070),
        Metric(6, 1), Metric(8, 1), Metric(10, 1), Metric(12, 1), Metric(15, 1), Metric(16, 1), Metric(18, 1), Metric(22, 1),
        Metric(28, 1.5), Metric(35, 1.5), Metric(42, 1.5), Metric(54, 2), Metric(64, 2), Metric(76.1, 2), Metric(88.9, 2),
    ];

    /// <summary>The tube of an outside diameter; null when no standard size is so wide.</summary>
    /// <param name="outsideDiameter">Outside diameter, as a job gives it.</param>
    public static StandardTube? Find(Length outsideDiameter)
    {
        var nearest = Sizes.MinBy(t => Math.Abs(t.Outside - outsideDiameter.Si))!;
        return Math.Abs(nearest.Outside - outsideDiameter.Si) <= Match ? nearest : null;
    }

    private static StandardTube Inch(double outside, double wall) => new(outside * ConversionFactors.Inch, wall * ConversionFactors.Inch, AstmSource);

    private static StandardTube Metric(double outside, double wall) => new(outside * Millimetre, wall * Millimetre, EnSource);
}

/// <summary>A tube of standard size.</summary>
/// <param name="Outside">Outside diameter, m.</param>
/// <param name="Wall">Wall, m.</param>
/// <param name="Source">The standard, as a trace prints it.</param>
internal sealed record StandardTube(double Outside, double Wall, Message Source)
{
    /// <summary>Inside diameter, m.</summary>
    public double Bore => Outside - (2 * Wall);
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
