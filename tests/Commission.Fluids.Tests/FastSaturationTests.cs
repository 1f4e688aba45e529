using System.Globalization;
using Commission.Fluids.Saturation;
using Xunit;

namespace Commission.Fluids.Tests;

/// <summary>The expansions against the full solution of the same equations.</summary>
public sealed class FastSaturationTests
{
    [Theory]
    [MemberData(nameof(EveryRefrigerantTests.Computable), MemberType = typeof(EveryRefrigerantTests))]
    public void Expansions_agree_with_the_full_solution_within_1e_7(string designation)
    {
        var fluid = Fluids.Get(designation);
        var fast = fluid.Fast;
        (var low, var high) = fast.Range;
        Assert.True(high > low, "no expansion was made");
        Random random = new(20);
        for (var i = 0; i < 25; i++)
        {
            var t = low + (high - low) * random.NextDouble();
            var where = string.Create(CultureInfo.InvariantCulture, $"{designation} at {t} K");
            SaturationState bubble = Fluids.Value(fluid.BubbleAtTemperature(t)), dew = Fluids.Value(fluid.DewAtTemperature(t));
            Near(bubble.Pressure, Fluids.Value(fast.BubblePressure(t)), 1e-7, where);
            Near(dew.Pressure, Fluids.Value(fast.DewPressure(t)), 1e-7, where);
            // A relative error of 1e-7 in p is this much in T on the curve.
            Near(t, Fluids.Value(fast.BubbleTemperature(bubble.Pressure)), 1e-7 * bubble.Pressure / (bubble.PressureSlope * t), where);
            Near(t, Fluids.Value(fast.DewTemperature(dew.Pressure)), 1e-7 * dew.Pressure / (dew.PressureSlope * t), where);
            SaturationPoint bubblePoint = Fluids.Value(fast.BubblePoint(bubble.Pressure)), dewPoint = Fluids.Value(fast.DewPoint(dew.Pressure));
            Assert.Equal((Fluids.Value(fast.BubbleTemperature(bubble.Pressure)), Fluids.Value(fast.DewTemperature(dew.Pressure))), (bubblePoint.Temperature, dewPoint.Temperature));
            Near(bubble.TemperatureSlope, bubblePoint.TemperatureSlope, 1e-5, where);
            Near(dew.TemperatureSlope, dewPoint.TemperatureSlope, 1e-5, where);
        }
    }

    [Fact]
    public void Outside_its_range_the_full_solution_answers()
    {
        var fluid = Fluids.Get("R-410A");
        var t = 0.985 * Fluids.Value(fluid.CriticalPoint).Temperature;
        Assert.Equal(Fluids.Value(fluid.BubbleAtTemperature(t)).Pressure, Fluids.Value(fluid.Fast.BubblePressure(t)));
        Assert.Contains("critical", fluid.Fast.BubblePressure(400).Reason.Words(), StringComparison.Ordinal);
        var state = Fluids.Value(fluid.DewAtTemperature(t));
        Assert.Equal(new SaturationPoint(Fluids.Value(fluid.DewAtPressure(state.Pressure)).Temperature, Fluids.Value(fluid.DewAtPressure(state.Pressure)).TemperatureSlope), Fluids.Value(fluid.Fast.DewPoint(state.Pressure)));
        Assert.Contains("transcritical", fluid.Fast.BubblePoint(9e6).Reason.Words(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_refrigerant_is_read_once_and_keeps_its_expansions()
    {
        Assert.Same(Refrigerant.Load("R-454B").Fast, Refrigerant.Load("r454b").Fast);
        Assert.NotSame(Refrigerant.Load("R-454B"), Refrigerant.Load("R-454A"));
    }

    [Fact]
    public void A_call_allocates_nothing()
    {
        var fast = Fluids.Get("R-454B").Fast;
        var sum = Ask(fast, 10);
        var before = GC.GetAllocatedBytesForCurrentThread();
        sum += Ask(fast, 1000);
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.True(sum > 0);
    }

    private static double Ask(FastSaturation fast, int count)
    {
        var sum = 0.0;
        for (var i = 0; i < count; i++)
            sum += fast.DewTemperature(5e5 + i).Value + fast.BubblePressure(280 + 0.01 * i).Value;
        return sum;
    }

    private static void Near(double expected, double actual, double share, string where) =>
        Assert.True(Math.Abs(actual - expected) <= share * Math.Abs(expected), string.Create(CultureInfo.InvariantCulture, $"{where}: {actual} against {expected}"));
}
