using System.Globalization;
using Commission.Checks.Circuit;
using Commission.Checks.Inference;
using Commission.Measurement.Decisions;
using Commission.Messages;
using Xunit;

namespace Commission.Checks.Tests.Charge;

/// <summary>
/// A log of the running system at a constant vapor pressure: superheat moves as the line does, kelvin for kelvin (definition). A valve swings with a
/// period of a minute or more; a room that comes down drifts and does not swing (common practice, no source).
/// </summary>
public sealed class RunningLogTests
{
    // Rows every 5 s from 10:00 on; readings by hand at 10:20 and 10:30, alike to the tenth.
    private static string Log(Func<double, double> line, string heading = "temperature (°C)") =>
        $"time,{heading}\n" + string.Concat(Enumerable.Range(0, 361).Select(i => string.Create(CultureInfo.InvariantCulture, $"{10 + (i / 720)}:{i * 5 / 60 % 60:00}:{i * 5 % 60:00},{line(i * 5):0.00}\n")));

    private static string Job(string logs) => JobLines.Of("""
        limits: {subcooling: {target: 6 K, tolerance: 2 K, from: plate}}
        charging:
          compressor started: "09:30"
          running: full
          LOGS
          readings:
            - {at: "10:20", vapor pressure: 8.50 bar(g), liquid pressure: 25.0 bar(g), vapor line: 13.2 °C, liquid line: 36.0 °C, outdoor dry bulb: 31.0 °C, return dry bulb: 25.0 °C, return wet bulb: 18.0 °C, supply dry bulb: 14.0 °C}
            - {at: "10:30", vapor pressure: 8.50 bar(g), liquid pressure: 25.0 bar(g), vapor line: 13.2 °C, liquid line: 36.0 °C, outdoor dry bulb: 31.0 °C, return dry bulb: 25.0 °C, return wet bulb: 18.0 °C, supply dry bulb: 14.0 °C}
        air: {filter: clean, coil: clean, panels on: yes, blower at cooling speed: yes}
        """, work: "charge adjustment", equipment: ", compressor: fixed, metering: TXV", units: "si").Replace("LOGS", logs.Length == 0 ? "" : $"logs: {{{logs}}}", StringComparison.Ordinal);

    private static Checks.Kernel.CheckContext Context(Func<double, double> line, string logs = "vapor pressure: p.csv, vapor line: t.csv") =>
        JobText.Context(Job(logs), ("p.csv", Log(_ => 8.5, "pressure (bar(g))")), ("t.csv", Log(line)));

    [Fact]
    public void A_log_that_stands_still_shows_that_it_does()
    {
        var context = Context(t => 13.2 + (0.1 * Math.Sin(t / 7)));
        var log = context.Get<RunningLog>().Superheat!;
        Assert.Equal(0, log.Change.Value, 0.05);
        Assert.InRange(log.High - log.Low, 0.01, 0.25);
        Assert.Equal(590, log.Length, 1);
        var finding = new Checks.Charge.StabilisedCheck().Evaluate(context).Single(f => f.Subject == "superheat in the log");
        Assert.Equal(Verdict.Pass, finding.Verdict);
        Assert.Contains(finding.Readings, r => r.Text == "p.csv");
    }

    // ± 4 K in 90 s, as a valve hunts; the readings by hand fell on the same phase and show nothing.
    [Fact]
    public void A_swing_between_the_readings_by_hand_is_hunting()
    {
        var context = Context(t => 13.2 + (4 * Math.Sin(t * 2 * Math.PI / 90)));
        var log = context.Get<RunningLog>().Superheat!;
        Assert.InRange(log.High - log.Low, 7, 8.1);
        Assert.Equal("hunting", context.Get<CircuitDiagnosis>().Result!.Ranked[0].Cause);
        Assert.NotEqual("hunting", JobText.Context(Job("")).Get<CircuitDiagnosis>().Result!.Ranked[0].Cause);
    }

    // 0.3 K a minute: 3 K in ten minutes (2.95 K over the 590 s between the first and the last mean).
    [Fact]
    public void A_drift_is_no_swing_and_not_steady()
    {
        var context = Context(t => 13.2 + (0.3 * t / 60));
        var log = context.Get<RunningLog>().Superheat!;
        Assert.Equal(2.95, log.Change.Value, 0.02);
        Assert.InRange(log.High - log.Low, 0, 0.05);
        Assert.Equal(Verdict.NotEvaluated, new Checks.Charge.StabilisedCheck().Evaluate(context).Single(f => f.Subject == "superheat in the log").Verdict);
        Assert.NotNull(LogDrift.Of(context)!.Block);
        Assert.Null(context.Get<CircuitDiagnosis>().Result?.Ranked.FirstOrDefault());
    }

