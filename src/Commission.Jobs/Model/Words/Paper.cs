namespace Commission.Jobs.Model.Words;

/// <summary>The size of the record's pages.</summary>
public enum Paper
{
    /// <summary>US Letter.</summary>
    Letter,

    /// <summary>ISO A4.</summary>
    A4,
}
