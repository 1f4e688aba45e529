using Commission.Measurement.Decisions;
using Commission.Measurement.Quantities;
using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.Piping;

/// <summary>
/// Velocities in the lines. Piping guides (published): 500 fpm horizontal, 1000 in risers, 4000 at most, liquid 360. R-134a near 0.14 and 0.8 MPa:
/// 146.6 kJ/kg taken up (textbook cycle 143.6, and 2 K of vapor and 1 K of liquid more), vapor 0.1414 m³/kg at −16.8 °C (0.14014 saturated at
/// −18.77 °C, textbook table), liquid 1186 kg/m³ at 30.3 °C (handbook table).
/// </summary>
public sealed class VelocityCheckTests
{
    private const double FeetPerMinute = 0.3048 / 60;

    private static string Split(string compressor, string vapor, string liquid = "", string capacity = "capacity: 7.18 kW") =>
        $"compressor: {compressor}, {capacity}, piping: {{vapor: {{{vapor}}}{(liquid.Length == 0 ? "" : $", liquid: {{{liquid}}}")}}}";

    private static Finding Of(IReadOnlyList<Finding> all, string subject) => Assert.Single(all, f => f.Subject == subject);

    [Fact]
    public void Velocity_of_the_textbook_cycle_in_seven_eighths_tube()
    {
        // 7.18 kW / 146.6 kJ/kg = 0.04898 kg/s; 0.1414 m³/kg; bore 0.785 in, 3.1225e-4 m²: 22.18 m/s.
        var all = PipingJob.All("piping.velocity", Split("fixed", "od: 7/8 in, length: 10 m"), reading: PipingJob.Textbook, system: "refrigeration");
        var f = Of(all, "vapor line, full load");
        Assert.Equal(22.18, f.Measured!.Value.Si, 0.22);
        Assert.Equal(Verdict.Fail, f.Verdict);
        Assert.Equal(4000 * FeetPerMinute, f.Limits[0].UpperSi!.Value, 1e-9);
        Assert.Equal(Verdict.Pass, Of(all, "vapor line, horizontal").Verdict);
    }

    [Fact]
    public void Ten_percent_of_rated_capacity_is_the_largest_doubt()
    {
        var f = Of(PipingJob.All("piping.velocity", Split("fixed", "od: 7/8 in, length: 10 m"), reading: PipingJob.Textbook), "vapor line, full load");
        Assert.Equal("capacity in these conditions", f.Budget[0].Cause);
        // 10 % rectangular, k = 2: 11.5 %.
        Assert.InRange(f.Measured!.ExpandedSi!.Value / f.Measured.Value.Si, 0.115, 0.125);
    }

    // 7.18 kW in 1 5/8 in (bore 1.505 in, 1.1477e-3 m²): 6.03 m/s = 1188 fpm; 2.4 kW: 397 fpm, 2.7 kW: 446 fpm.
    [Theory]
    [InlineData("fixed", "", Verdict.Pass)]
    [InlineData("two-stage", ", minimum capacity: 3.5 kW", Verdict.Pass)]
    [InlineData("two-stage", ", minimum capacity: 2.4 kW", Verdict.Fail)]
    [InlineData("two-stage", "", Verdict.NotEvaluated)]
    public void Oil_comes_back_at_the_lowest_stage(string compressor, string minimum, Verdict verdict)
    {
        var all = PipingJob.All("piping.velocity", Split(compressor, "od: 1 5/8 in, length: 10 m", capacity: "capacity: 7.18 kW" + minimum), reading: PipingJob.Textbook, system: "refrigeration");
        Assert.Equal(verdict, Of(all, verdict == Verdict.NotEvaluated ? "vapor line, oil return" : "vapor line, horizontal").Verdict);
    }

    [Theory]
    [InlineData("-4 m", Verdict.Pass)]
    [InlineData("4 m", null)]
    public void A_riser_counts_where_the_vapor_goes_up(string rise, Verdict? verdict)
    {
        var all = PipingJob.All("piping.velocity", Split("fixed", $"od: 1 5/8 in, length: 10 m, rise: {rise}"), reading: PipingJob.Textbook, system: "refrigeration");
        Assert.Equal(verdict, all.SingleOrDefault(f => f.Subject == "vapor riser")?.Verdict);
    }

    [Fact]
    public void A_riser_of_397_fpm_fails()
    {
        var all = PipingJob.All("piping.velocity", Split("two-stage", "od: 1 5/8 in, length: 10 m, rise: -4 m", capacity: "capacity: 7.18 kW, minimum capacity: 2.4 kW"), reading: PipingJob.Textbook, system: "refrigeration");
        Assert.Equal(Verdict.Fail, Of(all, "vapor riser").Verdict);
    }

