using Commission.Checks.VacuumAnalysis;

namespace Commission.Checks.Tests.VacuumAnalysis;

internal static class Coverage
{
    /// <summary>True when the interval holds the value that the simulation was made with, ends included.</summary>
    public static bool Covers(this Interval interval, double truth) => truth >= interval.Low && truth <= interval.High;
}
