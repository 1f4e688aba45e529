using Commission.Checks.Kernel;
using Commission.Checks.Wording;
using Commission.Fluids;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Messages;

namespace Commission.Checks.Formulas;

/// <summary>Inflow into a closed volume from its pressure rise, Q = V·dp/dt, and what it is in other words.</summary>
/// <remarks>The throughput is that of the gas that enters, at the temperature of the system.</remarks>
internal static class LeakRate
{
    /// <summary>R, J/(mol·K).</summary>
    internal const double GasConstant = 8.31446261815324;

    /// <summary>Molar mass of air, kg/mol.</summary>
    public const double AirMolarMass = 0.0289652;

    /// <summary>Q = V·dp/dt, Pa·m³/s.</summary>
    /// <param name="volume">V, m³.</param>
    /// <param name="slope">dp/dt, Pa/s.</param>
    public static Uncertain Throughput(Uncertain volume, Uncertain slope)
    {
        ArgumentNullException.ThrowIfNull(volume);
        ArgumentNullException.ThrowIfNull(slope);
        return volume * slope;
    }

    /// <summary>Mass flow ṁ = Q·M/(R·T), kg/s: the throughput merely re-expressed, not what the hole would pass at another pressure.</summary>
    /// <param name="throughput">Pa·m³/s.</param>
    /// <param name="molarMass">M, kg/mol.</param>
    /// <param name="temperature">T, K.</param>
    public static double MassFlow(double throughput, double molarMass, double temperature) =>
        throughput * molarMass / (GasConstant * temperature);
}

/// <summary>Ratio of the absolute pressures at a compressor.</summary>
internal static class CompressionRatio
{
    /// <summary>The formula, as a trace prints it.</summary>
    public static Message Formula => FormulasMessages.CompressionRatio;
}

/// <summary>
/// Viscosity of refrigerant vapour near atmospheric pressure at 20 °C, µPa·s, from handbook tables (from memory, about 5 %); blends by
/// the rule of Herning and Zipperer (1936, from memory), η = Σ x·η·√M / Σ x·√M. Good enough for a band of leak rates, and used for
/// nothing else.
/// </summary>
internal static class VaporViscosity
{
    /// <summary>Where the figures come from, as the record cites it.</summary>
    public static Message Source => FormulasMessages.VaporViscositySource;

    /// <summary>Viscosity of nitrogen at 20 °C, Pa·s (from memory).</summary>
    public const double Nitrogen = 17.6e-6;

    private static readonly (string Designation, double MicroPascalSeconds)[] Pure =
    [
        ("R-22", 12.5), ("R-23", 14.7), ("R-32", 12.5), ("R-115", 12.6), ("R-123", 10.7), ("R-124", 11.5),
        ("R-125", 13.0), ("R-134a", 11.7), ("R-142b", 10.4), ("R-143a", 11.0), ("R-152a", 10.0), ("R-218", 12.4),
        ("R-227ea", 11.5), ("R-236fa", 10.9), ("R-245fa", 10.1), ("R-290", 8.0), ("R-600", 7.3), ("R-600a", 7.4),
        ("R-717", 9.8), ("R-744", 14.7), ("R-1234yf", 12.0), ("R-1234ze(E)", 12.0), ("R-1270", 8.4), ("R-170", 9.2),
        ("R-E170", 9.1),
    ];

    /// <summary>Viscosity of a refrigerant's vapour, Pa·s.</summary>
    /// <returns>The viscosity; null when a component has no figure.</returns>
    public static double? Of(RefrigerantInfo refrigerant)
    {
        double above = 0, below = 0;
        foreach (var component in refrigerant.Composition)
        {
            var viscosity = Array.Find(Pure, p => p.Designation == component.Designation).MicroPascalSeconds;
            if (viscosity == 0 || (component.Designation == refrigerant.Designation ? refrigerant.MolarMass : RefrigerantCatalogue.Find(component.Designation)?.MolarMass) is not { } mass)
                return null;
            // x·√M is proportional to w/√M: mole fractions need not be formed.
            var weight = component.MassFraction / Math.Sqrt(mass);
            above += weight * viscosity;
            below += weight;
        }

        return below > 0 ? above / below * 1e-6 : null;
    }
}

/// <summary>
/// Carbon monoxide of a flue gas without the air that thins it (from memory, as ANSI Z21.47 has it). Shares of the dry gas by volume, 0 to 1.
/// </summary>
internal static class AirFree
{
    /// <summary>The formula with oxygen, as a trace prints it.</summary>
    public static Message FromOxygen => FormulasMessages.AirFreeByOxygen;

    /// <summary>The formula with carbon dioxide, as a trace prints it.</summary>
    public static Message FromCarbonDioxide => FormulasMessages.AirFreeByDioxide;

    /// <summary>Where the formulas come from.</summary>
    public static Message Source => Cited.FromMemory("ANSI Z21.47");

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
