using System.Collections.Immutable;
using Commission.Jobs.Photos;
using Commission.Source;
using Commission.Source.Yaml;

namespace Commission.Jobs.Model;

/// <summary>A part of a job: a mapping of the job file, or a single value that stands for one. The parts, their keys and the words are made from the schema while the project is built.</summary>
public abstract record JobPart
{
    /// <summary>Where the part begins.</summary>
    public SourceLocation Origin { get; init; }

    /// <summary>What was written; a rule that misses a key asks here whether it was written and refused.</summary>
    internal SourceMapping? Written { get; init; }

    /// <summary>Whether a key is written, whatever became of its value.</summary>
    internal bool Says(string key) => Written?.Find(key) is not null;

    /// <summary>The parts it is made of.</summary>
    internal virtual IEnumerable<JobPart> Children() => [];
}

public sealed partial record Photo
{
    /// <summary>What the file shows of itself, once it was read; not a key.</summary>
    public PhotoFacts? Picture { get; init; }
}

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

    /// <summary>1, or how many readings of the file one stands for: of a log of more than a quarter of a million some are left out evenly.</summary>
    public int Every { get; init; } = 1;

    /// <summary>The smallest difference between two different readings in the file's own digits, SI; the resolution as far as the file shows it.</summary>
    public required double Step { get; init; }
}
