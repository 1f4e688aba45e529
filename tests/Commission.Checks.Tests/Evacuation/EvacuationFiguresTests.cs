using Commission.Checks.Circuit;
using Commission.Checks.Evacuation;
using Commission.Checks.Formulas;
using Commission.Checks.Kernel;
using Commission.Checks.VacuumAnalysis;
using Commission.Records.Series;
using Xunit;
using static Commission.Checks.Tests.Evacuation.EvacuationJobs;

namespace Commission.Checks.Tests.Evacuation;

/// <summary>The figures hold everything a plot draws, thinned without losing a spike or a break.</summary>
public sealed class EvacuationFiguresTests
{
    private static readonly string Logged = $"{Placed}\ncoldest part: 66 °F\nseries: {{file: log.csv}}\nevents:\n  - {{at: 20 min, what: nitrogen break, to: 2 psig}}\n  - {{at: 60 min, what: isolated}}\n  - {{at: 80 min, what: end}}";

    private static string Course(int step) => Log(step, 4800, t => t switch
    {
        < 1200 => (90_000 * Math.Exp(-t / 100)) + 700,
        < 1800 => double.NaN,
        < 3600 => (90_000 * Math.Exp(-(t - 1800) / 100)) + 300,
        _ => 330 + ((t - 3600) * 0.1) + (t % 7 * 0.4),
    });

    [Fact]
    public void The_pull_down_has_its_levels_events_and_gaps()
    {
        var figure = Assert.Single(new PullDownFigure().Figures(Context(Job(Logged), Course(10))));
        Assert.Equal("pull-down", figure.Plot);
        Assert.Equal(AxisScale.Log10, figure.Y.Scale);
        // 66 °F: 16 374 micron, between the rows of 15 and 20 °C of IAPWS-95.
        Assert.Equal([(LineRole.Target, 500.0), (LineRole.DecayLimit, 1000.0), (LineRole.Saturation, 16_374.0)], figure.Lines.Select(l => (l.Role, Math.Round(l.At))));
        Assert.Equal([20.0, 60.0, 80.0], figure.Events.Select(e => e.X));
        Assert.Contains("nitrogen break to 2 psig", figure.Events[0].Label, StringComparison.Ordinal);
        var curve = Assert.Single(figure.Curves);
        Assert.Equal(60, curve.Y.Count(y => y is null));
        Assert.Contains("lowest 300 micron", figure.AltText, StringComparison.Ordinal);
    }

    [Fact]
    public void The_hold_has_models_with_bands_and_what_they_leave_over()
    {
        var figure = Assert.Single(new HoldFigure().Figures(Context(Job(Logged), Course(5))));
        Assert.Equal(0, figure.Curves[0].X[0]);
        Assert.Equal(20, figure.Curves[0].X[^1], 1e-6);
        var model = Assert.Single(figure.Curves, c => c.Role == CurveRole.Model);
        Assert.Equal(model.X.Length, model.YLow.Length);
        Assert.Equal(model.X.Length, model.YHigh.Length);
        Assert.Single(figure.Curves, c => c.Role == CurveRole.Residual);
        Assert.Contains(figure.Lines, l => l is { Axis: AxisName.X, At: 10, Role: LineRole.DecayLimit });
    }

    [Fact]
    public void Two_levels_by_hand_have_no_shape_to_draw() =>
        Assert.Empty(new HoldFigure().Figures(Context(Job($"{Placed}\nlevels:\n  - {{at: \"10:25\", pressure: 320 micron, isolated: yes}}\n  - {{at: \"10:36\", pressure: 410 micron}}"))));

    [Fact]
    public void Levels_by_hand_are_marks_with_U()
    {
        var yaml = Job($"{Placed}\nlevels:\n  - {{at: \"10:25\", pressure: 320 micron, isolated: yes}}\n  - {{at: \"10:30\", pressure: 380 micron}}\n  - {{at: \"10:36\", pressure: 410 micron}}");
        Assert.Empty(new PullDownFigure().Figures(Context(yaml)));
        var curve = Assert.Single(Assert.Single(new HoldFigure().Figures(Context(yaml))).Curves);
        Assert.Equal([320.0, 380.0, 410.0], curve.Y.Select(y => Math.Round(y!.Value, 6)));
        // 10 % of 320 as a rectangle with k = 2: 37 micron.
        Assert.Equal(320 - 36.95, curve.YLow[0]!.Value, 0.1);
    }

    [Fact]
    public void A_hold_the_gauge_could_not_see_is_not_drawn() =>
        Assert.Empty(new HoldFigure().Figures(Context(Job(Logged.Replace("at the system", "at the pump", StringComparison.Ordinal)), Course(10))));

    [Fact]
    public void Thinning_keeps_the_extremes_and_over_range_stretches_of_a_hundred_thousand_rows()
    {
        var times = Enumerable.Range(0, 100_000).Select(i => (double)i).ToArray();
        var pressures = times.Select(t => 50 + Math.Sin(t / 9000)).ToArray();
        pressures[61_234] = 4000;
        pressures[77_777] = 0.5;
        var over = times.Select(t => t is >= 20_000 and < 20_400).ToArray();
        var (x, y) = CurveThinning.Of(VacuumSeries.From(times, pressures, over), 0, 99_999);
        Assert.InRange(x.Length, 1000, CurveThinning.MostPoints);
        Assert.Equal(x.Length, y.Length);
        Assert.Contains(4000.0, y);
        Assert.Contains(0.5, y);
        Assert.Contains(null, y);
        Assert.True(x.Zip(x.Skip(1), (a, b) => b > a).All(rises => rises));
    }

    [Fact]
    public void The_table_lists_parts_and_events_in_order()
    {
        var table = Assert.Single(new EvacuationPartsTable().Tables(Context(Job(Logged + "\n  - {at: 82 min, what: gauge cleaned}"), Course(10))));
        Assert.Equal(["pull", "break", "broken with nitrogen to 2 psig", "pull", "isolated hold", "gauge cleaned"], table.Rows.Select(r => r[2]));
        Assert.Equal(7, table.Columns.Length);
        Assert.All(table.Rows, r => Assert.Equal(7, r.Length));
        // A break has no lowest level: it goes up.
        Assert.Equal(["701 micron", "90300 micron", ""], table.Rows[1][4..]);
    }

    // Where the gauge shows dashes to the end of the break, the level before it is no level after it.
    [Fact]
    public void A_break_beyond_the_gauge_ends_over_range()
    {
        var log = Log(60, 4800, t => t switch
        {
            < 1200 => (15_000 * Math.Exp(-t / 100)) + 700,
            < 1860 => double.NaN,
            < 3600 => (15_000 * Math.Exp(-(t - 1860) / 100)) + 300,
            _ => 330 + ((t - 3600) * 0.1),
        });
        var table = Assert.Single(new EvacuationPartsTable().Tables(Context(Job(Logged), log)));
        Assert.Equal(["700 micron", "over range", ""], table.Rows.Single(r => r[2] == "break")[4..]);
    }
}
