using Commission.Measurement.Uncertainty;

namespace Commission.Checks.PressureTest.Analysis;

/// <summary>
/// A nitrogen hold between two readings. The volume is taken as constant, so the share of gas lost is one less the ratio of densities;
/// densities are those of the real gas, given as a function.
/// </summary>
public static class NitrogenHold
{
    private const double LeastTemperatureError = 0.5;
    private const double ShareOfChange = 0.3;

    /// <summary>Common practice, no source: repeatability of a gauge, share of its full scale.</summary>
    public const double DefaultRepeatability = 0.001;

    /// <summary>Loss between two readings.</summary>
    /// <param name="start">First reading, at least ten minutes after filling.</param>
    /// <param name="end">Second reading.</param>
    /// <param name="errors">What makes them doubtful.</param>
    /// <param name="density">Density of nitrogen, kg/m³, at a temperature (K) and an absolute pressure (Pa); null outside its range.</param>
    /// <returns>The loss; null when the density function has no value near the readings.</returns>
    public static NitrogenLoss? Between(
        NitrogenReading start, NitrogenReading end, NitrogenErrors errors, Func<double, double, double?> density) =>
        Between(start, end, errors, density, LinearScope.Instance);

    /// <summary>The same with readings from a scope: the linear one, or a sampling one for Monte Carlo.</summary>
    /// <param name="start">First reading.</param>
    /// <param name="end">Second reading.</param>
    /// <param name="errors">What makes them doubtful.</param>
    /// <param name="density">Density of nitrogen, kg/m³, at a temperature (K) and an absolute pressure (Pa); null outside its range.</param>
    /// <param name="scope">Where readings get their doubt.</param>
    public static NitrogenLoss? Between(
        NitrogenReading start, NitrogenReading end, NitrogenErrors errors, Func<double, double, double?> density, IUncertaintyScope scope)
    {
        ArgumentNullException.ThrowIfNull(errors);
        ArgumentNullException.ThrowIfNull(density);
        ArgumentNullException.ThrowIfNull(scope);
        if (!(start.Temperature > 0 && end.Temperature > 0 && start.Absolute > 0 && end.Absolute > 0)
            || Loss(start.Absolute, start.Temperature, end.Absolute, end.Temperature, density) is null)
            return null;

        var (p1, t1, p2, t2) = Inputs(start, end, errors, scope);
        return Between(start, end, [p1, t1, p2, t2], density);
    }

    /// <summary>The same between two ends that carry their causes already, shared with whatever else rests on them.</summary>
    /// <param name="start">First end.</param>
    /// <param name="end">Second end.</param>
    /// <param name="density">Density of nitrogen, kg/m³, at a temperature (K) and an absolute pressure (Pa); null outside its range.</param>
    public static NitrogenLoss? Between(NitrogenEnd start, NitrogenEnd end, Func<double, double, double?> density)
    {
        ArgumentNullException.ThrowIfNull(start);
        ArgumentNullException.ThrowIfNull(end);
        ArgumentNullException.ThrowIfNull(density);
        return start.Temperature.Value > 0 && end.Temperature.Value > 0 && start.Absolute.Value > 0 && end.Absolute.Value > 0
            ? Between(start.Reading, end.Reading, [start.Absolute, start.Temperature, end.Absolute, end.Temperature], density)
            : null;
    }

    private static NitrogenLoss? Between(NitrogenReading start, NitrogenReading end, Uncertain[] inputs, Func<double, double, double?> density)
    {
        var loss = Propagate(inputs, density);
        if (loss is null)
            return null;

        var perPascal = Partial(2, [start.Absolute, start.Temperature, end.Absolute, end.Temperature], density);
        var perKelvin = Partial(3, [start.Absolute, start.Temperature, end.Absolute, end.Temperature], density);
        var referred = Refer(end.Absolute, end.Temperature, start.Temperature, density);
        if (perPascal is null || perKelvin is null || referred is null)
            return null;
        var ideal = 1 - end.Absolute * start.Temperature / (start.Absolute * end.Temperature);
        return new NitrogenLoss(loss, ideal, referred.Value, perPascal.Value, perKelvin.Value, start, end);
    }

