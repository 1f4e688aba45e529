namespace Commission.Jobs.Model.Words;

/// <summary>What a photo shows.</summary>
public enum PhotoSubject
{
    /// <summary>The outdoor unit's nameplate.</summary>
    OutdoorNameplate,

    /// <summary>The indoor unit's nameplate.</summary>
    IndoorNameplate,

    /// <summary>The vacuum gauge when the circuit was isolated.</summary>
    GaugeAtIsolation,

    /// <summary>The vacuum gauge at the end of the hold.</summary>
    GaugeAtEnd,

    /// <summary>The pressure gauge at the start of the hold.</summary>
    PressureTestStart,

    /// <summary>The pressure gauge at the end of the hold.</summary>
    PressureTestEnd,

    /// <summary>The scale before charging.</summary>
    ScaleBefore,

    /// <summary>The scale after charging.</summary>
    ScaleAfter,

    /// <summary>The joints.</summary>
    Joints,

    /// <summary>Wiring and breaker.</summary>
    Wiring,

    /// <summary>The label on the unit.</summary>
    Label,

    /// <summary>The leak sensor.</summary>
    LeakSensor,

    /// <summary>A refrigerant cylinder's label.</summary>
    RefrigerantCylinder,

    /// <summary>Damage found.</summary>
    Damage,

    /// <summary>Something else.</summary>
    Other,
}
