namespace Commission.Jobs.Model.Words;

/// <summary>What stood ready against a fire.</summary>
public enum Extinguisher
{
    /// <summary>Carbon dioxide.</summary>
    CO2,

    /// <summary>Dry powder.</summary>
    DryPowder,

    /// <summary>Both.</summary>
    Both,

    /// <summary>Nothing.</summary>
    None,
}
