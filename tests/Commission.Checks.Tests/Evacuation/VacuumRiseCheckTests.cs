using Commission.Measurement.Decisions;
using Xunit;
using static Commission.Checks.Tests.Evacuation.EvacuationJobs;

namespace Commission.Checks.Tests.Evacuation;

/// <summary>The rise itself: US guide specification 15182/15652A, at most 500 micron in an hour (published).</summary>
public sealed class VacuumRiseCheckTests
{
    private const string Id = "evacuation.rise";
    private const double Micron = 0.133322387415;

    private static readonly string Logged = $"{Placed}\nseries: {{file: log.csv}}\nevents:\n  - {{at: 20 min, what: isolated}}";

    private static string Held(double minutes, double perMinute) =>
        Log(10, (int)(1200 + (minutes * 60)), t => t <= 1200 ? (20_000 * Math.Exp(-t / 120)) + 199 : 200 + (perMinute * (t - 1200) / 60));

    private static string Spec(string evacuation) => Job(evacuation, more: "limits: {packs: [us-guide-spec]}");

    [Fact]
    public void A_rise_of_300_in_an_hour_passes_and_one_of_600_fails()
    {
        // 5 micron a minute over 60 min: 300 micron. Gain of 10 % of the difference only: 30/√3·2 = 34.6 micron.
        var passes = One(Id, Spec(Logged), Held(62, 5));
        Assert.Equal(Verdict.Pass, passes.Verdict);
        Assert.Equal(300 * Micron, passes.Measured!.Value.Si, 0.15);
        Assert.Equal(34.6 * Micron, passes.Measured.ExpandedSi!.Value, 0.3);
        Assert.Equal(Verdict.Fail, One(Id, Spec(Logged), Held(62, 10)).Verdict);
    }

    [Fact]
    public void A_short_hold_is_not_evaluated()
    {
        var found = One(Id, Spec(Logged), Held(20, 5));
        Assert.Equal(Verdict.NotEvaluated, found.Verdict);
        Assert.Contains("60 min", found.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_pack_that_limits_the_rise_nothing_is_said() => Assert.Empty(All(Id, Job(Logged), Held(62, 5)));

    // From 200 micron: 700 are a rise of 500.
    [Theory]
    [InlineData("699.0", Verdict.PassWithinUncertainty)]
    [InlineData("701.0", Verdict.Fail)]
    public void The_rise_is_judged_at_its_limit(string level, Verdict verdict)
    {
        var found = One(Id, Spec($"{Placed}\nlevels:\n  - {{at: \"10:00\", pressure: 200.0 micron, isolated: yes}}\n  - {{at: \"11:00\", pressure: {level} micron}}"));
        Assert.Equal(verdict, found.Verdict);
        var step = found.Trace.Single(s => s.Symbol == "Δp");
        Assert.Equal($"{level[..3]} micron − 200 micron", step.Substitution);
        Assert.Equal(verdict == Verdict.Fail, found.Statement.EndsWith(": more than the pack allows.", StringComparison.Ordinal));
        Assert.Equal(verdict == Verdict.Fail, found.NextStep is not null);
        Assert.Equal((double.Parse(level, System.Globalization.CultureInfo.InvariantCulture) - 200) * Micron, found.Measured!.Value.Si, 1e-9);
    }

    [Theory]
    [InlineData("resolution: 1 micron", "gauge: at the system", true)]
    [InlineData("accuracy: 10 % of reading, resolution: 1 micron", "notes: nothing", true)]
    [InlineData("accuracy: 10 % of reading, resolution: 1 micron", "gauge: at the system", false)]
    public void What_is_not_written_of_the_gauge_is_a_condition(string gauge, string placed, bool reserved)
    {
        var found = One(Id, Job(Logged.Replace("gauge: at the system", placed, StringComparison.Ordinal), gauge: gauge, more: "limits: {packs: [us-guide-spec]}"), Held(62, 5));
        Assert.Equal(reserved ? Verdict.Conditional : Verdict.Pass, found.Verdict);
        Assert.Equal(reserved ? "Write where the gauge sat, and its accuracy; log the hold." : null, found.NextStep);
    }

    [Fact]
    public void A_gauge_cut_off_by_the_valve_and_a_hold_without_begin_say_nothing_of_the_rise()
    {
        var cut = One(Id, Spec(Logged.Replace("gauge: at the system", "gauge: at the pump", StringComparison.Ordinal)), Held(62, 5));
        Assert.Equal((Verdict.NotEvaluated, "Put the gauge on the system's side of the valve and hold again."), (cut.Verdict, cut.NextStep));
        Assert.Equal("us-guide-spec", Assert.Single(cut.Limits).Pack);
        var open = One(Id, Spec($"{Placed}\nseries: {{file: log.csv}}"), Log(20, 900, t => (9000 * Math.Exp(-t / 200)) + 300));
        Assert.Equal((Verdict.NotEvaluated, "there is no reading at isolation"), (open.Verdict, open.Reason));
        Assert.Single(open.Limits);
    }

    // From 200 micron the gauge shows 720 and then nothing: above its range, and so above 700.
    [Theory]
    [InlineData(26, Verdict.Fail)]
    [InlineData(20, Verdict.NotEvaluated)] // 600 micron shown: what comes after may still be 700
    public void A_gauge_over_its_range_within_the_hour(double minutes, Verdict verdict)
    {
        var log = Log(10, 5000, t => t <= 1200 ? (20_000 * Math.Exp(-t / 120)) + 199 : t <= 1200 + (minutes * 60) ? 200 + (20 * (t - 1200) / 60) : double.NaN);
        var found = One(Id, Spec(Logged), Hidden(log, minutes > 25 ? 750 : 650));
        Assert.Equal(verdict, found.Verdict);
        if (verdict == Verdict.Fail)
        {
            Assert.StartsWith("The pressure rose above the gauge's range within 60 min.", found.Statement.Replace("1 h", "60 min", StringComparison.Ordinal), StringComparison.Ordinal);
            Assert.NotNull(found.NextStep);
        }
        else
        {
            Assert.Single(found.Limits);
        }

        // What was shown while pumping down is over the range, too: this gauge ends at 750 micron, or at 650.
        static string Hidden(string text, double most) => string.Join('\n', text.Split('\n').Select(l => l.Split(',') is [var t, var p] && double.TryParse(p, System.Globalization.CultureInfo.InvariantCulture, out var micron) && micron > most ? $"{t},OL" : l));
    }

    [Fact]
    public void A_zero_error_of_the_gauge_drops_out_of_the_rise()
    {
        var job = Job(Logged, gauge: "accuracy: 50 micron, resolution: 1 micron", more: "limits: {packs: [us-guide-spec]}");
        Assert.InRange(One(Id, job, Held(62, 5)).Measured!.ExpandedSi!.Value / Micron, 0.5, 1.2);
    }

    [Fact]
    public void What_the_rise_rests_on_is_named()
    {
        var yaml = Spec($"{Placed}\nlevels:\n  - {{at: \"10:00\", pressure: 200.0 micron, isolated: yes}}\n  - {{at: \"11:00\", pressure: 400.0 micron}}");
        var keys = JobLines.Keys(yaml, JobLines.Finding(yaml, Id)).ToList();
        foreach (var key in new[] { "gauge", "isolated at", "isolated", "pressure" })
            Assert.Contains(key, keys);
        Assert.Equal(2, JobLines.Finding(yaml, Id).Readings.Count(r => r.Text.EndsWith(".0 micron", StringComparison.Ordinal)));
    }
}
