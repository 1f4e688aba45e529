using Commission.Measurement.Uncertainty;

namespace Commission.Checks.EvacuationAnalysis;

/// <summary>Inflow into a closed volume from its pressure rise, Q = V·dp/dt, and what it is in other words.</summary>
/// <remarks>The throughput is that of the gas that enters, at the temperature of the system.</remarks>
public static class LeakRate
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

    /// <summary>Throughput in mbar·L/s (1 mbar·L/s = 0.1 Pa·m³/s, exact).</summary>
    /// <param name="throughput">Pa·m³/s.</param>
    public static double MillibarLitresPerSecond(double throughput) => throughput * 10;

    /// <summary>Throughput in atm·cm³/s at the temperature of the system (1 atm·cm³/s = 0.101325 Pa·m³/s, exact).</summary>
    /// <param name="throughput">Pa·m³/s.</param>
    public static double AtmosphereCubicCentimetresPerSecond(double throughput) => throughput / 0.101325;

    /// <summary>Mass flow ṁ = Q·M/(R·T), kg/s: the throughput merely re-expressed, not what the hole would pass at another pressure.</summary>
    /// <param name="throughput">Pa·m³/s.</param>
    /// <param name="molarMass">M, kg/mol.</param>
    /// <param name="temperature">T, K.</param>
    public static double MassFlow(double throughput, double molarMass, double temperature) =>
        throughput * molarMass / (GasConstant * temperature);
}
