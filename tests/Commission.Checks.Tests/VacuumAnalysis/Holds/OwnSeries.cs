using Commission.Checks.Tests.Coverage;
using Commission.Checks.VacuumAnalysis;

namespace Commission.Checks.Tests.VacuumAnalysis.Holds;

/// <summary>What truly happens in a drawn hold.</summary>
internal enum HoldTruthKind
{
    Flat,
    Leak,
    Source,
    LeakAndSource,
    Drift,
}

/// <summary>A drawn hold with its truth.</summary>
/// <param name="Hold">The hold.</param>
/// <param name="Kind">What happens in it.</param>
/// <param name="Leak">True steady inflow, Pa/s.</param>
/// <param name="Constant">Time constant of the source, s; NaN without one.</param>
/// <param name="Limit">The decay limit, Pa.</param>
/// <param name="Counting">The rise that counts, Pa.</param>
/// <param name="IsClear">Whether the noise lets anybody tell.</param>
internal sealed record OwnSeries(SimulatedHold Hold, HoldTruthKind Kind, double Leak, double Constant, double Limit, double Counting, bool IsClear)
{
    public const double DecayLimit = 1000 * SimulatedGauge.Micron;

    // A source slower than this many holds is a steady rise to anybody.
    private const double SteadyFrom = 20;

    /// <summary>
    /// Draws hold number i of a seed: kinds in turn, holds of 5 to 120 min, rows each 1 to 60 s, levels of 100 to 500 micron, noise of 0.1 to
    /// 8 micron split into white and wander with a memory of 5 to 300 s. Rises are drawn from 1.3 to 25 times what counts, as a crew meets them (common
    /// practice, no source); the gas follows the temperature by less than 1 K. One source in twelve is slower than 20 holds and counts as a leak.
    /// </summary>
    public static OwnSeries Draw(int seed, int number)
    {
        var draws = HoldDraws.Of(seed, number);
        var kind = (HoldTruthKind)(number % 5);
        var length = 60 * draws.Pick(5.0, 10, 15, 20, 30, 45, 60, 120);
        var gauge = draws.Pick(SimulatedGauge.All);
        var level = draws.Uniform(100, 500) * SimulatedGauge.Micron;
        var noise = draws.LogUniform(0.1, 8) * SimulatedGauge.Micron;
        var share = draws.Pick(0, 0.5, 1.0);
        var times = length / SimulatedHold.JudgedAfter;
        var counting = Math.Max(5 * gauge.StepAt(level), 0.1 * (DecayLimit - level) * (times < 1 ? times : Math.Sqrt(times)));
        var rise = counting * draws.LogUniform(1.3, 25);
        var constant = draws.Chance(1.0 / 12) ? draws.LogUniform(SteadyFrom, 60) * length : draws.LogUniform(60, 1.2 * length);
        var slope = kind is HoldTruthKind.Leak or HoldTruthKind.LeakAndSource ? rise / length : 0;
        var size = kind is HoldTruthKind.Source ? rise : kind is HoldTruthKind.LeakAndSource ? counting * draws.LogUniform(1.3, 25) : 0;
        var step = size / (1 - Math.Exp(-length / constant));
        var kelvin = draws.Either();
        var gain = draws.Uniform(-0.1, 0.1);
        var drift = kind == HoldTruthKind.Drift ? Drift(draws, length, counting) : _ => 0;
        var hold = new SimulatedHold
        {
            Pressure = t => (level + slope * t + step * (1 - Math.Exp(-t / constant)) + drift(t)) * (1 + kelvin / 293.15 * t / length),
            Sensor = (_, p) => p / (1 + gain),
            PumpDown = 600,
            Length = length,
            Interval = draws.Pick(1.0, 2, 5, 10, 10, 30, 60),
            Gauge = gauge,
            White = noise * Math.Sqrt(1 - share),
            Wander = noise * Math.Sqrt(share),
            Memory = draws.LogUniform(5, 300),
        };
        // What is as good as steady is an inflow; the pressure keeps its source.
        var inflow = slope;
        if (kind == HoldTruthKind.Source && constant >= SteadyFrom * length)
            (kind, inflow) = (HoldTruthKind.Leak, step / constant);
        var family = kind switch
        {
            HoldTruthKind.Flat or HoldTruthKind.Drift => HoldFamily.Flat,
            HoldTruthKind.Leak => HoldFamily.Line,
            HoldTruthKind.Source => HoldFamily.Source,
            _ => constant >= SteadyFrom * length ? HoldFamily.Line : HoldFamily.Both,
        };
        if (kind == HoldTruthKind.LeakAndSource && family == HoldFamily.Line)
            (kind, inflow) = (HoldTruthKind.Leak, slope + step / constant);
        // Gas and gauge move by the temperature: below what counts, and no part of the question that the families ask.
        var asked = hold with { Pressure = t => level + inflow * t + (family is HoldFamily.Source or HoldFamily.Both ? step * (1 - Math.Exp(-t / constant)) : 0) };
        // What the first minute swallows and the gauge's gain takes off does not count.
        var seen = step * (Math.Exp(-HoldClarity.Skip(length) / constant) - Math.Exp(-length / constant));
        var counts = family is not (HoldFamily.Source or HoldFamily.Both) || seen >= 1.2 * counting;
        return new OwnSeries(
            hold, kind, inflow, family is HoldFamily.Source or HoldFamily.Both ? constant : double.NaN, DecayLimit, counting, counts && HoldClarity.IsClear(asked, family, counting));
    }

