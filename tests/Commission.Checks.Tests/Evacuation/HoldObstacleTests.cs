using System.Globalization;
using System.Text;
using Commission.Checks.Kernel;
using Commission.Checks.Recording;
using Commission.Checks.Tests.Coverage;
using Commission.Measurement.Decisions;
using Commission.Records.Findings;
using Xunit;
using static Commission.Checks.Tests.Evacuation.EvacuationJobs;
using static Commission.Checks.Tests.Evacuation.HoldJobs;

namespace Commission.Checks.Tests.Evacuation;

/// <summary>Holds that say nothing of the system, and those beside them that do. Facts of the trade: common practice, no source.</summary>
public sealed class HoldObstacleTests
{
    [Fact]
    public void Teeth_of_a_valve_opened_again_and_again()
    {
        // 8 micron a minute, and every four minutes 32 micron back within a row.
        var found = Hold(Logged(), Log(15, 2700, t => t <= 1200 ? PumpDown(t) : 390 + (8 * ((t - 1200) % 240) / 60)));
        Assert.Equal(Verdict.NotEvaluated, found.Verdict);
        Assert.StartsWith("hold-teeth(count 6", Why(found), StringComparison.Ordinal);
    }

    // A display that went up and down by a micron each row stands for a quarter of an hour; one that had come to rest may.
    [Theory]
    [InlineData(1, Verdict.NotEvaluated)]
    [InlineData(0, Verdict.Pass)]
    public void A_display_that_freezes_in_the_hold(int flicker, Verdict verdict)
    {
        var found = Hold(Logged(), Log(15, 2400, t => t <= 1200 ? PumpDown(t) + flicker * (t / 15 % 2) : t <= 1500 ? 400 + flicker * (t / 15 % 2) : 400));
        Assert.Equal(verdict, found.Verdict);
        if (verdict == Verdict.NotEvaluated)
            Assert.StartsWith("hold-display-frozen(level 400 micron", Why(found), StringComparison.Ordinal);
    }

    [Fact]
    public void A_rise_that_stops_from_one_row_to_the_next_is_a_frozen_display_and_one_that_levels_off_is_none()
    {
        Assert.Equal(Verdict.NotEvaluated, Hold(Logged(), Log(15, 2700, t => t <= 1200 ? PumpDown(t) : 400 + (Math.Min(t - 1200, 600) / 12))).Verdict);
        Assert.Equal(Verdict.Pass, Hold(Logged(), Log(15, 2700, t => t <= 1200 ? PumpDown(t) : 450 - (50 * Math.Exp(-(t - 1200) / 120)))).Verdict);
    }

    // 700 micron to 500 in a minute and more; 10 K in a quarter of an hour: metal takes 18 % of that in a minute (time constant 5 min), and water vapor falls by a tenth.
    [Theory]
    [InlineData(45, Verdict.NotEvaluated)]
    [InlineData(600, Verdict.Pass)]
    public void A_written_cooling_explains_what_falls_no_faster_than_metal_cools(double constant, Verdict verdict)
    {
        const string Cooled = "coldest part: 72 °F\ncoldest part at end: 54 °F\n";
        Assert.Equal(verdict, Hold(Logged(more: Cooled), Log(15, 3600, t => Falling(t, constant))).Verdict);
        Assert.Equal(Verdict.NotEvaluated, Hold(Logged(), Log(15, 3600, t => Falling(t, constant))).Verdict);
    }

    // The same fall over ten minutes with a log of the coldest part that cooled meanwhile, and with one that did not.
    [Theory]
    [InlineData(-9, Verdict.Pass)]
    [InlineData(0, Verdict.NotEvaluated)]
    public void A_temperature_log_tells_whether_it_cooled_meanwhile(double kelvin, Verdict verdict) =>
        Assert.Equal(verdict, Warmed("evacuation.hold", t => Falling(t, 600), t => 22 + (t < 1800 ? 0 : kelvin * Math.Min(1, (t - 1800) / 600))).Verdict);

