using Commission.Measurement.Decisions;
using Xunit;
using static Commission.Checks.Tests.Evacuation.EvacuationJobs;

namespace Commission.Checks.Tests.Evacuation;

/// <summary>What a log holds, by the events or by its shape.</summary>
public sealed class VacuumSeriesCheckTests
{
    private const string Id = "evacuation.series";

    // A pull, a break above range, a pull, and a hold from 60 min on.
    private static string Course() => Log(10, 4800, t => t switch
    {
        < 1200 => (90_000 * Math.Exp(-t / 100)) + 700,
        < 1800 => double.NaN,
        < 3600 => (90_000 * Math.Exp(-(t - 1800) / 100)) + 300,
        _ => 330 + ((t - 3600) * 0.1),
    });

    [Fact]
    public void Written_events_cut_the_log()
    {
        var found = One(Id, Job($"{Placed}\nseries: {{file: log.csv}}\nevents:\n  - {{at: 20 min, what: nitrogen break, to: 2 psig}}\n  - {{at: 60 min, what: isolated}}\n  - {{at: 80 min, what: end}}"), Course());
        Assert.Equal(Verdict.Information, found.Verdict);
        Assert.Contains("A log of 481 rows: 2 pulls, one break, isolated at 60 min, hold of 20 min", found.Statement, StringComparison.Ordinal);
        Assert.Equal(["pull", "break", "pull", "hold"], found.Trace.Select(s => s.Symbol));
    }

    [Fact]
    public void What_nobody_wrote_is_found_and_said()
    {
        var found = One(Id, Job($"{Placed}\nseries: {{file: log.csv}}"), Course());
        Assert.Contains("2 pulls, one break", found.Statement, StringComparison.Ordinal);
        Assert.Contains("by the readings", found.Statement, StringComparison.Ordinal);
        Assert.Contains("No isolation is written", found.Statement, StringComparison.Ordinal);
        Assert.Contains("no event says so", found.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void A_log_on_the_clock_is_told_by_the_clock()
    {
        const string Text = "time,pressure (micron)\n14:05:00,900\n14:05:10,700\n14:05:20,500\n14:05:30,400\n14:05:40,400\n14:06:40,402\n14:07:40,404\n14:08:40,406\n14:09:40,408\n";
        var found = One(Id, Job("gauge: at the system\nstarted: \"14:05\"\nseries: {file: log.csv}\nevents:\n  - {at: \"14:05:40\", what: isolated}"), Text);
        Assert.Contains("isolated at 14:05:40, hold of 4 min", found.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void A_foreign_gauge_and_an_unset_clock_are_remarked()
    {
        var found = One(Id, Job($"{Placed}\nlog: {{gauge serial: X-1, clock set: no}}\nseries: {{file: log.csv}}"), Course());
        Assert.Contains("gauge X-1", found.Statement, StringComparison.Ordinal);
        Assert.Contains("clock was not set", found.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_written_is_not_evaluated() => Assert.Equal(Verdict.NotEvaluated, One(Id, Job(Placed)).Verdict);

    [Fact]
    public void Every_check_of_the_phase_speaks_of_a_full_evacuation()
    {
        var found = Phase(Job($"{Placed}\nseries: {{file: log.csv}}"), Course()).Select(f => f.Check).Distinct().ToList();
        foreach (var id in new[] { "evacuation.series", "evacuation.rig", "evacuation.level", "evacuation.hold", "evacuation.section", "evacuation.breaks", "evacuation.conditions", "evacuation.cause", "evacuation.humidity", "evacuation.leak-rate", "evacuation.tightness-not-proved" })
            Assert.Contains(id, found);
    }
}
