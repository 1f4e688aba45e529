namespace Commission.Documents.Typesetting;

/// <summary>How a box looks.</summary>
internal enum BoxKind
{
    /// <summary>Tinted, with a warning triangle.</summary>
    Caution,

    /// <summary>Light grey, with a bar in the accent.</summary>
    Outcome,

    /// <summary>Light grey.</summary>
    Note,
}
