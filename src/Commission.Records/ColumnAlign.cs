namespace Commission.Records;

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
