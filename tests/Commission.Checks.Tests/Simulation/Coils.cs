using System.Runtime.InteropServices;
using Commission.Fluids.Air;

namespace Commission.Checks.Tests.Simulation;

/// <summary>Moist air at 101 325 Pa as the coils use it: K, J/kg of dry air.</summary>
internal static class CoilAir
{
    /// <summary>Pressure of the air, Pa.</summary>
    public const double Pressure = 101_325;

    /// <summary>Specific heat of moist air at room humidity, J/(kg K).</summary>
    public const double Heat = 1020;

    /// <summary>Density at room conditions, kg/m³.</summary>
    public const double Density = 1.19;

    private const double Coldest = 273.15 - 45;
    private const double Step = 0.5;
    private const int Count = 200;

    private static readonly Lazy<double[]> Saturated = new(() =>
        [.. Enumerable.Range(0, Count).Select(i => MoistAir.FromRelativeHumidity(Coldest + i * Step, 1, Pressure).Value.Enthalpy)]);

    /// <summary>Enthalpy of saturated air, J/kg of dry air.</summary>
    public static double SaturatedEnthalpy(double kelvin)
    {
        var table = Saturated.Value;
        var place = (kelvin - Coldest) / Step;
        var i = Math.Clamp((int)place, 0, Count - 2);
        return table[i] + (place - i) * (table[i + 1] - table[i]);
    }
}

/// <summary>What leaves the condenser.</summary>
/// <param name="Enthalpy">J/kg.</param>
/// <param name="Temperature">K.</param>
/// <param name="Quality">Vapor share; 0 when subcooled.</param>
/// <param name="Desuperheating">Share of the coil that cools gas.</param>
/// <param name="Condensing">Share of the coil that condenses.</param>
/// <param name="Subcooling">Share of the coil that cools liquid; below 0 by how much coil is missing to condense everything.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct CondenserState(double Enthalpy, double Temperature, double Quality, double Desuperheating, double Condensing, double Subcooling);

/// <summary>
/// Air-cooled condenser in three zones, moving boundaries. Every zone meets fresh air in proportion to its share f of the coil, so that
/// the refrigerant of heat capacity ṁ·c cools towards the air with exp(−f·G/(ṁ·c)), G = ṁ_a·c_a·(1 − exp(−U·A/(ṁ_a·c_a))): ε-NTU of a
/// row in cross flow (any handbook of heat exchangers). Liquid that backs up takes coil away from condensing.
/// </summary>
/// <param name="Conductance">U·A of the whole coil condensing in clean air, W/K.</param>
/// <param name="AirFlow">kg/s, clean.</param>
/// <param name="AirShare">Share of the air flow that is left; the air side's conductance follows with the power 0.6.</param>
/// <param name="GasShare">Share of the refrigerant side's conductance that non-condensable gas leaves.</param>
internal sealed record Condenser(double Conductance, double AirFlow, double AirShare = 1, double GasShare = 1)
{
    /// <summary>Share of the thermal resistance on the air side when condensing.</summary>
    private const double AirResistance = 0.6;

    /// <summary>How many times the resistance inside the tubes is that of condensing: gas.</summary>
    private const double GasResistance = 4;

    /// <summary>The same for liquid, slow in its few tubes.</summary>
    private const double LiquidResistance = 3;

    private const double AirExponent = 0.6;

    public CondenserState Leave(RefrigerantTable fluid, double pressure, double flow, double enthalpy, double air)
    {
        double dew = fluid.Dew(pressure), bubble = fluid.Bubble(pressure);
        double vapor = fluid.VaporEnthalpy(pressure), liquid = fluid.LiquidEnthalpy(pressure);
        var desuperheating = 0.0;
        if (enthalpy > vapor)
        {
            var heat = fluid.DischargeHeat(pressure);
            var gas = dew + (enthalpy - vapor) / heat;
            desuperheating = Math.Log((gas - air) / (dew - air)) * flow * heat / Zone(GasResistance);
        }
        var condensing = flow * (Math.Min(enthalpy, vapor) - liquid) / (Zone(1) * (0.5 * (dew + bubble) - air));
        var rest = 1 - desuperheating - condensing;
        if (rest <= 0)
        {
            var quality = Math.Clamp(-rest / condensing, 0, 1);
            return new CondenserState(liquid + quality * (vapor - liquid), bubble + quality * (dew - bubble), quality, desuperheating, condensing, rest);
        }
        var liquidHeat = LiquidHeat(fluid, pressure);
        var left = air + (bubble - air) * Math.Exp(-rest * Zone(LiquidResistance) / (flow * liquidHeat));
        return new CondenserState(fluid.LiquidEnthalpy(fluid.BubblePressure(left)), left, 0, desuperheating, condensing, rest);
    }

