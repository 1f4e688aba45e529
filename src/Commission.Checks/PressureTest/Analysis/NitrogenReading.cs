namespace Commission.Checks.PressureTest.Analysis;

/// <summary>One reading of a nitrogen hold.</summary>
/// <param name="Gauge">Pressure above the atmosphere, Pa (a corrected gauge reading).</param>
/// <param name="Atmosphere">Pressure of the air at the site, Pa absolute.</param>
/// <param name="Temperature">Temperature of the gas as read, K.</param>
public readonly record struct NitrogenReading(double Gauge, double Atmosphere, double Temperature)
{
    /// <summary>Absolute pressure, Pa.</summary>
    public double Absolute => Gauge + Atmosphere;
}
