using Commission.Fluids;
using Xunit;

namespace Commission.Checks.Tests.Simulation;

/// <summary>
/// The model against what is published. Signs for orifices: the rules of Rossi and Braun (1997) and the impact table of Breuker and Braun
/// (1998), both measured on units with fixed orifices; for valves: the measurements behind NIST TN 1648 (2014) and service literature of
/// a general kind. All from memory. Left out where the sources and this model part: subcooling with a dirty condenser (published: falls
/// a little; here: rises by some tenths of a kelvin), and the discharge of a weak compressor behind an orifice (published: rises; here
/// liquid comes with the suction and cools it).
/// </summary>
public sealed class CircuitModelTests
{
    /// <summary>Readings in the order of the signs: suction saturation, superheat, condenser split, subcooling, approach, air split, discharge, power.</summary>
    private static readonly Func<CircuitReadings, double>[] Columns =
    [
        r => r.Suction, r => r.Superheat, r => r.CondenserSplit, r => r.Subcooling, r => r.Approach, r => r.AirSplit, r => r.DischargeLine, r => r.Power,
    ];

    private static readonly string[] Names = ["suction saturation", "superheat", "condenser split", "subcooling", "approach", "air split", "discharge line", "power"];

    /// <summary>Least shift that a sign asks for, K; of power as a share.</summary>
    private const double LeastShift = 0.3;
    private const double LeastPowerShift = 0.01;

    /// <summary>Largest shift that still counts as unmoved, K.</summary>
    private const double Unmoved = 1.0;

    public static MatrixTheoryData<string, string> RefrigerantsAndMetering { get; } = new(
        ["R-410A", "R-32", "R-454B", "R-22", "R-134a", "R-407C"], [nameof(MeteringDevice.Valve), nameof(MeteringDevice.Orifice)]);

    /// <summary>Bands of common practice for splits at the rating points: SST 6–10 °C, condenser split 8–15 K, subcooling and superheat 4–8 K.</summary>
    [Theory]
    [MemberData(nameof(RefrigerantsAndMetering))]
    public void Fault_free_at_the_rating_points(string refrigerant, string metering)
    {
        var design = CircuitDesign.For(CircuitTask.Ordinary(Enum.Parse<MeteringDevice>(metering)) with { Refrigerant = refrigerant });
        foreach (var weather in new[] { Weather.Us, Weather.Eu })
        {
            var readings = Solve(design, weather, CircuitFault.None);
            Assert.InRange(readings.Suction - 273.15, 6, 10);
            Assert.InRange(readings.CondenserSplit, 8, 15);
            Assert.InRange(readings.Subcooling, 4, 8);
            Assert.InRange(readings.Superheat, 4, 8);
            Assert.InRange(readings.AirSplit, 9, 13);
            Assert.Equal(0, readings.DrierDrop, 1e-6);
        }
    }

