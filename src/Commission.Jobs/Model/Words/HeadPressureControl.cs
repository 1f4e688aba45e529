namespace Commission.Jobs.Model.Words;

/// <summary>How the head pressure is kept up in the cold.</summary>
public enum HeadPressureControl
{
    /// <summary>It is not.</summary>
    None,

    /// <summary>Fans are switched or slowed.</summary>
    FanCycling,

    /// <summary>Valves flood the condenser.</summary>
    Flooding,

    /// <summary>It floats with the weather above a floor.</summary>
    Floating,
}
