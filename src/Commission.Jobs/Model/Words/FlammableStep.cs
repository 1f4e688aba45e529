namespace Commission.Jobs.Model.Words;

/// <summary>A step before opening a circuit that holds flammable refrigerant.</summary>
public enum FlammableStep
{
    /// <summary>Refrigerant recovered.</summary>
    Recovered,

    /// <summary>Purged with dry nitrogen.</summary>
    Purged,

    /// <summary>Evacuated.</summary>
    Evacuated,

    /// <summary>Purged with dry nitrogen a second time.</summary>
    PurgedAgain,

    /// <summary>Opened or brazed.</summary>
    Opened,
}
