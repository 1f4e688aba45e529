namespace Commission.Jobs.Model.Words;

/// <summary>What the cold is for.</summary>
public enum Application
{
    /// <summary>Comfort cooling or heating.</summary>
    AC,

    /// <summary>Flower or preparation rooms, wine.</summary>
    HighTemperature,

    /// <summary>Coolers.</summary>
    MediumTemperature,

    /// <summary>Freezers.</summary>
    LowTemperature,

    /// <summary>Ice making.</summary>
    Ice,
}
