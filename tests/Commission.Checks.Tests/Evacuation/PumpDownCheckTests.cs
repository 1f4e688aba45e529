using Commission.Measurement.Decisions;
using Xunit;
using static Commission.Checks.Tests.Evacuation.EvacuationJobs;

namespace Commission.Checks.Tests.Evacuation;

/// <summary>The pace of a pull. A hose of 4 mm and 1.5 m leaves about 0.012 L/s of any pump at 500 micron in the system (Knudsen's formula, handbook coefficients).</summary>
public sealed class PumpDownCheckTests
{
    private const string Id = "evacuation.pump-down";

    private static string Pulled(string hoses, string pump = "pump: {displacement: 5 cfm}") =>
        $"{Placed}\n{pump}\nhoses: {hoses}\nseries: {{file: log.csv}}\nevents:\n  - {{at: 40 min, what: isolated}}";

    private static string Pull(Func<double, double> micron) => Log(5, 3000, t => t <= 2400 ? micron(t) : 400);

    [Fact]
    public void A_narrow_hose_sets_the_pace()
    {
        // A 7.25 L volume through that hose: V/S at 500 micron is 600 s, far more at the top, so that this slow pull is as expected.
        var found = One(Id, Job(Pulled("[{bore: 4 mm, length: 1.5 m}]")), Pull(t => 1 / ((1 / 24_000.0) + (t / 1_150_000))));
        Assert.Equal(Verdict.Information, found.Verdict);
        Assert.Contains("the largest part was lost to this: the hose of 4 mm", found.Statement, StringComparison.Ordinal);

        // 1/p = 1/24 000 + t/1 150 000 is at 500 micron after 2252 s; the pump runs on to the 40th minute.
        Assert.StartsWith("The pull from 0 min took 37.5 min to come from 24000 micron to 500 micron, ", found.Statement, StringComparison.Ordinal);
        Assert.Contains("estimated from the line set", found.Statement, StringComparison.Ordinal);
        Assert.Contains(found.Trace, s => s.Substitution.StartsWith("expected", StringComparison.Ordinal));
    }

    [Fact]
    public void A_pull_that_is_fast_and_then_hangs_is_a_gas_load()
    {
        // 7.25 L and 2.36 L/s: a time constant of 3 s at the top, as logged; then the pressure hangs.
        var found = One(Id, Job(Pulled("[{bore: 3/8 in, length: 3 ft, count: 2}]")), Pull(t => (24_000 * Math.Exp(-t / 4)) + 395 + (800 * Math.Exp(-t / 600))));
        Assert.Contains("held up at low pressure", found.Statement, StringComparison.Ordinal);
        Assert.NotNull(found.NextStep);
    }

    [Fact]
    public void A_gauge_that_comes_into_its_range_late_in_a_fast_pull_shows_a_gas_load_and_no_slow_rig()
    {
        // From the atmosphere to 6000 micron in 15 s, 7.25 L and 2.36 L/s need ln(127)·3.07 = 15 s; from there on gas keeps coming.
        var found = One(Id, Job(Pulled("[{bore: 3/8 in, length: 3 ft, count: 2}]")), Pull(t => t < 15 ? double.NaN : 395 + (5600 * Math.Exp(-(t - 15) / 300))));
        Assert.Contains("held up at low pressure", found.Statement, StringComparison.Ordinal);
        var slow = One(Id, Job(Pulled("[{bore: 3/8 in, length: 3 ft, count: 2}]")), Pull(t => t < 400 ? double.NaN : 395 + (5600 * Math.Exp(-(t - 400) / 300))));
        Assert.Contains("slow at all pressures", slow.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void A_core_left_in_is_part_of_the_way()
    {
        var found = One(Id, Job(Pulled("[{bore: 3/8 in, length: 3 ft}]") + "\nvalve cores: in place"), Pull(t => (24_000 * Math.Exp(-t / 60)) + 395));
        Assert.Contains("the largest part was lost to this: a valve core", found.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_the_pump_or_a_log_it_is_not_evaluated_and_without_hoses_not_asked()
    {
        Assert.Equal(Verdict.NotEvaluated, One(Id, Job(Pulled("[{bore: 4 mm, length: 1.5 m}]", "notes: none")), Pull(_ => 400)).Verdict);
        var byHand = Job($"{Placed}\npump: {{displacement: 5 cfm}}\nhoses: [{{bore: 4 mm, length: 1.5 m}}]\nlevels:\n  - {{at: \"10:25\", pressure: 320 micron, isolated: yes}}\n  - {{at: \"10:36\", pressure: 410 micron}}");
        Assert.Equal(Verdict.NotEvaluated, One(Id, byHand).Verdict);
        Assert.Empty(All(Id, Job(Placed)));
    }
}