    [Fact]
    public void In_comfort_systems_the_makers_table_decides()
    {
        var all = PipingJob.All("piping.velocity", Split("two-stage", "od: 1 5/8 in, length: 10 m", capacity: "capacity: 7.18 kW, minimum capacity: 2.4 kW"), reading: PipingJob.Textbook);
        var f = Of(all, "vapor line, horizontal");
        Assert.Equal(Verdict.Information, f.Verdict);
        Assert.Contains("piping guides", f.Statement, StringComparison.Ordinal);
        Assert.Single(f.Limits);
    }

    [Fact]
    public void A_variable_speed_compressor_brings_its_oil_back_by_running_up() => Assert.Equal(
        Verdict.Information,
        Of(PipingJob.All("piping.velocity", Split("variable speed", "od: 7/8 in, length: 10 m", capacity: "capacity: 7.18 kW, minimum capacity: 2.4 kW"), reading: PipingJob.Textbook, charging: "running: charging mode"), "vapor line, horizontal").Verdict);

    [Fact]
    public void Liquid_in_three_eighths_tube()
    {
        // 0.04898 kg/s / (1186 kg/m³ · 4.901e-5 m²) = 0.843 m/s = 166 fpm.
        var f = Of(PipingJob.All("piping.velocity", Split("fixed", "od: 7/8 in, length: 10 m", "od: 3/8 in, length: 10 m"), reading: PipingJob.Textbook), "liquid line");
        Assert.Equal(0.843, f.Measured!.Value.Si, 0.009);
        Assert.Equal(Verdict.Pass, f.Verdict);
    }

    [Fact]
    public void A_wall_as_written_comes_before_the_list()
    {
        // 22.2 mm less two walls of 1.1 mm: 20.0 mm, 3.1416e-4 m²: 22.04 m/s.
        var f = Of(PipingJob.All("piping.velocity", Split("fixed", "od: 22.2 mm, wall: 1.1 mm, length: 10 m"), reading: PipingJob.Textbook), "vapor line, full load");
        Assert.Equal(22.04, f.Measured!.Value.Si, 0.22);
    }

    [Fact]
    public void A_tube_of_no_list_is_not_evaluated() => Assert.Equal(
        Verdict.NotEvaluated, Of(PipingJob.All("piping.velocity", Split("fixed", "od: 23 mm, length: 10 m"), reading: PipingJob.Textbook), "vapor line, full load").Verdict);

    [Theory]
    [InlineData("vapor pressure: 1.40 bar(a), liquid pressure: 8.00 bar(a), vapor line: -16.8 °C")]
    [InlineData("vapor pressure: 1.40 bar(a), liquid pressure: 8.00 bar(a), vapor line: -16.8 °C, liquid line: 36.0 °C")]
    public void Without_states_it_is_not_evaluated(string reading) =>
        Assert.Equal(Verdict.NotEvaluated, PipingJob.One("piping.velocity", Split("fixed", "od: 7/8 in, length: 10 m"), reading: reading).Verdict);

    [Fact]
    public void Without_a_capacity_it_is_not_evaluated() =>
        Assert.Equal(Verdict.NotEvaluated, PipingJob.One("piping.velocity", "compressor: fixed, piping: {vapor: {od: 7/8 in, length: 10 m}}", reading: PipingJob.Textbook).Verdict);

    [Fact]
    public void Each_run_of_a_multi_split_has_its_own_unit()
    {
        var all = PipingJob.All(
            "piping.velocity",
            "compressor: variable speed, capacity: 7 kW, indoor: [{id: I1, capacity: 2.5 kW}, {id: I2}], piping: [{to: I1, liquid: {od: 1/4 in, length: 8 m}}, {to: I2, liquid: {od: 1/4 in, length: 12 m}}]",
            reading: PipingJob.Textbook, system: "multi-split");
        Assert.Equal(["I1: liquid line", "I2"], all.Select(f => f.Subject));
        Assert.Equal(Verdict.NotEvaluated, all[1].Verdict);
    }

    [Theory]
    [InlineData("compressor: fixed, capacity: 7 kW", PipingJob.Textbook)]
    [InlineData("compressor: fixed, capacity: 7 kW, piping: {vapor: {od: 7/8 in, length: 10 m}}", "")]
    [InlineData("compressor: fixed, capacity: 7 kW, piping: {vapor: {od: 7/8 in, length: 10 m}}", "vapor pressure: 1.40 bar(a), vapor line: -16.8 °C")]
    public void Without_lines_or_readings_there_is_no_finding(string equipment, string reading) => Assert.Empty(PipingJob.All("piping.velocity", equipment, reading: reading));
}
