using System.Collections.Concurrent;
using Commission.Fluids;

namespace Commission.Checks.Tests.Simulation;

/// <summary>
/// What the circuit needs to know of a refrigerant, read once from the equations of state along the saturation curves over ln p and
/// interpolated linearly (0.03 in ln p, under 1 K): a circuit is solved with some thousand states. Superheated vapor near saturation by
/// a mean specific heat and a power law of density, both read from the equations 15 K above the dew point. Temperatures in K, pressures
/// in Pa absolute, enthalpies in J/kg, densities in kg/m³.
/// </summary>
internal sealed class RefrigerantTable
{
    private const double LowestDew = 273.15 - 40;
    private const double BelowCritical = 6;
    private const double HighestDew = 273.15 + 85;
    private const double Step = 0.03;
    private const double SuperheatStep = 15;
    private const double DischargeStep = 30;

    private static readonly ConcurrentDictionary<string, Lazy<RefrigerantTable>> Tables = new(StringComparer.Ordinal);

    private readonly double _lnLowest;
    private readonly double[] _dew;
    private readonly double[] _bubble;
    private readonly double[] _liquidEnthalpy;
    private readonly double[] _vaporEnthalpy;
    private readonly double[] _liquidDensity;
    private readonly double[] _vaporDensity;
    private readonly double[] _vaporHeat;
    private readonly double[] _dischargeHeat;
    private readonly double[] _vaporExponent;

    private RefrigerantTable(Refrigerant refrigerant)
    {
        var top = Math.Min(HighestDew, refrigerant.CriticalPoint.Value.Temperature - BelowCritical);
        _lnLowest = Math.Log(refrigerant.DewAtTemperature(LowestDew).Value.Pressure);
        var count = (int)((Math.Log(refrigerant.DewAtTemperature(top).Value.Pressure) - _lnLowest) / Step) + 1;
        double[] Column() => new double[count];
        (_dew, _bubble, _liquidEnthalpy, _vaporEnthalpy, _liquidDensity) = (Column(), Column(), Column(), Column(), Column());
        (_vaporDensity, _vaporHeat, _dischargeHeat, _vaporExponent) = (Column(), Column(), Column(), Column());
        for (var i = 0; i < count; i++)
        {
            var pressure = Math.Exp(_lnLowest + i * Step);
            var dew = refrigerant.DewAtPressure(pressure).Value;
            var bubble = refrigerant.BubbleAtPressure(pressure).Value;
            var warm = refrigerant.At(dew.Temperature + SuperheatStep, pressure, Phase.Vapor).Value;
            var hot = refrigerant.At(dew.Temperature + DischargeStep, pressure, Phase.Vapor).Value;
            (_dew[i], _bubble[i]) = (dew.Temperature, bubble.Temperature);
            (_liquidEnthalpy[i], _liquidDensity[i]) = (bubble.LiquidEnthalpy, bubble.LiquidDensity);
            (_vaporEnthalpy[i], _vaporDensity[i]) = (dew.VaporEnthalpy, dew.VaporDensity);
            _vaporHeat[i] = (warm.Enthalpy - dew.VaporEnthalpy) / SuperheatStep;
            _dischargeHeat[i] = (hot.Enthalpy - dew.VaporEnthalpy) / DischargeStep;
            _vaporExponent[i] = Math.Log(dew.VaporDensity / warm.Density) / Math.Log(warm.Temperature / dew.Temperature);
        }
        IsentropicExponent = Exponent(refrigerant);
    }

    /// <summary>Pressures between which the table answers, Pa.</summary>
    public (double Low, double High) Range => (Math.Exp(_lnLowest), Math.Exp(_lnLowest + (_dew.Length - 1) * Step));

    /// <summary>n of p·vⁿ that gives the work of the isentrope of the equations from 7 °C + 8 K to 47 °C (dew points).</summary>
    public double IsentropicExponent { get; }

    public static RefrigerantTable Of(string designation) =>
        Tables.GetOrAdd(designation, d => new Lazy<RefrigerantTable>(() => new RefrigerantTable(Refrigerant.Load(d)))).Value;

    public double Dew(double pressure) => Read(_dew, pressure);

    public double Bubble(double pressure) => Read(_bubble, pressure);

    public double LiquidEnthalpy(double pressure) => Read(_liquidEnthalpy, pressure);

    public double VaporEnthalpy(double pressure) => Read(_vaporEnthalpy, pressure);

    public double LiquidDensity(double pressure) => Read(_liquidDensity, pressure);

    public double VaporDensity(double pressure) => Read(_vaporDensity, pressure);

