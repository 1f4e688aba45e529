using System.Globalization;
using Commission.Measurement.Decisions;
using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.Piping;

/// <summary>What height and friction take from the liquid. Loss for each 10 ft of rise at 110 °F: R-22 4.8, R-134a 4.9, R-404A 4.1 psi (a piping manual, published).</summary>
public sealed class LiquidLossCheckTests
{
    private static string Lines(string liquid, string capacity = ", capacity: 7.18 kW") => $"compressor: fixed{capacity}, piping: {{liquid: {{{liquid}}}}}";

    private static double Result(Finding f, string symbol) => double.Parse(Assert.Single(f.Trace, s => s.Symbol == symbol).Result.Split(' ')[0].Replace('−', '-'), CultureInfo.InvariantCulture);

    // Liquid at 110 °F and a little above its bubble pressure (R-22 241, R-134a 161, R-404A 288 psia); vapor a few degrees above its dew point.
    [Theory]
    [InlineData("R-22", "250 psia", "80 psia", "60 °F", 4.8)]
    [InlineData("R-134a", "170 psia", "50 psia", "60 °F", 4.9)]
    [InlineData("R-404A", "305 psia", "100 psia", "60 °F", 4.1)]
    public void Ten_feet_of_rise_as_a_manual_prints(string refrigerant, string high, string low, string vapor, double psi)
    {
        var f = PipingJob.One(
            "piping.liquid-loss", "compressor: fixed, piping: {liquid: {od: 3/8 in, length: 12 ft, rise: 10 ft}}", refrigerant: refrigerant, units: "us",
            reading: $"vapor pressure: {low}, liquid pressure: {high}, vapor line: {vapor}, liquid line: 110.0 °F");
        Assert.Equal(psi, Result(f, "Δp_h"), 0.051);
    }

    [Fact]
    public void Friction_by_hand()
    {
        // f 0.018, 30 m of 3/8 in (bore 7.899 mm), 0.843 m/s, 1186 kg/m³: 0.018 · 30/0.007899 · 1186 · 0.843²/2 = 28.8 kPa.
        var f = PipingJob.One("piping.liquid-loss", Lines("od: 3/8 in, length: 30 m, rise: 0 m"), reading: PipingJob.Textbook);
        Assert.Equal(28.8, Result(f, "Δp_f"), 0.6);
        Assert.Equal(0, Result(f, "Δp_h"), 9);
    }

    [Fact]
    public void Elbows_count_as_thirty_bores_each()
    {
        // 10 · 30 · 7.899 mm = 2.37 m more: 28.8 · 32.37/30 = 31.1 kPa.
        var f = PipingJob.One("piping.liquid-loss", Lines("od: 3/8 in, length: 30 m, rise: 0 m, elbows: 10"), reading: PipingJob.Textbook);
        Assert.Equal(31.1, Result(f, "Δp_f"), 0.7);
    }

    [Fact]
    public void One_kelvin_of_subcooling_is_gone_after_two_metres()
    {
        // R-134a at 0.8 MPa: 31.31 °C (textbook table), liquid at 30.3 °C: 1.0 K. dp/dT there is about 22.3 kPa/K; 2 m of 1186 kg/m³ are 23.3 kPa: 1.04 K.
        var f = PipingJob.One("piping.liquid-loss", Lines("od: 5/8 in, length: 5 m, rise: 2 m", ""), reading: PipingJob.Textbook);
        Assert.Equal(-0.03, f.Measured!.Value.Si, 0.05);
        Assert.Equal(23.3, Result(f, "Δp_h"), 0.06);
    }

    [Theory]
    [InlineData("26.0 °C", Verdict.Pass)]
    [InlineData("30.9 °C", Verdict.Fail)]
    public void Subcooling_left_after_rise_and_friction(string line, Verdict verdict)
    {
        var f = PipingJob.One(
            "piping.liquid-loss", Lines("od: 3/8 in, length: 30 m, rise: 3 m"), reading: PipingJob.Textbook.Replace("30.3 °C", line, StringComparison.Ordinal));
        Assert.Equal(verdict, f.Verdict);
        Assert.Equal(verdict == Verdict.Fail, f.Statement.Contains("flashes", StringComparison.Ordinal));
        Assert.Contains(f.Readings, r => r.Name.EndsWith("rise", StringComparison.Ordinal));
    }

    [Fact]
    public void A_line_that_falls_gains() =>
        Assert.True(Result(PipingJob.One("piping.liquid-loss", Lines("od: 3/8 in, length: 30 m, rise: -3 m"), reading: PipingJob.Textbook), "Δp_h") < -34);

    [Fact]
    public void Without_a_capacity_the_friction_is_reserved()
    {
        var f = PipingJob.One("piping.liquid-loss", Lines("od: 3/8 in, length: 30 m, rise: 1 m", ""), reading: PipingJob.Textbook.Replace("30.3 °C", "26.0 °C", StringComparison.Ordinal));
        Assert.Equal(Verdict.Conditional, f.Verdict);
        Assert.Contains("friction", f.Reservation, StringComparison.Ordinal);
    }

    // No liquid line loses 5 K to friction where 1 to 2 °F are designed for (common practice, no source). R-134a at 0.8 MPa boils at 31.31 °C (textbook
    // table), 1 m of rise takes 11.6 kPa at 22.3 kPa/K, 0.52 K: 31.31 − 0.52 − 25.6 = 5.2 K are left, 4.9 K of 25.9 °C.
    [Theory]
    [InlineData("25.6 °C", Verdict.Pass)]
    [InlineData("25.9 °C", Verdict.Conditional)]
    public void With_a_wide_margin_no_friction_is_missed(string line, Verdict verdict)
    {
        var f = PipingJob.One("piping.liquid-loss", Lines("od: 3/8 in, length: 30 m, rise: 1 m", ""), reading: PipingJob.Textbook.Replace("30.3 °C", line, StringComparison.Ordinal));
        Assert.Equal(verdict == Verdict.Pass ? 5.2 : 4.9, f.Measured!.Value.Si, 0.06);
        Assert.Equal(verdict, f.Verdict);
    }

    [Fact]
    public void Friction_beyond_what_guides_design_for_is_remarked_on()
    {
        // 1/4 in (bore 0.190 in, 4.826 mm): 2.26 m/s, 0.018 · 30/0.004826 · 1186 · 2.26²/2 = 339 kPa, far more than 2 °F (1.1 K · 22 kPa/K).
        var f = PipingJob.One("piping.liquid-loss", Lines("od: 1/4 in, length: 30 m, rise: 0 m"), reading: PipingJob.Textbook);
        Assert.Equal(Verdict.Fail, f.Verdict);
        Assert.Contains("piping guides", f.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void Unsettled_readings_are_not_evaluated() => Assert.Equal(
        Verdict.NotEvaluated, PipingJob.One("piping.liquid-loss", Lines("od: 3/8 in, length: 30 m"), reading: PipingJob.Textbook, charging: "last change: \"10:25\"").Verdict);

    [Fact]
    public void Without_a_liquid_line_there_is_no_finding() =>
        Assert.Empty(PipingJob.All("piping.liquid-loss", "compressor: fixed, piping: {vapor: {od: 7/8 in, length: 10 m}}", reading: PipingJob.Textbook));
}
