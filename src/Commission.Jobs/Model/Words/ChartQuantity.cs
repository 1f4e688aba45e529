namespace Commission.Jobs.Model.Words;

/// <summary>What a maker's chart gives.</summary>
public enum ChartQuantity
{
    /// <summary>Superheat.</summary>
    Superheat,

    /// <summary>Subcooling.</summary>
    Subcooling,

    /// <summary>Vapor pressure.</summary>
    VaporPressure,

    /// <summary>Liquid pressure.</summary>
    LiquidPressure,

    /// <summary>Discharge pressure.</summary>
    DischargePressure,

    /// <summary>Discharge line temperature.</summary>
    DischargeLine,

    /// <summary>Vapor line temperature.</summary>
    VaporLine,

    /// <summary>Liquid line temperature.</summary>
    LiquidLine,

    /// <summary>Return minus supply air.</summary>
    TemperatureSplit,
}
