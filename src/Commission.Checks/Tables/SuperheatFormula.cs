using Commission.Measurement.Quantities;

namespace Commission.Checks.Tables;

/// <summary>
/// The field formula for target superheat with a fixed orifice, SH = (3·WB − 80 − ODB)/2 in °F. Information only: near the dry edge it
/// calls valid what the table refuses, and above 105 °F outdoors it is up to 6 °F low. It never sets a verdict.
/// </summary>
internal static class SuperheatFormula
{
    /// <summary>The formula, as a trace prints it.</summary>
    public const string Formula = "SH = (3·WB − 80 − ODB)/2, in °F";

    /// <summary>Where it comes from.</summary>
    public const string Source = "field formula, common practice, no source; information only";

    /// <summary>The formula's superheat.</summary>
    /// <param name="outdoorDryBulb">Air entering the condenser.</param>
    /// <param name="returnWetBulb">Wet bulb of the return air.</param>
    /// <returns>Superheat; may be negative, where it means nothing.</returns>
    public static TemperatureDifference At(Temperature outdoorDryBulb, Temperature returnWetBulb) =>
        TemperatureDifference.FromFahrenheitDegrees(((3 * returnWetBulb.Fahrenheit) - 80 - outdoorDryBulb.Fahrenheit) / 2);
}
