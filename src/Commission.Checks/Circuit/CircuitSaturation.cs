using System.Collections.Immutable;
using System.Globalization;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Fluids;
using Commission.Fluids.Mixtures;
using Commission.Fluids.Saturation;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;

namespace Commission.Checks.Circuit;

/// <summary>
/// Saturation temperatures of the circuit's refrigerant at corrected pressures. The refrigerant's own equations are one root cause of
/// doubt, a share of the pressure that acts through dT/dp, common to every temperature taken from them.
/// </summary>
internal sealed class CircuitSaturation : IAnalysis<CircuitSaturation>
{
    private readonly CheckContext _context;
    private readonly CircuitRefrigerant _circuit;
    private readonly Lazy<RootCause> _model;
    private readonly Lazy<(RootCause? Bubble, RootCause? Dew)> _listed;

    private CircuitSaturation(CheckContext context)
    {
        _context = context;
        _circuit = context.Get<CircuitRefrigerant>();
        _model = new Lazy<RootCause>(MakeModel);
        _listed = new Lazy<(RootCause? Bubble, RootCause? Dew)>(MakeListed);
    }

    /// <summary>Whether dew and bubble differ: the refrigerant is a blend.</summary>
    public bool IsBlend => _circuit.Info?.IsBlend ?? false;

    /// <summary>Designation of the refrigerant.</summary>
    public string Designation => _circuit.Designation;

    /// <summary>Where the temperatures come from, as a trace cites it.</summary>
    public string Source => _context.Present.Text(CircuitMessages.EquationsUsed(IsBlend ? CircuitMessages.EquationsUsedKind.Blend : CircuitMessages.EquationsUsedKind.Pure, new(Designation)));

    /// <inheritdoc/>
    public static CircuitSaturation Create(CheckContext context) => new(context);

    /// <summary>The dew point at a pressure.</summary>
    /// <param name="pressure">A corrected pressure, absolute.</param>
    public SaturationTemperature Dew(CorrectedReading pressure) =>
        At(pressure, Often ? static (fluid, p) => fluid.Fast.DewPoint(p) : static (fluid, p) => Point(fluid.DewAtPressure(p)), () => _listed.Value.Dew);

    /// <summary>The bubble point at a pressure.</summary>
    /// <param name="pressure">A corrected pressure, absolute.</param>
    public SaturationTemperature Bubble(CorrectedReading pressure) =>
        At(pressure, Often ? static (fluid, p) => fluid.Fast.BubblePoint(p) : static (fluid, p) => Point(fluid.BubbleAtPressure(p)), () => _listed.Value.Bubble);

    // Drawn errors ask thousands of times; one run asks less often than an expansion takes to make.
    private bool Often => _context.Scope is SamplingScope;

    private static FluidResult<SaturationPoint> Point(FluidResult<SaturationState> state) => state.Ok
        ? FluidResult<SaturationPoint>.Of(new SaturationPoint(state.Value.Temperature, state.Value.TemperatureSlope))
        : FluidResult<SaturationPoint>.None(state.Reason);

    private SaturationTemperature At(CorrectedReading pressure, Func<Refrigerant, double, FluidResult<SaturationPoint>> curve, Func<RootCause?> beyond)
    {
        if (_circuit.Fluid is not { } fluid)
            return SaturationTemperature.None(CircuitMessages.CannotBeComputed(new(Designation), _circuit.WhyNot!));
        var p = pressure.Value.Value;
        var state = curve(fluid, p);
        if (!state.Ok)
            return SaturationTemperature.None(state.Reason);
        var (temperature, slope) = (state.Value.Temperature, state.Value.TemperatureSlope);
        var value = Uncertain.WithPartials(temperature, (pressure.Value, slope)) + _context.Scope.Reading(0, p * slope * _model.Value);
        if (beyond() is { } difference)
            value += _context.Scope.Reading(0, p * slope * difference);
        var before = pressure.AfterZero == p ? state : curve(fluid, pressure.AfterZero);
        return SaturationTemperature.Of(value, before.Ok ? before.Value.Temperature : double.NaN, slope);
    }

    private RootCause MakeModel()
    {
        var (id, kind) = _circuit.Fluid is { EstimatedPairs.Length: > 0 } ? (LimitIds.AssumptionRefrigerantEstimated, CircuitMessages.EquationsSourceKind.Estimated)
            : IsBlend ? (LimitIds.AssumptionRefrigerantBlend, CircuitMessages.EquationsSourceKind.Blend)
            : (LimitIds.AssumptionRefrigerantPure, CircuitMessages.EquationsSourceKind.Pure);
        return _context.Causes.Enter(
            new RootCause(CircuitMessages.EquationsOfState(new(Designation)), CircuitMessages.EquationsSource(kind), _context.Assume(id)),
            DisplayKind.Percentage);
    }

