namespace Commission.Checks.EvacuationAnalysis;

/// <summary>What set the pace of a pull-down.</summary>
public enum PullDownLimit
{
    /// <summary>Too little of the pull was logged to say.</summary>
    CannotTell,

    /// <summary>As fast as expected, and the pump itself takes the largest part of the pressure: a larger pump would help.</summary>
    Pump,

    /// <summary>As fast as expected, and a hose takes the largest part: a wider or shorter one would help.</summary>
    Hose,

    /// <summary>As fast as expected, and a valve core left in place takes the largest part.</summary>
    Core,

    /// <summary>As fast as expected, and another fitting takes the largest part.</summary>
    Fitting,

    /// <summary>The pressure lingered where water boils.</summary>
    BoilingWater,

    /// <summary>Fast at first, then held up at low pressure: inflow, outgassing, moisture from oil, or the pump's own lowest pressure.</summary>
    GasLoad,

    /// <summary>Slower than pump, hoses and volume explain at all pressures: a closed valve, a blocked core, a worn pump, or a larger volume.</summary>
    SlowThroughout,
}
