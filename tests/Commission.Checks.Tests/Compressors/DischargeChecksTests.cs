using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Compressors;

/// <summary>
/// Discharge line. 225 °F for a fixed-speed compressor, 20 °F over saturation (common practice). R-410A at 341.88 psig: bubble 105.0 °F; its dew point
/// there lies 0.1 to 0.2 °F higher (near-azeotrope, equation of state).
/// </summary>
public sealed class DischargeChecksTests
{
    [Theory]
    [InlineData("190.0", Verdict.Pass)]
    [InlineData("231.0", Verdict.Fail)]
    public void Temperature_of_a_fixed_speed_compressor(string line, Verdict verdict)
    {
        var f = CompressorJob.One("compressor.discharge-temperature", $"discharge line: {line}", charging: "running: full, read at: {discharge line: 6 in}");
        Assert.Equal(verdict, f.Verdict);
        Assert.Equal(verdict == Verdict.Fail, f.NextStep is not null);
    }

    [Fact]
    public void Read_too_far_away_it_passes_with_a_reservation()
    {
        var f = CompressorJob.One("compressor.discharge-temperature", "discharge line: 190.0", charging: "running: full, read at: {discharge line: 18 in}");
        Assert.Equal(Verdict.Conditional, f.Verdict);
        Assert.Contains("18 in", f.Reservation, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_who_knows_where_it_passes_with_a_remark() =>
        Assert.Contains("distance", CompressorJob.One("compressor.discharge-temperature", "discharge line: 190.0").Statement, StringComparison.Ordinal);

    [Fact]
    public void The_common_figure_is_not_for_variable_speed() =>
        Assert.Equal(Verdict.Information, CompressorJob.One("compressor.discharge-temperature", "discharge line: 231.0", "variable speed").Verdict);

    [Fact]
    public void The_makers_figure_comes_first_for_R_32()
    {
        var f = CompressorJob.One("compressor.discharge-temperature", "discharge line: 231.0", limits: "{discharge temperature: {maximum: 240 °F, from: manual p. 30}}", refrigerant: "R-32");
        Assert.Equal(Verdict.Pass, f.Verdict);
        Assert.Equal("maker", f.Limits[0].Basis);
        Assert.Contains("asks less than", f.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void Ten_minutes_after_the_start_temperature_is_not_evaluated() =>
        Assert.Equal(Verdict.NotEvaluated, CompressorJob.One("compressor.discharge-temperature", "discharge line: 190.0", started: "10:20").Verdict);

    [Fact]
    public void Superheat_of_the_discharge()
    {
        // 165.0 − 105.1 = 59.9 °F.
        var f = CompressorJob.One("compressor.discharge-superheat", "liquid pressure: 341.88, discharge line: 165.0");
        Assert.Equal(Verdict.Pass, f.Verdict);
        Assert.Equal(59.9, f.Measured!.Value.Si * 1.8, 0.2);
        Assert.Contains(f.Readings, r => r.Name == "discharge line, 10:30");
        Assert.Contains(f.Readings, r => r.Name == "liquid pressure, 10:30");
        Assert.Contains(f.Readings, r => r.Text.Contains("psia", StringComparison.Ordinal));
    }

    [Fact]
    public void Little_of_it_is_a_suspicion()
    {
        // 117.0 − 105.1 = 11.9 °F.
        var f = CompressorJob.One("compressor.discharge-superheat", "liquid pressure: 341.88, discharge line: 117.0");
        Assert.Equal(Verdict.Conditional, f.Verdict);
        Assert.Contains("liquid", f.Reservation, StringComparison.Ordinal);
        Assert.NotNull(f.NextStep);
    }

    [Fact]
    public void Below_the_makers_figure_it_fails() => Assert.Equal(
        Verdict.Fail, CompressorJob.One("compressor.discharge-superheat", "liquid pressure: 341.88, discharge line: 117.0", limits: "{discharge superheat: {minimum: 25 °F, from: compressor sheet}}").Verdict);

    [Fact]
    public void Above_the_critical_pressure_there_is_no_superheat() =>
        Assert.Equal(Verdict.NotEvaluated, CompressorJob.One("compressor.discharge-superheat", "liquid pressure: 1300.0, discharge line: 220.0", refrigerant: "R-744").Verdict);

    [Fact]
    public void A_line_without_a_pressure_gives_no_superheat() => Assert.Empty(CompressorJob.All("compressor.discharge-superheat", "discharge line: 165.0"));
}
