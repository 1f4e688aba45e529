using Commission.Checks.Tests.Coverage;
using static Commission.Checks.Tests.VacuumAnalysis.Holds.HoldClaim;

namespace Commission.Checks.Tests.VacuumAnalysis.Holds;

/// <summary>All kinds, and what they are made of. Every size is one that crews report (from memory); none is a limit case.</summary>
internal static class FooledKinds
{
    public static readonly FooledKind[] All = [.. FooledByPump.Kinds, .. FooledByGauge.Kinds, .. FooledByNature.Kinds, .. FooledByLogger.Kinds];

    /// <summary>Everything that calls a hold good.</summary>
    public static readonly HoldClaim[] Good = [Held, Wet, Passed, BoundTooLow];

    /// <summary>Everything that calls a leak tight or merely wet. A small one may keep the decay limit, and "held" may be said of it with a bound that holds it.</summary>
    public static readonly HoldClaim[] Tight = [Wet, BoundTooLow];

    /// <summary>Everything concluded from a log that shows nothing.</summary>
    public static readonly HoldClaim[] Anything = [Held, Steady, Wet, Both, Passed, BoundTooLow];

    /// <summary>An ordinary hold of 15 to 30 min with the noise of a good gauge.</summary>
    /// <param name="draws">The draws.</param>
    /// <param name="rise">Rise in micron at a time after isolation, s; it is given the length of the hold, too.</param>
    /// <param name="length">Length, s; drawn where null.</param>
    public static SimulatedHold Hold(Draws draws, Func<double, double, double> rise, double? length = null)
    {
        var level = draws.Uniform(180, 420);
        var whole = length ?? 60 * draws.Pick(15.0, 20, 30);
        return new SimulatedHold
        {
            Pressure = t => (level + rise(t, whole)) * SimulatedGauge.Micron,
            Length = whole,
            PumpDown = 60 * draws.Whole(20, 40),
            Interval = draws.Pick(1.0, 2, 5, 10),
            White = draws.Uniform(0.3, 1.5) * SimulatedGauge.Micron,
            Wander = draws.Uniform(0, 0.8) * SimulatedGauge.Micron,
            Memory = draws.Uniform(5, 40),
        };
    }

    /// <summary>A rise that levels off, as a share of 1.</summary>
    public static double Settled(double t, double constant) => t <= 0 ? 0 : 1 - Math.Exp(-t / constant);

    /// <summary>Time past a moment, s; 0 before.</summary>
    public static double Past(double t, double moment) => Math.Max(0, t - moment);

    /// <summary>Micron a minute as Pa/s.</summary>
    public static double Rate(double micronPerMinute) => micronPerMinute * SimulatedGauge.Micron / 60;
}
