using Commission.Checks.Kernel;
using Commission.Checks.Wording;
using Commission.Measurement.Quantities;
using Commission.Messages;

namespace Commission.Checks.Formulas;

/// <summary>
/// How deep a circuit must be pulled before it is opened or scrapped: 40 CFR 82.156, table 1 (published). Levels are stated as depth
/// below a standard atmosphere of 29.92 inHg, so they are absolute pressures wherever the site is.
/// </summary>
internal static class RecoveryLevels
{
    /// <summary>The document, as the record cites it.</summary>
    public const string Source = "40 CFR 82.156, table 1";

    /// <summary>How sure the levels are.</summary>
    public const string Mark = "published";

    /// <summary>Where the pressure classes come from.</summary>
    public static Message ClassSource => Cited.FromMemory("40 CFR 82.152");

    /// <summary>Pressure class by the refrigerant's saturation.</summary>
    /// <param name="liquidSaturationAt104Fahrenheit">Liquid-phase (bubble) saturation pressure at 104 °F (40 °C), Pa; null when critical below that.</param>
    /// <returns>The class.</returns>
    public static AppliancePressureClass ClassOf(double? liquidSaturationAt104Fahrenheit) => (liquidSaturationAt104Fahrenheit / ConversionFactors.Psi) switch
    {
        null or > 355 => AppliancePressureClass.VeryHigh,
        > 170 => AppliancePressureClass.High,
        > 45 => AppliancePressureClass.Medium,
        _ => AppliancePressureClass.Low,
    };

    /// <summary>The pressure to reach and hold.</summary>
    /// <param name="pressureClass">Class of the appliance.</param>
    /// <param name="fullCharge">Normal full charge of the circuit.</param>
    /// <param name="machineBuiltBefore15November1993">Whether the recovery machine is older than 15 November 1993.</param>
    /// <returns>Absolute pressure.</returns>
    public static Pressure Required(AppliancePressureClass pressureClass, Mass fullCharge, bool machineBuiltBefore15November1993)
    {
        if (pressureClass == AppliancePressureClass.Low)
            return Pressure.FromPascals(25 * ConversionFactors.MillimeterOfMercury);
        return Pressure.FromPascals(ConversionFactors.StandardAtmosphere - (Depth(pressureClass, fullCharge, machineBuiltBefore15November1993) * ConversionFactors.InchOfMercury));
    }

    /// <summary>Whether the level is no depth at all: 0 inHg below the atmosphere.</summary>
    /// <param name="pressureClass">Class of the appliance.</param>
    /// <param name="fullCharge">Normal full charge of the circuit.</param>
    /// <param name="machineBuiltBefore15November1993">Whether the recovery machine is older than 15 November 1993.</param>
    public static bool IsAtmosphere(AppliancePressureClass pressureClass, Mass fullCharge, bool machineBuiltBefore15November1993) =>
        pressureClass != AppliancePressureClass.Low && Depth(pressureClass, fullCharge, machineBuiltBefore15November1993) == 0;

    /// <summary>The level as the regulation words it.</summary>
    /// <param name="pressureClass">Class of the appliance.</param>
    /// <param name="fullCharge">Normal full charge of the circuit.</param>
    /// <param name="machineBuiltBefore15November1993">Whether the recovery machine is older than 15 November 1993.</param>
    /// <returns>For example <c>10 inHg vac</c>.</returns>
    public static Message Wording(AppliancePressureClass pressureClass, Mass fullCharge, bool machineBuiltBefore15November1993) =>
        pressureClass == AppliancePressureClass.Low
            ? FormulasMessages.RecoveryLowPressure
            : FormulasMessages.RecoveryDepth(Depth(pressureClass, fullCharge, machineBuiltBefore15November1993));

    private static int Depth(AppliancePressureClass pressureClass, Mass fullCharge, bool old)
    {
        var isLarge = fullCharge.Si >= 200 * ConversionFactors.Pound;
        return (pressureClass, isLarge, old) switch
        {
            (AppliancePressureClass.VeryHigh, _, _) => 0,
            (AppliancePressureClass.High, false, _) => 0,
            (_, _, true) => 4,
            (AppliancePressureClass.High, true, false) => 10,
            (AppliancePressureClass.Medium, false, false) => 10,
            _ => 15,
        };
    }
}

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
