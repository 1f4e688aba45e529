using Commission.Checks.Charge;
using Commission.Checks.Circuit;
using Commission.Records.Series;
using Xunit;

namespace Commission.Checks.Tests.Charge;

/// <summary>Figures and tables of the charge.</summary>
public sealed class ChargePicturesTests
{
    private static FigureData Time(string yaml) => Assert.Single(new ChargeTimeFigure().Figures(JobText.Context(yaml)));

    private static FigureData Diagram(string yaml) => Assert.Single(new PressureEnthalpyFigure().Figures(JobText.Context(yaml)));

    [Fact]
    public void Superheat_and_subcooling_through_time()
    {
        var figure = Time(ChargeJobs.TarnLane);
        Assert.Equal("charge-time", figure.Plot);
        Assert.Equal(AxisScale.Clock, figure.X.Scale);
        var superheat = figure.Curves.Single(c => c.Label == "superheat");
        // 11:20 and 11:35 are 680 and 695 minutes after midnight; 13.23 and 12.93, 10.24 and 10.49 °F by the hand calculation.
        Assert.Equal([680.0, 695.0], superheat.X);
        Assert.Equal(12.93, superheat.Y[1]!.Value, 0.05);
        Assert.Equal(10.24, figure.Curves.Single(c => c.Label == "subcooling").Y[0]!.Value, 0.05);
        Assert.True(superheat.YLow[1] < superheat.Y[1] && superheat.Y[1] < superheat.YHigh[1]);
        Assert.Equal("compressor started", Assert.Single(figure.Events).Label);
        Assert.Equal(660, figure.Events[0].X);
    }

    [Fact]
    public void The_bands_are_the_limits_of_the_judged_reading()
    {
        var figure = Time(ChargeJobs.TarnLane);
        var subcooling = figure.Curves.Single(c => c.Label == "subcooling tolerance");
        Assert.Equal(CurveRole.Limit, subcooling.Role);
        Assert.Equal(6.0, subcooling.YLow[0]!.Value, 1e-9);
        Assert.Equal(12.0, subcooling.YHigh[1]!.Value, 1e-9);
        var superheat = figure.Curves.Single(c => c.Label == "superheat tolerance");
        Assert.Equal(4.0, superheat.YLow[0]!.Value, 1e-9);
        Assert.Equal(25.0, superheat.YHigh[0]!.Value, 1e-9);
    }

    [Fact]
    public void Early_readings_are_drawn_and_changes_of_charge_are_marked()
    {
        var yaml = ChargeJobs.TarnLane.With("running: full", "running: full\n  events: [{at: \"11:22\", added: 3 oz}]");
        var figure = Time(yaml);
        Assert.Equal(2, figure.Curves.Single(c => c.Label == "subcooling").X.Length);
        Assert.Contains(figure.Events, e => e.Label == "3 oz added" && e.X == 682);
    }

    [Fact]
    public void One_reading_is_no_course() => Assert.Empty(new ChargeTimeFigure().Figures(JobText.Context(ChargeJobs.FenRow)));

    [Fact]
    public void Pressure_over_enthalpy_holds_dome_isotherms_and_the_measured_states()
    {
        var figure = Diagram(ChargeJobs.TarnLane);
        Assert.Equal("pressure-enthalpy", figure.Plot);
        Assert.Equal(AxisScale.Log10, figure.Y.Scale);
        var states = figure.Curves.Single(c => c.Role == CurveRole.State);
        Assert.Equal("11:35", states.Label);
        // Vapor 118.7 + 12.10 = 130.8 psia, liquid 339.5 + 12.1 = 351.6 psia; the throttle keeps the enthalpy, the cycle closes.
        Assert.Equal(130.8, states.Y[0]!.Value, 0.05);
        Assert.Equal(351.6, states.Y[2]!.Value, 0.05);
        Assert.Equal(states.X[2], states.X[3], 1e-6);
        Assert.Equal(states.X[0], states.X[4], 1e-9);
        Assert.True(states.YHigh[0] > states.Y[0] && states.YLow[0] < states.Y[0]);
        Assert.Single(figure.Curves, c => c.Role == CurveRole.Dome);
        Assert.Equal(3, figure.Curves.Count(c => c.Role == CurveRole.Isotherm));
    }

