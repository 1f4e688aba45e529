using Commission.Checks.NitrogenAnalysis;
using Commission.Fluids;
using Xunit;

namespace Commission.Checks.Tests.NitrogenAnalysis;

public sealed class NitrogenSeriesTests
{
    private const double Psi = 6894.757293168361;
    private const double Atmosphere = 101_325;

    private static readonly NitrogenErrors Errors = new() { Resolution = 0.1 * Psi, Repeatability = 0.3 * Psi, AtmosphereChange = 100 };

    [Fact]
    public void A_tight_system_that_warms_is_flat_once_referred()
    {
        var result = Hold(t => 294 + 6 * t / 3600, _ => 0);
        Assert.Equal(0, result.Loss.Loss.Value, 5e-5);
        Assert.InRange(result.Referred.Max() - result.Referred.Min(), 0, 0.2 * Psi);
        Assert.Equal(NitrogenVerdict.Held, result.Loss.Judge(0.02));
        Assert.False(result.LooksLikeSettling);
    }

    [Fact]
    public void A_steady_leak_is_lost_in_both_halves()
    {
        var result = Hold(_ => 294, t => 0.04 * t / 3600);

        // Means of the first and last five minutes lie 5 minutes apart from the ends together.
        Assert.Equal(0.04 * 55 / 60, result.Loss.Loss.Value, 1e-3);
        Assert.Equal(result.FirstHalf, result.SecondHalf, 2e-3);
        Assert.Equal(NitrogenVerdict.Lost, result.Loss.Judge(0.01));
        Assert.False(result.LooksLikeSettling);
    }

    [Fact]
    public void Gas_still_cooling_from_filling_looks_like_settling()
    {
        var result = Hold(_ => 294, t => 0.02 * (1 - Math.Exp(-t / 500)));
        Assert.True(result.LooksLikeSettling);
    }

    [Fact]
    public void Few_rows_give_nothing()
    {
        NitrogenReading reading = new(3e6, Atmosphere, 294);
        Assert.Null(NitrogenSeries.Analyze([0, 60], [reading, reading], Errors, Density));
        Assert.Throws<ArgumentException>(() => NitrogenSeries.Analyze([0, 60, 120], [reading], Errors, Density));
    }

    private static NitrogenSeriesResult Hold(Func<double, double> kelvin, Func<double, double> lost)
    {
        double[] times = [.. Enumerable.Range(0, 121).Select(i => 30.0 * i)];
        var fill = Density(kelvin(0), 450 * Psi + Atmosphere)!.Value;
        NitrogenReading[] readings =
        [
            .. times.Select(t => new NitrogenReading(
                Math.Round((Nitrogen.Pressure(kelvin(t), fill * (1 - lost(t))).Value - Atmosphere) / (0.1 * Psi)) * 0.1 * Psi,
                Atmosphere, kelvin(t))),
        ];
        return NitrogenSeries.Analyze(times, readings, Errors, Density)!;
    }

    private static double? Density(double kelvin, double pascals) =>
        Nitrogen.Density(kelvin, pascals) is { Ok: true } d ? d.Value : null;
}
