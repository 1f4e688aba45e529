namespace Commission.Fluids.Helmholtz;

/// <summary>One published fundamental equation of state: constants, ideal and residual Helmholtz energy, starting guesses of saturation.</summary>
internal sealed class EquationOfState
{
    public required string Designation { get; init; }

    public required string ChemicalName { get; init; }

    public required IReadOnlyList<Paper> Papers { get; init; }

    /// <summary>The formulation's own gas constant, J/(mol K).</summary>
    public required double GasConstant { get; init; }

    /// <summary>kg/mol.</summary>
    public required double MolarMass { get; init; }

    /// <summary>Triple point, or the lowest temperature of the equation, K.</summary>
    public required double LowestTemperature { get; init; }

    public required double HighestTemperature { get; init; }

    public required double HighestPressure { get; init; }

    public required double CriticalTemperature { get; init; }

    public required double CriticalPressure { get; init; }

    /// <summary>mol/m³.</summary>
    public required double CriticalDensity { get; init; }

    public required double ReducingTemperature { get; init; }

    /// <summary>mol/m³.</summary>
    public required double ReducingDensity { get; init; }

    public required double AcentricFactor { get; init; }

    public required IdealTerms[] Ideal { get; init; }

    public required HelmholtzFunction Residual { get; init; }

    /// <summary>Vapour pressure; of a pseudo-pure equation the bubble pressure.</summary>
    public required Ancillary VaporPressure { get; init; }

    /// <summary>Dew pressure of a pseudo-pure equation, else null.</summary>
    public Ancillary? DewPressure { get; init; }

    public required Ancillary LiquidDensity { get; init; }

    public required Ancillary VaporDensity { get; init; }

    /// <summary>The ideal-gas part at T without ln δ.</summary>
    public IdealDerivatives IdealAt(double temperature)
    {
        IdealDerivatives sum = default;
        double tau = ReducingTemperature / temperature;
        foreach (IdealTerms kind in Ideal)
            kind.Add(tau, ref sum);
        return sum;
    }

    /// <summary>
    /// A rough vapour pressure at any temperature: the auxiliary equation between the lowest temperature and the critical point, below
    /// it a straight line of ln p in 1/T, above it Wilson's estimate of 1969.
    /// </summary>
    public double RoughVaporPressure(double temperature)
    {
        if (temperature >= 0.99 * CriticalTemperature)
            return CriticalPressure * Math.Exp(5.373 * (1 + AcentricFactor) * (1 - CriticalTemperature / temperature));
        if (temperature >= LowestTemperature)
            return VaporPressure.At(temperature);
        double low = LowestTemperature, next = 1.05 * low;
        double pLow = Math.Log(VaporPressure.At(low)), pNext = Math.Log(VaporPressure.At(next));
        return Math.Exp(pLow + (pNext - pLow) * (1 / low - 1 / temperature) / (1 / low - 1 / next));
    }
}
