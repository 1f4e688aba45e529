namespace Commission.Jobs.Model.Words;

/// <summary>Where an indoor unit stands.</summary>
public enum UnitPlace
{
    /// <summary>Under the roof.</summary>
    Attic,

    /// <summary>Below ground.</summary>
    Basement,

    /// <summary>In a closet.</summary>
    Closet,

    /// <summary>In or at a ceiling.</summary>
    Ceiling,

    /// <summary>In the room it serves.</summary>
    Room,

    /// <summary>Under the floor.</summary>
    CrawlSpace,

    /// <summary>In a garage.</summary>
    Garage,

    /// <summary>In a machine room.</summary>
    MachineRoom,

    /// <summary>On the roof.</summary>
    Roof,

    /// <summary>Somewhere else.</summary>
    Other,
}
