using Commission.Messages;

namespace Commission.Checks.Formulas;

/// <summary>Unbalance of three phases as NEMA MG-1 defines it: largest departure from the mean, over the mean.</summary>
internal static class PhaseUnbalance
{
    /// <summary>The formula, as a trace prints it.</summary>
    public static Message Formula => FormulasMessages.Unbalance;

    /// <summary>Where the formula comes from.</summary>
    public static Message Source => FormulasMessages.UnbalanceSource;

    /// <summary>The unbalance of voltages or of currents.</summary>
    /// <param name="phases">Readings, all in one unit.</param>
    /// <returns>A ratio; 0.02 is 2 %.</returns>
    public static double Of(ReadOnlySpan<double> phases)
    {
        var sum = 0.0;
        foreach (var phase in phases)
            sum += phase;
        var mean = sum / phases.Length;
        var largest = 0.0;
        foreach (var phase in phases)
            largest = Math.Max(largest, Math.Abs(phase - mean));
        return largest / mean;
    }

    /// <summary>How much of its rated output a motor may give: 1 up to 1 %, 0.95 at 2 %, 0.90 at 3 %, straight lines between.</summary>
    /// <param name="unbalance">Voltage unbalance, a ratio.</param>
    /// <returns>A factor; null above 3 %, where no figure was found.</returns>
    public static double? Derating(double unbalance) => unbalance switch
    {
        <= 0.01 => 1,
        <= 0.03 => 1 - (5 * (unbalance - 0.01)),
        _ => null,
    };
}

/// <summary>Capacitance of a run capacitor from its current and voltage while the motor runs.</summary>
internal static class RunCapacitor
{
    /// <summary>The formula, as a trace prints it.</summary>
    public static Message Formula => FormulasMessages.Capacitance;

    /// <summary>Where the formula comes from.</summary>
    public static Message Source => FormulasMessages.CapacitanceSource;

    /// <summary>The capacitance.</summary>
    /// <param name="amperes">Current through the capacitor, A.</param>
    /// <param name="volts">Voltage across its terminals, V.</param>
    /// <param name="hertz">Line frequency, Hz.</param>
    /// <returns>Farads.</returns>
    public static double Farads(double amperes, double volts, double hertz) => amperes / (2 * Math.PI * hertz * volts);
}