    private double Zone(double resistance)
    {
        var clean = AirResistance * Math.Pow(AirShare, -AirExponent) + (1 - AirResistance) * resistance / GasShare;
        var air = AirFlow * AirShare * CoilAir.Heat;
        return air * (1 - Math.Exp(-Conductance / clean / air));
    }

    /// <summary>Specific heat of the liquid from its enthalpies at saturation over 5 K, J/(kg K).</summary>
    private static double LiquidHeat(RefrigerantTable fluid, double pressure)
    {
        const double span = 5;
        var bubble = fluid.Bubble(pressure);
        return (fluid.LiquidEnthalpy(pressure) - fluid.LiquidEnthalpy(fluid.BubblePressure(bubble - span))) / span;
    }
}

/// <summary>What leaves the evaporator.</summary>
/// <param name="Enthalpy">Of the refrigerant, J/kg.</param>
/// <param name="Supply">Supply air after the blower, K.</param>
/// <param name="Wet">Share of the coil with liquid on its wall.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct EvaporatorState(double Enthalpy, double Supply, double Wet);

/// <summary>
/// Air-heated evaporator: a boiling zone whose surface has one temperature (bypass-factor method, ASHRAE Handbook: the air's enthalpy, or
/// its temperature when the surface is above the dew point, goes towards the surface by 1 − exp(−U·A_air/(ṁ_a·c_a))), and a zone behind
/// the dry-out, where vapor warms towards the return air.
/// </summary>
/// <param name="Conductance">U·A of the air side and, times <see cref="InsideRatio"/>, of boiling, W/K.</param>
/// <param name="AirFlow">kg/s at the design.</param>
/// <param name="AirShare">Share of the air flow that is left.</param>
internal sealed record Evaporator(double Conductance, double AirFlow, double AirShare = 1)
{
    /// <summary>U·A of boiling over U·A of the dry air side.</summary>
    private const double InsideRatio = 1.6;

    /// <summary>How many times the resistance inside the tubes is that of boiling, behind the dry-out.</summary>
    private const double VaporResistance = 11;

    private const double AirExponent = 0.6;

    /// <summary>Warming of the air by the blower at design flow, K.</summary>
    public const double BlowerHeat = 0.6;

    public EvaporatorState Leave(RefrigerantTable fluid, double pressure, double flow, double enthalpy, Weather weather)
    {
        double liquid = fluid.LiquidEnthalpy(pressure), vapor = fluid.VaporEnthalpy(pressure);
        double bubble = fluid.Bubble(pressure), dew = fluid.Dew(pressure);
        var quality = Math.Clamp((enthalpy - liquid) / (vapor - liquid), 0, 0.99);
        var boiling = 0.5 * (bubble + quality * (dew - bubble) + dew);
        double air = AirFlow * AirShare, outside = Conductance * Math.Pow(AirShare, AirExponent), inside = InsideRatio * Conductance;
        var contact = 1 - Math.Exp(-outside / (air * CoilAir.Heat));
        double Given(double surface) => air * contact * Math.Max(CoilAir.Heat * (weather.Return - surface), weather.ReturnEnthalpy - CoilAir.SaturatedEnthalpy(surface));
        var surface = Root.OfFalling(t => Given(t) - inside * (t - boiling), boiling, weather.Return, 1e-4);
        var whole = inside * (surface - boiling);
        var wet = flow * (vapor - enthalpy) / whole;
        var blower = BlowerHeat / AirShare;
        var cooled = weather.Return - contact * (weather.Return - surface);
        if (wet >= 1)
            return new EvaporatorState(enthalpy + whole / flow, cooled + blower, 1);
        var heat = fluid.VaporHeat(pressure);
        var passing = air * CoilAir.Heat * (1 - Math.Exp(-1 / (1 / outside + VaporResistance / inside) / (air * CoilAir.Heat)));
        var superheat = (weather.Return - dew) * (1 - Math.Exp(-(1 - wet) * passing / (flow * heat)));
        var dry = weather.Return - flow * heat * superheat / ((1 - wet) * air * CoilAir.Heat);
        return new EvaporatorState(vapor + heat * superheat, wet * cooled + (1 - wet) * dry + blower, wet);
    }
}
