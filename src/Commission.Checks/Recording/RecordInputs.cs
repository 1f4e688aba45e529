using System.Collections.Immutable;
using Commission.Records;
using Commission.Source;

namespace Commission.Checks.Recording;

/// <summary>What a record says of its own making.</summary>
/// <param name="Program">Name and version of the program.</param>
/// <param name="AsOf">The moment the record speaks for, ISO 8601.</param>
/// <param name="Files">The input files with their hashes.</param>
/// <param name="Tree">The job file as read: key, canonical text, place.</param>
public sealed record RecordInputs(string Program, string AsOf, ImmutableArray<InputFile> Files, ImmutableArray<InputNode> Tree)
{
    /// <summary>Where a place of the job lies as the record prints it: the job file by its own name, however the user reached it, so that the same job gives the same record from any folder.</summary>
    /// <param name="at">The place as read.</param>
    /// <param name="job">The job file as the user named it.</param>
    public SourceLocation Place(SourceLocation at, string job) =>
        Files.Length > 0 && string.Equals(at.File, job, StringComparison.Ordinal) ? at with { File = Files[0].Name } : at;
}
