using System.Globalization;
using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Evidence;

/// <summary>Pearson's χ² with 9 degrees of freedom: 27.88 is exceeded with probability 0.001 (printed tables).</summary>
public sealed class TerminalDigitsCheckTests
{
    private const string Check = "evidence.terminal-digits";

    [Fact]
    public void Only_fives_and_noughts_are_remarked_on()
    {
        // Sixty readings, thirty of each: χ² = 2·(30 − 6)²/6 + 8·6 = 240.
        var finding = JobLines.Finding(Job(60, i => i % 2 == 0 ? 0 : 5), Check);
        Assert.Equal(Verdict.Information, finding.Verdict);
        Assert.Contains("60 readings", finding.Statement, StringComparison.Ordinal);
        Assert.Contains("0: 30, 1: 0, 2: 0, 3: 0, 4: 0, 5: 30", finding.Statement, StringComparison.Ordinal);
        Assert.Contains("240.0", finding.Trace[0].Result, StringComparison.Ordinal);
        Assert.DoesNotContain("fake", finding.Statement, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void Evenly_spread_digits_pass()
    {
        var finding = JobLines.Finding(Job(60, i => i % 10), Check);
        Assert.Equal(Verdict.Pass, finding.Verdict);
        Assert.Contains("χ² 0.0", finding.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void Just_below_the_bound_nothing_is_said()
    {
        // Of sixty, sixteen noughts, four of each 1 to 4 and 6, 7, 8 and eight each of 5 and 9: χ² = (100 + 7·4 + 2·4)/6 = 22.67.
        int[] digits = [.. Enumerable.Repeat(0, 16), .. new[] { 1, 2, 3, 4, 6, 7, 8 }.SelectMany(d => Enumerable.Repeat(d, 4)), .. Enumerable.Repeat(5, 8), .. Enumerable.Repeat(9, 8)];
        Assert.Equal(Verdict.Pass, JobLines.Finding(Job(60, i => digits[i]), Check).Verdict);
    }

    [Fact]
    public void Fewer_than_fifty_say_nothing()
    {
        var finding = JobLines.Finding(Job(49, i => 0), Check);
        Assert.Equal(Verdict.Information, finding.Verdict);
        Assert.Null(finding.NextStep);
        Assert.Contains("too few", finding.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void A_reading_that_hardly_moves_counts_once()
    {
        var rows = string.Concat(Enumerable.Range(0, 60).Select(i => string.Create(CultureInfo.InvariantCulture, $"    - {{at: {i + 1} min, outdoor dry bulb: 80.0 F}}\n")));
        Assert.Contains("1 last digits", JobLines.Finding(Wrap(rows), Check).Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void Numbers_coarser_than_the_display_and_readings_without_an_instrument_do_not_count()
    {
        var rows = "    - {at: 1 min, outdoor dry bulb: 80 F, return dry bulb: 70.0 F}\n";
        Assert.Empty(JobLines.Findings(Wrap(rows), Check));
    }

    private static string Job(int count, Func<int, int> digit) =>
        Wrap(string.Concat(Enumerable.Range(0, count).Select(i => string.Create(CultureInfo.InvariantCulture, $"    - {{at: {i + 1} min, outdoor dry bulb: {30 + ((i * 37) % 80) + (2 * (i % 2))}.{digit(i)} F}}\n"))));

    private static string Wrap(string rows) => JobLines.Of(
        "instruments: [{id: probe, kind: thermometer, accuracy: 1 F, resolution: 0.1 F, reads: [outdoor air]}]\ncharging:\n  compressor started: \"10:30\"\n  readings:\n" + rows, "seasonal check");
}
