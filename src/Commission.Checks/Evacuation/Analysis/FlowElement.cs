namespace Commission.Checks.EvacuationAnalysis;

/// <summary>A hose, a valve core or a fitting between system and pump.</summary>
/// <param name="Name">What it is, in words.</param>
/// <param name="Kind">Hose, core or fitting.</param>
/// <param name="Bore">Inner diameter, m, above 0.</param>
/// <param name="Length">Length, m, above 0 for a hose.</param>
public sealed record FlowElement(string Name, FlowElementKind Kind, double Bore, double Length)
{
    /// <summary>Cross-section, m².</summary>
    public double Area => Math.PI / 4 * Bore * Bore;

    /// <summary>
    /// Conductance at a mean pressure, m³/s: viscous plus molecular with Knudsen's transition between them. The molecular part of a short
    /// element goes by Clausing's factor, that of a hose by the long-tube formula.
    /// </summary>
    /// <param name="gas">The gas.</param>
    /// <param name="meanPressure">Mean of the pressures at both ends, Pa.</param>
    public double Conductance(ConductanceGas gas, double meanPressure)
    {
        ArgumentNullException.ThrowIfNull(gas);
        var transition = (1 + gas.KnudsenNumerator * Bore * meanPressure) / (1 + gas.KnudsenDenominator * Bore * meanPressure);
        return ViscousSlope(gas) * meanPressure + MolecularConductance(gas) * transition;
    }

    /// <summary>Conductance where molecules meet the wall only, m³/s.</summary>
    /// <param name="gas">The gas.</param>
    public double MolecularConductance(ConductanceGas gas)
    {
        ArgumentNullException.ThrowIfNull(gas);
        return Kind == FlowElementKind.Hose
            ? gas.Molecular * Bore * Bore * Bore / Length
            : Area * gas.MeanSpeed / 4 * ClausingFactor.Of(Length, Bore);
    }

    /// <summary>Pressure at the inlet of the element that drives a throughput to a pressure at its outlet, Pa.</summary>
    /// <param name="gas">The gas.</param>
    /// <param name="throughput">Q = C·(p₁ − p₂), Pa·m³/s.</param>
    /// <param name="outlet">p₂, Pa.</param>
    internal double InletPressure(ConductanceGas gas, double throughput, double outlet)
    {
        // Between the outlet pressure and what viscous flow alone would need; then bisect in p: Q rises steadily with it.
        var low = outlet;
        var viscous = ViscousSlope(gas);
        var high = Math.Min(
            Math.Sqrt(outlet * outlet + 2 * throughput / viscous),
            outlet + throughput / (MolecularConductance(gas) * gas.KnudsenNumerator / gas.KnudsenDenominator));
        for (var i = 0; i < 60 && high - low > 1e-12 * high; i++)
        {
            var p = (low + high) / 2;
            if (Conductance(gas, (p + outlet) / 2) * (p - outlet) < throughput)
                low = p;
            else
                high = p;
        }

        // A short opening chokes: no outlet pressure draws more than the critical speed through it.
        return Kind == FlowElementKind.Hose ? high : Math.Max(high, throughput / (Area * gas.CriticalSpeed));
    }

    // A short opening is more than its Poiseuille length: flow turns into it. Weissberg, Phys. Fluids 5 (1962) 1033 (from memory):
    // 3π/16 of the bore more, which for no length at all is Sampson's orifice d³/(24·η).
    private double ViscousSlope(ConductanceGas gas)
    {
        var length = Kind == FlowElementKind.Hose ? Length : Length + 3 * Math.PI / 16 * Bore;
        return gas.Viscous * Bore * Bore * Bore * Bore / length;
    }
}
