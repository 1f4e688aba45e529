namespace Commission.Jobs.Model.Words;

/// <summary>What separates the cells of a log.</summary>
public enum Delimiter
{
    /// <summary>A comma.</summary>
    Comma,

    /// <summary>A semicolon.</summary>
    Semicolon,

    /// <summary>A tab.</summary>
    Tab,
}
