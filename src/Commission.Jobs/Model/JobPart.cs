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
