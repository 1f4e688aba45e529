using Commission.Fluids.Air;

namespace Commission.Checks.Tests.Simulation;

/// <summary>How the refrigerant is metered.</summary>
internal enum MeteringDevice
{
    /// <summary>A thermostatic expansion valve.</summary>
    Valve,

    /// <summary>A piston or other fixed orifice.</summary>
    Orifice,
}

/// <summary>What a circuit is to do at the rating point; everything else is sized from it.</summary>
/// <param name="Refrigerant">Its designation.</param>
/// <param name="Metering">How it is metered.</param>
/// <param name="Capacity">Refrigerant side, W.</param>
/// <param name="Suction">Saturated suction temperature (dew) at the service valve, K.</param>
/// <param name="CondenserSplit">Mean condensing temperature over outdoor air, K: the efficiency class of the condenser.</param>
/// <param name="Subcooling">K.</param>
/// <param name="Superheat">At the evaporator, K.</param>
internal sealed record CircuitTask(string Refrigerant, MeteringDevice Metering, double Capacity, double Suction, double CondenserSplit, double Subcooling, double Superheat)
{
    /// <summary>An ordinary R-410A split of 10.5 kW: 8 °C, 11 K, 6 K and 6 K (common practice).</summary>
    public static CircuitTask Ordinary(MeteringDevice metering) => new("R-410A", metering, 10_500, 273.15 + 8, 11, 6, 6);
}

/// <summary>The air on both sides, K.</summary>
/// <param name="Outdoor">Dry bulb into the condenser.</param>
/// <param name="Return">Dry bulb into the evaporator.</param>
/// <param name="ReturnWetBulb">Wet bulb into the evaporator.</param>
internal sealed record Weather(double Outdoor, double Return, double ReturnWetBulb)
{
    /// <summary>The rating point of AHRI 210/240, 95/80/67 °F.</summary>
    public static Weather Us { get; } = Celsius(35, 26.7, 19.4);

    /// <summary>The standard rating point T1 of EN 14511-2 and ISO 5151, 35/27/19 °C.</summary>
    public static Weather Eu { get; } = Celsius(35, 27, 19);

    /// <summary>Enthalpy of the return air, J/kg of dry air.</summary>
    public double ReturnEnthalpy { get; } = MoistAir.FromWetBulb(Return, ReturnWetBulb, CoilAir.Pressure).Value.Enthalpy;

    public static Weather Celsius(double outdoor, double indoor, double wetBulb) => new(outdoor + 273.15, indoor + 273.15, wetBulb + 273.15);
}

/// <summary>What is wrong with a circuit.</summary>
internal enum FaultKind
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>Severity: share of the charge that is missing.</summary>
    LowCharge,

    /// <summary>Severity: share of the charge that is too much.</summary>
    Overcharge,

    /// <summary>A plugged drier. Severity: its loss at design flow over the design's condensing less evaporating pressure.</summary>
    LiquidLineRestriction,

    /// <summary>Severity: share of the indoor air that is missing.</summary>
    LowIndoorAirflow,

    /// <summary>A dirty condenser. Severity: share of its air that is missing.</summary>
    CondenserDirt,

    /// <summary>Air or nitrogen. Severity: its partial pressure in the running condenser over the design's condensing pressure.</summary>
    NonCondensables,

    /// <summary>The valve does not open further. Severity: share of the design opening that is missing.</summary>
    ValveUnderfeeding,

    /// <summary>A loose bulb. Severity, K: how much more superheat it feels than there is.</summary>
    ValveOverfeeding,

    /// <summary>Severity: share of the flow that leaks back inside.</summary>
    WeakCompressor,

    /// <summary>Hot gas passes to the suction. Severity: share of the compressor's flow.</summary>
    PassingReversingValve,
}

/// <summary>One fault of a known size.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="Severity">How much, see <see cref="FaultKind"/>.</param>
internal sealed record CircuitFault(FaultKind Kind, double Severity)
{
    /// <summary>Nothing wrong.</summary>
    public static CircuitFault None { get; } = new(FaultKind.None, 0);

    /// <summary>The severity where it is this fault, else 0.</summary>
    public double Of(FaultKind kind) => kind == Kind ? Severity : 0;
}
