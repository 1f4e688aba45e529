using Commission.Measurement.Uncertainty;
using Commission.Messages;

namespace Commission.Checks.NitrogenAnalysis;

/// <summary>
/// A nitrogen hold between two readings. The volume is taken as constant, so the share of gas lost is one less the ratio of densities;
/// densities are those of the real gas, given as a function.
/// </summary>
internal static class NitrogenHold
{
    private const double LeastTemperatureError = 0.5;
    private const double ShareOfChange = 0.3;

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
        {
            return null;
        }

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
        var statement = PressureTestMessages.CauseStatement;
        var zero = RootCause.FromHalfWidth(PressureTestMessages.CauseZero, statement, errors.Zero);
        var gain = RootCause.FromHalfWidth(PressureTestMessages.CauseGain, statement, errors.Gain);
        var (laterZero, laterGain) = errors.SameGauge
            ? (zero, gain)
            : (RootCause.FromHalfWidth(PressureTestMessages.CauseSecondZero, statement, errors.Zero),
                RootCause.FromHalfWidth(PressureTestMessages.CauseSecondGain, statement, errors.Gain));
        var air = RootCause.FromHalfWidth(PressureTestMessages.CauseAir, PressureTestMessages.CauseAirSource, errors.Atmosphere);
        var change = RootCause.FromHalfWidth(PressureTestMessages.CauseAirChange, PressureTestMessages.CauseWeatherAlone, errors.AtmosphereChange);
        var p1 = scope.Reading(
            start.Absolute,
            zero * 1, gain * start.Gauge, air * 1,
            RootCause.FromResolution(PressureTestMessages.CauseAt(PressureTestMessages.CauseStep, PressureTestMessages.AtStart), PressureTestMessages.CauseStepSource, errors.Resolution) * 1,
            RootCause.FromHalfWidth(PressureTestMessages.CauseAt(PressureTestMessages.CauseRepeatability, PressureTestMessages.AtStart), PressureTestMessages.CauseScaleUnlessStated, errors.Repeatability) * 1);
        var p2 = scope.Reading(
            end.Absolute,
            laterZero * 1, laterGain * end.Gauge, air * 1, change * 1,
            RootCause.FromResolution(PressureTestMessages.CauseAt(PressureTestMessages.CauseStep, PressureTestMessages.AtEnd), PressureTestMessages.CauseStepSource, errors.Resolution) * 1,
            RootCause.FromHalfWidth(PressureTestMessages.CauseAt(PressureTestMessages.CauseRepeatability, PressureTestMessages.AtEnd), PressureTestMessages.CauseScaleUnlessStated, errors.Repeatability) * 1);

        var gas = errors.GasMinusClamp
            ?? Math.Max(LeastTemperatureError, ShareOfChange * Math.Abs(end.Temperature - start.Temperature));
        return (p1, Temperature(start.Temperature, PressureTestMessages.AtStart), p2, Temperature(end.Temperature, PressureTestMessages.AtEnd));

        Uncertain Temperature(double kelvin, Message which) => scope.Reading(
            kelvin,
            RootCause.FromHalfWidth(PressureTestMessages.CauseAt(PressureTestMessages.CauseGasLessClamp, which), PressureTestMessages.CausePositionWarming, gas) * 1,
            RootCause.FromHalfWidth(PressureTestMessages.CauseAt(PressureTestMessages.CauseThermometer, which), PressureTestMessages.CauseThermometerSource, errors.Thermometer) * 1);
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

/// <summary>One end of a nitrogen hold, with the causes that make it doubtful; causes shared with the other end or with anything else are shared objects.</summary>
/// <param name="Absolute">Absolute pressure, Pa.</param>
/// <param name="Temperature">Mean temperature of the gas, K.</param>
/// <param name="Atmosphere">Pressure of the air at the site, Pa absolute, for the gauge pressure it is printed as.</param>
internal sealed record NitrogenEnd(Uncertain Absolute, Uncertain Temperature, double Atmosphere)
{
    /// <summary>The estimates alone.</summary>
    public NitrogenReading Reading => new(Absolute.Value - Atmosphere, Atmosphere, Temperature.Value);
}

/// <summary>What makes the two ends of a nitrogen hold doubtful. Half-widths are bounds, taken as rectangular.</summary>
internal sealed record NitrogenErrors
{
    /// <summary>Step of the gauge, Pa; each end is rounded on its own.</summary>
    public required double Resolution { get; init; }

    /// <summary>Repeatability of the gauge from one reading to the next, half-width, Pa. Common practice, no source: 0.1 % of full scale.</summary>
    public required double Repeatability { get; init; }

