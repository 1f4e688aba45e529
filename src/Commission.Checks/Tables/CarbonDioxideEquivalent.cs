namespace Commission.Checks.Tables;

/// <summary>Charge as tonnes of carbon dioxide with the same warming over a hundred years.</summary>
internal static class CarbonDioxideEquivalent
{
    /// <summary>The formula, as a trace prints it.</summary>
    public const string Formula = "t CO2e = charge in kg × GWP / 1000";

    /// <summary>Tonnes of a charge.</summary>
    /// <param name="kilograms">Charge, kg.</param>
    /// <param name="warmingPotential">GWP over 100 years.</param>
    /// <returns>Tonnes CO2e.</returns>
    public static double Tonnes(double kilograms, double warmingPotential) => kilograms * warmingPotential / 1000;

    /// <summary>Charge that makes a number of tonnes.</summary>
    /// <param name="tonnes">Tonnes CO2e.</param>
    /// <param name="warmingPotential">GWP over 100 years.</param>
    /// <returns>Charge, kg.</returns>
    public static double Kilograms(double tonnes, double warmingPotential) => tonnes * 1000 / warmingPotential;
}
