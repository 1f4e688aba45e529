namespace Commission.Measurement.Thermocouples;

/// <summary>How far new type K wire may be from the reference function. Source: printed tolerance tables of IEC 60584-1 and ASTM E230.</summary>
public static class TypeKTolerance
{
    /// <summary>The proportional part of the class: what is left, as a fraction of the distance from a point where the sensor was checked.</summary>
    /// <param name="toleranceClass">The class.</param>
    public static double Slope(ToleranceClass toleranceClass) => toleranceClass switch
    {
        ToleranceClass.Iec1 or ToleranceClass.AstmSpecial => 0.004,
        ToleranceClass.Iec3 => 0.015,
        _ => 0.0075,
    };
}

/// <summary>Tolerance classes of new type K wire.</summary>
public enum ToleranceClass
{
    /// <summary>IEC 60584-1 class 1.</summary>
    Iec1,

    /// <summary>IEC 60584-1 class 2.</summary>
    Iec2,

    /// <summary>IEC 60584-1 class 3, for low temperatures.</summary>
    Iec3,

    /// <summary>ASTM E230 special.</summary>
    AstmSpecial,

    /// <summary>ASTM E230 standard.</summary>
    AstmStandard,
}