    /// <summary>"+" rises, "-" falls, "0" stays within a kelvin, "." no statement; the order is that of the names.</summary>
    [Theory]
    [InlineData(nameof(MeteringDevice.Orifice), nameof(FaultKind.LowCharge), 0.2, "-+--+-+-")]
    [InlineData(nameof(MeteringDevice.Orifice), nameof(FaultKind.Overcharge), 0.2, "+-++-.-+")]
    [InlineData(nameof(MeteringDevice.Orifice), nameof(FaultKind.LiquidLineRestriction), 0.5, "-+-+--+-")]
    [InlineData(nameof(MeteringDevice.Orifice), nameof(FaultKind.CondenserDirt), 0.4, "+-+.+..+")]
    [InlineData(nameof(MeteringDevice.Orifice), nameof(FaultKind.LowIndoorAirflow), 0.35, "----.+-0")]
    [InlineData(nameof(MeteringDevice.Orifice), nameof(FaultKind.NonCondensables), 0.1, "+-++...+")]
    [InlineData(nameof(MeteringDevice.Orifice), nameof(FaultKind.WeakCompressor), 0.2, "+---.-.-")]
    [InlineData(nameof(MeteringDevice.Orifice), nameof(FaultKind.PassingReversingValve), 0.2, "+---.-.-")]
    [InlineData(nameof(MeteringDevice.Valve), nameof(FaultKind.LowCharge), 0.2, "0+--+-.-")]
    [InlineData(nameof(MeteringDevice.Valve), nameof(FaultKind.LowCharge), 0.25, "-+--+-+-")]
    [InlineData(nameof(MeteringDevice.Valve), nameof(FaultKind.Overcharge), 0.2, "00++-0++")]
    [InlineData(nameof(MeteringDevice.Valve), nameof(FaultKind.LiquidLineRestriction), 0.5, "-+-+--+-")]
    [InlineData(nameof(MeteringDevice.Valve), nameof(FaultKind.CondenserDirt), 0.4, "00+.+0++")]
    [InlineData(nameof(MeteringDevice.Valve), nameof(FaultKind.LowIndoorAirflow), 0.35, "-0-0-+0-")]
    [InlineData(nameof(MeteringDevice.Valve), nameof(FaultKind.NonCondensables), 0.1, "00++00++")]
    [InlineData(nameof(MeteringDevice.Valve), nameof(FaultKind.ValveUnderfeeding), 0.25, "-+-+--+-")]
    [InlineData(nameof(MeteringDevice.Valve), nameof(FaultKind.ValveOverfeeding), 5, "+-.-+.-0")]
    [InlineData(nameof(MeteringDevice.Valve), nameof(FaultKind.WeakCompressor), 0.25, "+0----+-")]
    [InlineData(nameof(MeteringDevice.Valve), nameof(FaultKind.PassingReversingValve), 0.2, "+0----+-")]
    public void A_fault_moves_each_reading_as_published(string device, string fault, double severity, string signs)
    {
        var (metering, kind) = (Enum.Parse<MeteringDevice>(device), Enum.Parse<FaultKind>(fault));
        var design = CircuitDesign.For(CircuitTask.Ordinary(metering));
        var sound = Solve(design, Weather.Us, CircuitFault.None);
        var faulty = Solve(design, Weather.Us, new CircuitFault(kind, severity));
        for (var i = 0; i < Columns.Length; i++)
        {
            double from = Columns[i](sound), shift = Columns[i](faulty) - from;
            var power = i == Columns.Length - 1;
            if (power)
                shift /= from;
            var (least, unmoved) = power ? (LeastPowerShift, 0.03) : (LeastShift, Unmoved);
            var right = signs[i] switch
            {
                '+' => shift > least,
                '-' => shift < -least,
                '0' => Math.Abs(shift) < unmoved,
                _ => true,
            };
            Assert.True(right, $"{metering}, {kind} {severity}: {Names[i]} moves by {shift:0.000}, published {signs[i]}");
        }
    }

    /// <summary>What only some instruments show (common practice): a cold drier, and hot gas on the compressor's side of the reversing valve.</summary>
    [Fact]
    public void Drier_and_suction_at_the_compressor()
    {
        var design = CircuitDesign.For(CircuitTask.Ordinary(MeteringDevice.Valve));
        Assert.InRange(Solve(design, Weather.Us, new CircuitFault(FaultKind.LiquidLineRestriction, 0.6)).DrierDrop, 1.5, 10);
        var passing = Solve(design, Weather.Us, new CircuitFault(FaultKind.PassingReversingValve, 0.15));
        Assert.InRange(passing.CompressorSuctionLine - passing.VaporLine, 3, 15);
        var weak = Solve(design, Weather.Us, new CircuitFault(FaultKind.WeakCompressor, 0.25));
        Assert.Equal(weak.VaporLine, weak.CompressorSuctionLine, 1e-6);
    }

