using Commission.Measurement.Decisions;
using Commission.Records.Findings;
using Xunit;

namespace Commission.Records.Tests;

/// <summary>
/// Numbers of a record as they are printed. The edges follow from two rules: an uncertain probability is never printed as 0 or 100 %
/// (common practice, no source), and two digits are printed where the number has a tenth that means something, so that what would round to
/// ten stands without it.
/// </summary>
public sealed class PrintedTextTests
{
    [Theory]
    [InlineData(null, null)]
    [InlineData(0.0, "< 0.1 %")]
    [InlineData(0.00099, "< 0.1 %")]
    [InlineData(0.001, "0.1 %")]
    [InlineData(0.0276, "2.8 %")]
    [InlineData(0.0949, "9.5 %")]
    [InlineData(0.095, "10 %")]
    [InlineData(0.5, "50 %")]
    [InlineData(0.905, "91 %")]
    [InlineData(0.9051, "90.5 %")]
    [InlineData(0.973, "97.3 %")]
    [InlineData(0.999, "99.9 %")]
    [InlineData(0.99901, "> 99.9 %")]
    [InlineData(1.0, "> 99.9 %")]
    public void A_probability_is_never_rounded_to_certainty(double? probability, string? text) => Assert.Equal(text, PrintedNumbers.Probability(probability));

    [Theory]
    [InlineData(null, null)]
    [InlineData(0.04, "0.0")]
    [InlineData(2.14, "2.1")]
    [InlineData(9.949, "9.9")]
    [InlineData(9.95, "10")]
    [InlineData(42.4, "42")]
    [InlineData(99.49, "99")]
    [InlineData(99.5, "> 99")]
    [InlineData(1e9, "> 99")]
    public void Adequacy_has_two_digits(double? ratio, string? text) =>
        Assert.Equal(text, PrintedNumbers.Ratio(ratio));

    // JCGM 100:2008, G.4.1: degrees of freedom that are no whole number are cut down to the next lower one. t95.45: 2.06 for 40, 2.00 without end (table G.2).
    [Theory]
    [InlineData(null, 40.0, null)]
    [InlineData(2.064, 40.0, "k = 2.06, ν = 40")]
    [InlineData(2.064, 40.9, "k = 2.06, ν = 40")]
    [InlineData(2.002, 999.9, "k = 2.00, ν = 999")]
    [InlineData(2.002, 1000.0, "k = 2.00")]
    [InlineData(2.0, double.PositiveInfinity, "k = 2.00")]
    [InlineData(2.0, double.NaN, "k = 2.00")]
    [InlineData(2.0, null, "k = 2.00")]
    public void Coverage_says_factor_and_degrees_of_freedom(double? factor, double? freedom, string? text) =>
        Assert.Equal(text, PrintedNumbers.Coverage(factor, freedom));

    [Theory]
    [InlineData(0.04, "0.0 %")]
    [InlineData(4.36, "4.4 %")]
    [InlineData(9.949, "9.9 %")]
    [InlineData(9.95, "10 %")]
    [InlineData(58.4, "58 %")]
    [InlineData(100.0, "100 %")]
    public void A_share_of_the_budget_has_two_digits(double percent, string text) =>
        Assert.Equal(text, PrintedNumbers.Share(percent));

    [Theory]
    [InlineData(0, "0")]
    [InlineData(999, "999")]
    [InlineData(1000, "1,000")]
    [InlineData(12_345_678, "12,345,678")]
    public void The_size_of_a_file_is_grouped_by_thousands(long bytes, string text) => Assert.Equal(text, new InputFile("a", bytes, "").SizeText);

    [Theory]
    [InlineData(null, false)]
    [InlineData(3, true)]
    public void A_step_with_the_number_of_an_earlier_finding_was_shown(int? finding, bool shown) =>
        Assert.Equal(shown, new TraceStep("", "", "", "", "", "") { ShownIn = finding }.WasShown);

    // JCGM 106:2012, 8.2 and 8.3: these are all the verdicts a rule can give; each has words of its own.
    [Fact]
    public void Every_verdict_has_words_of_its_own()
    {
        var verdicts = Enum.GetValues<Verdict>();
        Assert.Equal(verdicts.Length, verdicts.Select(RecordWords.Of).Distinct().Count());
    }
}
