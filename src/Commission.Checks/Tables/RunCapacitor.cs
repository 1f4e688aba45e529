namespace Commission.Checks.Tables;

/// <summary>Capacitance of a run capacitor from its current and voltage while the motor runs.</summary>
internal static class RunCapacitor
{
    /// <summary>The formula, as a trace prints it.</summary>
    public const string Formula = "C = I / (2π·f·V); in µF 2652.6·A/V at 60 Hz, 3183.1·A/V at 50 Hz";

    /// <summary>Where the formula comes from.</summary>
    public const string Source = "reactance of a capacitor";

    /// <summary>The capacitance.</summary>
    /// <param name="amperes">Current through the capacitor, A.</param>
    /// <param name="volts">Voltage across its terminals, V.</param>
    /// <param name="hertz">Line frequency, Hz.</param>
    /// <returns>Farads.</returns>
    public static double Farads(double amperes, double volts, double hertz) => amperes / (2 * Math.PI * hertz * volts);
}
