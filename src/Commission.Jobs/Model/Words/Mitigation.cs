namespace Commission.Jobs.Model.Words;

/// <summary>What limits a leak's effect.</summary>
public enum Mitigation
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>A leak sensor that starts the fan.</summary>
    LeakSensorWithFan,

    /// <summary>Valves that shut when refrigerant is sensed.</summary>
    ShutOffValves,

    /// <summary>A fan that always runs.</summary>
    ContinuousFan,
}
