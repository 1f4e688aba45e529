using Commission.Checks.Instruments;
using Commission.Records.Series;
using Xunit;

namespace Commission.Checks.Tests.Instruments;

/// <summary>What instruments showed less what was known: ice is 32 °F, the rest as the job states it; the good bound of 1 °F is California RA3.2, p. RA3-12 (published).</summary>
public sealed class InstrumentResidualsFigureTests
{
    private static string Job(string instruments) => $$"""
        commission: 1
        units: us
        job: {id: IR-1, work: seasonal check, date: 2026-06-18, site: {name: "Sedge Row 4", elevation: 0 ft} }
        equipment: {system: split, refrigerant: R-32}
        instruments:
        {{instruments}}
        """;

    [Fact]
    public void A_thermometer_checked_at_two_points_is_drawn_with_U()
    {
        var yaml = Job("""
              - {id: clamp, kind: pipe clamp, sensor: thermistor, accuracy: 1 °F, resolution: 0.1 °F, reads: [vapor line], checks: {ice point: {read: 33.0 °F, adjusted: 32.2 °F}, warm point: {applied: 110.0 °F +/- 0.6, read: 110.9 °F}}}
              - {id: other, kind: pipe clamp, sensor: thermistor, accuracy: 1 °F, resolution: 0.1 °F, reads: [liquid line], checks: {ice point: {read: 31.7 °F}}}
            """);
        var figure = Assert.Single(new InstrumentResidualsFigure().Figures(JobText.Context(yaml)));
        Assert.Equal("instrument-residuals", figure.Plot);
        Assert.Equal(["clamp", "other"], figure.Curves.Select(c => c.Label));
        Assert.Equal([32.0, 110.0], figure.Curves[0].X.Select(x => Math.Round(x, 6)));
        Assert.Equal(0.2, figure.Curves[0].Y[0]!.Value, 1e-6);
        Assert.Equal(0.9, figure.Curves[0].Y[1]!.Value, 1e-6);
        // ± 0.6 °F with k = 2 and a step of 0.1 °F, rectangular 0.029: U = 2·√(0.3² + 0.029²) = 0.603 °F.
        Assert.Equal(0.603, figure.Curves[0].YHigh[1]!.Value - 0.9, 0.002);
        Assert.Equal(-0.3, figure.Curves[1].Y[0]!.Value, 1e-6);
        Assert.Equal([-1.0, 1.0], figure.Lines.Where(l => l.Role == LineRole.Tolerance).Select(l => Math.Round(l.At, 6)));
    }

    [Fact]
    public void A_gauge_with_zero_and_known_pressure_is_drawn()
    {
        var yaml = Job("""  - {id: high, kind: pressure gauge, accuracy: 0.5 % of full scale, full scale: 800 psig, resolution: 0.1 psi, reads: [liquid pressure], checks: {zero: -0.3 psig, known pressure: {applied: 300.0 psig +/- 0.6, read: 301.1 psig}}}""");
        var figure = Assert.Single(new InstrumentResidualsFigure().Figures(JobText.Context(yaml)));
        var curve = Assert.Single(figure.Curves);
        Assert.Equal([0.0, 300.0], curve.X.Select(x => Math.Round(x, 6)));
        Assert.Equal([-0.3, 1.1], curve.Y.Select(y => Math.Round(y!.Value, 6)));
    }

    [Fact]
    public void Ice_alone_is_left_to_the_table() => Assert.Empty(new InstrumentResidualsFigure().Figures(JobText.Context(Job(
        "  - {id: clamp, kind: pipe clamp, sensor: thermistor, accuracy: 1 °F, reads: [vapor line], checks: {ice point: {read: 33.0 °F}}}"))));
}