    // A gas of 800 micron warmed by 60 K rises by 800·60/293 = 164 micron over 40 min: a rise where the warmth is not known, and none where it is.
    [Theory]
    [InlineData(60, true)]
    [InlineData(0, false)]
    public void A_rise_by_warmth_is_taken_off(double kelvin, bool held)
    {
        double Gas(double t) => t <= 1200 ? (20_000 * Math.Exp(-t / 120)) + 799 : 800 * (1 + (60 * (t - 1200) / 2400 / 293.15)) + (t % 45 == 0 ? 1 : 0);
        var found = Warmed("evacuation.cause", Gas, t => 20 + (t <= 1200 ? 0 : kelvin * (t - 1200) / 2400));
        Assert.Equal(held, found.Statement.StartsWith("Held", StringComparison.Ordinal));
    }

    [Fact]
    public void What_goes_on_past_its_limit_is_to_be_looked_at()
    {
        var found = Hold(Logged(), Log(5, 3600, t => t <= 1200 ? PumpDown(t) : 400 + ((t - 1200) / 2)));
        Assert.Equal((Verdict.Pass, true), (found.Verdict is Verdict.PassWithinUncertainty ? Verdict.Pass : found.Verdict, found.IsToLookAt));
        Assert.StartsWith("hold-went-past(limit 1000 micron", Next(found), StringComparison.Ordinal);
        Assert.False(Hold(Logged(), Log(5, 3600, t => t <= 1200 ? PumpDown(t) : 400 + ((t - 1200) / 5))).IsToLookAt);
    }

    [Theory]
    [InlineData(0, 5, true)] // typed to fives
    [InlineData(0, 10, false)] // a logger that writes tens
    [InlineData(3, 5, true)] // seven in ten typed to fives
    [InlineData(10, 5, false)] // as the gauge shows it
    public void Last_digits_of_a_log(int honest, int to, bool told)
    {
        var draws = new Draws(11, ErrorModel.Offset, 0);
        var log = Log(20, 3600, t =>
        {
            var level = (t <= 1200 ? PumpDown(t) : 400 + ((t - 1200) / 60)) + (4 * draws.Normal());
            return draws.Uniform(0, 10) < honest ? level : Math.Round(level / to) * to;
        });
        Assert.Equal(told, All("evidence.terminal-digits", Job(Logged()), log).Any(f => f.IsToLookAt));
    }

    [Theory]
    [InlineData(2, 0, true)] // flickers in the pump-down, and then runs on a ruler
    [InlineData(2, 2, false)] // lives on
    [InlineData(0, 0, false)] // a quiet gauge
    public void A_hold_on_a_straight_line_to_the_digit(double before, double after, bool told)
    {
        var draws = new Draws(12, ErrorModel.Offset, 0);
        var log = Log(10, 2700, t => t <= 1200 ? PumpDown(t) + (before * draws.Normal()) : 400 + ((t - 1200) / 40) + (after * draws.Normal()));
        Assert.Equal(told, All("evidence.resolution", Job(Logged()), log).Any(f => f.IsToLookAt));
    }

    private static double PumpDown(double t) => (20_000 * Math.Exp(-t / 120)) + 399;

    // Up to 700 micron, and from 30 min down to 500.
    private static double Falling(double t, double constant) => t <= 1200 ? PumpDown(t) : t < 1800 ? 400 + ((t - 1200) / 2) : 500 + (200 * Math.Exp(-(t - 1800) / constant)) + (t % 45 == 0 ? 1 : 0);

    private static Finding Warmed(string check, Func<double, double> micron, Func<double, double> celsius)
    {
        var temperatures = new StringBuilder("time (s),temperature (C)\n");
        for (var t = 0; t <= 3600; t += 60)
            temperatures.Append(CultureInfo.InvariantCulture, $"{t},{celsius(t):0.00}\n");
        var job = JobText.Read(Job(Logged(more: "temperature series: {file: cold.csv}\n")), ("log.csv", Log(15, 3600, micron)), ("cold.csv", temperatures.ToString()));
        return Assert.Single(CheckCatalogue.Find(check)!.Evaluate(new CheckContext(job, new CheckSettings(job.Identity.Date.Value))));
    }
}
