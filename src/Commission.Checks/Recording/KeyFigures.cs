using System.Collections.Frozen;
using System.Collections.Immutable;
using Commission.Records.Findings;

namespace Commission.Checks.Recording;

/// <summary>Which figures answer for the work before any other, whether they hold or not: what a crew, an owner and an inspector ask for first. Those of the running circuit stand with its diagnosis.</summary>
internal static class KeyFigures
{
    private const string WaterCapacity = "functional.water-capacity";

    private static readonly FrozenSet<string> Checks = FrozenSet.ToFrozenSet(
        [
            "pressure-test.hold", "evacuation.level", "evacuation.hold", "charge.by-weight", "safety.flammable-charge", "air.heat-rise", "air.gas-heat", "air.outside-air", "safety.combustion",
            "functional.water", WaterCapacity,
        ],
        StringComparer.Ordinal);

    /// <summary>Their numbers, in the order of the record. A figure that nothing is asked of is none, but for what the water carries.</summary>
    /// <param name="findings">The numbered findings.</param>
    public static ImmutableArray<int> Of(IReadOnlyList<Finding> findings) =>
        [.. findings.Where(f => Checks.Contains(f.Check) && f.Measured is not null && (f.Limits.Length > 0 || f.Check == WaterCapacity)).Select(f => f.Number)];
}
