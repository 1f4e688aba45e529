namespace Commission.Jobs.Model.Words;

/// <summary>Where the liquid pressure was read.</summary>
public enum LiquidPressurePlace
{
    /// <summary>At the liquid service valve.</summary>
    LiquidServiceValve,

    /// <summary>At a port before the condenser.</summary>
    DischargePort,

    /// <summary>At the receiver.</summary>
    Receiver,
}
