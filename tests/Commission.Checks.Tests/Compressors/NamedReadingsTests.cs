using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Compressors;

/// <summary>
/// What a finding of the compressor rests on has its place in it, in cooling and in heating. R-410A has its dew point at 40.0 °F at 118.35 psig and at
/// 105.1 °F at 341.88 psig (equation of state).
/// </summary>
public sealed class NamedReadingsTests
{
    private const string All = "mode: cooling, vapor pressure: 118.35, liquid pressure: 341.88, vapor line: 52.0, liquid line: 95.0, discharge line: 165.0, compressor suction line: 55.0, sump: 75.0, outdoor dry bulb: 91.9";

    [Theory]
    [InlineData("compressor.ratio", "vapor pressure, liquid pressure, kind, vapor injection, running, mode, outdoor dry bulb")]
    [InlineData("compressor.discharge-temperature", "discharge line, kind, mode")]
    [InlineData("compressor.discharge-superheat", "discharge line, liquid pressure, mode")]
    [InlineData("compressor.suction-superheat", "compressor suction line, vapor pressure, mode")]
    [InlineData("compressor.sump-superheat", "sump, vapor pressure, mode")]
    public void What_it_rests_on_is_named(string check, string keys)
    {
        var yaml = CompressorJob.Yaml(All, "{kind: fixed, vapor injection: no}", charging: "running: full, read at: {discharge line: 6 in}");
        var finding = JobLines.Finding(yaml, check, "10:30");
        var named = JobLines.Keys(yaml, finding).ToList();
        Assert.Empty(keys.Split(", ").Except(named));
        Assert.Equal(check == "compressor.discharge-temperature", named.IndexOf("discharge line") != named.LastIndexOf("discharge line") || finding.Readings.Count(r => r.Text == "6 in") == 1);
        Assert.Contains("compressor started", named);
        Assert.NotNull(finding.Measured);
        Assert.Equal(Verdict.Pass, finding.Verdict);
        Assert.Null(finding.NextStep);
    }

    [Theory]
    [InlineData("compressor.ratio", "r")]
    [InlineData("compressor.discharge-superheat", "DSH")]
    [InlineData("compressor.discharge-superheat", "T_dew")]
    [InlineData("compressor.sump-superheat", "ΔT")]
    public void How_the_number_came_about_is_shown(string check, string symbol) =>
        Assert.Contains(CompressorJob.One(check, All).Trace, s => s.Symbol == symbol);

    // In heating the vapor valve carries discharge gas, and only a pressure at the inlet tells the low side.
    [Theory]
    [InlineData("compressor.discharge-superheat", "mode: heating, vapor pressure: 341.88, discharge line: 165.0", 59.9)]
    [InlineData("compressor.discharge-superheat", "mode: heating, vapor pressure: 300, discharge pressure: 341.88, discharge line: 165.0", 59.9)]
    [InlineData("compressor.discharge-superheat", "mode: cooling, liquid pressure: 300, discharge pressure: 341.88, discharge line: 165.0", 59.9)]
    [InlineData("compressor.sump-superheat", "mode: heating, vapor pressure: 341.88, true suction pressure: 118.35, sump: 75.0", 35.0)]
    [InlineData("compressor.sump-superheat", "mode: cooling, vapor pressure: 125, true suction pressure: 118.35, sump: 75.0", 35.0)]
    [InlineData("compressor.suction-superheat", "mode: heating, vapor pressure: 341.88, true suction pressure: 118.35, compressor suction line: 55.0", 15.0)]
    [InlineData("compressor.suction-superheat", "mode: cooling, vapor pressure: 125, true suction pressure: 118.35, compressor suction line: 55.0", 15.0)]
    public void The_side_of_the_compressor_is_taken_where_it_is_read(string check, string reading, double superheat)
    {
        var finding = CompressorJob.One(check, reading);
        Assert.Equal(superheat, finding.Measured!.Value.Si * 1.8, 0.2);
        Assert.Equal(reading.Contains("heating", StringComparison.Ordinal) ? "10:30, heating" : "10:30", finding.Subject);
    }

