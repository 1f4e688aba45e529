namespace Commission.Jobs.Model.Words;

/// <summary>How a device comes back.</summary>
public enum ResetKind
{
    /// <summary>By hand.</summary>
    Manual,

    /// <summary>By itself.</summary>
    Automatic,
}
