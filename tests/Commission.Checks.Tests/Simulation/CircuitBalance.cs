namespace Commission.Checks.Tests.Simulation;

/// <summary>Everything at one pair of evaporating and condensing pressures, balanced or not yet. SI, K, Pa absolute.</summary>
internal sealed record CircuitState
{
    /// <summary>Refrigerant through condenser and evaporator, kg/s.</summary>
    public required double Flow { get; init; }

    /// <summary>What the metering device would pass, kg/s.</summary>
    public required double Metered { get; init; }

    /// <summary>Refrigerant in the circuit, kg.</summary>
    public required double Charge { get; init; }

    /// <summary>At the vapor service valve.</summary>
    public required double VaporPressure { get; init; }

    /// <summary>At the liquid service valve, with the partial pressure of other gas.</summary>
    public required double LiquidPressure { get; init; }

    /// <summary>Enthalpy at the vapor service valve, J/kg.</summary>
    public required double VaporEnthalpy { get; init; }

    /// <summary>Enthalpy into the compressor, J/kg; more than at the service valve when hot gas passes.</summary>
    public required double SuctionEnthalpy { get; init; }

    public required CompressorState Compressor { get; init; }

    public required CondenserState Condenser { get; init; }

    public required EvaporatorState Evaporator { get; init; }

    /// <summary>Of the liquid behind the drier.</summary>
    public required double AfterDrier { get; init; }

    /// <summary>Vapor share before the metering device.</summary>
    public required double Flash { get; init; }
}

/// <summary>The parts of a circuit tied together at given pressures: what flows, what the metering device would pass, how much it holds.</summary>
internal sealed class CircuitBalance(CircuitDesign design, Weather weather, CircuitFault fault)
{
    /// <summary>Share of the saturation pressure at which liquid flashes in a short tube (after the idea of Aaron and Domanski 1990, from memory).</summary>
    private const double FlashShare = 0.5;

    /// <summary>Least opening of a valve: its bleed.</summary>
    private const double LeastOpening = 0.05;

    /// <summary>How much the film of other gas takes from condensing: conductance · (1 − this · share of the pressure).</summary>
    private const double GasFilm = 1.5;

    private const double ColdestEvaporating = 273.15 - 33;

    /// <summary>Of ln p.</summary>
    private const double PressureTolerance = 1e-6;

    private readonly RefrigerantTable _fluid = design.Fluid;
    private readonly Condenser _condenser = design.Condenser with
    {
        AirShare = 1 - fault.Of(FaultKind.CondenserDirt),
        GasShare = 1 - GasFilm * fault.Of(FaultKind.NonCondensables),
    };
    private readonly Evaporator _evaporator = design.Evaporator with { AirShare = 1 - fault.Of(FaultKind.LowIndoorAirflow) };
    private readonly Compressor _compressor = design.Compressor with { LeakShare = fault.Of(FaultKind.WeakCompressor) };
    private readonly double _gasPressure = fault.Of(FaultKind.NonCondensables) * design.CondensingPressure;

    /// <summary>
    /// The state at a condensing pressure in which the evaporator brings the refrigerant to a given heat over its dew point: colder
    /// evaporation gives more, so that there is one pressure for each.
    /// </summary>
    /// <param name="condensing">Partial pressure of the refrigerant in the condenser, Pa.</param>
    /// <param name="over">Enthalpy after the evaporator over that of dry vapor, J/kg; below 0 with liquid.</param>
    public CircuitState At(double condensing, double over)
    {
        double coldest = Math.Log(_fluid.DewPressure(ColdestEvaporating)), warmest = Math.Log(_fluid.DewPressure(weather.Return - 0.2));
        double Outlet(double evaporating) => _fluid.VaporEnthalpy(evaporating) + over;
        double Excess(double lnEvaporating)
        {
            var evaporating = Math.Exp(lnEvaporating);
            return At(evaporating, condensing, Outlet(evaporating)).Evaporator.Enthalpy - Outlet(evaporating);
        }
        var found = Math.Exp(Root.OfFalling(Excess, coldest, warmest, PressureTolerance));
        return At(found, condensing, Outlet(found));
    }

