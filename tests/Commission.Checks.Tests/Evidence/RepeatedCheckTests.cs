using System.Globalization;
using System.Text;
using Commission.Checks.Evidence;
using Commission.Checks.Kernel;
using Commission.Checks.Recording;
using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Evidence;

public sealed class RepeatedCheckTests
{
    private const string Check = "evidence.repeated";
    private const string Row = "vapor pressure: 118.9 psig, liquid pressure: 340.8 psig, vapor line: 57.2 F, liquid line: 97.0 F, outdoor dry bulb: 91.7 F, return dry bulb: 76.0 F";

    [Fact]
    public void Two_rows_alike_to_the_last_digit_are_shown_with_both_lines()
    {
        var finding = JobLines.Finding(Job($"{{at: \"11:20\", {Row}}}", $"{{at: \"11:35\", {Row}}}"), Check);
        Assert.Equal(Verdict.Information, finding.Verdict);
        Assert.Contains("11:20 (line 9)", finding.Statement, StringComparison.Ordinal);
        Assert.Contains("11:35 (line 10)", finding.Statement, StringComparison.Ordinal);
        Assert.Contains("all 6 numbers", finding.Statement, StringComparison.Ordinal);
        Assert.Contains("line 9 and line 10: vapor pressure 118.9 psig, liquid pressure 340.8 psig", finding.Trace[0].Substitution, StringComparison.Ordinal);
        Assert.Equal(12, finding.Readings.Length);
    }

    [Fact]
    public void One_digit_apart_is_nothing_to_remark() =>
        Assert.Equal(Verdict.Pass, JobLines.Finding(Job($"{{at: \"11:20\", {Row}}}", $"{{at: \"11:35\", {Row.Replace("97.0", "97.1", StringComparison.Ordinal)}}}"), Check).Verdict);

    [Fact]
    public void Coarse_instruments_may_well_agree()
    {
        const string Coarse = "vapor pressure: 119 psig, vapor line: 57 F, liquid line: 97 F, outdoor dry bulb: 92 F, return dry bulb: 76 F";
        Assert.Equal(Verdict.Pass, JobLines.Finding(Job($"{{at: \"11:20\", {Coarse}}}", $"{{at: \"11:35\", {Coarse}}}"), Check).Verdict);
    }

    [Fact]
    public void The_same_display_within_a_minute_may_well_agree() =>
        Assert.Equal(Verdict.Pass, JobLines.Finding(Job($"{{at: \"11:20:00\", {Row}}}", $"{{at: \"11:20:30\", {Row}}}"), Check).Verdict);

