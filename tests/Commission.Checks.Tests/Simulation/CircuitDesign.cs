namespace Commission.Checks.Tests.Simulation;

/// <summary>
/// The sizes of a circuit, worked back from its task at the US rating point. Sizes for each watt are common practice for split systems of
/// 5 to 15 kW: 400 cfm/ton (0.054 m³/s for each kW) indoors, a quarter of a liter of tubes for each kW indoors and four tenths outdoors.
/// </summary>
internal sealed record CircuitDesign
{
    private const double IndoorAirFlow = 0.0537e-3 * CoilAir.Density;
    private const double EvaporatorVolumePerWatt = 0.22e-6;
    private const double CondenserVolumePerWatt = 0.38e-6;

    /// <summary>How near the condenser's air comes to condensing temperature: heat over the largest possible heat.</summary>
    private const double CondenserAirEffectiveness = 0.62;

    /// <summary>Cross sections of the lines, m²; lengths are theirs.</summary>
    private const double LiquidLineArea = 50e-6;
    private const double VaporLineArea = 240e-6;
    private const double LineLength = 10;

    /// <summary>Losses at design flow: vapor line and evaporator as shares of the suction pressure, liquid line in Pa.</summary>
    private const double SuctionLoss = 0.02;
    private const double LiquidLoss = 25_000;

    /// <summary>U·A of the insulated vapor line to the outdoor air, W/K.</summary>
    private const double VaporLineConductance = 2;

    /// <summary>How far the superheat rises from the valve's first opening to its design opening, K.</summary>
    private const double ValveGradient = 3;

    /// <summary>Largest opening over that at the design.</summary>
    private const double ValveReserve = 1.25;

    public required CircuitTask Task { get; init; }

    public required RefrigerantTable Fluid { get; init; }

    public required Compressor Compressor { get; init; }

    public required Condenser Condenser { get; init; }

    public required Evaporator Evaporator { get; init; }

    /// <summary>Flow over √(2·ρ·Δp) at the design opening, m².</summary>
    public required double MeteringArea { get; init; }

    /// <summary>kg/s at the design.</summary>
    public required double Flow { get; init; }

    /// <summary>Condensing less evaporating pressure at the design, Pa: what a restriction is measured by.</summary>
    public required double Lift { get; init; }

    /// <summary>Condensing pressure at the design, Pa.</summary>
    public required double CondensingPressure { get; init; }

    /// <summary>Charge that gives the design's subcooling, kg.</summary>
    public double Charge { get; init; }

    public double CondenserVolume => Task.Capacity * CondenserVolumePerWatt;

    public double EvaporatorVolume => Task.Capacity * EvaporatorVolumePerWatt;

    public double LiquidLineVolume => LineLength * LiquidLineArea;

    public double VaporLineVolume => LineLength * VaporLineArea;

    public double ValveOpeningGradient => ValveGradient;

    /// <summary>Superheat at which the valve begins to open, K.</summary>
    public double StaticSuperheat => Task.Superheat - ValveGradient;

    public double LargestOpening => ValveReserve;

    /// <summary>Loss of the liquid line, Pa, by the square of the flow.</summary>
    public double LiquidLineLoss(double flow, double density) => LiquidLoss * Square(flow / Flow) * NominalLiquidDensity / density;

    /// <summary>Loss from the evaporator to the service valve, Pa.</summary>
    public double VaporLineLoss(double flow, double pressure, double density) =>
        Math.Min(0.5 * pressure, SuctionLoss * DesignSuction * Square(flow / Flow) * DesignSuctionDensity / density);

    /// <summary>Warming of the vapor on its way to the service valve, J/kg.</summary>
    public double VaporLineGain(double flow, double kelvin, double outdoor) => VaporLineConductance * (outdoor - kelvin) / flow;

    private double NominalLiquidDensity => Fluid.LiquidDensity(CondensingPressure);

    private double DesignSuction => Fluid.DewPressure(Task.Suction);

    private double DesignSuctionDensity => Fluid.VaporDensity(DesignSuction);

    private static double Square(double x) => x * x;

