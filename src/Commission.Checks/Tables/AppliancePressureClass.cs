namespace Commission.Checks.Tables;

/// <summary>Pressure class of an appliance by its refrigerant, 40 CFR 82.152 (from memory).</summary>
internal enum AppliancePressureClass
{
    /// <summary>Above 355 psia at 104 °F, or critical below 104 °F.</summary>
    VeryHigh,

    /// <summary>Above 170 and up to 355 psia at 104 °F.</summary>
    High,

    /// <summary>Above 45 and up to 170 psia at 104 °F.</summary>
    Medium,

    /// <summary>Up to 45 psia at 104 °F.</summary>
    Low,
}