    [Theory]
    [InlineData("compressor.discharge-superheat", "mode: heating, liquid pressure: 341.88, discharge line: 165.0")]
    [InlineData("compressor.discharge-superheat", "mode: cooling, vapor pressure: 341.88, discharge line: 165.0")]
    [InlineData("compressor.discharge-superheat", "liquid pressure: 341.88")]
    [InlineData("compressor.discharge-temperature", "liquid pressure: 341.88")]
    [InlineData("compressor.sump-superheat", "vapor pressure: 118.35")]
    [InlineData("compressor.suction-superheat", "vapor pressure: 118.35")]
    [InlineData("compressor.ratio", "mode: heating, vapor pressure: 341.88, liquid pressure: 330")]
    [InlineData("compressor.ratio", "liquid pressure: 330")]
    [InlineData("compressor.ratio", "discharge pressure: 330")]
    public void The_other_side_says_nothing(string check, string reading) => Assert.Empty(CompressorJob.All(check, reading));

    // Each place that stands for another is remarked upon; read at the compressor itself there is nothing to say.
    [Theory]
    [InlineData("compressor.discharge-superheat", "liquid pressure: 341.88, discharge line: 165.0", "liquid service valve")]
    [InlineData("compressor.discharge-superheat", "mode: heating, vapor pressure: 341.88, discharge line: 165.0", "vapor service valve")]
    [InlineData("compressor.discharge-superheat", "discharge pressure: 341.88, discharge line: 165.0", null)]
    [InlineData("compressor.sump-superheat", "vapor pressure: 118.35, sump: 75.0", "vapor service valve")]
    [InlineData("compressor.sump-superheat", "true suction pressure: 118.35, sump: 75.0", null)]
    [InlineData("compressor.suction-superheat", "vapor pressure: 118.35, compressor suction line: 55.0", "vapor service valve")]
    [InlineData("compressor.suction-superheat", "true suction pressure: 118.35, compressor suction line: 55.0", null)]
    [InlineData("compressor.ratio", "true suction pressure: 118.35, liquid pressure: 341.88", "liquid service valve")]
    [InlineData("compressor.ratio", "vapor pressure: 118.35, discharge pressure: 341.88", "vapor service valve")]
    [InlineData("compressor.ratio", "true suction pressure: 118.35, discharge pressure: 341.88", null)]
    public void Where_it_was_read_is_remarked_on(string check, string reading, string? place)
    {
        var statement = CompressorJob.One(check, reading).Statement;
        Assert.Equal(place is not null, statement.Contains("service valve", StringComparison.Ordinal));
        if (place is not null)
            Assert.Contains(place, statement, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("compressor.ratio")]
    [InlineData("compressor.discharge-temperature")]
    [InlineData("compressor.discharge-superheat")]
    [InlineData("compressor.suction-superheat")]
    [InlineData("compressor.sump-superheat")]
    public void Before_it_has_settled_the_number_is_told_and_not_judged(string check)
    {
        var early = CompressorJob.One(check, All, started: "10:20");
        Assert.Equal(Verdict.NotEvaluated, early.Verdict);
        Assert.NotNull(early.Measured);
        Assert.NotNull(early.NextStep);
        Assert.Empty(early.Limits);
        Assert.Contains("10:30", early.Statement, StringComparison.Ordinal);
    }

    // The maker's figure decides, with its remark where it asks for less than practice does.
    [Theory]
    [InlineData("compressor.discharge-superheat", "{discharge superheat: {minimum: 15 °F, from: compressor sheet}}", true)]
    [InlineData("compressor.sump-superheat", "{sump superheat: {minimum: 15 °F, from: compressor sheet}}", true)]
    [InlineData("compressor.suction-superheat", "{compressor superheat: {minimum: 3 °F, from: compressor sheet}}", true)]
    [InlineData("compressor.ratio", "{compression ratio: {maximum: 12, from: compressor sheet}}", true)]
    [InlineData("compressor.discharge-temperature", "{discharge temperature: {maximum: 240 °F, from: manual p. 30}}", true)]
    [InlineData("compressor.discharge-superheat", "{discharge superheat: {minimum: 25 °F, from: compressor sheet}}", false)]
    [InlineData("compressor.sump-superheat", "{sump superheat: {minimum: 25 °F, from: compressor sheet}}", false)]
    [InlineData("compressor.suction-superheat", "{compressor superheat: {minimum: 8 °F, from: compressor sheet}}", false)]
    [InlineData("compressor.discharge-temperature", "{discharge temperature: {maximum: 220 °F, from: manual p. 30}}", false)]
    public void A_maker_who_asks_for_less_is_remarked_on(string check, string limits, bool less)
    {
        var finding = CompressorJob.One(check, All, limits: limits);
        Assert.Equal(("maker", Verdict.Pass), (finding.Limits[0].Basis, finding.Verdict));
        Assert.Equal(less, finding.Statement.Contains("asks less than", StringComparison.Ordinal));
    }

    [Fact]
    public void Vapor_that_comes_back_too_warm_is_another_fault_than_liquid()
    {
        const string Limits = "{compressor superheat: {minimum: 10 °F, maximum: 30 °F, from: compressor sheet}}";
        string? Next(string line) => CompressorJob.One("compressor.suction-superheat", $"true suction pressure: 118.35, compressor suction line: {line}", limits: Limits).NextStep;
        Assert.Contains("too warm", Next("75.0"), StringComparison.Ordinal);
        Assert.Contains("liquid", Next("45.0"), StringComparison.Ordinal);
        Assert.Null(Next("60.0"));
    }

    [Fact]
    public void An_accuracy_that_nobody_states_is_remarked_on()
    {
        foreach (var check in new[] { "compressor.ratio", "compressor.discharge-superheat", "compressor.suction-superheat", "compressor.sump-superheat", "compressor.discharge-temperature" })
        {
            var bare = CompressorJob.Yaml(All).Replace("accuracy: 0.5 psi, ", "", StringComparison.Ordinal).Replace("accuracy: 1 psi, ", "", StringComparison.Ordinal).Replace("accuracy: 0.5 °F, ", "", StringComparison.Ordinal);
            Assert.Contains("accuracy of", JobLines.Finding(bare, check).Statement, StringComparison.Ordinal);
            Assert.DoesNotContain("accuracy of", CompressorJob.One(check, All).Statement, StringComparison.Ordinal);
        }
    }

    // An absolute pressure of the low side at or below nothing makes no ratio.
    [Fact]
    public void Without_suction_pressure_there_is_no_ratio()
    {
        var finding = CompressorJob.One("compressor.ratio", "true suction pressure: 0 psia, discharge pressure: 341.88");
        Assert.Equal(Verdict.NotEvaluated, finding.Verdict);
        Assert.NotNull(finding.NextStep);
        Assert.Null(finding.Measured);
    }

    // 2.3 to 3.5 is usual in air conditioning (common practice, no source): 350 psia over 100 and over 99, 230 over 100 and over 101.
    [Theory]
    [InlineData("100", "350", false)]
    [InlineData("100", "351", true)]
    [InlineData("100", "230", false)]
    [InlineData("100", "229", true)]
    public void A_ratio_beside_the_usual_is_remarked_on(string low, string high, bool remarked) => Assert.Equal(
        remarked,
        CompressorJob.One("compressor.ratio", $"true suction pressure: {low} psia, discharge pressure: {high} psia").Messages?.Statement.Any(m => m.Id == "compressor.ratio-usual") == true);

    [Fact]
    public void With_vapor_injection_only_the_makers_ratio_judges()
    {
        const string Cold = "vapor pressure: 30.0, liquid pressure: 480.0";
        const string Injected = "{kind: fixed, vapor injection: yes}";
        Assert.Equal(Verdict.Information, CompressorJob.One("compressor.ratio", Cold, Injected).Verdict);
        Assert.Equal(Verdict.Fail, CompressorJob.One("compressor.ratio", Cold, Injected, "{compression ratio: {maximum: 8, from: compressor sheet}}").Verdict);
        Assert.Equal(Verdict.Fail, CompressorJob.One("compressor.ratio", Cold, "{kind: fixed, vapor injection: no}").Verdict);
    }

    // 6 in from the compressor; what fails near it would fail more so.
    [Theory]
    [InlineData("190.0", "18 in", Verdict.Conditional)]
    [InlineData("231.0", "18 in", Verdict.Fail)]
    [InlineData("190.0", "6 in", Verdict.Pass)]
    public void Read_far_away_only_a_pass_is_doubted(string line, string distance, Verdict verdict)
    {
        var finding = CompressorJob.One("compressor.discharge-temperature", $"discharge line: {line}", charging: $"running: full, read at: {{discharge line: {distance}}}");
        Assert.Equal((verdict, verdict == Verdict.Conditional), (finding.Verdict, finding.Reservation is not null));
        Assert.Equal(verdict == Verdict.Pass, finding.NextStep is null);
    }
}
