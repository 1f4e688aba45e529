using System.Runtime.InteropServices;

namespace Commission.Checks.Tests.Simulation;

/// <summary>What perfect instruments would show. K and Pa absolute, W.</summary>
internal sealed record CircuitReadings
{
    public required double VaporPressure { get; init; }

    public required double LiquidPressure { get; init; }

    public required double VaporLine { get; init; }

    public required double LiquidLine { get; init; }

    public required double DischargeLine { get; init; }

    public required double LiquidAfterDrier { get; init; }

    public required double CompressorSuctionLine { get; init; }

    public required double Supply { get; init; }

    public required double Power { get; init; }

    /// <summary>Refrigerant through the evaporator, kg/s.</summary>
    public required double Flow { get; init; }

    /// <summary>Vapor share before the metering device.</summary>
    public required double Flash { get; init; }

    /// <summary>Dew temperature of the vapor pressure, K.</summary>
    public required double Suction { get; init; }

    /// <summary>Vapor line over that, K.</summary>
    public required double Superheat { get; init; }

    /// <summary>Liquid line under the bubble temperature of the liquid pressure, K.</summary>
    public required double Subcooling { get; init; }

    /// <summary>Mean of bubble and dew temperature of the liquid pressure over outdoor air, K.</summary>
    public required double CondenserSplit { get; init; }

    /// <summary>Return less supply air, K.</summary>
    public required double AirSplit { get; init; }

    /// <summary>Liquid line over outdoor air, K.</summary>
    public required double Approach { get; init; }

    /// <summary>Liquid line less liquid after drier, K.</summary>
    public double DrierDrop => LiquidLine - LiquidAfterDrier;
}

/// <summary>A steady state, or why there is none that a crew could have read.</summary>
/// <param name="Readings">Null when there is none.</param>
/// <param name="Reason">Null when there is one.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct CircuitResult(CircuitReadings? Readings, string? Reason);

/// <summary>
/// Steady state of an air-to-air cooling circuit by three nested roots: the evaporating pressure at which the evaporator gives what leaves
/// it; how dry that is, so that the metering device passes what the compressor moves; the condensing pressure at which the circuit holds
/// its charge. Where an orifice begins to flood, liquid moves from condenser to evaporator and the last residual may jump over zero: such a
/// circuit has no steady state there and is turned down with its reason.
/// </summary>
internal static class CircuitModel
{
    /// <summary>Suction below which a pressure switch or ice would have ended the run, K (common practice).</summary>
    public const double LowestSuction = 273.15 - 18;

    public const string TooHigh = "head above what the high-pressure switch allows";
    public const string TooLow = "suction below what the low-pressure switch allows";
    public const string Slugging = "liquid in the compressor, which a crew would have stopped";
    public const string NoBalance = "no balance of flow and charge";

    /// <summary>Discharge gas less over saturation than this, K: the compressor takes liquid (common practice: 8 to 15 K at least).</summary>
    private const double LeastDischargeSuperheat = 8;

    private const double CoolestCondensing = 1.0;

    /// <summary>Ends of the enthalpy after the evaporator over dry vapor, J/kg, and how well it is found.</summary>
    private const double Wettest = -120e3;
    private const double Driest = 45e3;
    private const double HeatTolerance = 1;
    private const double Tolerance = 2e-6;
    private const double FlowResidual = 2e-3;
    private const double ChargeResidual = 2e-3;

    public static CircuitResult Solve(CircuitDesign design, Weather weather, CircuitFault fault)
    {
        var fluid = design.Fluid;
        var balance = new CircuitBalance(design, weather, fault);
        var charge = design.Charge * (1 - fault.Of(FaultKind.LowCharge) + fault.Of(FaultKind.Overcharge));
        double low = Math.Log(fluid.BubblePressure(weather.Outdoor + CoolestCondensing)), high = Math.Log(fluid.Range.High);
        CircuitState? state = null;
        double Missing(double lnCondensing)
        {
            state = AtCondensing(balance, Math.Exp(lnCondensing));
            return charge - state.Charge;
        }
        var found = Root.OfFalling(Missing, low, high, Tolerance);
        var residual = Missing(found) / charge;
        if (found >= high || state!.LiquidPressure > fluid.Range.High)
            return new CircuitResult(null, TooHigh);
        var readings = Read(balance, fluid, weather, state);
        if (readings.Suction < LowestSuction)
            return new CircuitResult(null, TooLow);
        if (readings.DischargeLine - fluid.Dew(state.LiquidPressure) < LeastDischargeSuperheat)
            return new CircuitResult(null, Slugging);
        return Math.Abs(residual) < ChargeResidual && Math.Abs(state.Metered / state.Flow - 1) < FlowResidual
            ? new CircuitResult(readings, null)
            : new CircuitResult(null, NoBalance);
    }

    private static CircuitState AtCondensing(CircuitBalance balance, double condensing)
    {
        double Short(double over)
        {
            var state = balance.At(condensing, over);
            return 1 - state.Metered / state.Flow;
        }
        return balance.At(condensing, Root.OfFalling(Short, Wettest, Driest, HeatTolerance));
    }

    private static CircuitReadings Read(CircuitBalance balance, RefrigerantTable fluid, Weather weather, CircuitState state)
    {
        double dew = fluid.Dew(state.VaporPressure), high = state.LiquidPressure;
        var vaporLine = balance.Kelvin(state.VaporPressure, state.VaporEnthalpy);
        var discharge = state.Compressor.Discharge;
        return new CircuitReadings
        {
            VaporPressure = state.VaporPressure,
            LiquidPressure = high,
            VaporLine = vaporLine,
            LiquidLine = state.Condenser.Temperature,
            DischargeLine = fluid.Dew(high) + Math.Max(0, discharge - fluid.VaporEnthalpy(high)) / fluid.DischargeHeat(high),
            LiquidAfterDrier = state.AfterDrier,
            CompressorSuctionLine = balance.Kelvin(state.VaporPressure, state.SuctionEnthalpy),
            Supply = state.Evaporator.Supply,
            Power = state.Compressor.Power,
            Flow = state.Flow,
            Flash = state.Flash,
            Suction = dew,
            Superheat = vaporLine - dew,
            Subcooling = fluid.Bubble(high) - state.Condenser.Temperature,
            CondenserSplit = 0.5 * (fluid.Dew(high) + fluid.Bubble(high)) - weather.Outdoor,
            AirSplit = weather.Return - state.Evaporator.Supply,
            Approach = state.Condenser.Temperature - weather.Outdoor,
        };
    }
}
