using Commission.Checks.Formulas;
using Commission.Checks.Tests.VacuumAnalysis.Simulation;
using Commission.Checks.VacuumAnalysis;
using Commission.Messages;
using Commission.Records;
using Xunit;

namespace Commission.Checks.Tests.VacuumAnalysis;

public sealed class HoldAnalysisTests
{
    private const double Micron = 0.133322;

    private static readonly GaugeCharacter Gauge = new(Micron, 0.1, 0);

    [Theory]
    [InlineData(0.05)]
    [InlineData(0.005)]
    public void A_straight_line_gives_its_slope(double slope)
    {
        // No noise, no digit steps: the fit is exact, the interval is gain (±10 % of reading) and 1 K of drift.
        var result = Of(t => 60 + slope * t, 1800, 1, new GaugeCharacter(0, 0.1, 0));
        Assert.Equal(HoldConclusion.SteadyRise, result.Conclusion);
        Assert.Equal(slope, result.Slope!.Value.Value, 1e-9);
        Assert.True(result.Slope.Value.High >= 1.09 * slope && result.Slope.Value.Low <= 0.91 * slope);
    }

    [Fact]
    public void A_source_gives_its_plateau_and_time_constant()
    {
        // p = 300 − 240·e^(−t/400), one row a second: nothing to average.
        var result = Of(t => 300 - 240 * Math.Exp(-t / 400), 1800, 10, new GaugeCharacter(0, 0, 0), drift: 0);
        Assert.Equal(HoldConclusion.Source, result.Conclusion);
        Assert.Equal(300, result.Plateau!.Value.Value, 1e-3);
        Assert.Equal(400, result.TimeConstant!.Value.Value, 1e-2);
    }

    [Fact]
    public void Line_and_source_are_separated()
    {
        var result = Of(t => 100 + 0.02 * t - 40 * Math.Exp(-t / 300), 2400, 5, new GaugeCharacter(0, 0, 0), drift: 0);
        Assert.Equal(HoldConclusion.SteadyRiseAndSource, result.Conclusion);
        Assert.Equal(0.02, result.Slope!.Value.Value, 1e-6);
        Assert.Equal(300, result.TimeConstant!.Value.Value, 0.1);
    }

    [Fact]
    public void A_gauge_that_never_changes_its_digit_has_held()
    {
        var result = Of(_ => 480 * Micron, 900, 1, Gauge);
        Assert.Equal(HoldConclusion.Held, result.Conclusion);
        Assert.Equal(1, result.Blocks);
    }

    [Fact]
    public void A_staircase_of_a_coarse_gauge_is_a_steady_rise_and_not_a_source()
    {
        // 10 micron steps, 300 micron rise in half an hour: no more independent readings than digit changes.
        const double Step = 10 * Micron;
        var result = Of(t => Math.Round((60 + 40 * t / 1800) / Step) * Step, 1800, 1, new GaugeCharacter(Step, 0.1, 0));
        Assert.Equal(HoldConclusion.SteadyRise, result.Conclusion);
        Assert.InRange(result.Blocks, 15, 31);
        Assert.True(result.Slope!.Value.Covers(40.0 / 1800));
    }

    [Fact]
    public void Where_the_log_moves_in_larger_steps_than_stated_those_count()
    {
        const double Step = 10 * Micron;
        var result = Of(t => Math.Round((60 + 40 * t / 1800) / Step) * Step, 1800, 1, Gauge);
        Assert.Equal(Step, result.Resolution, 1e-9);
    }

    [Fact]
    public void A_falling_pressure_is_not_a_pass()
    {
        var result = Of(t => 90 - 0.02 * t, 1800, 1, Gauge);
        Assert.Equal(HoldConclusion.CannotTell, result.Conclusion);
        Assert.Equal(CannotTellReason.Falling, result.Reason);
        Assert.Null(result.TimeToTell);
    }

