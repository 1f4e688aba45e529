namespace Commission.Jobs.Model.Words;

/// <summary>What a pressure gauge measures from.</summary>
public enum GaugeReference
{
    /// <summary>The air around it.</summary>
    Vented,

    /// <summary>A chamber sealed in the factory.</summary>
    Sealed,

    /// <summary>A vacuum.</summary>
    Absolute,
}
