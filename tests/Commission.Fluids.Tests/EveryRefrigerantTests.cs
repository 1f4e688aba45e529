using System.Globalization;
using Commission.Fluids.Saturation;
using Xunit;

namespace Commission.Fluids.Tests;

/// <summary>Identities that hold for every pure refrigerant and every blend, whatever the numbers.</summary>
public sealed class EveryRefrigerantTests
{
    public static TheoryData<string> Computable
    {
        get
        {
            TheoryData<string> data = [];
            foreach (var info in RefrigerantCatalogue.All)
            {
                if (info.IsComputable)
                    data.Add(info.Designation);
            }
            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Computable))]
    public void Saturation_is_sound_at_twenty_temperatures(string designation)
    {
        var fluid = Fluids.Get(designation);
        var critical = Fluids.Value(fluid.CriticalPoint);
        double low = Math.Max(233.15, fluid.LowestTemperature + 0.01), high = Math.Min(363.15, (fluid.IsBlend ? 0.97 : 0.999) * critical.Temperature);
        if (critical.Temperature < 240)
            (low, high) = (Math.Max(fluid.LowestTemperature + 0.01, 0.6 * critical.Temperature), 0.98 * critical.Temperature);
        // By its model the liquid of R-514A splits below −32 °C.
        if (designation == "R-514A")
            low = 243.15;
        double lastBubble = 0, lastDew = 0;
        for (var i = 0; i < 20; i++)
        {
            var t = low + (high - low) * i / 19;
            SaturationState bubble = Fluids.Value(fluid.BubbleAtTemperature(t)), dew = Fluids.Value(fluid.DewAtTemperature(t));
            var where = string.Create(CultureInfo.InvariantCulture, $"{designation} at {t:0.00} K: bubble {bubble.Pressure}, dew {dew.Pressure}");
            Assert.True(bubble.Pressure >= dew.Pressure * (1 - 1e-9), where);
            Assert.True(bubble.Pressure > lastBubble && dew.Pressure > lastDew, where);
            Assert.True(bubble.LiquidDensity > bubble.VaporDensity && dew.LiquidDensity > dew.VaporDensity, where);
            Assert.True(bubble.VaporEnthalpy > bubble.LiquidEnthalpy && dew.VaporEnthalpy > dew.LiquidEnthalpy, where);
            lastBubble = bubble.Pressure;
            lastDew = dew.Pressure;

            Near(t, fluid.BubbleAtPressure(bubble.Pressure), where);
            Near(t, fluid.DewAtPressure(dew.Pressure), where);
        }
    }

    private static void Near(double kelvin, FluidResult<SaturationState> back, string where)
    {
        Assert.True(back.Ok, where + " " + back.Reason?.Words());
        Assert.True(Math.Abs(back.Value.Temperature - kelvin) < 1e-9 * kelvin, string.Create(CultureInfo.InvariantCulture, $"{where}: back at {back.Value.Temperature}"));
    }
}