    [Fact]
    public void A_hold_much_shorter_than_the_time_constant_does_not_tell_a_line_from_a_source_and_says_how_long_would()
    {
        // In a third of τ a source hardly bends: what of it is steady cannot be told.
        var simulator = new HoldSimulator(3);
        var truth = simulator.Draw(HoldConclusion.Source, correlation: 0) with
        {
            Length = 900,
            Interval = 1,
            Level = 50,
            Step = 200,
            Tau = 2700,
            Noise = 1,
            Resolution = Micron,
        };
        var result = HoldAnalysis.Analyze(simulator.Log(truth), 0, truth.Length, truth.Gauge, truth.Options);
        Assert.True(result.Reason is CannotTellReason.LineOrSource or CannotTellReason.SourceWithOrWithoutLine, $"{result.Reason}");
        Assert.InRange(result.TimeToTell!.Value, 1.5 * 900, 24 * 900);
    }

    [Fact]
    public void A_lone_spike_dropped_rows_and_over_range_rows_change_nothing()
    {
        var clean = Of(t => 60 + 0.02 * t + 0.2 * Math.Sin(t), 1200, 2, Gauge);
        var times = Enumerable.Range(0, 601).Select(i => 2.0 * i).Where(t => t is < 400 or > 460).ToArray();
        var pressures = times.Select(t => 60 + 0.02 * t + 0.2 * Math.Sin(t)).ToArray();
        var over = new bool[times.Length];
        pressures[250] = 900;
        pressures[^1] = 0.1;
        over[300] = true;
        pressures[300] = double.NaN;
        var result = HoldAnalysis.Analyze(VacuumSeries.From(times, pressures, over), 0, 1200, Gauge, new HoldOptions(73));
        Assert.Equal(clean.Conclusion, result.Conclusion);
        Assert.Equal(2, result.Rows.Outliers);
        Assert.Equal(1, result.Rows.OverRange);
        Assert.Equal(clean.Slope!.Value.Value, result.Slope!.Value.Value, 1e-4);
    }

    [Fact]
    public void A_step_at_isolation_is_left_out()
    {
        var result = Of(t => 60 + 250 * Math.Exp(-t / 8), 1200, 1, Gauge);
        Assert.Equal(HoldConclusion.Held, result.Conclusion);
        Assert.Equal(60, result.Rows.Skipped);
    }

    [Fact]
    public void A_hold_that_leaves_the_range_of_the_gauge_has_not_held()
    {
        var times = Enumerable.Range(0, 601).Select(i => (double)i).ToArray();
        var pressures = times.Select(t => t < 90 ? 60.0 : double.NaN).ToArray();
        var result = HoldAnalysis.Analyze(
            VacuumSeries.From(times, pressures, [.. times.Select(t => t >= 90)]), 0, 600, Gauge, new HoldOptions(73));
        Assert.Equal(CannotTellReason.OverRange, result.Reason);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(4)]
    public void Few_rows_give_a_reason_and_no_exception(int rows)
    {
        var times = Enumerable.Range(0, rows).Select(i => 100.0 * (i + 1)).ToArray();
        var result = HoldAnalysis.Analyze(
            VacuumSeries.From(times, [.. times.Select(t => 60 + 0.1 * t)]), 0, 600, Gauge, new HoldOptions(73));
        Assert.Equal(HoldConclusion.CannotTell, result.Conclusion);
        Assert.Equal(rows < 3 ? CannotTellReason.NoRows : CannotTellReason.TooFewBlocks, result.Reason);
    }

    [Theory]
    [InlineData(500, 100)]
    [InlineData(2000, 3000)]
    [InlineData(-500, -100)]
    public void A_hold_outside_the_log_has_no_rows(double isolation, double end)
    {
        var times = Enumerable.Range(0, 100).Select(i => 10.0 * i).ToArray();
        var log = VacuumSeries.From(times, [.. times.Select(_ => 60.0)]);
        Assert.Equal(CannotTellReason.NoRows, HoldAnalysis.Analyze(log, isolation, end, Gauge, new HoldOptions(73)).Reason);
        var decay = DecayJudgement.Read(log, isolation, end, 600);
        Assert.False(decay.Reached);
    }

    [Fact]
    public void Nothing_a_log_holds_makes_it_throw()
    {
        var random = new Random(4);
        for (var i = 0; i < 200; i++)
        {
            var n = random.Next(0, 60);
            var times = Enumerable.Range(0, n).Select(_ => random.Next(0, 900) * 1.0).Order().ToArray();
            var pressures = times.Select(_ => random.Next(5) == 0 ? double.NaN : Math.Exp(12 * random.NextDouble() - 3)).ToArray();
            var over = times.Select(_ => random.Next(6) == 0).ToArray();
            var result = HoldAnalysis.Analyze(VacuumSeries.From(times, pressures, over), 100, 700, Gauge, new HoldOptions(null));
            Assert.Equal(result.Conclusion == HoldConclusion.CannotTell, result.Reason is not null);
        }
    }