    // Where the listed normal boiling point lies further from the equations than the assumed share of the pressure allows, the rest
    // of the way is a doubt of its own for that curve. A blend that is not listed takes the way of its sisters: the listed blends with
    // the same estimated pair.
    private (RootCause? Bubble, RootCause? Dew) MakeListed()
    {
        const double StandardAtmosphere = 101_325;
        if (_circuit.Fluid is not { IsBlend: true } fluid)
            return (null, null);
        if (fluid.CompareWithListedBoilingRange() is { Ok: true, Value: var difference })
        {
            return (
                Listed(CircuitMessages.ListedPointCurve.Bubble, difference.Bubble, fluid.BubbleAtPressure(StandardAtmosphere)),
                Listed(CircuitMessages.ListedPointCurve.Dew, difference.Dew, fluid.DewAtPressure(StandardAtmosphere)));
        }
        return fluid.EstimateDeviation is { } sisters
            ? (OfSisters(CircuitMessages.EstimatedPointCurve.Bubble, sisters.Bubble, sisters), OfSisters(CircuitMessages.EstimatedPointCurve.Dew, sisters.Dew, sisters))
            : (null, null);
    }

    private RootCause? Listed(CircuitMessages.ListedPointCurve curve, double kelvins, FluidResult<SaturationState> boiling) =>
        boiling.Ok
            ? Beyond(
                CircuitMessages.ListedPoint(new(Designation), curve),
                CircuitMessages.ListedSource(new(string.Create(CultureInfo.InvariantCulture, $"{-kelvins:+0.00;−0.00} K"))),
                Math.Abs(kelvins) * boiling.Value.PressureSlope / boiling.Value.Pressure)
            : null;

    private RootCause? OfSisters(CircuitMessages.EstimatedPointCurve curve, double share, EstimateDeviation sisters) => Beyond(
        CircuitMessages.EstimatedPoint(new(Designation), curve),
        CircuitMessages.EstimatedSource(
            new(sisters.Pair), new([.. sisters.Sisters.Select(s => new NameValue(s))], ListJoin.Comma), new(string.Create(CultureInfo.InvariantCulture, $"{100 * share:0.0} %")),
            sisters.HoldPair ? CircuitMessages.EstimatedSourceHow.SamePair : CircuitMessages.EstimatedSourceHow.SameRule),
        share);

    // The share is the half-width of a rectangular doubt.
    private RootCause? Beyond(Message name, Message detail, double share)
    {
        var standard = share / Math.Sqrt(3);
        var rest = (standard * standard) - (_model.Value.StandardUncertainty * _model.Value.StandardUncertainty);
        return rest > 0
            ? _context.Causes.Enter(new RootCause(name, detail, Math.Sqrt(rest), distribution: Distribution.Rectangular), DisplayKind.Percentage)
            : null;
    }
}

/// <summary>A saturation temperature at a corrected pressure, or why there is none.</summary>
internal sealed record SaturationTemperature
{
    private SaturationTemperature()
    {
    }

    /// <summary>The temperature after every correction of the pressure, K; null when the state does not exist.</summary>
    public Uncertain? Value { get; private init; }

    /// <summary>The temperature at the pressure after its zero alone, K; not a number when that state does not exist.</summary>
    public double AfterZero { get; private init; } = double.NaN;

    /// <summary>dT/dp along the curve, K/Pa.</summary>
    public double Slope { get; private init; }

    /// <summary>Why there is none, as a sentence; null when there is one.</summary>
    public Message? WhyNot { get; private init; }

    /// <summary>A temperature.</summary>
    /// <param name="value">After every correction, K.</param>
    /// <param name="afterZero">After the zero alone, K.</param>
    /// <param name="slope">dT/dp, K/Pa.</param>
    public static SaturationTemperature Of(Uncertain value, double afterZero, double slope) => new() { Value = value, AfterZero = afterZero, Slope = slope };

    /// <summary>The middle between dew and bubble point at one pressure: the condensing or evaporating temperature of a blend with glide.</summary>
    /// <param name="dew">The dew point.</param>
    /// <param name="bubble">The bubble point.</param>
    public static SaturationTemperature Middle(SaturationTemperature dew, SaturationTemperature bubble) => (dew.Value, bubble.Value) switch
    {
        ({ } d, { } b) => Of((d + b) / 2, (dew.AfterZero + bubble.AfterZero) / 2, (dew.Slope + bubble.Slope) / 2),
        (null, _) => dew,
        _ => bubble,
    };

    /// <summary>None.</summary>
    /// <param name="why">Why, without a full stop.</param>
    public static SaturationTemperature None(Message why) => new() { WhyNot = why };
}

