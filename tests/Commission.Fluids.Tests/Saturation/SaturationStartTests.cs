using Commission.Fluids.Mixtures;
using Commission.Fluids.Saturation;
using Xunit;

namespace Commission.Fluids.Tests.Saturation;

/// <summary>A start saves work and decides nothing: the point that is found is the one found from Raoult's law, to the last digits that equal fugacities leave.</summary>
public class SaturationStartTests
{
    public static TheoryData<string> Blends() => [.. RefrigerantCatalogue.All.Where(r => r.IsComputable && r.IsBlend).Select(r => r.Designation)];

    [Theory]
    [MemberData(nameof(Blends))]
    public void The_point_is_that_of_no_start(string designation)
    {
        var model = Fluids.Model(designation);
        BlendSaturation with = new(model, new SaturationStarts(model)), without = new(model);
        foreach (var curve in new[] { SaturationCurve.Bubble, SaturationCurve.Dew })
        {
            for (var share = 0.5; share < 0.97; share += 0.04)
            {
                var temperature = share * model.MeanCriticalTemperature;
                var found = without.AtTemperature(curve, temperature);
                Assert.Equal(found, with.AtTemperature(curve, temperature));
                if (!found)
                    continue;
                Assert.Equal(1, with.Pressure / without.Pressure, 1e-9);
                var pressure = without.Pressure;
                Assert.True(without.AtPressure(curve, pressure) && with.AtPressure(curve, pressure));
                Assert.Equal(1, with.Temperature / without.Temperature, 1e-10);
                Assert.Equal(1, with.Liquid.Density / without.Liquid.Density, 1e-9);
            }
        }
    }

    [Fact]
    public void What_was_solved_before_changes_no_bit()
    {
        var model = Fluids.Model("R-455A");
        BlendSaturation fresh = new(model, new SaturationStarts(model)), used = new(model, new SaturationStarts(model));
        for (var pressure = 2e5; pressure < 2e6; pressure *= 1.3)
            Assert.True(used.AtPressure(SaturationCurve.Bubble, pressure) && used.AtPressure(SaturationCurve.Dew, pressure));
        Assert.True(fresh.AtPressure(SaturationCurve.Dew, 9e5) && used.AtPressure(SaturationCurve.Dew, 9e5));
        Assert.Equal(BitConverter.DoubleToInt64Bits(fresh.Temperature), BitConverter.DoubleToInt64Bits(used.Temperature));
    }

    [Fact]
    public void A_start_lies_near_the_point_within_its_range_and_is_none_outside()
    {
        var model = Fluids.Model("R-407C");
        BlendSaturation solver = new(model);
        var start = SaturationStart.Of(model, SaturationCurve.Dew)!;
        Span<double> unknowns = stackalloc double[model.Components.Length + 2];
        Assert.False(start.AtTemperature(0.57 * model.MeanCriticalTemperature, unknowns));
        Assert.False(start.AtTemperature(0.94 * model.MeanCriticalTemperature, unknowns));
        Assert.False(start.AtPressure(double.NaN, unknowns));
        for (var share = 0.59; share < 0.93; share += 0.01)
        {
            Assert.True(solver.AtTemperature(SaturationCurve.Dew, share * model.MeanCriticalTemperature));
            Assert.True(start.AtTemperature(solver.Temperature, unknowns));
            for (var i = 0; i < unknowns.Length; i++)
                Assert.Equal(solver.Unknowns[i], unknowns[i], 1e-2);
            Assert.True(start.AtPressure(solver.Pressure, unknowns));
            for (var i = 0; i < unknowns.Length; i++)
                Assert.Equal(solver.Unknowns[i], unknowns[i], 1e-2);
        }
    }
}