    [Fact]
    public void Evidence_follows_the_formula()
    {
        // AICc = n·ln(RSS/n) + 2k + 2k(k+1)/(n−k−1): Burnham and Anderson, Model Selection and Multimodel Inference (2002) eq. 2.4, from memory.
        var result = Of(t => 60 + 0.03 * t + 0.4 * Math.Sin(0.7 * t) + 0.3 * Math.Cos(2.1 * t), 900, 5, new GaugeCharacter(0, 0, 0));
        Assert.Equal([2, 3, 4, 4, 5], result.Evidence.Select(e => e.Parameters));
        foreach (var e in result.Evidence)
        {
            double n = result.Blocks;
            double k = e.Parameters;
            Assert.Equal(2 * n * Math.Log(e.RootMeanSquare) + 2 * k + 2 * k * (k + 1) / (n - k - 1), e.Aicc!.Value, 1e-9);
        }

        Assert.Equal(0, result.Evidence.Min(e => e.Difference));
    }

    [Fact]
    public void Curves_and_points_are_fit_for_a_figure()
    {
        var simulator = new HoldSimulator(9);
        var truth = simulator.Draw(HoldConclusion.SteadyRiseAndSource, correlation: 0.5) with { Length = 3600, Interval = 1, Noise = 0.5 };
        var result = HoldAnalysis.Analyze(simulator.Log(truth), 0, truth.Length, truth.Gauge, truth.Options);
        Assert.Equal(5, result.Curves.Length);
        Assert.InRange(result.Points.Length, 20, 200);
        foreach (var curve in result.Curves)
        {
            Assert.InRange(curve.Times.Length, 2, 200);
            for (var i = 0; i < curve.Times.Length; i++)
                Assert.True(curve.Low[i] <= curve.Pressures[i] && curve.Pressures[i] <= curve.High[i]);
        }
    }