    // Subcooling falls as the liquid line warms, kelvin for kelvin; a compressor that stood for a minute leaves its fan's 90 W of 2 kW.
    [Fact]
    public void Subcooling_and_power_are_looked_at_as_superheat_is()
    {
        const string Logs = "vapor pressure: p.csv, vapor line: t.csv, liquid pressure: h.csv, liquid line: l.csv, power: w.csv";
        var moving = Running(t => 36 + (0.3 * t / 60), _ => 2.0);
        Assert.Equal(-2.95, moving.Get<RunningLog>().Subcooling!.Change.Value, 0.02);
        Assert.Equal(ChargeMessages.LogSubcoolingMoving, LogDrift.Of(moving)!.Block);
        Assert.Equal(Verdict.Pass, Mark(moving, "power in the log"));
        Assert.Equal(Verdict.NotEvaluated, Mark(moving, "subcooling in the log"));
        Assert.Equal(Verdict.NotEvaluated, new Checks.Charge.SubcoolingCheck().Evaluate(moving).First().Verdict);
        var still = Running(_ => 36, _ => 2.0);
        Assert.Null(LogDrift.Of(still)!.Block);
        Assert.Equal(Verdict.Pass, Mark(still, "subcooling in the log"));
        var stopped = Running(_ => 36, t => t is > 1500 and < 1560 ? 0.09 : 2.0);
        Assert.Equal(ChargeMessages.LogStopped, LogDrift.Of(stopped)!.Block);
        Assert.Equal(Verdict.NotEvaluated, Mark(stopped, "power in the log"));
        Assert.False(Running(_ => 36, t => t < 1000 ? 0.09 : 2.0).Get<RunningLog>().Stopped);

        static Checks.Kernel.CheckContext Running(Func<double, double> liquid, Func<double, double> power) => JobText.Context(
            Job(Logs), ("p.csv", Log(_ => 8.5, "pressure (bar(g))")), ("t.csv", Log(_ => 13.2)), ("h.csv", Log(_ => 25, "pressure (bar(g))")), ("l.csv", Log(liquid)), ("w.csv", Log(power, "power (kW)")));

        static Verdict Mark(Checks.Kernel.CheckContext context, string subject) => new Checks.Charge.StabilisedCheck().Evaluate(context).Single(f => f.Subject == subject).Verdict;
    }

    // 0.05 K a minute is 0.49 K in the log, less than the 0.56 K (1 °F) that count; a swing is told as hunting, not as drift.
    [Fact]
    public void What_stands_still_or_swings_is_no_drift()
    {
        Assert.Null(LogDrift.Of(Context(t => 13.2 + (0.05 * t / 60)))!.Block);
        Assert.Null(LogDrift.Of(Context(t => 13.2 + (0.3 * t / 60) + (4 * Math.Sin(2 * Math.PI * t / 150)))));
    }

    // What was logged before the system had settled, or after the judged reading, counts for nothing; four minutes say too little.
    [Theory]
    [InlineData("09:30", true)]
    [InlineData("10:13", false)] // 17 min before the reading, 2 min settled
    public void The_log_counts_from_settled_running_on(string started, bool told)
    {
        var yaml = Job("vapor pressure: p.csv, vapor line: t.csv").Replace("compressor started: \"09:30\"", $"compressor started: \"{started}\"", StringComparison.Ordinal);
        var log = JobText.Context(yaml, ("p.csv", Log(_ => 8.5, "pressure (bar(g))")), ("t.csv", Log(t => t > 1805 ? 40 : 13.2))).Get<RunningLog>().Superheat;
        Assert.Equal(told, log is not null);
        if (log is not null)
            Assert.InRange(log.High - log.Low, 0, 0.01);
    }

    [Theory]
    [InlineData("")]
    [InlineData("vapor pressure: p.csv")]
    [InlineData("vapor line: t.csv")]
    public void One_log_alone_says_nothing_of_superheat(string logs) => Assert.Null(Context(_ => 13.2, logs).Get<RunningLog>().Superheat);
}
