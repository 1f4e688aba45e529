namespace Commission.Checks.EvacuationAnalysis;

/// <summary>
/// A gas as a tube sees it: the coefficients of its viscous and molecular conductance and of Knudsen's formula between them.
/// </summary>
/// <param name="Viscous">C = Viscous·d⁴·p̄/l, m³/s with d and l in m and p̄ in Pa: π/(128·η), 1/(Pa·s).</param>
/// <param name="Molecular">C = Molecular·d³/l: π·c̄/12, m/s, c̄ the mean speed of the molecules.</param>
/// <param name="KnudsenNumerator">In (1 + a·d·p̄)/(1 + b·d·p̄), which multiplies the molecular term: a, 1/(Pa·m).</param>
/// <param name="KnudsenDenominator">b, 1/(Pa·m).</param>
/// <param name="CriticalSpeed">Largest volume flow per area through an opening, m/s: choked flow.</param>
public sealed record ConductanceGas(
    double Viscous, double Molecular, double KnudsenNumerator, double KnudsenDenominator, double CriticalSpeed)
{
    private const double GasConstant = 8.31446261815324;

    /// <summary>
    /// Air at 20 °C with the rounded coefficients of the vacuum handbooks: C[L/s] = 135·d⁴/l·p̄ + 12.1·d³/l·(1 + 192·d·p̄)/(1 + 237·d·p̄),
    /// d and l in cm, p̄ in mbar; choked at 20 L/s per cm² (from memory).
    /// </summary>
    public static ConductanceGas Air20 { get; } = new(1350, 121, 192, 237, 200);

    /// <summary>Mean speed of the molecules, m/s.</summary>
    public double MeanSpeed => 12 * Molecular / Math.PI;

    /// <summary>
    /// Any dilute gas. Poiseuille; kinetic theory, c̄ = √(8RT/(πM)); Knudsen, Ann. Phys. 28 (1909) 75: a = √(M/(RT))/η, b = 1.24·a
    /// (from memory); choked flow √(RT/M)·√γ·(2/(γ+1))^((γ+1)/(2(γ−1))).
    /// </summary>
    /// <param name="molarMass">kg/mol.</param>
    /// <param name="temperature">K.</param>
    /// <param name="viscosity">Pa·s.</param>
    /// <param name="heatRatio">Ratio of the heat capacities γ, above 1.</param>
    public static ConductanceGas From(double molarMass, double temperature, double viscosity, double heatRatio)
    {
        var thermal = GasConstant * temperature / molarMass;
        var knudsen = 1 / Math.Sqrt(thermal) / viscosity;
        var critical = Math.Sqrt(thermal * heatRatio)
            * Math.Pow(2 / (heatRatio + 1), (heatRatio + 1) / (2 * (heatRatio - 1)));
        return new ConductanceGas(
            Math.PI / (128 * viscosity), Math.PI / 12 * Math.Sqrt(8 * thermal / Math.PI), knudsen, 1.24 * knudsen, critical);
    }
}
