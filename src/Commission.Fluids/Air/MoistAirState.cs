using System.Runtime.InteropServices;

namespace Commission.Fluids.Air;

/// <summary>Moist air at a pressure; extensive properties are per kilogram of dry air.</summary>
/// <param name="Pressure">Pa absolute.</param>
/// <param name="DryBulb">K.</param>
/// <param name="HumidityRatio">kg of water per kg of dry air.</param>
/// <param name="WetBulb">Thermodynamic wet-bulb temperature, K.</param>
/// <param name="DewPoint">K (frost point below 0 °C); null for dry air.</param>
/// <param name="RelativeHumidity">0…1.</param>
/// <param name="Enthalpy">J per kg of dry air, 0 for dry air at 0 °C and liquid water at 0 °C.</param>
/// <param name="SpecificVolume">m³ per kg of dry air.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct MoistAirState(
    double Pressure,
    double DryBulb,
    double HumidityRatio,
    double WetBulb,
    double? DewPoint,
    double RelativeHumidity,
    double Enthalpy,
    double SpecificVolume)
{
    /// <summary>Density of the moist air, kg/m³.</summary>
    public double Density => (1 + HumidityRatio) / SpecificVolume;
}
