namespace Commission.Jobs.Model.Words;

/// <summary>What separates a number's whole part from its fraction.</summary>
public enum DecimalMark
{
    /// <summary>A point.</summary>
    Point,

    /// <summary>A comma.</summary>
    Comma,
}
