using Commission.Jobs.Model.Words;

namespace Commission.Jobs.Model;

/// <summary>A CSV log beside the job file. What is not stated is found out from the file.</summary>
public sealed record LogFile : JobPart
{
    /// <summary>The file.</summary>
    public required Given<string> File { get; init; }

    /// <summary>Heading of the column with the reading.</summary>
    public Given<string>? ValueColumn { get; init; }

    /// <summary>Heading of the column with the time.</summary>
    public Given<string>? TimeColumn { get; init; }

    /// <summary>Unit of the readings, when the heading does not say it.</summary>
    public Given<string>? Unit { get; init; }

    /// <summary>What separates the cells.</summary>
    public Given<Delimiter>? Delimiter { get; init; }

    /// <summary>The decimal mark.</summary>
    public Given<DecimalMark>? Decimal { get; init; }

    /// <summary>How times are written.</summary>
    public Given<ClockFormat>? TimeFormat { get; init; }

    /// <summary>When the log begins, when it has no clock.</summary>
    public Given<JobTime>? Started { get; init; }

    /// <summary>The number the gauge writes for "above my range".</summary>
    public Given<double>? OverRange { get; init; }

    /// <summary>What the file holds, once it was read; not a key.</summary>
    public ReadSeries? Data { get; init; }
}
