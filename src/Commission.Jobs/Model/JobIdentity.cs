using Commission.Jobs.Model.Words;

namespace Commission.Jobs.Model;

/// <summary>Which job this is, where, when and who.</summary>
public sealed record JobIdentity : JobPart
{
    /// <summary>The job's number or name; the record's files are named after it.</summary>
    public required Given<string> Id { get; init; }

    /// <summary>What was done.</summary>
    public required Given<WorkKind> Work { get; init; }

    /// <summary>The day the work began; clock times belong to it.</summary>
    public required Given<DateOnly> Date { get; init; }

    /// <summary>The time zone, by name or as an offset.</summary>
    public Given<string>? Zone { get; init; }

    /// <summary>Where the system stands.</summary>
    public required Site Site { get; init; }

    /// <summary>Who did the work and for whom.</summary>
    public People? People { get; init; }

    /// <summary>Only in a corrected job file: what it replaces and why.</summary>
    public Revision? Revision { get; init; }

    /// <summary>The size of the record's pages; without it Letter for us, A4 for si.</summary>
    public Given<Paper>? Paper { get; init; }

    /// <summary>Anything worth telling.</summary>
    public Given<string>? Notes { get; init; }
}