    /// <summary>Gauge's zero, half-width, Pa. With one gauge at both ends it is one error and nearly cancels.</summary>
    public double Zero { get; init; }

    /// <summary>Gauge's gain, half-width, relative. With one gauge at both ends it is one error and nearly cancels.</summary>
    public double Gain { get; init; }

    /// <summary>True when the same gauge read both ends.</summary>
    public bool SameGauge { get; init; } = true;

    /// <summary>Air pressure at the start, half-width, Pa: one error at both ends.</summary>
    public double Atmosphere { get; init; }

    /// <summary>Change of the air pressure over the hold that nobody read, half-width, Pa.</summary>
    public required double AtmosphereChange { get; init; }

    /// <summary>Mean gas temperature less the clamp's at each end, half-width, K; null for max(0.5 K, 0.3·|T₂ − T₁|), the default
    /// (common practice, no source). Smaller only with three clamps or more.</summary>
    public double? GasMinusClamp { get; init; }

    /// <summary>Gain of the thermometer over the hold's change of temperature and its own drift, half-width at each end, K.</summary>
    public double Thermometer { get; init; }
}

/// <summary>Loss of a nitrogen hold, as a share of the charge (0.01 = 1 %), from the density of the gas at both ends.</summary>
/// <param name="Loss">L = 1 − ρ(p₂, T₂)/ρ(p₁, T₁), with its causes.</param>
/// <param name="IdealLoss">The same by the ideal-gas law, 1 − p₂·T₁/(p₁·T₂): shown beside. It understates the effect of temperature by
/// 3 to 10 %; that is a known bias and not part of the uncertainty.</param>
/// <param name="ReferredPressure">Absolute pressure that the gas left would have at the first temperature, Pa.</param>
/// <param name="PerPascal">Change of L by the second pressure, 1/Pa (negative).</param>
/// <param name="PerKelvin">Change of L by the second temperature, 1/K (positive).</param>
/// <param name="Start">First reading.</param>
/// <param name="End">Second reading.</param>
internal sealed record NitrogenLoss(
    Uncertain Loss,
    double IdealLoss,
    double ReferredPressure,
    double PerPascal,
    double PerKelvin,
    NitrogenReading Start,
    NitrogenReading End)
{
    // One-sided 95 % of the normal distribution: a tight system is called lossy once in twenty at this threshold, and a loss of
    // twice as much is missed once in twenty.
    private const double OneSided = 1.645;

    /// <summary>A loss above this is shown: 1.645·u.</summary>
    public double DecisionThreshold => OneSided * Loss.StandardUncertainty;

    /// <summary>Smallest loss that this hold detects nineteen times in twenty: 3.29·u.</summary>
    public double SmallestDetectable => 2 * OneSided * Loss.StandardUncertainty;

    /// <summary>True when a loss is shown at all, within the allowed one or not.</summary>
    public bool LossShown => Loss.Value > DecisionThreshold;

    /// <summary>The pressure change that remains after temperature, Pa: positive when gas is gone.</summary>
    public double CorrectedDrop => Start.Absolute - ReferredPressure;

    /// <summary>Judges the loss.</summary>
    /// <param name="allowed">R, share of the charge.</param>
    public NitrogenVerdict Judge(double allowed)
    {
        var (l, u) = (Loss.Value, Loss.Expanded);
        if (l < -u)
            return NitrogenVerdict.TemperatureOrGauge;
        if (l + u <= allowed)
            return NitrogenVerdict.Held;
        return l - u > allowed ? NitrogenVerdict.Lost : NitrogenVerdict.NotShown;
    }
}

/// <summary>One reading of a nitrogen hold.</summary>
/// <param name="Gauge">Pressure above the atmosphere, Pa (a corrected gauge reading).</param>
/// <param name="Atmosphere">Pressure of the air at the site, Pa absolute.</param>
/// <param name="Temperature">Temperature of the gas as read, K.</param>
internal readonly record struct NitrogenReading(double Gauge, double Atmosphere, double Temperature)
{
    /// <summary>Absolute pressure, Pa.</summary>
    public double Absolute => Gauge + Atmosphere;
}

/// <summary>What a nitrogen hold shows against an allowed loss R.</summary>
internal enum NitrogenVerdict
{
    /// <summary>L + U ≤ R and L ≥ −U: the loss is within what is allowed, its uncertainty included.</summary>
    Held,

    /// <summary>L − U &gt; R: lost more than allowed, beyond doubt.</summary>
    Lost,

    /// <summary>Neither: the hold is too short, or temperature and gauge too uncertain, for this R.</summary>
    NotShown,

    /// <summary>L &lt; −U: gas seems to have come in. Temperature or gauge is at fault; not a pass.</summary>
    TemperatureOrGauge,
}
