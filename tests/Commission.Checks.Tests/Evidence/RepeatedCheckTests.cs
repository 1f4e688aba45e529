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

    private static string Job(params string[] rows) => JobLines.Of($"charging:\n  unit arrived: charged\n  compressor started: \"10:30\"\n  readings:\n{string.Concat(rows.Select(r => $"    - {r}\n"))}");
}
