using Commission.Checks.EvacuationAnalysis;
using Commission.Checks.Findings;
using Commission.Measurement.Units;

namespace Commission.Checks.Evacuation;

/// <summary>Vacuum levels, rises and rates in words: at least two digits that mean something, whatever the unit.</summary>
internal static class VacuumText
{
    private const int MostDecimals = 4;

    /// <summary>A level or a rise, with its unit.</summary>
    /// <param name="present">How the job prints numbers.</param>
    /// <param name="pascals">Pa.</param>
    public static string Level(Presentation present, double pascals) => Text(present, pascals, DisplayKind.Vacuum);

    /// <summary>A rate of rise, with its unit.</summary>
    /// <param name="present">How the job prints numbers.</param>
    /// <param name="pascalsPerSecond">Pa/s.</param>
    public static string Rate(Presentation present, double pascalsPerSecond) => Text(present, pascalsPerSecond, DisplayKind.VacuumRise);

    /// <summary>What a hold shows, in the job's units.</summary>
    /// <param name="present">How the job prints numbers.</param>
    public static HoldWording Wording(Presentation present) => new(p => Level(present, p), r => Rate(present, r), EvacuationClock.Span);

    private static string Text(Presentation present, double si, DisplayKind kind)
    {
        var size = Math.Abs(present.Value(si, kind));
        var decimals = size > 0 ? Math.Clamp(1 - (int)Math.Floor(Math.Log10(size)), 0, MostDecimals) : 0;
        return present.Text(si, kind, Math.Max(decimals, size >= 10 ? 0 : Math.Min(1, present.Units[kind].Decimals)));
    }
}
