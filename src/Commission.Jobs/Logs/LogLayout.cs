using Commission.Measurement.Units;

namespace Commission.Jobs.Logs;

/// <summary>How a log is laid out: stated in the job file, or found from the log itself.</summary>
internal sealed record LogLayout
{
    public required char Delimiter { get; init; }

    public required bool DecimalComma { get; init; }

    /// <summary>Line of the first row with readings.</summary>
    public required int FirstLine { get; init; }

    /// <summary>Column with the date when date and time of day are in two columns.</summary>
    public int? DateColumn { get; init; }

    public required int TimeColumn { get; init; }

    public required int ValueColumn { get; init; }

    public required string TimeHeading { get; init; }

    public required string ValueHeading { get; init; }

    public required Unit Unit { get; init; }

    public required LogClock Clock { get; init; }
}
