namespace Commission.Checks.Tables;

/// <summary>Charge that a line set needs beyond what the factory put in, in SI doubles so that uncertainty passes through.</summary>
internal static class LineCharge
{
    /// <summary>The formula, as a trace prints it.</summary>
    public const string Formula = "adjustment = figure × length − allowance";

    /// <summary>Where it comes from.</summary>
    public const string Source = "definition; the figure and the allowance are the maker's";

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

    /// <summary>Mass of liquid that fills a tube: π·d²/4·ρ.</summary>
    /// <param name="innerDiameterMetres">Bore, m.</param>
    /// <param name="liquidDensity">Density of the liquid, kg/m³.</param>
    /// <returns>Mass per length, kg/m.</returns>
    public static double OfLiquid(double innerDiameterMetres, double liquidDensity) =>
        Math.PI / 4 * innerDiameterMetres * innerDiameterMetres * liquidDensity;
}
