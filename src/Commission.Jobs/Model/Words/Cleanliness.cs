namespace Commission.Jobs.Model.Words;

/// <summary>How a filter or coil looked.</summary>
public enum Cleanliness
{
    /// <summary>Clean.</summary>
    Clean,

    /// <summary>New.</summary>
    New,

    /// <summary>Dirty.</summary>
    Dirty,

    /// <summary>There is none.</summary>
    None,

    /// <summary>Nobody looked.</summary>
    NotSeen,
}
