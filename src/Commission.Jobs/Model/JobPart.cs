using Commission.Source;

namespace Commission.Jobs.Model;

/// <summary>A part of a job: a mapping of the job file, or a single value that stands for one.</summary>
public abstract record JobPart
{
    /// <summary>Where the part begins.</summary>
    public SourceLocation Origin { get; init; }
}