    /// <summary>Pressure that gas would have at another temperature in the same volume, Pa: ρ(p, T) = ρ(p′, T′) solved for p′.</summary>
    /// <param name="pressure">p, Pa absolute.</param>
    /// <param name="temperature">T, K.</param>
    /// <param name="reference">T′, K.</param>
    /// <param name="density">Density of nitrogen, kg/m³; null outside its range.</param>
    /// <returns>p′, Pa absolute; null outside the range of the density.</returns>
    public static double? Refer(double pressure, double temperature, double reference, Func<double, double, double?> density)
    {
        ArgumentNullException.ThrowIfNull(density);
        if (density(temperature, pressure) is not { } rho)
            return null;
        var p = pressure * reference / temperature;
        for (var i = 0; i < 30; i++)
        {
            // Newton with the slope of the ideal gas: density is nearly proportional to pressure.
            if (density(reference, p) is not { } d)
                return null;
            var step = p * (rho / d - 1);
            p += step;
            if (Math.Abs(step) <= 1e-13 * p)
                break;
        }

        return p;
    }

    private static (Uncertain P1, Uncertain T1, Uncertain P2, Uncertain T2) Inputs(
        NitrogenReading start, NitrogenReading end, NitrogenErrors errors, IUncertaintyScope scope)
    {
        const string Statement = "accuracy statement of the gauge";
        var zero = RootCause.FromHalfWidth("zero of the gauge", Statement, errors.Zero);
        var gain = RootCause.FromHalfWidth("gain of the gauge", Statement, errors.Gain);
        var (laterZero, laterGain) = errors.SameGauge
            ? (zero, gain)
            : (RootCause.FromHalfWidth("zero of the second gauge", Statement, errors.Zero),
                RootCause.FromHalfWidth("gain of the second gauge", Statement, errors.Gain));
        var air = RootCause.FromHalfWidth("air pressure at the site", "barometer or elevation", errors.Atmosphere);
        var change = RootCause.FromHalfWidth("change of air pressure over the hold", "weather", errors.AtmosphereChange);
        var p1 = scope.Reading(
            start.Absolute,
            zero * 1, gain * start.Gauge, air * 1,
            RootCause.FromResolution("step of the gauge, start", "its resolution", errors.Resolution) * 1,
            RootCause.FromHalfWidth("repeatability of the gauge, start", "0.1 % of full scale unless stated", errors.Repeatability) * 1);
        var p2 = scope.Reading(
            end.Absolute,
            laterZero * 1, laterGain * end.Gauge, air * 1, change * 1,
            RootCause.FromResolution("step of the gauge, end", "its resolution", errors.Resolution) * 1,
            RootCause.FromHalfWidth("repeatability of the gauge, end", "0.1 % of full scale unless stated", errors.Repeatability) * 1);

        var gas = errors.GasMinusClamp
            ?? Math.Max(LeastTemperatureError, ShareOfChange * Math.Abs(end.Temperature - start.Temperature));
        return (p1, Temperature(start.Temperature, "start"), p2, Temperature(end.Temperature, "end"));

        Uncertain Temperature(double kelvin, string which) => scope.Reading(
            kelvin,
            RootCause.FromHalfWidth($"mean gas less clamp, {which}", "position and warming of the pipe", gas) * 1,
            RootCause.FromHalfWidth($"thermometer, {which}", "accuracy statement of the thermometer", errors.Thermometer) * 1);
    }

    private static Uncertain? Propagate(Uncertain[] inputs, Func<double, double, double?> density)
    {
        double[] x = [.. inputs.Select(i => i.Value)];
        if (Loss(x[0], x[1], x[2], x[3], density) is not { } value)
            return null;
        var partials = new (Uncertain Input, double Partial)[4];
        for (var i = 0; i < 4; i++)
        {
            if (Partial(i, x, density) is not { } partial)
                return null;
            partials[i] = (inputs[i], partial);
        }

        return Uncertain.WithPartials(value, partials);
    }

    private static double? Partial(int index, double[] x, Func<double, double, double?> density)
    {
        // The density is smooth: a step of 1e-4 leaves 1e-8 of curvature and 1e-11 of rounding.
        const double Step = 1e-4;
        var up = (double[])x.Clone();
        var down = (double[])x.Clone();
        up[index] *= 1 + Step;
        down[index] *= 1 - Step;
        return (Loss(up[0], up[1], up[2], up[3], density) - Loss(down[0], down[1], down[2], down[3], density)) / (2 * Step * x[index]);
    }

    private static double? Loss(double p1, double t1, double p2, double t2, Func<double, double, double?> density) =>
        1 - density(t2, p2) / density(t1, p1);
}
