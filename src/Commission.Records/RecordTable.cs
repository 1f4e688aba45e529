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

/// <summary>A column of a table.</summary>
/// <param name="Label">Heading.</param>
/// <param name="Unit">Unit of the numbers below; empty for none.</param>
/// <param name="Align">How the cells stand.</param>
public sealed record TableColumn(string Label, string Unit = "", ColumnAlign Align = ColumnAlign.Left);

/// <summary>How the cells of a column stand.</summary>
public enum ColumnAlign
{
    /// <summary>Text from the left.</summary>
    Left,

    /// <summary>Against the right edge.</summary>
    Right,

    /// <summary>In the middle.</summary>
    Center,

    /// <summary>Numbers one below the other on the decimal point.</summary>
    Decimal,
}
