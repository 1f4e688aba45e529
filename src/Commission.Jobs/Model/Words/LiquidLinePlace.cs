namespace Commission.Jobs.Model.Words;

/// <summary>Where the liquid line's temperature was read.</summary>
public enum LiquidLinePlace
{
    /// <summary>At the liquid service valve.</summary>
    LiquidServiceValve,

    /// <summary>At the condenser.</summary>
    CondenserOutlet,

    /// <summary>After the drier.</summary>
    AfterDrier,

    /// <summary>Before the metering device.</summary>
    MeteringDevice,
}
