namespace Commission.Jobs.Model.Words;

/// <summary>What happened to the valve cores before evacuation.</summary>
public enum ValveCores
{
    /// <summary>Taken out with a core tool.</summary>
    Removed,

    /// <summary>Left in.</summary>
    InPlace,

    /// <summary>There are none.</summary>
    None,
}
