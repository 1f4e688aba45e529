using System.Collections.Immutable;

namespace Commission.Checks.Sheets;

/// <summary>A page of text for a terminal: titled parts, each of lines or of a table. Holds finished text only.</summary>
/// <param name="Title">The title.</param>
/// <param name="Parts">The parts in order.</param>
public sealed record Sheet(string Title, ImmutableArray<SheetPart> Parts);
