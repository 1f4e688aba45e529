using System.Collections.Immutable;
using Commission.Measurement.Uncertainty;
using Commission.Records.Findings;

namespace Commission.Checks.Readings;

/// <summary>
/// A reading after its corrections, with the root causes that make it doubtful. Pressures are absolute, in Pa; everything
/// else is in its SI unit.
/// </summary>
public sealed record CorrectedReading
{
    /// <summary>What was read, with its time where it has one: <c>vapor line, 11:35</c>.</summary>
    public required string Name { get; init; }

    /// <summary>The value after every correction.</summary>
    public required Uncertain Value { get; init; }

    /// <summary>The value after zero offset or ice-point residual alone, in the same unit as <see cref="Value"/>.</summary>
    public required double AfterZero { get; init; }

    /// <summary>The reading and whatever else of the job it rests on: field checks, the barometer, the ambient temperature.</summary>
    public required ImmutableArray<ReadingUse> Uses { get; init; }

    /// <summary>The corrections, as steps of a trace; empty when none was made.</summary>
    public ImmutableArray<TraceStep> Steps { get; init; } = [];

    /// <summary>The instrument; null when the job names none for this reading.</summary>
    public string? Instrument { get; init; }

    /// <summary>Whether the instrument's accuracy is known, from its statement, its class or the reading itself.</summary>
    public required bool AccuracyKnown { get; init; }
}
