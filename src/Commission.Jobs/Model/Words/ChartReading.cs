namespace Commission.Jobs.Model.Words;

/// <summary>What a maker's chart is entered with.</summary>
public enum ChartReading
{
    /// <summary>Outdoor dry bulb.</summary>
    OutdoorDryBulb,

    /// <summary>Outdoor wet bulb.</summary>
    OutdoorWetBulb,

    /// <summary>Return dry bulb.</summary>
    ReturnDryBulb,

    /// <summary>Return wet bulb.</summary>
    ReturnWetBulb,

    /// <summary>Liquid pressure.</summary>
    LiquidPressure,

    /// <summary>Vapor pressure.</summary>
    VaporPressure,

    /// <summary>Temperature of the cold room.</summary>
    BoxTemperature,
}
