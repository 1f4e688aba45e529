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
        var sum = default(IdealDerivatives);
        var tau = ReducingTemperature / temperature;
        foreach (var kind in Ideal)
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

/// <summary>The publication an equation or a set of parameters was taken from.</summary>
/// <param name="Key">Short key: author, journal, year.</param>
/// <param name="Authors">Authors, separated by semicolons.</param>
/// <param name="Title">Title of the paper, book or report.</param>
/// <param name="Year">Year of publication.</param>
/// <param name="PublishedIn">Journal, proceedings or publisher; empty where the source names none.</param>
/// <param name="Volume">Volume, or null.</param>
/// <param name="Pages">Pages or article number, or null.</param>
/// <param name="Doi">Digital object identifier, or null.</param>
public sealed record Paper(string Key, string Authors, string Title, string Year, string PublishedIn, string? Volume, string? Pages, string? Doi)
{
    /// <summary>One line: authors, title, journal volume (year) pages.</summary>
    public string Citation
    {
        get
        {
            var place = PublishedIn;
            if (Volume is not null)
                place = place.Length == 0 ? Volume : place + " " + Volume;
            var tail = Pages is null ? string.Empty : ", " + Pages;
            return place.Length == 0 ? $"{Authors}: {Title} ({Year})" : $"{Authors}: {Title}. {place} ({Year}){tail}";
        }
    }

    /// <inheritdoc/>
    public override string ToString() => Citation;
}

/// <summary>
/// An auxiliary saturation equation of θ = 1 − T/Tr: y = yr exp((Tr/T) Σ n θ^t), y = yr exp(Σ n θ^t) or y = yr (1 + Σ n θ^t).
/// It starts an iteration and is never an answer.
/// </summary>
internal sealed class Ancillary(AncillaryForm form, double reducingTemperature, double reducingValue, double[] n, double[] t)
{
    /// <summary>The value at T; above 0.9999 of the reducing temperature, the value there.</summary>
    public double At(double temperature)
    {
        var top = 0.9999 * reducingTemperature;
        var used = temperature < top ? temperature : top;
        var lnTheta = Math.Log(1 - used / reducingTemperature);
        var sum = 0.0;
        for (var k = 0; k < n.Length; k++)
            sum += n[k] * Math.Exp(t[k] * lnTheta);
        return form switch
        {
            AncillaryForm.ExponentialOfReduced => reducingValue * Math.Exp(reducingTemperature / used * sum),
            AncillaryForm.Exponential => reducingValue * Math.Exp(sum),
            _ => reducingValue * (1 + sum),
        };
    }
}

/// <summary>The three shapes of an auxiliary saturation equation.</summary>
internal enum AncillaryForm
{
    /// <summary>y = yr exp((Tr/T) Σ n θ^t).</summary>
    ExponentialOfReduced,

    /// <summary>y = yr exp(Σ n θ^t).</summary>
    Exponential,

    /// <summary>y = yr (1 + Σ n θ^t).</summary>
    Linear,
}
