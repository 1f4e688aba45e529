using Commission.Jobs.Model.Words;

namespace Commission.Checks.Formulas;

/// <summary>
/// Carbon monoxide of a flue gas without the air that thins it (from memory, as ANSI Z21.47 has it). Shares of the dry gas by volume, 0 to 1.
/// </summary>
internal static class AirFree
{
    /// <summary>The formula with oxygen, as a trace prints it.</summary>
    public const string FromOxygen = "CO_af = CO·20.9 / (20.9 − O2)";

    /// <summary>The formula with carbon dioxide, as a trace prints it.</summary>
    public const string FromCarbonDioxide = "CO_af = CO·CO2_max / CO2";

    /// <summary>The largest share of carbon dioxide each fuel can make.</summary>
    public const string Ultimates = "CO2_max = 12.2 % natural gas, 14.0 % propane, 15.5 % oil";

    /// <summary>Where the formulas come from.</summary>
    public const string Source = "ANSI Z21.47 (from memory)";

    /// <summary>Oxygen in dry air.</summary>
    public const double OxygenOfAir = 0.209;

    /// <summary>By oxygen.</summary>
    /// <param name="carbonMonoxide">As read.</param>
    /// <param name="oxygen">Below that of air.</param>
    public static double ByOxygen(double carbonMonoxide, double oxygen) => carbonMonoxide * OxygenOfAir / (OxygenOfAir - oxygen);

    /// <summary>By carbon dioxide.</summary>
    /// <param name="carbonMonoxide">As read.</param>
    /// <param name="carbonDioxide">Above 0.</param>
    /// <param name="ultimate">What the fuel makes without air to spare.</param>
    public static double ByCarbonDioxide(double carbonMonoxide, double carbonDioxide, double ultimate) => carbonMonoxide * ultimate / carbonDioxide;

    /// <summary>The largest share of carbon dioxide a fuel can make.</summary>
    public static double? UltimateOf(Fuel fuel) => fuel switch
    {
        Fuel.NaturalGas => 0.122,
        Fuel.Propane => 0.140,
        Fuel.Oil => 0.155,
        _ => null,
    };
}
