using Commission.Measurement.Decisions;
using Xunit;
using static Commission.Checks.Tests.Evacuation.EvacuationJobs;

namespace Commission.Checks.Tests.Evacuation;

/// <summary>A hold just at its limit (1000 micron after 10 min for a split: common practice), and what the warming of its coldest part does.</summary>
public sealed class HoldEdgeTests
{
    // A pressure that is the limit has not passed it: whether the hold holds is only known when the time is over.
    [Theory]
    [InlineData(999, 5, Verdict.NotEvaluated)]
    [InlineData(1000, 5, Verdict.NotEvaluated)]
    [InlineData(1001, 5, Verdict.Fail)]
    [InlineData(999, 10, Verdict.PassWithinUncertainty)]
    [InlineData(1000, 10, Verdict.PassWithinUncertainty)]
    [InlineData(1001, 10, Verdict.Fail)]
    public void A_hold_that_ends_at_its_limit_is_below_it(int micron, int minutes, Verdict verdict) => Assert.Equal(verdict, One(
        "evacuation.hold",
        Job($"{Placed}\nlevels:\n  - {{at: \"10:00\", pressure: 400 micron, isolated: yes}}\n  - {{at: \"10:{minutes:00}\", pressure: {micron} micron}}")).Verdict);

    /// <summary>
    /// Gas in a closed room follows its temperature: at p = 800 micron a change of ΔT moves it by p·ΔT/T. Over a hold of 30 min with a level
    /// pressure the slope's doubt from a drift of 1 K is p/(T·t), rectangular, with V = 5 L the inflow's V·p/(T·t)/√3; the written part is taken off: −V·p·ΔT/(T·t) (arithmetic).
    /// </summary>
    [Theory]
    [InlineData("", 0)]
    [InlineData("coldest part: 68 °F\ncoldest part at end: 68 °F\n", 0)]
    [InlineData("coldest part: 68 °F\ncoldest part at end: 50 °F\n", -10)]
    public void The_written_change_of_temperature_is_taken_off_the_rise_and_one_kelvin_stays_as_doubt(string cold, double kelvin)
    {
        var random = new Random(7);
        var log = Log(5, 3000, t => (t <= 1200 ? (20_000 * Math.Exp(-t / 120)) + 799 : 800) + (2 * (random.NextDouble() + random.NextDouble() - 1)));
        var job = Job($"section: whole system\ngauge: at the system\nisolated at: valve on the service port\nstarted: \"09:00\"\n{cold}series: {{file: log.csv}}\nevents:\n  - {{at: 20 min, what: isolated}}")
            .Replace("  metering: TXV", "  metering: TXV\n  circuit volume: 5 L", StringComparison.Ordinal);
        var found = One("evacuation.leak-rate", job, log);
        var line = Assert.Single(found.Budget, b => b.Cause.StartsWith("change of temperature", StringComparison.Ordinal));
        var oneKelvin = 0.005 * 800 * 0.1333224 / 293.15 / 1800;
        Assert.Equal(oneKelvin / Math.Sqrt(3), Math.Abs(line.ContributionSi), 0.05 * oneKelvin);
        Assert.Equal(-kelvin * oneKelvin, found.Measured!.Value.Si, 0.5 * oneKelvin);
    }
}