    /// <summary>Mean specific heat of the vapor in the first 15 K above its dew point, J/(kg K).</summary>
    public double VaporHeat(double pressure) => Read(_vaporHeat, pressure);

    /// <summary>Mean specific heat of the vapor in the first 30 K above its dew point, J/(kg K): the gas after the compressor.</summary>
    public double DischargeHeat(double pressure) => Read(_dischargeHeat, pressure);

    /// <summary>Pressure of the bubble point at a temperature, Pa.</summary>
    public double BubblePressure(double kelvin) => Pressure(_bubble, kelvin);

    /// <summary>Pressure of the dew point at a temperature, Pa.</summary>
    public double DewPressure(double kelvin) => Pressure(_dew, kelvin);

    /// <summary>Density at a pressure and enthalpy: vapor, or liquid and vapor without slip, kg/m³.</summary>
    public double Density(double pressure, double enthalpy)
    {
        double liquid = LiquidEnthalpy(pressure), vapor = VaporEnthalpy(pressure);
        if (enthalpy >= vapor)
        {
            var dew = Dew(pressure);
            var kelvin = dew + (enthalpy - vapor) / VaporHeat(pressure);
            return VaporDensity(pressure) * Math.Pow(dew / kelvin, Read(_vaporExponent, pressure));
        }
        var quality = Math.Max(0, (enthalpy - liquid) / (vapor - liquid));
        return 1 / (quality / VaporDensity(pressure) + (1 - quality) / LiquidDensity(pressure));
    }

    private double Read(double[] column, double pressure)
    {
        var place = (Math.Log(pressure) - _lnLowest) / Step;
        var i = Math.Clamp((int)place, 0, column.Length - 2);
        return column[i] + (place - i) * (column[i + 1] - column[i]);
    }

    private double Pressure(double[] temperatures, double kelvin)
    {
        var i = Array.BinarySearch(temperatures, kelvin);
        i = Math.Clamp(i < 0 ? ~i - 1 : i, 0, temperatures.Length - 2);
        var place = i + (kelvin - temperatures[i]) / (temperatures[i + 1] - temperatures[i]);
        return Math.Exp(_lnLowest + place * Step);
    }

    private static double Exponent(Refrigerant refrigerant)
    {
        const double evaporating = 273.15 + 7, superheat = 8, condensing = 273.15 + 47;
        double low = refrigerant.DewAtTemperature(evaporating).Value.Pressure, high = refrigerant.DewAtTemperature(condensing).Value.Pressure;
        var suction = refrigerant.At(evaporating + superheat, low, Phase.Vapor).Value;
        var work = refrigerant.AtPressureEntropy(high, suction.Entropy).Value.Enthalpy - suction.Enthalpy;
        return Root.OfFalling(n => work - PolytropicWork(n, low, suction.Density, high / low), 1.02, 1.6, 1e-6);
    }

    /// <summary>Work of a steady compression with p·vⁿ constant, J/kg: n/(n−1)·p₁/ρ₁·(r^((n−1)/n) − 1), any textbook of thermodynamics.</summary>
    public static double PolytropicWork(double n, double suctionPressure, double suctionDensity, double ratio) =>
        n / (n - 1) * suctionPressure / suctionDensity * (Math.Pow(ratio, (n - 1) / n) - 1);
}

/// <summary>Roots between two ends.</summary>
internal static class Root
{
    private const int MostSteps = 100;

    /// <summary>
    /// The root of a function that falls, by regula falsi with halved end values (Illinois) and a bisection every fourth step; the nearer
    /// end where the function does not change its sign (the caller sees that from the residual).
    /// </summary>
    public static double OfFalling(Func<double, double> function, double low, double high, double tolerance)
    {
        double atLow = function(low), atHigh = function(high);
        if (atLow <= 0)
            return low;
        if (atHigh >= 0)
            return high;
        var lastWasLow = false;
        for (var step = 1; step <= MostSteps && high - low > tolerance; step++)
        {
            var x = step % 4 == 0 ? 0.5 * (low + high) : (low * atHigh - high * atLow) / (atHigh - atLow);
            x = Math.Clamp(x, low + 0.01 * (high - low), high - 0.01 * (high - low));
            var value = function(x);
            if (value == 0)
                return x;
            if (value > 0)
            {
                if (step > 1 && lastWasLow)
                    atHigh *= 0.5;
                (low, atLow, lastWasLow) = (x, value, true);
            }
            else
            {
                if (step > 1 && !lastWasLow)
                    atLow *= 0.5;
                (high, atHigh, lastWasLow) = (x, value, false);
            }
        }
        return 0.5 * (low + high);
    }
}