    [Fact]
    public void The_dome_of_a_pure_refrigerant_passes_its_published_points()
    {
        // R-32 at 0 °C (Tillner-Roth and Yokozeki 1997, table 12): 813.10 kPa = 117.93 psia, h' 200.00 and h" 515.30 kJ/kg; 1 Btu/lb = 2.326 kJ/kg.
        var dome = Diagram(ChargeJobs.TarnLane.With("refrigerant: R-454B", "refrigerant: R-32")).Curves.Single(c => c.Role == CurveRole.Dome);
        var top = dome.Y.Select((y, i) => (Y: y!.Value, I: i)).MaxBy(p => p.Y).I;
        Assert.Equal(200.00 / 2.326, Interpolated(dome, 0, top, 117.93), 0.1);
        Assert.Equal(515.30 / 2.326, Interpolated(dome, top, dome.X.Length - 1, 117.93), 0.1);
    }

    [Fact]
    public void No_curve_is_longer_than_two_thousand_points()
    {
        Assert.All(Diagram(ChargeJobs.TarnLane).Curves, c => Assert.InRange(c.X.Length, 2, 2000));
        Assert.All(Diagram(ChargeJobs.TarnLane).Curves, c => Assert.Equal(c.X.Length, c.Y.Length));
    }

    [Fact]
    public void Nothing_settled_no_diagram() =>
        Assert.Empty(new PressureEnthalpyFigure().Figures(JobText.Context(ChargeJobs.FenRow.With("compressor started: \"10:00\"", "compressor started: \"10:25\""))));

    [Fact]
    public void Tables_hold_the_readings_as_written_and_both_stages()
    {
        var tables = new ChargeReadingsTable().Tables(JobText.Context(ChargeJobs.TarnLane)).ToList();
        Assert.Equal(["charge-circuit", "charge-air", "charge-worked-out"], tables.Select(t => t.Id));
        Assert.Equal(["", "psig", "psig", "°F", "°F"], tables[0].Columns.Select(c => c.Unit));
        Assert.Equal(["11:35", "118.9", "340.8", "57.2", "97.0"], tables[0].Rows[1]);
        Assert.Equal(["11:20", "91.5", "76.2", "63.4", "56.9"], tables[1].Rows[0]);
        var worked = tables[2].Rows;
        Assert.Equal(["11:35", "44.00", "13.10"], worked[1].Take(3));
        Assert.Equal(["107.86", "10.86"], worked[1].Skip(4).Take(2));
        Assert.Equal("13.40", worked[0][2]);
        Assert.Equal("10.61", worked[0][5]);
        Assert.Equal("not judged", worked[0][7]);
        Assert.Equal("judged", worked[1][7]);
        Assert.All(tables, t => Assert.All(t.Rows, r => Assert.Equal(t.Columns.Length, r.Length)));
    }

    [Fact]
    public void A_reading_too_soon_is_not_judged()
    {
        var table = new ChargeReadingsTable().Tables(JobText.Context(ChargeJobs.TarnLane.With("compressor started: \"11:00\"", "compressor started: \"11:10\""))).Last();
        Assert.Equal("not judged", table.Rows[0][7]);
    }

    // A charge by weight, a receiver and a fixed orifice take the verdict from subcooling, superheat or both: the table says of which one there is a verdict.
    [Theory]
    [InlineData("limits:\n", "limits:\n  charge by: weight\n", "not judged")]
    [InlineData("  metering: TXV\n", "  metering: TXV\n  receiver: yes\n", "superheat judged")]
    public void Only_what_has_a_verdict_is_judged(string from, string to, string counts)
    {
        var yaml = ChargeJobs.TarnLane.With(from, to);
        Assert.Equal(counts, new ChargeReadingsTable().Tables(JobText.Context(yaml)).Last().Rows[1][7]);
        Assert.DoesNotContain(JobText.Evaluate(yaml, "charge.subcooling"), f => f.Verdict != Commission.Measurement.Decisions.Verdict.Information);
    }

    private static double Interpolated(FigureCurve curve, int from, int to, double pressure)
    {
        for (var i = from; i < to; i++)
        {
            double a = curve.Y[i]!.Value, b = curve.Y[i + 1]!.Value;
            if ((a - pressure) * (b - pressure) <= 0)
                return curve.X[i] + ((curve.X[i + 1] - curve.X[i]) * Math.Log(pressure / a) / Math.Log(b / a));
        }

        throw new InvalidOperationException("The pressure is not on the curve.");
    }
}
