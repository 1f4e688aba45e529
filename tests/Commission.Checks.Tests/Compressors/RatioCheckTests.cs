using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Compressors;

/// <summary>Compression ratio: absolute pressures. At most about 10, usual 2.3 to 3.5 in air conditioning, 5 to 8 for heat pumps in the cold (common practice).</summary>
public sealed class RatioCheckTests
{
    private const string Summer = "vapor pressure: 118.35, liquid pressure: 341.9";

    [Fact]
    public void Ratio_of_a_summer_day_is_2_68()
    {
        // 341.9 and 118.35 psig: 356.6/133.05 = 2.680 [computed].
        var f = CompressorJob.One("compressor.ratio", Summer);
        Assert.Equal(Verdict.Pass, f.Verdict);
        Assert.Equal(356.596 / 133.046, f.Measured!.Value.Si, 1e-6);
        Assert.Equal("2.68", f.Measured.Value.Text[..4]);
        Assert.DoesNotContain("Usual", f.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void U_follows_both_gauges()
    {
        // u(p_s) = 0.5/√3 psi, u(p_d) = 1/√3 psi: r·√((0.2887/133.05)² + (0.5774/356.6)²) = 0.00727; k = 2 (known bounds).
        var f = CompressorJob.One("compressor.ratio", Summer);
        Assert.Equal(0.00727, f.Measured!.StandardUncertaintySi!.Value, 0.00004);
    }

    [Fact]
    public void An_unusual_ratio_passes_with_a_remark()
    {
        // 500 and 110 psig: 514.7/124.7 = 4.13.
        var f = CompressorJob.One("compressor.ratio", "vapor pressure: 110.0, liquid pressure: 500.0");
        Assert.Equal(Verdict.Pass, f.Verdict);
        Assert.Contains("Usual", f.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void Above_ten_it_fails()
    {
        // 480 and 30 psig: 494.7/44.7 = 11.07.
        var f = CompressorJob.One("compressor.ratio", "vapor pressure: 30.0, liquid pressure: 480.0");
        Assert.Equal(Verdict.Fail, f.Verdict);
        Assert.NotNull(f.NextStep);
    }

    [Theory]
    [InlineData("{compression ratio: {maximum: 12, from: compressor sheet}}", Verdict.Pass)]
    [InlineData("{compression ratio: {maximum: 8, from: compressor sheet}}", Verdict.Fail)]
    public void The_makers_figure_comes_first(string limits, Verdict verdict)
    {
        var f = CompressorJob.One("compressor.ratio", "vapor pressure: 30.0, liquid pressure: 480.0", limits: limits);
        Assert.Equal(verdict, f.Verdict);
        Assert.Equal("maker", f.Limits[0].Basis);
        // Common practice allows 10: 12 is looser, 8 is not, whatever range is usual.
        Assert.Equal(verdict == Verdict.Pass, f.Statement.Contains("asks less", StringComparison.Ordinal));
    }

    [Fact]
    public void With_vapor_injection_the_common_figure_says_nothing() =>
        Assert.Equal(Verdict.Information, CompressorJob.One("compressor.ratio", "vapor pressure: 30.0, liquid pressure: 480.0", "{kind: variable speed, vapor injection: yes}").Verdict);

    [Fact]
    public void In_heating_the_vapor_valve_is_the_high_side()
    {
        // 380 psig discharge gas at the vapor valve, 50 psig true suction: 394.7/64.7 = 6.10, usual for a heat pump in the cold.
        var f = CompressorJob.One("compressor.ratio", "mode: heating, vapor pressure: 380.0, liquid pressure: 360.0, true suction pressure: 50.0");
        Assert.Equal(394.696 / 64.696, f.Measured!.Value.Si, 1e-6);
        Assert.Equal(Verdict.Pass, f.Verdict);
        Assert.Equal("10:30, heating", f.Subject);
        Assert.DoesNotContain("Usual", f.Statement, StringComparison.Ordinal);
        Assert.Empty(CompressorJob.All("compressor.ratio", "mode: heating, vapor pressure: 380.0, liquid pressure: 360.0"));
    }

    [Fact]
    public void The_pressures_at_the_compressor_come_before_the_valves()
    {
        var f = CompressorJob.One("compressor.ratio", Summer + ", true suction pressure: 115.0, discharge pressure: 350.0");
        Assert.Equal(364.696 / 129.696, f.Measured!.Value.Si, 1e-6);
    }

    [Fact]
    public void Ten_minutes_after_the_start_it_is_not_evaluated() =>
        Assert.Equal(Verdict.NotEvaluated, CompressorJob.One("compressor.ratio", Summer, started: "10:20").Verdict);

    [Fact]
    public void One_side_alone_gives_no_finding() => Assert.Empty(CompressorJob.All("compressor.ratio", "vapor pressure: 118.35"));
}
