using System.Collections.Immutable;

namespace Commission.Records;

/// <summary>A table of readings or facts, with the text of every cell as printed.</summary>
public sealed record RecordTable
{
    /// <summary>Identifier within the record.</summary>
    public required string Id { get; init; }

    /// <summary>Phase it belongs to.</summary>
    public required string Phase { get; init; }

    /// <summary>Title.</summary>
    public required string Title { get; init; }

    /// <summary>Remark below the table; empty for none.</summary>
    public string Note { get; init; } = "";

    /// <summary>Columns in order.</summary>
    public ImmutableArray<TableColumn> Columns { get => field.IsDefault ? [] : field; init; }

    /// <summary>Rows, each with one text a column; an empty text is an empty cell.</summary>
    public ImmutableArray<ImmutableArray<string>> Rows { get => field.IsDefault ? [] : field; init; }
}
