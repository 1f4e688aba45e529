namespace Commission.Jobs.Model.Words;

/// <summary>What a test of oil or refrigerant showed.</summary>
public enum AcidResult
{
    /// <summary>No acid, no moisture.</summary>
    Good,

    /// <summary>Some.</summary>
    Marginal,

    /// <summary>Too much.</summary>
    Bad,

    /// <summary>Nobody tested.</summary>
    NotTested,
}