    [Fact]
    public void Sentences_do_not_overclaim()
    {
        var wording = Wording(new(IsBesideChargedUnit: false, IsCharged: false, HasHeldRig: false));
        var held = RecordWords.Text(wording.Statement(Of(t => 60 + 0.4 * Math.Sin(t), 1200, 2, Gauge)), Language.English);
        Assert.Matches(@"^Held: no rise above \d+(\.\d)? micron/min seen over 20 min\.$", held);
        var rise = RecordWords.Text(wording.Statement(Of(t => 60 + 0.03 * t + 0.1 * Math.Sin(t), 1200, 2, Gauge)), Language.English);
        Assert.StartsWith("A steady rise of 13.5 micron/min (95 %: ", rise, StringComparison.Ordinal);
        Assert.Contains("air coming in, the rig, or refrigerant passing a valve or leaving the oil", rise, StringComparison.Ordinal);
        Assert.Contains("would look the same", rise, StringComparison.Ordinal);
        var source = RecordWords.Text(wording.Statement(Of(t => 130 - 70 * Math.Exp(-t / 200) + 0.1 * Math.Sin(t), 1200, 2, Gauge)), Language.English);
        Assert.Contains("water, oil, outgassing", source, StringComparison.Ordinal);
        foreach (var sentence in (string[])[held, rise, source])
        {
            Assert.DoesNotContain("tight", sentence, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain("dry", sentence, StringComparison.OrdinalIgnoreCase);
        }
    }

    // What a crew can still do: nobody pulls down on a charge, the service valves of a charged unit stay shut, oil lies in a compressor (facts of the trade, common practice, no source).
    [Theory]
    [InlineData("steady", true, false, "shape-steady-next")]
    [InlineData("steady", true, true, "shape-steady-charged-next")]
    [InlineData("source", true, false, "shape-source-next")]
    [InlineData("source", true, true, null)]
    [InlineData("held", true, false, null)]
    [InlineData("late", true, false, "shape-speeds-up-late-next")]
    [InlineData("late", true, true, "shape-steady-charged-next")]
    [InlineData("fell", true, false, "shape-falling-next")]
    [InlineData("fell", true, true, null)]
    public void The_next_step_is_one_that_the_crew_can_take(string shape, bool beside, bool charged, string? next)
    {
        var hold = Shape(shape);
        Assert.Equal(next is null ? null : "evacuation." + next, Wording(new(beside, charged, HasHeldRig: false)).NextStep(hold)?.Id);
    }

    [Fact]
    public void A_tight_nitrogen_hold_and_water_turn_the_next_step()
    {
        var wording = Wording(new(IsBesideChargedUnit: true, IsCharged: false, HasHeldRig: false));
        Assert.Equal("evacuation.shape-steady-tight-next", wording.NextStep(Shape("steady"), isTight: true)?.Id);
        Assert.Equal("evacuation.shape-water-next", wording.NextStep(Shape("source"), isWater: true)?.Id);
        Assert.Equal("evacuation.shape-steady-open-next", wording.NextStep(Shape("steady") with { ExcludesOutgassing = false }, isTight: true)?.Id);
    }

    [Theory]
    [InlineData(true, false, "air coming in, the rig, or refrigerant passing a closed service valve")]
    [InlineData(true, true, "air coming in or refrigerant passing a closed service valve")]
    [InlineData(false, false, "air coming in, the rig, or refrigerant passing a valve or leaving the oil")]
    public void Only_what_can_be_is_named(bool beside, bool rigHeld, string causes) =>
        Assert.Contains($": {causes}.", RecordWords.Text(Wording(new(beside, IsCharged: false, rigHeld)).Statement(Shape("steady")), Language.English), StringComparison.Ordinal);

    [Theory]
    [InlineData(true, "gas that the walls give off")]
    [InlineData(false, "gas that oil and walls give off")]
    public void Oil_gives_off_gas_where_a_compressor_is(bool beside, string walls) =>
        Assert.Contains(walls, RecordWords.Text(Wording(new(beside, IsCharged: false, HasHeldRig: false)).Statement(Shape("steady") with { ExcludesOutgassing = false }), Language.English), StringComparison.Ordinal);

    // What the walls give off slows down without end: it may not be said to have levelled off beside a figure that says it does not.
    [Theory]
    [InlineData(nameof(HoldModel.Source), true)]
    [InlineData(nameof(HoldModel.Outgassing), false)]
    [InlineData(nameof(HoldModel.LineAndSource), false)]
    [InlineData(nameof(HoldModel.Line), false)]
    public void Only_a_curve_that_levels_off_is_said_to(string model, bool levels)
    {
        var held = Shape("held") with { Preferred = Enum.Parse<HoldModel>(model), RiseSeen = 0.5 * Shape("held").CountingRise, Resolution = 0.01, Wander = null };
        Assert.Equal(levels, RecordWords.Text(Wording(new(IsBesideChargedUnit: true, IsCharged: false, HasHeldRig: false)).Statement(held), Language.English).Contains("levelled off", StringComparison.Ordinal));
    }

    private static HoldResult Shape(string shape) => shape switch
    {
        "steady" => Of(t => 60 + 0.03 * t + 0.1 * Math.Sin(t), 1200, 2, Gauge) with { ExcludesOutgassing = true },
        "source" => Of(t => 130 - 70 * Math.Exp(-t / 200) + 0.1 * Math.Sin(t), 1200, 2, Gauge),
        "held" => Of(t => 60 + 0.4 * Math.Sin(t), 1200, 2, Gauge),
        "late" => Of(t => 60 + 0.05 * Math.Max(0, t - 900) + 0.1 * Math.Sin(t), 1800, 2, Gauge),
        _ => Of(t => 90 - 0.02 * t, 1800, 1, Gauge),
    };

    private static HoldWording Wording(HoldScene scene) => new(p => Microns(p, "micron"), r => Microns(60 * r, "micron/min"), scene);

    private static QuantityValue Microns(double pascals, string unit) => new(pascals, "pressure", unit, Math.Round(pascals / Micron, 1), 1);

    private static HoldResult Of(Func<double, double> pressure, double length, double interval, GaugeCharacter gauge, double drift = 1)
    {
        var times = Enumerable.Range(0, (int)(length / interval) + 1).Select(i => i * interval).ToArray();
        return HoldAnalysis.Analyze(
            VacuumSeries.From(times, [.. times.Select(pressure)]), 0, length, gauge, new HoldOptions(73, TemperatureDrift: drift));
    }
}
