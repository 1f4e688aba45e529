using Commission.Checks.Formulas;

namespace Commission.Checks.VacuumAnalysis;

/// <summary>How gas passes a leak.</summary>
internal enum LeakFlow
{
    /// <summary>Viscous: the molecules meet each other (inflow of air ≥ 1e-6 Pa·m³/s).</summary>
    Viscous,

    /// <summary>Between the two.</summary>
    Transitional,

    /// <summary>Molecular: they meet the wall only (≤ 1e-8 Pa·m³/s).</summary>
    Molecular,
}

/// <summary>
/// What the hole that let air into a vacuum would let out of refrigerant vapour under pressure, as a band: information, never a verdict.
/// </summary>
/// <param name="Flow">Regime by the inflow of air (EN 1779, from memory).</param>
/// <param name="ViscousMassFlow">Viscous: Q_r = Q_a·(η_a/η_r)·(p_r² − p_atm²)/(p_atm² − p_v²), as kg/s.</param>
/// <param name="MolecularMassFlow">Molecular: Q_r = Q_a·√(M_a/M_r)·p_r/p_atm, as kg/s.</param>
/// <param name="ChokedMassFlow">A hole that chokes, both ways proportional to the pressure upstream: kg/s. The lower bound for large holes.</param>
/// <param name="Low">Lower end of the band, kg/s.</param>
/// <param name="High">Upper end of the band, kg/s.</param>
internal sealed record RefrigerantLeak(
    LeakFlow Flow, double ViscousMassFlow, double MolecularMassFlow, double ChokedMassFlow, double Low, double High)
{
    private const double ViscousFrom = 1e-6;
    private const double MolecularTo = 1e-8;
    private const double AirViscosity = 18.2e-6;
    private const double AirHeatRatio = 1.4;

    /// <summary>Computes the band.</summary>
    /// <param name="airThroughput">Q_a, inflow of air into the vacuum, Pa·m³/s.</param>
    /// <param name="atmosphere">p_atm, Pa.</param>
    /// <param name="vacuum">p_v, Pa.</param>
    /// <param name="vapor">What would leak out.</param>
    /// <param name="temperature">T, K.</param>
    public static RefrigerantLeak From(double airThroughput, double atmosphere, double vacuum, LeakingVapor vapor, double temperature)
    {
        var (refrigerantPressure, molarMass, viscosity, heatRatio) = vapor;
        var viscous = airThroughput * AirViscosity / viscosity
            * (refrigerantPressure * refrigerantPressure - atmosphere * atmosphere) / (atmosphere * atmosphere - vacuum * vacuum);
        var molecular = airThroughput * Math.Sqrt(LeakRate.AirMolarMass / molarMass) * refrigerantPressure / atmosphere;
        var choked = molecular * Discharge(heatRatio) / Discharge(AirHeatRatio);
        var flow = airThroughput >= ViscousFrom ? LeakFlow.Viscous
            : airThroughput <= MolecularTo ? LeakFlow.Molecular
            : LeakFlow.Transitional;
        var (low, high) = flow switch
        {
            LeakFlow.Viscous => (choked, viscous),
            LeakFlow.Molecular => (molecular, molecular),
            _ => (Math.Min(molecular, viscous), Math.Max(molecular, viscous)),
        };
        return new RefrigerantLeak(flow, Mass(viscous), Mass(molecular), Mass(choked), Mass(Math.Min(low, high)), Mass(Math.Max(low, high)));

        double Mass(double throughput) => LeakRate.MassFlow(throughput, molarMass, temperature);
    }

    // Mass flow through a choked opening is A·p·√(M/(RT)) times this.
    private static double Discharge(double gamma) =>
        Math.Sqrt(gamma) * Math.Pow(2 / (gamma + 1), (gamma + 1) / (2 * (gamma - 1)));
}

/// <summary>The refrigerant's vapour as a leak sees it.</summary>
/// <param name="Pressure">p_r, absolute pressure inside, Pa: dew pressure at 20 °C unless stated.</param>
/// <param name="MolarMass">M_r, kg/mol.</param>
/// <param name="Viscosity">η_r, Pa·s.</param>
/// <param name="HeatRatio">γ, above 1; matters by a tenth and only for choked flow.</param>
internal readonly record struct LeakingVapor(double Pressure, double MolarMass, double Viscosity, double HeatRatio = 1.15);

/// <summary>What a vacuum says about water at the coldest part: information, never proof that a system is dry.</summary>
/// <param name="Saturation">Vapour pressure of water or ice at the coldest part, Pa.</param>
/// <param name="HumidityLow">Lower end of p/p_sat, the equilibrium humidity were all of the gas water vapour.</param>
/// <param name="HumidityHigh">Upper end of p/p_sat; the two differ for a thermal gauge.</param>
/// <param name="HiddenBelow">Ice (or water) colder than this stays hidden: it gives off no more than the pressure read, K; the colder end of the band.</param>
/// <param name="HiddenBelowAtMost">The warmer end of that band, K.</param>
/// <remarks>
/// A heat-loss (thermal) gauge is set for air; in water vapour the true pressure is about 0.5 to 1 times what it shows (from memory).
/// A capacitance gauge shows it as it is.
/// </remarks>
internal sealed record WaterInVacuum(
    double Saturation, double HumidityLow, double HumidityHigh, double HiddenBelow, double HiddenBelowAtMost)
{
    private const double ThermalLow = 0.5;

    /// <summary>Whether free water or ice in equilibrium is excluded: even the upper end is below saturation.</summary>
    /// <param name="doubt">Doubt of the share, relative.</param>
    public bool ExcludesFreeWater(double doubt = 0) => HumidityHigh * (1 + doubt) < 1;

    /// <summary>Reads a pressure.</summary>
    /// <param name="pressure">Pressure shown, Pa, above 0.</param>
    /// <param name="coldest">Temperature of the coldest part, K.</param>
    /// <param name="thermalGauge">True for a heat-loss gauge, false for a capacitance gauge.</param>
    /// <param name="saturationPressure">Vapour pressure of water or ice at a temperature (K → Pa); null outside its range.</param>
    /// <param name="saturationTemperature">Its inverse (Pa → K); null outside its range.</param>
    /// <returns>The reading; null when a function has no value there.</returns>
    public static WaterInVacuum? Read(
        double pressure,
        double coldest,
        bool thermalGauge,
        Func<double, double?> saturationPressure,
        Func<double, double?> saturationTemperature)
    {
        ArgumentNullException.ThrowIfNull(saturationPressure);
        ArgumentNullException.ThrowIfNull(saturationTemperature);
        var low = thermalGauge ? ThermalLow * pressure : pressure;
        if (saturationPressure(coldest) is not { } saturation
            || saturationTemperature(low) is not { } ice
            || saturationTemperature(pressure) is not { } iceAtMost)
        {
            return null;
        }

        return new WaterInVacuum(saturation, low / saturation, pressure / saturation, ice, iceAtMost);
    }
}
