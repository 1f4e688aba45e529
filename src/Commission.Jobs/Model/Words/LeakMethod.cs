namespace Commission.Jobs.Model.Words;

/// <summary>How a leak was looked for.</summary>
public enum LeakMethod
{
    /// <summary>Bubble solution.</summary>
    BubbleSolution,

    /// <summary>An electronic detector for the refrigerant.</summary>
    Electronic,

    /// <summary>An electronic detector for a tracer in nitrogen.</summary>
    ElectronicWithTracer,

    /// <summary>An ultrasonic detector.</summary>
    Ultrasonic,

    /// <summary>Pressure watched over time.</summary>
    PressureHold,

    /// <summary>From readings, without a detector.</summary>
    Indirect,
}
