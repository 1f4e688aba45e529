using Commission.Measurement.Quantities;

namespace Commission.Measurement.Thermocouples;

/// <summary>How far new type K wire may be from the reference function. Source: printed tolerance tables of IEC 60584-1 and ASTM E230.</summary>
public static class TypeKTolerance
{
    /// <summary>The tolerance at a temperature, plus or minus; nothing where the class gives none.</summary>
    /// <param name="toleranceClass">The class.</param>
    /// <param name="temperature">Temperature of the junction.</param>
    public static TemperatureDifference? At(ToleranceClass toleranceClass, Temperature temperature)
    {
        var t = temperature.Celsius;
        double? kelvins = toleranceClass switch
        {
            ToleranceClass.Iec1 when t is >= -40 and <= 1000 => Math.Max(1.5, 0.004 * Math.Abs(t)),
            ToleranceClass.Iec2 when t is >= -40 and <= 1200 => Math.Max(2.5, 0.0075 * Math.Abs(t)),
            ToleranceClass.Iec3 when t is >= -200 and <= 40 => Math.Max(2.5, 0.015 * Math.Abs(t)),
            ToleranceClass.AstmSpecial when t is >= 0 and <= 1260 => Math.Max(1.1, 0.004 * t),
            ToleranceClass.AstmStandard when t is >= 0 and <= 1260 => Math.Max(2.2, 0.0075 * t),
            ToleranceClass.AstmStandard when t is >= -200 and < 0 => Math.Max(2.2, 0.02 * Math.Abs(t)),
            _ => null,
        };
        return kelvins is { } k ? TemperatureDifference.FromKelvins(k) : null;
    }

    /// <summary>The proportional part of the class: what is left, as a fraction of the distance from a point where the sensor was checked.</summary>
    /// <param name="toleranceClass">The class.</param>
    public static double Slope(ToleranceClass toleranceClass) => toleranceClass switch
    {
        ToleranceClass.Iec1 or ToleranceClass.AstmSpecial => 0.004,
        ToleranceClass.Iec3 => 0.015,
        _ => 0.0075,
    };
}
