using System.Collections.Immutable;
using Commission.Records;

namespace Commission.Checks.Recording;

/// <summary>What a record says of its own making.</summary>
/// <param name="Program">Name and version of the program.</param>
/// <param name="AsOf">The moment the record speaks for, ISO 8601.</param>
/// <param name="Files">The input files with their hashes.</param>
/// <param name="Tree">The job file as read: key, canonical text, place.</param>
public sealed record RecordInputs(string Program, string AsOf, ImmutableArray<InputFile> Files, ImmutableArray<InputNode> Tree);