    [Fact]
    public void As_found_copied_to_as_left_is_seen()
    {
        var yaml = JobLines.Of($"as found:\n  readings: [{{at: \"09:00\", {Row}}}]\ncharging:\n  readings:\n    - {{at: \"11:35\", {Row}}}", "charge adjustment");
        Assert.Contains("as found 09:00 (line 6)", JobLines.Finding(yaml, Check).Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void One_row_repeats_nothing() => Assert.Empty(JobLines.Findings(Job($"{{at: \"11:20\", {Row}}}"), Check));

    [Fact]
    public void The_probability_of_equal_digits()
    {
        // a = 1: 2·0.841345 − 1 − 2·(0.398942 − 0.241971) = 0.36875, from tables of the normal distribution; 400 000 drawn pairs gave 0.368.
        Assert.Equal(0.36875, Coincidence.OfEqualDigits(1, 1 / Math.Sqrt(2)), 2e-5);
        Assert.Equal(1, Coincidence.OfEqualDigits(0.1, 0));
        // A fine step against a wide scatter: step / (2·σ·√π).
        Assert.Equal(0.001 / (2 * Math.Sqrt(Math.PI)), Coincidence.OfEqualDigits(0.001, 1), 1e-7);
    }

    [Fact]
    public void A_stretch_of_a_log_that_comes_twice()
    {
        var values = new List<double>();
        for (var i = 0; i < 200; i++)
            values.Add(5000 - (20 * i) + (7 * (i % 3)));
        var clean = values.ToArray();
        Assert.Null(RepeatedStretch.Find(clean));
        values.InsertRange(150, clean[40..90]);
        Assert.Equal((40, 150, 50), RepeatedStretch.Find(values));
    }

    [Fact]
    public void A_flat_hold_repeats_its_few_values_for_ever() => Assert.Null(RepeatedStretch.Find([.. Enumerable.Range(0, 5000).Select(i => 480.0 + (i % 3))]));

    [Fact]
    public void A_pasted_stretch_of_the_vacuum_log_is_told_with_its_rows()
    {
        var log = new StringBuilder("time (s),micron\n");
        for (var i = 0; i < 160; i++)
        {
            var from = i is >= 100 and < 140 ? i - 60 : i;
            log.Append(CultureInfo.InvariantCulture, $"{i * 10},{20000 - (97 * from)}\n");
        }

        var job = JobText.Read(JobLines.Of("evacuation: {started: \"09:25\", series: {file: log.csv}}"), ("log.csv", log.ToString()));
        var context = new CheckContext(job, new CheckSettings(job.Identity.Date.Value));
        var finding = Assert.Single(new RepeatedCheck().Evaluate(context));
        Assert.Equal("vacuum log", finding.Subject);
        Assert.Equal(Verdict.Information, finding.Verdict);
        Assert.StartsWith("40 values in a row from row 42 of log.csv come again from row 102", finding.Statement, StringComparison.Ordinal);
    }

    // Thirty values, twice, are the shortest stretch; a value less is none.
    [Theory]
    [InlineData(30, true)]
    [InlineData(29, false)]
    public void The_shortest_stretch_that_counts(int length, bool found)
    {
        var stretch = Enumerable.Range(0, length).Select(i => 1000.0 - (7 * i) + (i % 4)).ToList();
        Assert.Equal(found ? (0, length, length) : null, RepeatedStretch.Find([.. stretch, .. stretch]));
        // With other values before, between and behind it lies where it was put.
        List<double> apart = [5, 4, 3, .. stretch, 2, 1, .. stretch, 0, -1];
        Assert.Equal(found ? (3, length + 5, length) : null, RepeatedStretch.Find(apart));
    }

    // Fifteen different values among thirty are many, fourteen are the flicker of a hold.
    [Theory]
    [InlineData(15, true)]
    [InlineData(14, false)]
    public void Few_different_values_repeat_by_themselves(int different, bool found)
    {
        var stretch = Enumerable.Range(0, 30).Select(i => 480.0 + (i < different ? i : i * i % different)).ToList();
        Assert.Equal(different, stretch.Distinct().Count());
        List<double> values = [.. Enumerable.Repeat(1.0, 40), .. stretch, .. Enumerable.Repeat(2.0, 40), .. stretch, .. Enumerable.Repeat(3.0, 40)];
        Assert.Equal(found, RepeatedStretch.Find(values) is { Second: 110, First: 40, Length: 30 });
        Assert.Equal(found, RepeatedStretch.Find(values) is not null);
    }

    [Fact]
    public void A_stretch_that_comes_three_times_is_told_once_and_does_not_run_into_itself()
    {
        var stretch = Enumerable.Range(0, 40).Select(i => 900.0 - (11 * i)).ToList();
        Assert.Equal((0, 40, 40), RepeatedStretch.Find([.. stretch, .. stretch, .. stretch]));
        Assert.Null(RepeatedStretch.Find([.. stretch, .. stretch.Select(v => v + 1)]));
    }

    [Fact]
    public void Every_reading_of_the_rows_is_named()
    {
        var yaml = Job($"{{at: \"11:20\", {Row}}}", $"{{at: \"11:35\", {Row}}}");
        var finding = JobLines.Finding(yaml, Check);
        Assert.Equal(["vapor pressure", "liquid pressure", "vapor line", "liquid line", "outdoor dry bulb", "return dry bulb"], JobLines.Keys(yaml, finding));
        Assert.True(finding.IsToLookAt);
        Assert.False(JobLines.Finding(Job($"{{at: \"11:20\", {Row}}}", "{at: \"11:35\", vapor pressure: 118.8 psig}"), Check).IsToLookAt);
    }

    // A minute apart is apart; by the clock and by the time that has passed.
    [Theory]
    [InlineData("\"11:20:00\"", "\"11:20:59\"", false)]
    [InlineData("\"11:20:00\"", "\"11:21:00\"", true)]
    [InlineData("10 min", "10.9 min", false)]
    [InlineData("10 min", "11 min", true)]
    public void Rows_a_minute_apart_are_two_readings(string first, string second, bool told) =>
        Assert.Equal(told, JobLines.Finding(Job($"{{at: {first}, {Row}}}", $"{{at: {second}, {Row}}}"), Check).Verdict == Verdict.Information);

    [Fact]
    public void Each_pair_of_rows_is_told()
    {
        var other = Row.Replace("97.0", "97.4", StringComparison.Ordinal);
        var finding = JobLines.Finding(Job($"{{at: \"11:20\", {Row}}}", $"{{at: \"11:25\", {other}}}", $"{{at: \"11:35\", {Row}}}", $"{{at: \"11:40\", {other}}}"), Check);
        Assert.Equal(2, finding.Trace.Length);
        Assert.Contains("11:35 (line 11)", finding.Statement, StringComparison.Ordinal);
        Assert.Contains("11:40 (line 12)", finding.Statement, StringComparison.Ordinal);
    }

    // Currents and shares stand still on a running system, and one number alone says nothing.
    [Theory]
    [InlineData("vapor pressure: 118.94 psig")]
    [InlineData("return humidity: 45.1 %, compressor current: 11.42 A")]
    public void What_may_stand_still_is_not_counted(string row) =>
        Assert.Equal(Verdict.Pass, JobLines.Finding(Job($"{{at: \"11:20\", {row}}}", $"{{at: \"11:35\", {row}}}"), Check).Verdict);

    // Three pressures in steps of 0.1 psi that scatter by 0.3 % repeat about once in 6 000: 10³ and something.
    [Fact]
    public void The_chance_is_told_in_powers_of_ten()
    {
        const string Three = "vapor pressure: 118.9 psig, true suction pressure: 116.2 psig, liquid pressure: 340.8 psig";
        Assert.Equal("once in 10³", JobLines.Finding(Job($"{{at: \"11:20\", {Three}}}", $"{{at: \"11:35\", {Three}}}"), Check).Trace[0].Result);
    }

    [Fact]
    public void A_log_without_a_pasted_stretch_passes()
    {
        var log = new StringBuilder("time (s),micron\n");
        for (var i = 0; i < 160; i++)
            log.Append(CultureInfo.InvariantCulture, $"{i * 10},{20000 - (97 * i)}\n");
        var job = JobText.Read(JobLines.Of("evacuation: {started: \"09:25\", series: {file: log.csv}}"), ("log.csv", log.ToString()));
        var finding = Assert.Single(new RepeatedCheck().Evaluate(new CheckContext(job, new CheckSettings(job.Identity.Date.Value))));
        Assert.Equal((Verdict.Pass, "vacuum log", false), (finding.Verdict, finding.Subject, finding.IsToLookAt));
        Assert.Contains(finding.Readings, r => r.Name == "evacuation log");
    }

    private static string Job(params string[] rows) => JobLines.Of($"charging:\n  unit arrived: charged\n  compressor started: \"10:30\"\n  readings:\n{string.Concat(rows.Select(r => $"    - {r}\n"))}");
}
