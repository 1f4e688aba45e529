using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Compressors;

/// <summary>Low side at the compressor. R-410A has its dew point at 40.0 °F at 118.35 psig (equation of state).</summary>
public sealed class SuctionChecksTests
{
    // 55.0 − 40.0 = 15.0 °F; 43.0 − 40.0 = 3.0 °F; 5 °F least (common practice).
    [Theory]
    [InlineData("55.0", 15.0, Verdict.Pass)]
    [InlineData("43.0", 3.0, Verdict.Fail)]
    public void Superheat_at_the_compressor(string line, double superheat, Verdict verdict)
    {
        var f = CompressorJob.One("compressor.suction-superheat", $"true suction pressure: 118.35, compressor suction line: {line}");
        Assert.Equal(verdict, f.Verdict);
        Assert.Equal(superheat, f.Measured!.Value.Si * 1.8, 0.05);
    }

    [Fact]
    public void The_service_valve_stands_for_the_inlet_with_a_remark()
    {
        var f = CompressorJob.One("compressor.suction-superheat", "vapor pressure: 118.35, compressor suction line: 55.0");
        Assert.Equal(Verdict.Pass, f.Verdict);
        Assert.Contains("service valve", f.Statement, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{compressor superheat: {minimum: 20 °F, from: compressor sheet}}", Verdict.Fail)]
    [InlineData("{compressor superheat: {minimum: 10 °F, maximum: 30 °F, from: compressor sheet}}", Verdict.Pass)]
    public void The_makers_minimum_comes_first(string limits, Verdict verdict) =>
        Assert.Equal(verdict, CompressorJob.One("compressor.suction-superheat", "true suction pressure: 118.35, compressor suction line: 55.0", limits: limits).Verdict);

    [Theory]
    [InlineData("compressor suction line: 55.0")]
    [InlineData("mode: heating, vapor pressure: 380.0, compressor suction line: 30.0")]
    public void Without_the_inlets_pressure_it_is_not_evaluated(string reading) =>
        Assert.Equal(Verdict.NotEvaluated, CompressorJob.One("compressor.suction-superheat", reading).Verdict);

    [Fact]
    public void Without_the_line_there_is_no_finding() => Assert.Empty(CompressorJob.All("compressor.suction-superheat", "true suction pressure: 118.35"));

    // 75.0 − 40.0 = 35.0 °F; 52.0 − 40.0 = 12.0 °F; 20 °F (common practice).
    [Theory]
    [InlineData("75.0", 35.0, Verdict.Pass)]
    [InlineData("52.0", 12.0, Verdict.Conditional)]
    public void Sump_over_saturation(string sump, double superheat, Verdict verdict)
    {
        var f = CompressorJob.One("compressor.sump-superheat", $"true suction pressure: 118.35, sump: {sump}");
        Assert.Equal(verdict, f.Verdict);
        Assert.Equal(superheat, f.Measured!.Value.Si * 1.8, 0.05);
    }

    [Fact]
    public void Below_the_makers_sump_superheat_it_fails() => Assert.Equal(
        Verdict.Fail, CompressorJob.One("compressor.sump-superheat", "true suction pressure: 118.35, sump: 52.0", limits: "{sump superheat: {minimum: 15 °F, from: compressor sheet}}").Verdict);

    [Fact]
    public void A_sump_without_a_pressure_is_not_evaluated() => Assert.Equal(Verdict.NotEvaluated, CompressorJob.One("compressor.sump-superheat", "sump: 75.0").Verdict);
}
