using Commission.Checks.Formulas;
using Commission.Checks.VacuumAnalysis;
using Commission.Messages;
using Xunit;

namespace Commission.Checks.Tests.VacuumAnalysis;

public sealed class PullDownTests
{
    private const double Micron = 101_325.0 / 760_000;

    /// <summary>t = (V/S)·ln(p0/p1): constant speed, no hose (computed from the formula; 732.7 was rounded from 732.647).</summary>
    [Theory]
    [InlineData(0.1, 10.0 / 3600, 101_325, 100, 249.2, 0.05)]
    [InlineData(0.005, 2.36e-3, 101_325, 100, 14.66, 0.01)]
    [InlineData(0.010, 0.1e-3, 101_325, 500 * Micron, 732.7, 0.06)]
    [InlineData(0.004, 0.05e-3, 101_325, 500 * Micron, 586.1, 0.05)]
    public void Constant_speed(double volume, double speed, double from, double to, double seconds, double tolerance) =>
        Assert.Equal(seconds, new PullDownModel([], PumpCurve.Rated(speed)).Time(volume, from, to), tolerance);

    [Fact]
    public void With_a_gas_load_the_pressure_ends_at_Q_over_S()
    {
        // p(t) = (p0 − p_ult)·e^(−St/V) + p_ult with p_ult = Q/S: the time to any pressure follows.
        const double Volume = 0.01;
        const double Speed = 1e-3;
        const double Ultimate = 40;
        var model = new PullDownModel([], PumpCurve.Rated(Speed));
        var at60 = (101_325 - Ultimate) * Math.Exp(-Speed * 60 / Volume) + Ultimate;
        Assert.Equal(60, model.Time(Volume, 101_325, at60, Ultimate), 0.01);
        Assert.Equal(double.PositiveInfinity, model.Time(Volume, 101_325, 39, Ultimate));
    }

    [Fact]
    public void Through_a_hose_the_logarithm_is_wrong_by_far()
    {
        // 8 L through 6 mm by 1.5 m with a 5 cfm pump. The same integral by many small steps of dp/dt with the solved speed.
        var hose = new FlowElement("hose".Plain(), FlowElementKind.Hose, 0.006, 1.5);
        var model = new PullDownModel([hose], PumpCurve.Rated(2.3597e-3));
        const double Volume = 0.008;
        var (p, t) = (101_325.0, 0.0);
        while (p > 500 * Micron)
        {
            // Midpoint rule in ln p.
            var step = Math.Min(0.01, Math.Log(p / (500 * Micron)));
            t += Volume * step / model.At(p * Math.Exp(-step / 2)).Speed;
            p *= Math.Exp(-step);
        }

        Assert.Equal(t, model.Time(Volume, 101_325, 500 * Micron), 0.002 * t);
        Assert.True(t > 4 * Volume / 2.3597e-3 * Math.Log(101_325 / (500 * Micron)));
    }

    [Fact]
    public void A_pump_near_its_own_lowest_pressure_slows()
    {
        var curve = PumpCurve.Rated(2e-3, ultimate: 5);
        Assert.Equal(0, curve.SpeedAt(5), 1e-12);
        Assert.Equal(1e-3, curve.SpeedAt(10), 1e-12);
        Assert.Equal(0, new PullDownModel([], curve).At(4).Speed);
    }

    [Fact]
    public void A_pull_as_expected_names_what_takes_the_pressure()
    {
        var hose = new FlowElement("hose".Plain(), FlowElementKind.Hose, 0.006, 1.5);
        var model = new PullDownModel([hose], PumpCurve.Rated(2.3597e-3));
        var result = Compare(model, Logged(model, 0.008, _ => 1));
        Assert.Equal(PullDownLimit.Hose, result.Limit);
        Assert.InRange(result.MeasuredTime / result.ExpectedTime, 0.97, 1.03);
        Assert.True(result.Expected.Length is > 20 and <= 200);

        var direct = new PullDownModel([], PumpCurve.Rated(0.02e-3));
        Assert.Equal(PullDownLimit.Pump, Compare(direct, Logged(direct, 0.008, _ => 1)).Limit);
        var core = new PullDownModel([new FlowElement("core".Plain(), FlowElementKind.Core, 0.0015, 0.01)], PumpCurve.Rated(3e-3));
        Assert.Equal(PullDownLimit.Core, Compare(core, Logged(core, 0.008, _ => 1)).Limit);
    }

    [Fact]
    public void A_pull_that_lingers_where_water_boils_says_so()
    {
        // Between 700 and 2300 Pa the speed is a thirtieth: vapour takes the pump's flow.
        var model = Model();
        var result = Compare(model, Logged(model, 0.008, p => p is > 700 and < 2300 ? 1.0 / 30 : 1));
        Assert.Equal(PullDownLimit.BoilingWater, result.Limit);
        Assert.True(result.TimeAtBoilingWater > 0.9 * (result.MeasuredTime - result.ExpectedTime));
    }

    [Fact]
    public void A_pull_that_stalls_low_has_a_gas_load()
    {
        var model = Model();
        var result = Compare(model, Logged(model, 0.008, p => p < 160 ? 0.002 : 1));
        Assert.Equal(PullDownLimit.GasLoad, result.Limit);
        Assert.True(result.Lowest > 500 * Micron);
    }

    [Fact]
    public void A_pull_slower_than_everything_explains_says_so()
    {
        var model = Model();
        Assert.Equal(PullDownLimit.SlowThroughout, Compare(model, Logged(model, 0.008, _ => 0.1)).Limit);
    }

    [Fact]
    public void Without_numbered_rows_it_cannot_tell()
    {
        var log = VacuumSeries.From([0, 10, 20], [double.NaN, double.NaN, double.NaN], [true, true, true]);
        Assert.Equal(PullDownLimit.CannotTell, Compare(Model(), log).Limit);
    }

    private static PullDownModel Model() =>
        new([new FlowElement("hose".Plain(), FlowElementKind.Hose, 0.0095, 1)], PumpCurve.Rated(2.3597e-3));

    private static PullDownResult Compare(PullDownModel model, VacuumSeries log) => PullDownAnalysis.Compare(
        log, SeriesSegmentation.Cut(log, [new VacuumEvent(0, VacuumEventKind.PumpStarted)], Micron).Segments[0], model, 0.008, 500 * Micron, 2339);

    // Euler in ln p with the speed of the model times a factor: 40 min at most, a row each 5 s, over range above 25,000 micron.
    private static VacuumSeries Logged(PullDownModel model, double volume, Func<double, double> factor)
    {
        var times = new List<double>();
        var pressures = new List<double>();
        var over = new List<bool>();
        var p = 101_325.0;
        for (var t = 0.0; t <= 2400 && p > 480 * Micron; t += 5)
        {
            times.Add(t);
            pressures.Add(p);
            over.Add(p > 25_000 * Micron);
            for (var k = 0; k < 20; k++)
                p *= Math.Exp(-0.25 * model.At(p).Speed * factor(p) / volume);
        }

        return VacuumSeries.From(times, pressures, over);
    }
}
