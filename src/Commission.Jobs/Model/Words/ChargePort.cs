namespace Commission.Jobs.Model.Words;

/// <summary>Which side of the circuit refrigerant went into.</summary>
public enum ChargePort
{
    /// <summary>The liquid side.</summary>
    LiquidSide,

    /// <summary>The vapor side.</summary>
    VaporSide,

    /// <summary>Both sides.</summary>
    Both,
}
