using System.Collections.Immutable;
using Commission.Checks.Formulas;
using Commission.Messages;

namespace Commission.Checks.VacuumAnalysis;

/// <summary>Pumping speed of a vacuum pump over its inlet pressure.</summary>
internal sealed class PumpCurve
{
    private readonly double _speed;

    private PumpCurve(double speed, double ultimate)
    {
        _speed = speed;
        Ultimate = ultimate;
    }

    /// <summary>Lowest pressure of the pump alone, Pa; 0 when it is not stated.</summary>
    public double Ultimate { get; }

    /// <summary>The rated speed, falling to nothing at the pump's own lowest pressure: S·(1 − p_u/p).</summary>
    /// <param name="speed">Rated speed, m³/s, above 0.</param>
    /// <param name="ultimate">Lowest pressure of the pump alone, Pa; 0 for a constant speed.</param>
    public static PumpCurve Rated(double speed, double ultimate = 0) => new(speed, ultimate);

    /// <summary>Speed at an inlet pressure, m³/s, not below 0.</summary>
    /// <param name="pressure">Pa, above 0.</param>
    public double SpeedAt(double pressure) => Math.Max(_speed * (1 - Ultimate / pressure), 0);
}

/// <summary>A hose, a valve core or a fitting between system and pump.</summary>
/// <param name="Name">What it is, in words.</param>
/// <param name="Kind">Hose, core or fitting.</param>
/// <param name="Bore">Inner diameter, m, above 0.</param>
/// <param name="Length">Length, m, above 0 for a hose.</param>
internal sealed record FlowElement(Message Name, FlowElementKind Kind, double Bore, double Length)
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

/// <summary>What gas passes on its way from the system to the pump.</summary>
internal enum FlowElementKind
{
    /// <summary>A valve core left in its place: a short, narrow opening.</summary>
    Core,

    /// <summary>Any other short opening: a tee, a valve, an adapter.</summary>
    Fitting,

    /// <summary>A hose or a tube much longer than its bore.</summary>
    Hose,
}

/// <summary>How much of the pressure at the system is spent on one part of the way.</summary>
/// <param name="Name">The part; null for the pump.</param>
/// <param name="Kind">Its kind; null for the pump.</param>
/// <param name="Share">Its pressure drop over the pressure at the system, 0 to 1; the pump's share is its inlet pressure. They sum to 1.</param>
internal sealed record FlowShare(Message? Name, FlowElementKind? Kind, double Share);

/// <summary>What the pump is worth at the system.</summary>
/// <param name="SystemPressure">Pressure at the system, Pa.</param>
/// <param name="InletPressure">Pressure at the pump's inlet, Pa.</param>
/// <param name="Speed">Volume flow drawn at the system, m³/s.</param>
/// <param name="PumpSpeed">Speed of the pump at its inlet, m³/s.</param>
/// <param name="Shares">Where the pressure is spent, from the system to the pump.</param>
internal sealed record EffectiveSpeed(
    double SystemPressure, double InletPressure, double Speed, double PumpSpeed, ImmutableArray<FlowShare> Shares)
{
    /// <summary>The part that takes the largest share: what limits the speed at this pressure.</summary>
    public FlowShare Limiting => Shares.MaxBy(s => s.Share)!;
}

/// <summary>
/// A gas as a tube sees it: the coefficients of its viscous and molecular conductance and of Knudsen's formula between them.
/// </summary>
/// <param name="Viscous">C = Viscous·d⁴·p̄/l, m³/s with d and l in m and p̄ in Pa: π/(128·η), 1/(Pa·s).</param>
/// <param name="Molecular">C = Molecular·d³/l: π·c̄/12, m/s, c̄ the mean speed of the molecules.</param>
/// <param name="KnudsenNumerator">In (1 + a·d·p̄)/(1 + b·d·p̄), which multiplies the molecular term: a, 1/(Pa·m).</param>
/// <param name="KnudsenDenominator">b, 1/(Pa·m).</param>
/// <param name="CriticalSpeed">Largest volume flow per area through an opening, m/s: choked flow.</param>
internal sealed record ConductanceGas(
    double Viscous, double Molecular, double KnudsenNumerator, double KnudsenDenominator, double CriticalSpeed)
{
    /// <summary>
    /// Air at 20 °C with the rounded coefficients of the vacuum handbooks: C[L/s] = 135·d⁴/l·p̄ + 12.1·d³/l·(1 + 192·d·p̄)/(1 + 237·d·p̄),
    /// d and l in cm, p̄ in mbar; choked at 20 L/s per cm² (from memory).
    /// </summary>
    public static ConductanceGas Air20 { get; } = new(1350, 121, 192, 237, 200);

    /// <summary>Mean speed of the molecules, m/s.</summary>
    public double MeanSpeed => 12 * Molecular / Math.PI;
}

/// <summary>Chance of a molecule to pass a short tube (Clausing 1932): molecular conductance = area·c̄/4 times this.</summary>
internal static class ClausingFactor
{
    /// <summary>
    /// Berman, J. Appl. Phys. 36 (1965) 3356, in closed form (from memory); within 0.1 % of the tables up to L/r of 20, and 8r/(3L) for
    /// long tubes, where the closed form loses its digits.
    /// </summary>
    /// <param name="length">Length of the tube, m, ≥ 0.</param>
    /// <param name="diameter">Its bore, m, above 0.</param>
    public static double Of(double length, double diameter)
    {
        var l = 2 * length / diameter;
        if (l <= 0)
            return 1;

        // Beyond this the difference of large terms has no digits left; the long-tube limit is then closer.
        if (l > 2000)
            return 8 / (3 * l);
        var root = Math.Sqrt(l * l + 4);
        var first = 1 + l * l / 4 - l / 4 * root;

        // The second term goes by l³/24, and its denominator cancels to nothing.
        if (l < 0.02)
            return first;
        var upper = (8 - l * l) * root + l * l * l - 16;
        var lower = 72 * l * root - 288 * Math.Log(l + root) + 288 * Math.Log(2);
        return first - upper * upper / lower;
    }
}