    /// <summary>The state at two pressures and an enthalpy after the evaporator, balanced or not.</summary>
    /// <param name="evaporating">At the outlet of the evaporator, Pa.</param>
    /// <param name="condensing">Partial pressure of the refrigerant in the condenser, Pa.</param>
    /// <param name="outlet">J/kg.</param>
    public CircuitState At(double evaporating, double condensing, double outlet)
    {
        var high = condensing + _gasPressure;
        var through = 1 - fault.Of(FaultKind.PassingReversingValve);
        // The losses of the vapor line hang on the flow, which they hardly change: the flow without them will do.
        var nearly = through * _compressor.Run(_fluid, evaporating, outlet, high).Flow;
        var pressure = evaporating - design.VaporLineLoss(nearly, evaporating, _fluid.Density(evaporating, outlet));
        var vapor = outlet + Math.Max(0, design.VaporLineGain(nearly, Kelvin(evaporating, outlet), weather.Outdoor));
        var (suction, run) = Compress(pressure, vapor, high);
        var flow = run.Flow * through;
        var condensed = _condenser.Leave(_fluid, condensing, flow, run.Discharge, weather.Outdoor);

        var liquidDensity = condensed.Quality > 0 ? _fluid.Density(condensing, condensed.Enthalpy) : _fluid.LiquidDensity(_fluid.BubblePressure(condensed.Temperature));
        var squared = Math.Pow(flow / design.Flow, 2) * _fluid.LiquidDensity(design.CondensingPressure) / liquidDensity;
        var afterDrier = Math.Max(1.05 * evaporating, high - fault.Of(FaultKind.LiquidLineRestriction) * design.Lift * squared);
        var inlet = Math.Max(1.02 * evaporating, afterDrier - design.LiquidLineLoss(flow, liquidDensity));
        var evaporated = _evaporator.Leave(_fluid, evaporating, flow, condensed.Enthalpy, weather);
        return new CircuitState
        {
            Flow = flow,
            Metered = Metered(inlet, evaporating, condensed, evaporated),
            Charge = Held(evaporating, condensing, condensed, evaporated, liquidDensity),
            VaporPressure = pressure,
            LiquidPressure = high,
            VaporEnthalpy = vapor,
            SuctionEnthalpy = suction,
            Compressor = run,
            Condenser = condensed,
            Evaporator = evaporated,
            AfterDrier = Math.Min(condensed.Temperature, Boiling(afterDrier, condensed.Enthalpy)),
            Flash = Quality(inlet, condensed.Enthalpy),
        };
    }

    /// <summary>Hot gas that passes the reversing valve warms the suction, which warms the hot gas: a few rounds settle it.</summary>
    private (double Suction, CompressorState Run) Compress(double pressure, double vapor, double high)
    {
        const int rounds = 8;
        var share = fault.Of(FaultKind.PassingReversingValve);
        var suction = vapor;
        var run = _compressor.Run(_fluid, pressure, suction, high);
        for (var round = 0; share > 0 && round < rounds; round++)
        {
            suction = (1 - share) * vapor + share * run.Discharge;
            run = _compressor.Run(_fluid, pressure, suction, high);
        }
        return (suction, run);
    }

    /// <summary>
    /// kg/s. A valve: opening · area · √(2 ρ Δp), opening by superheat over its static superheat; when bubbles come, with the density
    /// without slip and, because they choke the seat, once more less by √(ρ/ρ_l). An orifice chokes: √(2 ρ (p − 0.8 p_sat)), so that subcooling drives it.
    /// </summary>
    private double Metered(double inlet, double evaporating, CondenserState condensed, EvaporatorState evaporated)
    {
        var flashing = condensed.Enthalpy > _fluid.LiquidEnthalpy(inlet);
        var saturation = flashing ? inlet : _fluid.BubblePressure(condensed.Temperature);
        var liquid = _fluid.LiquidDensity(saturation);
        var density = flashing ? _fluid.Density(inlet, condensed.Enthalpy) : liquid;
        if (design.Task.Metering == MeteringDevice.Orifice)
            return design.MeteringArea * Math.Sqrt(2 * density * Math.Max(0, inlet - Math.Max(evaporating, FlashShare * saturation)));
        return Opening(evaporating, evaporated) * design.MeteringArea * Math.Sqrt(density / liquid) * Math.Sqrt(2 * density * Math.Max(0, inlet - evaporating));
    }