    /// <summary>Whether what is said is right. A drift is said rightly by "tight", and a fall also by naming it.</summary>
    public bool IsRight(HoldResult result) => Kind switch
    {
        HoldTruthKind.Flat => result.Conclusion == HoldConclusion.Held,
        HoldTruthKind.Leak => result.Conclusion == HoldConclusion.SteadyRise,
        HoldTruthKind.Source => result.Conclusion == HoldConclusion.Source,
        HoldTruthKind.LeakAndSource => result.Conclusion == HoldConclusion.SteadyRiseAndSource,
        _ => result.Conclusion == HoldConclusion.Held || result.Reason == CannotTellReason.Falling,
    };

    /// <summary>Whether a leak whose rise counts, the gauge's gain allowed for, is called tight.</summary>
    public bool IsCalledTight(HoldResult result) => Leak * Hold.Length > 1.1 * Counting && result.Conclusion == HoldConclusion.Held;

    /// <summary>Whether such a leak is called merely wet.</summary>
    public bool IsCalledWet(HoldResult result) => Leak * Hold.Length > 1.1 * Counting && result.Conclusion == HoldConclusion.Source;

    /// <summary>
    /// Whether a system without a leak is called leaking. A source is not where it is slower than the bound that the finding states, and nobody could tell.
    /// </summary>
    public bool IsCalledLeaking(HoldResult result) => Leak == 0 && HoldTold.NamesLeakFirst(result) && !(Kind == HoldTruthKind.Source && !IsClear && result.SourcesExcludedUpTo <= Constant);

    // Temperature of sorbed gas and of the sensor, linear, relaxing, ending where it began, or there and back: up to what counts downwards, half of
    // it upwards, because a steady rise from temperature is not to be told from a leak without a thermometer.
    private static Func<double, double> Drift(Draws draws, double length, double counting)
    {
        var size = counting * draws.Uniform(0.15, 1);
        var constant = draws.LogUniform(0.1, 1) * length;
        return draws.Whole(0, 4) switch
        {
            0 => t => -size * t / length,
            1 => t => -size * (1 - Math.Exp(-t / constant)),
            2 => t => 0.5 * size * Math.Sin(Math.PI * t / length),
            3 => t => 0.5 * size * Math.Sin(2 * Math.PI * t / length),
            _ => t => 0.4 * size * t / length,
        };
    }
}
