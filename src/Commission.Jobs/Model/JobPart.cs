using Commission.Source;

namespace Commission.Jobs.Model;

/// <summary>A part of a job: a mapping of the job file, or a single value that stands for one. The parts, their keys and the words are made from the schema while the project is built.</summary>
public abstract record JobPart
{
    /// <summary>Where the part begins.</summary>
    public SourceLocation Origin { get; init; }

    /// <summary>The parts it is made of.</summary>
    internal virtual IEnumerable<JobPart> Children() => [];
}
