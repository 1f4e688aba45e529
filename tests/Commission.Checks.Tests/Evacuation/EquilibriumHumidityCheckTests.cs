using Commission.Checks.Evacuation;
using Commission.Measurement.Decisions;
using Xunit;
using static Commission.Checks.Tests.Evacuation.EvacuationJobs;

namespace Commission.Checks.Tests.Evacuation;

/// <summary>
/// Moisture of the hold. Vapour pressure at 20 °C 2339.32 Pa (IAPWS-95), over ice 500 micron at −24.48 °C, −12.1 °F (IAPWS R14-08); a heat-loss
/// gauge reads water vapour 1 to 2 times too high (from memory).
/// </summary>
public sealed class EquilibriumHumidityCheckTests
{
    private const string Id = "evacuation.humidity";

    private static string Levels(double micron, string coldest = "coldest part: 20 °C", double? before = null) => Written(micron, coldest, before ?? micron);

    private static string Written(double micron, string coldest, double rest) =>
        $"{Placed}\n{coldest}\nlevels:\n  - {{at: \"10:00\", pressure: 300 micron, isolated: yes}}\n  - {{at: \"10:10\", pressure: {rest} micron}}\n  - {{at: \"10:20\", pressure: {micron} micron}}";

    [Fact]
    public void A_capacitance_gauge_gives_one_number()
    {
        // 500 micron = 66.661 Pa; 66.661/2339.32 = 2.85 %.
        var found = One(Id, Job(Levels(500), gauge: "sensor: capacitance, accuracy: 1 % of reading, resolution: 1 micron"));
        Assert.Equal(Verdict.Information, found.Verdict);
        Assert.Contains("is 2.8 % of the vapour pressure of water at 20 °C (17546 micron)", found.Statement, StringComparison.Ordinal);
        Assert.Contains("no free water there at equilibrium", found.Statement, StringComparison.Ordinal);
        Assert.Contains("Ice could hide where it is colder than −12.1 °F", found.Statement, StringComparison.Ordinal);
    }

    // Read twice, each temperature is told with its time: in the figure that of isolation, in the sentence that of the end.
    [Fact]
    public void The_coldest_part_is_told_with_the_time_it_was_read()
    {
        var job = Job(Levels(500, "coldest part: 19 °C\ncoldest part at end: 20 °C"));
        Assert.Contains("of water at 20 °C, the coldest part at the end of the hold (17546 micron)", One(Id, job).Statement, StringComparison.Ordinal);
        var log = Log(10, 1800, t => t <= 1200 ? (20_000 * Math.Exp(-t / 120)) + 299 : 300);
        string Label(string coldest) => Assert.Single(new PullDownFigure().Figures(Context(Job($"{Placed}\n{coldest}\nseries: {{file: log.csv}}\nevents:\n  - {{at: 20 min, what: isolated}}"), log))).Lines[^1].Label;
        Assert.StartsWith("water at 19 °C (coldest part at isolation)", Label("coldest part: 19 °C\ncoldest part at end: 20 °C"), StringComparison.Ordinal);
        Assert.StartsWith("water at 19 °C (coldest part)", Label("coldest part: 19 °C"), StringComparison.Ordinal);
    }

    // A pressure that still rises is not that of an equilibrium: a twentieth of the level in the last third of the hold (common practice, no source).
    [Theory]
    [InlineData(475, "no free water there at equilibrium")] // 16.7 micron in the last third of 20 min, 3.3 %
    [InlineData(400, "it still rose by 67 micron in the last 6.7 min, so this is no equilibrium")]
    public void Only_at_rest_is_water_excluded(double before, string words)
    {
        var found = One(Id, Job(Levels(500, before: before)));
        Assert.Contains(words, found.Statement, StringComparison.Ordinal);
        Assert.Equal(before < 450, found.NextStep is not null);
    }

    // 16 900 micron are 96 % of saturation at 20 °C: the gauge's 10 % and a kelvin make up the rest.
    [Fact]
    public void Within_the_doubt_of_gauge_and_clamp_water_is_not_excluded() =>
        Assert.Contains("neither shown nor excluded", One(Id, Job(Levels(16_900), gauge: "sensor: capacitance, accuracy: 10 % of reading, resolution: 1 micron")).Statement, StringComparison.Ordinal);

    [Fact]
    public void A_heat_loss_gauge_gives_a_band()
    {
        var found = One(Id, Job(Levels(500)));
        Assert.Contains("is 1.4 % to 2.8 %", found.Statement, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(25_000, "neither shown nor excluded")]
    [InlineData(60_000, "may stand there")]
    public void Near_saturation_water_is_not_excluded(double micron, string words)
    {
        var found = One(Id, Job(Levels(micron)));
        Assert.Contains(words, found.Statement, StringComparison.Ordinal);
        Assert.NotNull(found.NextStep);
    }

    [Fact]
    public void The_later_temperature_counts()
    {
        // Over ice at −10 °C 259.87 Pa, 1949 micron: 1000 micron are 51 %, by a heat-loss gauge 26 to 51 %.
        var found = One(Id, Job(Levels(1000, "coldest part: 20 °C\ncoldest part at end: -10 °C")));
        Assert.Contains("is 26 % to 51 % of the vapour pressure of ice at −10 °C, the coldest part at the end of the hold (1949 micron)", found.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_the_temperature_or_a_hold_it_is_not_evaluated()
    {
        Assert.Equal(Verdict.NotEvaluated, One(Id, Job(Levels(500, "notes: none"))).Verdict);
        Assert.Equal(Verdict.NotEvaluated, One(Id, Job($"{Placed}\ncoldest part: 20 °C")).Verdict);
    }
}
