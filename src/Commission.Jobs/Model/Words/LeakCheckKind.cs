namespace Commission.Jobs.Model.Words;

/// <summary>How a leak check was made.</summary>
public enum LeakCheckKind
{
    /// <summary>With a detector at the joints.</summary>
    Direct,

    /// <summary>From readings.</summary>
    Indirect,
}
