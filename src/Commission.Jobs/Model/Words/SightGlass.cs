namespace Commission.Jobs.Model.Words;

/// <summary>What the sight glass showed.</summary>
public enum SightGlass
{
    /// <summary>Clear liquid.</summary>
    Clear,

    /// <summary>Bubbles.</summary>
    Bubbles,

    /// <summary>Empty.</summary>
    Empty,

    /// <summary>There is none.</summary>
    None,
}
