using Commission.Measurement.Decisions;
using Xunit;
using static Commission.Checks.Tests.Evacuation.EvacuationJobs;

namespace Commission.Checks.Tests.Evacuation;

/// <summary>Q = V·dp/dt: 5 L and 500 micron in 600 s are 5.5551e-3 mbar·L/s (arithmetic, 1 mbar·L/s = 0.1 Pa·m³/s), 5.48e-3 atm·cm³/s.</summary>
public sealed class LeakRateCheckTests
{
    private const string Id = "evacuation.leak-rate";

    private static string Logged(string section = "whole system") =>
        $"section: {section}\ngauge: at the system\nisolated at: valve on the service port\nstarted: \"09:00\"\nseries: {{file: log.csv}}\nevents:\n  - {{at: 20 min, what: isolated}}";

    private static string Held(double perMinute)
    {
        var random = new Random(5);
        return Log(5, 3000, t => (t <= 1200 ? (20_000 * Math.Exp(-t / 120)) + 299 : 300 + (perMinute * (t - 1200) / 60)) + (2 * (random.NextDouble() + random.NextDouble() - 1)));
    }

    private static string Circuit(string evacuation) => Job(evacuation).Replace("  metering: TXV", "  metering: TXV\n  circuit volume: 5 L", StringComparison.Ordinal);

    [Fact]
    public void The_inflow_of_a_stated_volume()
    {
        var found = One(Id, Circuit(Logged()), Held(50));
        Assert.Equal(Verdict.Information, found.Verdict);
        Assert.Equal(5.5551e-4, found.Measured!.Value.Si, 6e-6);
        // At most is the upper end, U 0.7e-3, a gauge of 10 % and a volume as stated.
        Assert.Contains("0.0062 atm·cm³/s of air at most", found.Statement, StringComparison.Ordinal);
        Assert.DoesNotContain("estimated", found.Statement, StringComparison.Ordinal);
        // The same hole with R-32 at its dew pressure at 20 °C, 1474.6 kPa: choked at least p_r/p_atm·√(M_a/M_r) times the inflow of air,
        // 6.2e-3 atm·cm³/s are 6.3e-4 Pa·m³/s; 6.3e-4·14.55·0.746 = 6.8e-3 Pa·m³/s, times M/(R·T) = 0.052024/(8.31446·293.15) and a year: 4.6 kg, less a tenth for γ.
        Assert.Contains("kg/yr to", found.Statement, StringComparison.Ordinal);
        var low = double.Parse(found.Statement.Split("same hole: ")[1].Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture);
        Assert.InRange(low, 3.9, 4.7);
    }

    [Fact]
    public void No_vacuum_hold_shows_grams_a_year()
    {
        // 5 g/yr of R-32: 1.584e-10 kg/s, 7.42e-6 Pa·m³/s at 20 °C. Viscous: times η_r/η_a = 12.5/18.2 (from memory) and
        // p_atm²/(p_r² − p_atm²) = 1/210.9 with 1474.6 kPa: 2.42e-8 Pa·m³/s of air, in 5 L 0.0174 Pa an hour, 0.13 micron.
        var said = One(Id, Circuit(Logged()), Held(50)).Statement.Split("by about ")[1].Split(' ');
        Assert.Equal(0.13, double.Parse(said[0], System.Globalization.CultureInfo.InvariantCulture), 0.005);
        Assert.Equal("micron", said[1]);
    }

    [Fact]
    public void A_volume_estimated_from_the_line_set_is_marked_and_wide()
    {
        // Bores 0.311 and 0.68 in (ASTM B280), 42 ft each: 0.627 L and 3.00 L by hand; the coil as much again, ± 100 %.
        var found = One(Id, Job(Logged("line set and indoor")), Held(50));
        Assert.Contains("estimated", found.Statement, StringComparison.Ordinal);
        var step = Assert.Single(found.Trace, s => s.Symbol == "V_l");
        Assert.Contains("0.13 ft³", step.Result, StringComparison.Ordinal);
        Assert.Equal(2 * 3.627e-3 * 50 * 0.1333224 / 60, found.Measured!.Value.Si, 2e-5);
        Assert.InRange(found.Measured.ExpandedSi!.Value / found.Measured.Value.Si, 0.5, 0.7);
    }

    [Fact]
    public void A_flat_hold_bounds_the_inflow() =>
        Assert.StartsWith("No inflow of air above", One(Id, Circuit(Logged()), Held(0)).Statement, StringComparison.Ordinal);

    [Fact]
    public void Two_levels_by_hand_bound_it_by_their_mean_rise()
    {
        // 300 to 800 micron in 10 min in 5 L: the same 5.5551e-4 Pa·m³/s, and no shape that would call it steady.
        var yaml = Circuit("section: whole system\ngauge: at the system\nstarted: \"09:00\"\nlevels:\n  - {at: \"10:00\", pressure: 300 micron, isolated: yes}\n  - {at: \"10:10\", pressure: 800 micron}");
        var found = One(Id, yaml);
        Assert.Equal(5.5551e-4, found.Measured!.Value.Si, 1e-8);
        Assert.StartsWith("No inflow of air above", found.Statement, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("outdoor")]
    [InlineData("other")]
    public void An_unknown_volume_is_not_guessed(string section) =>
        Assert.Equal(Verdict.NotEvaluated, One(Id, Job(Logged(section)), Held(50)).Verdict);
}