    /// <summary>Sizes a circuit for its task.</summary>
    public static CircuitDesign For(CircuitTask task)
    {
        var fluid = RefrigerantTable.Of(task.Refrigerant);
        var weather = Weather.Us;
        var suction = fluid.DewPressure(task.Suction);
        var evaporating = suction * (1 + SuctionLoss);
        var mean = weather.Outdoor + task.CondenserSplit;
        var condensing = Math.Exp(Root.OfFalling(ln => mean - 0.5 * (fluid.Dew(Math.Exp(ln)) + fluid.Bubble(Math.Exp(ln))), Math.Log(suction), Math.Log(fluid.Range.High), 1e-9));
        var liquid = fluid.LiquidEnthalpy(fluid.BubblePressure(fluid.Bubble(condensing) - task.Subcooling));
        var outlet = fluid.VaporEnthalpy(evaporating) + fluid.VaporHeat(evaporating) * task.Superheat;
        var flow = task.Capacity / (outlet - liquid);

        var air = task.Capacity * IndoorAirFlow;
        var conductance = Root.OfFalling(
            ua => outlet - new Evaporator(ua, air).Leave(fluid, evaporating, flow, liquid, weather).Enthalpy, 0.01 * task.Capacity, task.Capacity, 1e-3);

        var inlet = outlet + VaporLineConductance * (weather.Outdoor - fluid.Dew(evaporating) - task.Superheat) / flow;
        var compressor = new Compressor(1);
        compressor = compressor with { Displacement = flow / compressor.Run(fluid, suction, inlet, condensing).Flow };
        var run = compressor.Run(fluid, suction, inlet, condensing);
        var condenserAir = flow * (run.Discharge - liquid) / (CoilAir.Heat * task.CondenserSplit * CondenserAirEffectiveness);
        var target = fluid.Bubble(condensing) - task.Subcooling;
        var condenserConductance = Root.OfFalling(
            ua => new Condenser(ua, condenserAir).Leave(fluid, condensing, flow, run.Discharge, weather.Outdoor) is var s && s.Subcooling > 0 ? s.Temperature - target : 1 - s.Subcooling,
            0.01 * task.Capacity, 5 * task.Capacity, 1e-3);

        var design = new CircuitDesign
        {
            Task = task,
            Fluid = fluid,
            Compressor = compressor,
            Condenser = new Condenser(condenserConductance, condenserAir),
            Evaporator = new Evaporator(conductance, air),
            MeteringArea = 1,
            Flow = flow,
            Lift = condensing - evaporating,
            CondensingPressure = condensing,
        };
        var balance = new CircuitBalance(design, weather, CircuitFault.None);
        design = design with { MeteringArea = flow / balance.At(evaporating, condensing, outlet).Metered };
        return design with { Charge = new CircuitBalance(design, weather, CircuitFault.None).At(evaporating, condensing, outlet).Charge };
    }
}

/// <summary>What the compressor does: flow in kg/s, discharge enthalpy in J/kg, power in W.</summary>
internal sealed record CompressorState(double Flow, double Discharge, double Power);

/// <summary>
/// Compressor: volumetric efficiency by clearance, 1 − c·(r^(1/n) − 1), and isentropic efficiency that falls on both sides of the built-in
/// ratio (any textbook of refrigeration; figures common practice for scrolls).
/// </summary>
/// <param name="Displacement">m³/s.</param>
/// <param name="LeakShare">Share of the flow that worn valves or flanks let back, 0…1.</param>
internal sealed record Compressor(double Displacement, double LeakShare = 0)
{
    /// <summary>Share of liquid in the suction that goes into the cylinder; the rest stays in the shell and boils there.</summary>
    private const double LiquidCarried = 0.3;

    private const double Clearance = 0.035;
    private const double BestIsentropic = 0.70;
    private const double BuiltInRatio = 2.6;
    private const double LossAboveRatio = 0.045;
    private const double LossBelowRatio = 0.09;
    private const double LeastIsentropic = 0.35;

    /// <summary>Share of the electrical power that leaves through the shell, not with the gas.</summary>
    public const double ShellLoss = 0.08;

    /// <summary>Share of the work on leaked gas that stays in the power: it leaks at part of the compression.</summary>
    private const double LeakWork = 0.75;

    public CompressorState Run(RefrigerantTable fluid, double pressure, double enthalpy, double discharge)
    {
        var ratio = Math.Max(1.05, discharge / pressure);
        double liquid = fluid.LiquidEnthalpy(pressure), vapor = fluid.VaporEnthalpy(pressure);
        var density = fluid.Density(pressure, enthalpy < vapor ? vapor - LiquidCarried * Math.Min(vapor - enthalpy, vapor - liquid) : enthalpy);
        var full = Displacement * density * Math.Max(0.2, 1 - Clearance * (Math.Pow(ratio, 1 / fluid.IsentropicExponent) - 1));
        var off = ratio - BuiltInRatio;
        var efficiency = Math.Max(LeastIsentropic, BestIsentropic - (off > 0 ? LossAboveRatio : -LossBelowRatio) * off);
        var power = full * (1 - LeakShare + LeakWork * LeakShare) * RefrigerantTable.PolytropicWork(fluid.IsentropicExponent, pressure, density, ratio) / efficiency;
        var flow = full * (1 - LeakShare);
        return new CompressorState(flow, enthalpy + (1 - ShellLoss) * power / flow, power);
    }
}
