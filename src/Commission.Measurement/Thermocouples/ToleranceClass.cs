namespace Commission.Measurement.Thermocouples;

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
