using System.Collections.Immutable;

namespace Commission.Checks.Sheets;

/// <summary>A page of text for a terminal: titled parts, each of lines or of a table. Holds finished text only.</summary>
/// <param name="Title">The title.</param>
/// <param name="Parts">The parts in order.</param>
public sealed record Sheet(string Title, ImmutableArray<SheetPart> Parts);

/// <summary>A part of a sheet: lines of text, or a table with a head.</summary>
/// <param name="Title">Its title; empty for none.</param>
/// <param name="Head">The head of its table; empty when it has only lines.</param>
/// <param name="Rows">Rows of the table, or lines of one cell.</param>
public sealed record SheetPart(string Title, ImmutableArray<string> Head, ImmutableArray<ImmutableArray<string>> Rows)
{
    /// <summary>A part of lines.</summary>
    /// <param name="title">Its title.</param>
    /// <param name="lines">Its lines; null ones are left out.</param>
    public static SheetPart Lines(string title, params IEnumerable<string?> lines) =>
        new(title, [], [.. lines.OfType<string>().Select(l => ImmutableArray.Create(l))]);
}
