using Commission.Measurement.Uncertainty;

namespace Commission.Checks.PressureTest.Analysis;

/// <summary>One end of a nitrogen hold, with the causes that make it doubtful; causes shared with the other end or with anything else are shared objects.</summary>
/// <param name="Absolute">Absolute pressure, Pa.</param>
/// <param name="Temperature">Mean temperature of the gas, K.</param>
/// <param name="Atmosphere">Pressure of the air at the site, Pa absolute, for the gauge pressure it is printed as.</param>
public sealed record NitrogenEnd(Uncertain Absolute, Uncertain Temperature, double Atmosphere)
{
    /// <summary>The estimates alone.</summary>
    public NitrogenReading Reading => new(Absolute.Value - Atmosphere, Atmosphere, Temperature.Value);
}
