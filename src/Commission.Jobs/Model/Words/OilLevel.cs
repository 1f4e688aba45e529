namespace Commission.Jobs.Model.Words;

/// <summary>Where the oil stood in the glass.</summary>
public enum OilLevel
{
    /// <summary>Within the marks.</summary>
    InTheGlass,

    /// <summary>Below the marks.</summary>
    Low,

    /// <summary>Above the marks.</summary>
    High,

    /// <summary>There is no glass.</summary>
    NoGlass,
}
