using System.Diagnostics.CodeAnalysis;
using Commission.Measurement.Quantities;

namespace Commission.Checks.Tables;

/// <summary>What a two-temperature table says: a target with its slopes, or why it says nothing.</summary>
internal sealed record TableTarget
{
    private TableTarget()
    {
    }

    /// <summary>Whether the table gives a target here.</summary>
    [MemberNotNullWhen(false, nameof(Reason))]
    public bool HasValue => Reason is null;

    /// <summary>The target; meaningless without one.</summary>
    public TemperatureDifference Value { get; private init; }

    /// <summary>Change of the target with the dry-bulb temperature of the rows, K per K.</summary>
    public double PerDryBulb { get; private init; }

    /// <summary>Change of the target with the return wet bulb of the columns, K per K.</summary>
    public double PerWetBulb { get; private init; }

    /// <summary>Half of the last printed digit: a rectangular bound on the target that the table's own rounding leaves.</summary>
    public TemperatureDifference Rounding { get; private init; }

    /// <summary>Why there is no target and what to do, as sentences; null when there is one.</summary>
    public string? Reason { get; private init; }

    /// <summary>A target.</summary>
    /// <param name="reading">What the grid said, °F.</param>
    /// <returns>The target with its slopes.</returns>
    public static TableTarget Of(WholeDegreeGrid.Reading reading) => new()
    {
        Value = TemperatureDifference.FromFahrenheitDegrees(reading.Value),
        PerDryBulb = reading.AlongRows,
        PerWetBulb = reading.AlongColumns,
        Rounding = TemperatureDifference.FromFahrenheitDegrees(0.05),
    };

    /// <summary>No target.</summary>
    /// <param name="reason">Why, and what to do.</param>
    /// <returns>An answer without a value.</returns>
    public static TableTarget None(string reason) => new() { Reason = reason };
}
