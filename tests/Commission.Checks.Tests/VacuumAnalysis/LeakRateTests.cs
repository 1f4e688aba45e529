using Commission.Checks.Formulas;
using Commission.Checks.VacuumAnalysis;
using Commission.Measurement.Uncertainty;
using Commission.Messages;
using Xunit;

namespace Commission.Checks.Tests.VacuumAnalysis;

public sealed class LeakRateTests
{
    private const double Micron = 101_325.0 / 760_000;
    private const double Year = 365 * 86_400.0;
    private const double R32 = 0.052024;

    /// <summary>Q = V·Δp/Δt, as mbar·L/s, Pa·m³/s, and merely re-expressed as R-32 at 20 °C (computed from the formula).</summary>
    [Theory]
    [InlineData(5, 500, 600, 5.5551e-3, 5.5551e-4, 374)]
    [InlineData(5, 100, 600, 1.1110e-3, 1.1110e-4, 75)]
    [InlineData(8, 300, 1200, 2.6665e-3, 2.6665e-4, 180)]
    public void Pressure_rise(double litres, double microns, double seconds, double mbarLitres, double pascalCubic, double gramsPerYear)
    {
        var q = LeakRate.Throughput(Uncertain.Exact(litres / 1000), Uncertain.Exact(microns * Micron / seconds)).Value;
        Assert.Equal(pascalCubic, q, 0.5e-4 * pascalCubic);
        Assert.Equal(mbarLitres, q * 10, 0.5e-4 * mbarLitres);
        Assert.Equal(gramsPerYear, LeakRate.MassFlow(q, R32, 293.15) * 1000 * Year, 0.6);
    }

    [Fact]
    public void Units()
    {
        // 300 → 500 µm in 60 min at 5 L: Q ≤ 3.70e-4 mbar·L/s (US guide specification's pass, computed).
        Assert.Equal(3.70e-4, 10 * (0.005 * 200 * Micron / 3600), 0.5e-6 + 1e-8);
    }

    [Fact]
    public void Uncertainty_of_volume_and_slope_adds_in_squares()
    {
        var volume = Uncertain.From(0.005, new RootCause("volume".Plain(), "estimate".Plain(), 0.0005) * 1);
        var slope = Uncertain.From(0.1, new RootCause("slope".Plain(), "hold".Plain(), 0.006, 9) * 1);
        var q = LeakRate.Throughput(volume, slope);
        Assert.Equal(0.005 * 0.1 * Math.Sqrt(0.1 * 0.1 + 0.06 * 0.06), q.StandardUncertainty, 1e-9);
        Assert.True(q.DegreesOfFreedom > 9);
    }

    [Fact]
    public void A_hold_gives_its_slope_with_causes()
    {
        var times = Enumerable.Range(0, 601).Select(i => 2.0 * i).ToArray();
        var log = VacuumSeries.From(times, [.. times.Select(t => 60 + 0.05 * t + 0.2 * Math.Sin(t))]);
        var hold = HoldAnalysis.Analyze(log, 0, 1200, new GaugeCharacter(Micron, 0.1, 0), new HoldOptions(73));
        var slope = hold.SlopeWithCauses!;
        Assert.Equal(hold.Slope!.Value.Value, slope.Value, 1e-12);

        // Gain ±10 %, rectangular: nearly all of it.
        Assert.Equal(0.1 * slope.Value / Math.Sqrt(3), slope.StandardUncertainty, 0.05 * slope.StandardUncertainty);
        Assert.Equal("gain of the vacuum gauge", slope.Budget[0].Cause.ToString());
    }

    [Fact]
    public void The_same_hole_passes_refrigerant()
    {
        // First row above through the same hole at 20 °C saturation of R-32 (1.4746 MPa, 12.4 µPa·s): 4.1e3 g/yr molecular, 1.15e5 viscous
        // (computed; printed to two and three digits).
        var leak = RefrigerantLeak.From(5.5551e-4, 101_325, 60, new(1.4746e6, R32, 12.4e-6), 293.15);
        Assert.Equal(LeakFlow.Viscous, leak.Flow);
        Assert.Equal(4.1e3, leak.MolecularMassFlow * 1000 * Year, 100.0);
        Assert.Equal(1.15e5, leak.ViscousMassFlow * 1000 * Year, 0.02e5);
        Assert.Equal(leak.ViscousMassFlow, leak.High);
        Assert.Equal(leak.ChokedMassFlow, leak.Low);
        Assert.InRange(leak.ChokedMassFlow / leak.MolecularMassFlow, 0.85, 1);
    }

    [Theory]
    [InlineData(1e-6, nameof(LeakFlow.Viscous))]
    [InlineData(1e-7, nameof(LeakFlow.Transitional))]
    [InlineData(1e-8, nameof(LeakFlow.Molecular))]
    public void Regime_by_inflow_of_air(double throughput, string flow)
    {
        // Limits of EN 1779, from memory.
        var leak = RefrigerantLeak.From(throughput, 101_325, 60, new(1.4746e6, R32, 12.4e-6), 293.15);
        Assert.Equal(flow, leak.Flow.ToString());
        Assert.Equal(leak.Flow == LeakFlow.Molecular, leak.Low == leak.High);
        Assert.True(leak.Low <= leak.High);
    }

    [Fact]
    public void No_vacuum_hold_can_show_five_grams_a_year()
    {
        // R-454B vapour at 20 °C (62.6 g/mol, about 1.4 MPa, 12.4 µPa·s): 5 g/yr means an inflow so small that a 1 micron gauge on 5 L
        // needs a day or more for its five steps. Order of magnitude only.
        var perThroughput = RefrigerantLeak.From(1e-8, 101_325, 60, new(1.4e6, 0.0626, 12.4e-6), 293.15).ViscousMassFlow / 1e-8;
        var throughput = 5e-3 / Year / perThroughput;
        var micronsPerHour = throughput / 0.005 * 3600 / Micron;
        Assert.InRange(micronsPerHour, 0.05, 0.2);
        Assert.True(5 / micronsPerHour > 24);
    }
}
