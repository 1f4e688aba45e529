using System.Collections.Immutable;

namespace Commission.Jobs.Model;

public sealed partial record LogFile
{
    /// <summary>What the file holds, once it was read; not a key.</summary>
    public ReadSeries? Data { get; init; }
}

/// <summary>A long series of readings, as read from a log. All lists have the same length and the times rise.</summary>
public sealed record ReadSeries
{
    /// <summary>The log's file.</summary>
    public required string File { get; init; }

    /// <summary>Seconds since the first row, or as the log counts them.</summary>
    public required ImmutableArray<double> Times { get; init; }

    /// <summary>Readings in SI (Pa or K); a gauge pressure as written. NaN where the gauge showed nothing, and where it showed more than its range.</summary>
    public required ImmutableArray<double> Values { get; init; }

    /// <summary>Whether a reading was above the gauge's range: it is at least that much, not missing.</summary>
    public required ImmutableArray<bool> OverRange { get; init; }

    /// <summary>Rows of the file, counted from 1 with the header.</summary>
    public required ImmutableArray<int> Rows { get; init; }

    /// <summary>The clock at time zero, when the log has one or the job says when it began.</summary>
    public DateTimeOffset? Start { get; init; }

    /// <summary>The unit the readings were written in.</summary>
    public required string Unit { get; init; }

    /// <summary>Whether neither the job nor the heading says the unit, so that the usual one of the job's units was taken.</summary>
    public bool UnitIsGuessed { get; init; }

    /// <summary>Heading of the column that was read.</summary>
    public required string Column { get; init; }

    /// <summary>The smallest difference between two different readings in the file's own digits, SI; the resolution as far as the file shows it.</summary>
    public required double Step { get; init; }
}
