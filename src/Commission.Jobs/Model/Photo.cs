using Commission.Jobs.Model.Words;

namespace Commission.Jobs.Model;

/// <summary>A photo beside the job file.</summary>
public sealed record Photo : JobPart
{
    /// <summary>The file.</summary>
    public required Given<string> File { get; init; }

    /// <summary>What it shows.</summary>
    public required Given<PhotoSubject> Shows { get; init; }

    /// <summary>Which one.</summary>
    public Given<string>? Of { get; init; }

    /// <summary>When it was taken.</summary>
    public Given<JobTime>? At { get; init; }

    /// <summary>Anything worth telling.</summary>
    public Given<string>? Note { get; init; }
}
