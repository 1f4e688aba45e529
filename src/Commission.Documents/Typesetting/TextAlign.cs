namespace Commission.Documents.Typesetting;

/// <summary>How the text of a cell stands.</summary>
internal enum TextAlign
{
    /// <summary>From the left.</summary>
    Left,

    /// <summary>Against the right edge.</summary>
    Right,

    /// <summary>In the middle.</summary>
    Center,

    /// <summary>On the decimal point of its column.</summary>
    Decimal,
}