/// <summary>The cycle through the measured states of a row: suction, compression, liquid, and what the throttle leaves.</summary>
internal sealed record ChargeCycle
{
    private ChargeCycle()
    {
    }

    /// <summary>Why the states cannot be worked out, without a full stop; null when they can.</summary>
    public Message? WhyNot { get; private init; }

    /// <summary>Vapor at the service valve.</summary>
    public FluidState Suction { get; private init; }

    /// <summary>End of an ideal compression to the high pressure.</summary>
    public FluidState Isentropic { get; private init; }

    /// <summary>Measured discharge; null when the line was not read.</summary>
    public FluidState? Discharge { get; private init; }

    /// <summary>Liquid at the service valve.</summary>
    public FluidState Liquid { get; private init; }

    /// <summary>After the throttle, at the vapor pressure with the enthalpy of the liquid.</summary>
    public FluidState Throttled { get; private init; }

    /// <summary>Heat taken up by each kilogram, J/kg, with the doubt of the four readings.</summary>
    public Uncertain Capacity { get; private init; } = Uncertain.Exact(0);

    /// <summary>High over low pressure, both absolute.</summary>
    public Uncertain Ratio { get; private init; } = Uncertain.Exact(0);

    /// <summary>Readings it rests on.</summary>
    public ImmutableArray<CorrectedReading> Readings { get; private init; } = [];

    /// <summary>Whether a row has what a cycle needs.</summary>
    public static bool Has(ChargeRow row) => row.Written is { VaporPressure: not null, VaporLine: not null, LiquidPressure: not null, LiquidLine: not null };

    /// <summary>Works the states out.</summary>
    /// <param name="context">The job and everything derived from it.</param>
    /// <param name="row">A row that <see cref="Has"/> what is needed.</param>
    public static ChargeCycle Of(CheckContext context, ChargeRow row)
    {
        if (row.Mode == OperatingMode.Heating || row is not { VaporPressure: { } low, VaporLine: { } vapor, LiquidPressure: { } high, LiquidLine: { } liquid })
            return None(CircuitMessages.BothSidesNotRead, []);
        var circuit = context.Get<CircuitRefrigerant>();
        var readings = ImmutableArray.Create(low, vapor, high, liquid);
        if (circuit.Fluid is not { } fluid)
            return None(CircuitMessages.CannotBeComputed(new(circuit.Designation), circuit.WhyNot!), readings);
        if (!(row.Superheat.Value?.Value > 0))
            return None(row.Superheat.WhyNot ?? CircuitMessages.NotSuperheated, readings);
        if (row.LiquidBubble?.Value is { Value: var bubble } && liquid.Value.Value >= bubble)
            return None(CircuitMessages.NotSubcooled, readings);
        var top = row.DischargePressure ?? high;
        if (row.DischargePressure is { } discharge)
            readings = readings.Add(discharge);
        var suction = fluid.At(vapor.Value.Value, low.Value.Value, Phase.Vapor);
        var condensed = fluid.At(liquid.Value.Value, high.Value.Value, Phase.Liquid);
        if (!suction.Ok || !condensed.Ok)
            return None((suction.Reason ?? condensed.Reason)!, readings);
        var ideal = fluid.AtPressureEntropy(top.Value.Value, suction.Value.Entropy);
        var throttled = fluid.AtPressureEnthalpy(low.Value.Value, condensed.Value.Enthalpy);
        if (!ideal.Ok || !throttled.Ok)
            return None((ideal.Reason ?? throttled.Reason)!, readings);
        FluidState? hot = null;
        if (row.DischargeLine is { } line && fluid.At(line.Value.Value, top.Value.Value, Phase.Vapor) is { Ok: true, Value: var measured } && measured.Enthalpy > suction.Value.Enthalpy)
        {
            hot = measured;
            readings = readings.Add(line);
        }

        double Capacity(double[] x) =>
            fluid.At(x[1], x[0], Phase.Vapor) is { Ok: true, Value: var a } && fluid.At(x[3], x[2], Phase.Liquid) is { Ok: true, Value: var b } ? a.Enthalpy - b.Enthalpy : double.NaN;
        return new ChargeCycle
        {
            Suction = suction.Value,
            Isentropic = ideal.Value,
            Discharge = hot,
            Liquid = condensed.Value,
            Throttled = throttled.Value,
            Capacity = Uncertain.Apply(Capacity, [low.Value, vapor.Value, high.Value, liquid.Value]),
            Ratio = top.Value / low.Value,
            Readings = readings,
        };
    }

    private static ChargeCycle None(Message why, ImmutableArray<CorrectedReading> readings) => new() { WhyNot = why, Readings = readings };
}