    private double Opening(double evaporating, EvaporatorState evaporated)
    {
        var largest = fault.Kind == FaultKind.ValveUnderfeeding ? 1 - fault.Severity : design.LargestOpening;
        var superheat = Math.Max(0, evaporated.Enthalpy - _fluid.VaporEnthalpy(evaporating)) / _fluid.VaporHeat(evaporating) + fault.Of(FaultKind.ValveOverfeeding);
        return Math.Clamp((superheat - design.StaticSuperheat) / design.ValveOpeningGradient, LeastOpening, largest);
    }

    /// <summary>Refrigerant in condenser, liquid line, evaporator and vapor line, kg; what the oil holds is taken as constant and left out.</summary>
    private double Held(double evaporating, double condensing, CondenserState condensed, EvaporatorState evaporated, double liquidDensity)
    {
        double gas = _fluid.VaporDensity(condensing), liquid = _fluid.LiquidDensity(condensing);
        var twoPhase = Math.Min(condensed.Condensing, Math.Max(0, 1 - condensed.Desuperheating));
        var condenser = Math.Min(1, condensed.Desuperheating) * gas
            + twoPhase * MeanDensity(gas, liquid, condensed.Quality, 1)
            + Math.Max(0, condensed.Subcooling) * liquidDensity;
        double low = _fluid.VaporDensity(evaporating), wet = _fluid.LiquidDensity(evaporating);
        double entry = Quality(evaporating, condensed.Enthalpy), exit = Math.Min(1, Quality(evaporating, evaporated.Enthalpy));
        var evaporator = evaporated.Wet * MeanDensity(low, wet, entry, exit) + (1 - evaporated.Wet) * low;
        return design.CondenserVolume * condenser
            + design.LiquidLineVolume * liquidDensity
            + design.EvaporatorVolume * evaporator
            + design.VaporLineVolume * _fluid.Density(evaporating, evaporated.Enthalpy);
    }

    /// <summary>
    /// Mean density between two vapor shares at even heat flow with the slip of Zivi (1964): void fraction
    /// α = x / (x + (1 − x)·S), S = (ρ_g/ρ_l)^(2/3), integrated over x.
    /// </summary>
    private static double MeanDensity(double gas, double liquid, double from, double to)
    {
        var slip = Math.Pow(gas / liquid, 2.0 / 3);
        if (to - from < 1e-3)
            to = from + 1e-3;
        double Integral(double x) => x / (1 - slip) - slip / Math.Pow(1 - slip, 2) * Math.Log(slip + (1 - slip) * x);
        var alpha = (Integral(to) - Integral(from)) / (to - from);
        return alpha * gas + (1 - alpha) * liquid;
    }

    private double Quality(double pressure, double enthalpy)
    {
        var liquid = _fluid.LiquidEnthalpy(pressure);
        return Math.Max(0, (enthalpy - liquid) / (_fluid.VaporEnthalpy(pressure) - liquid));
    }

    private double Boiling(double pressure, double enthalpy)
    {
        var bubble = _fluid.Bubble(pressure);
        return bubble + Math.Min(1, Quality(pressure, enthalpy)) * (_fluid.Dew(pressure) - bubble);
    }

    /// <summary>Temperature at a pressure and enthalpy between liquid and warm vapor.</summary>
    public double Kelvin(double pressure, double enthalpy) => enthalpy > _fluid.VaporEnthalpy(pressure)
        ? _fluid.Dew(pressure) + (enthalpy - _fluid.VaporEnthalpy(pressure)) / _fluid.VaporHeat(pressure)
        : Boiling(pressure, enthalpy);
}
