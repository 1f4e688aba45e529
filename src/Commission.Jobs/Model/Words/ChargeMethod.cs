namespace Commission.Jobs.Model.Words;

/// <summary>How the charge was set.</summary>
public enum ChargeMethod
{
    /// <summary>By weight.</summary>
    Weight,

    /// <summary>By superheat.</summary>
    Superheat,

    /// <summary>By subcooling.</summary>
    Subcooling,

    /// <summary>By the maker's chart.</summary>
    MakersChart,

    /// <summary>By a clear sight glass and the receiver's level.</summary>
    SightGlass,
}