    /// <summary>With a valve subcooling follows the charge all the way and superheat only when bubbles reach the valve (NIST TN 1648, from memory).</summary>
    [Fact]
    public void Subcooling_follows_the_charge()
    {
        var design = CircuitDesign.For(CircuitTask.Ordinary(MeteringDevice.Valve));
        var last = double.NegativeInfinity;
        for (var share = 0.86; share < 1.26; share += 0.04)
        {
            var fault = share < 1 ? new CircuitFault(FaultKind.LowCharge, 1 - share) : new CircuitFault(FaultKind.Overcharge, share - 1);
            var readings = Solve(design, Weather.Us, fault);
            Assert.True(readings.Subcooling > last);
            last = readings.Subcooling;
            if (readings.Flash == 0)
                Assert.InRange(readings.Superheat, 6, 8);
        }
    }

    /// <summary>
    /// Superheat of a sound circuit with an orifice against the charging rule of the trade, (3·wet bulb − 80 − outdoor)/2 in °F (the fit
    /// to common charging charts, from memory), where it asks for 5 K or more.
    /// </summary>
    [Fact]
    public void An_orifice_follows_the_charging_rule()
    {
        var design = CircuitDesign.For(CircuitTask.Ordinary(MeteringDevice.Orifice));
        foreach (var outdoor in new[] { 24.0, 28, 32, 36, 40 })
        {
            foreach (var wetBulb in new[] { 15.0, 16.5, 18, 19.5 })
            {
                var rule = (3 * (wetBulb * 1.8 + 32) - 80 - (outdoor * 1.8 + 32)) / 2 / 1.8;
                if (rule >= 5)
                    Assert.Equal(rule, Solve(design, Weather.Celsius(outdoor, 25, wetBulb), CircuitFault.None).Superheat, 3.0);
            }
        }
    }

    /// <summary>The first law over the circuit, and over a dry coil between refrigerant and air.</summary>
    [Fact]
    public void Energy_is_kept()
    {
        var design = CircuitDesign.For(CircuitTask.Ordinary(MeteringDevice.Valve));
        var weather = Weather.Celsius(35, 27, 13);
        var state = new CircuitBalance(design, weather, CircuitFault.None).At(design.Fluid.DewPressure(273.15 + 46), 6e3);
        var cooling = state.Flow * (state.Evaporator.Enthalpy - state.Condenser.Enthalpy);
        var line = state.Flow * (state.VaporEnthalpy - state.Evaporator.Enthalpy);
        var rejected = state.Flow * (state.Compressor.Discharge - state.Condenser.Enthalpy);
        Assert.Equal(cooling + line + (1 - Compressor.ShellLoss) * state.Compressor.Power, rejected, 1.0);
        var air = design.Evaporator.AirFlow * CoilAir.Heat * (weather.Return - state.Evaporator.Supply + Evaporator.BlowerHeat);
        Assert.Equal(cooling, air, 0.005 * cooling);
    }

    /// <summary>R-134a saturated at 10 °C in the ASHRAE Handbook's table (from memory): 414.6 kPa, 1261 and 20.23 kg/m³, 213.6 and 404.3 kJ/kg.</summary>
    [Fact]
    public void Table_of_a_refrigerant()
    {
        var table = RefrigerantTable.Of("R-134a");
        var pressure = table.DewPressure(283.15);
        Assert.Equal(414.6e3, pressure, 0.3e3);
        Assert.Equal(1261, table.LiquidDensity(pressure), 1.5);
        Assert.Equal(20.23, table.VaporDensity(pressure), 0.05);
        Assert.Equal(213.6e3, table.LiquidEnthalpy(pressure), 0.3e3);
        Assert.Equal(404.3e3, table.VaporEnthalpy(pressure), 0.3e3);
        var warm = Refrigerant.Load("R-134a").At(283.15 + 10, pressure, Phase.Vapor).Value;
        Assert.Equal(warm.Density, table.Density(pressure, warm.Enthalpy), 0.01 * warm.Density);
    }

    private static CircuitReadings Solve(CircuitDesign design, Weather weather, CircuitFault fault)
    {
        var result = CircuitModel.Solve(design, weather, fault);
        Assert.True(result.Readings is not null, $"{design.Task}, {fault}: {result.Reason}");
        return result.Readings;
    }
}
