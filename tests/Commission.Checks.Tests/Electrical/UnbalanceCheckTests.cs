using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Electrical;

/// <summary>
/// NEMA MG-1 unbalance = largest departure from the mean over the mean. Examples published in installation manuals and public power-quality texts;
/// each worked by hand beside it. Limits: 1 % no derating, 2 % common limit, 5 % stop (published).
/// </summary>
public sealed class UnbalanceCheckTests
{
    // 460/467/450: mean 459, 9/459 = 1.961 %. 462/463/455: mean 460, 5/460 = 1.087 %. 480/476/472: mean 476, 4/476 = 0.840 %.
    // 220/216/213: mean 216.33, 3.667/216.33 = 1.695 % (a manual rounds to 1.8). 236/240/241: mean 239, 3/239 = 1.255 %.
    [Theory]
    [InlineData(460, 467, 450, 1.961)]
    [InlineData(462, 463, 455, 1.087)]
    [InlineData(480, 476, 472, 0.840)]
    [InlineData(220, 216, 213, 1.695)]
    [InlineData(236, 240, 241, 1.255)]
    public void Published_voltage_examples_within_two_percent_pass(int a, int b, int c, double percent)
    {
        var f = ElectricalJob.One("electrical.voltage-unbalance", $"{{line to line: [{a} V, {b} V, {c} V]}}");
        Assert.Equal(percent > 1.9 ? Verdict.PassWithinUncertainty : Verdict.Pass, f.Verdict);
        Assert.Equal(percent, 100 * f.Measured!.Value.Si, 0.0006);
        Assert.Equal(3, f.Readings.Length);
    }

    [Fact]
    public void The_published_example_of_208_volts_is_above_two_percent()
    {
        // 203/210/212: mean 208.33, 5.333/208.33 = 2.56 % (the manual rounds to 2.5).
        var f = ElectricalJob.One("electrical.voltage-unbalance", "{line to line: [203 V, 210 V, 212 V]}");
        Assert.Equal(Verdict.Fail, f.Verdict);
        Assert.Equal(2.56, 100 * f.Measured!.Value.Si, 0.005);
        Assert.NotNull(f.NextStep);
        // Derating at 2.56 %: 1 − 5·(0.0256 − 0.01) = 0.922 (0.95 at 2 %, 0.90 at 3 %, published).
        Assert.Contains("92 %", f.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void Above_five_percent_the_motor_must_stop()
    {
        // 230/230/208: mean 222.67, 14.67/222.67 = 6.6 %.
        var f = ElectricalJob.One("electrical.voltage-unbalance", "{line to line: [230 V, 230 V, 208 V]}");
        Assert.Equal(Verdict.Fail, f.Verdict);
        Assert.Contains("Stop the unit", f.NextStep, StringComparison.Ordinal);
        Assert.Equal(2, f.Limits.Length);
    }

    [Fact]
    public void Between_one_and_two_percent_the_derating_is_told()
    {
        // 1.961 %: 1 − 5·0.00961 = 0.952.
        var f = ElectricalJob.One("electrical.voltage-unbalance", "{line to line: [460 V, 467 V, 450 V]}");
        Assert.Contains("95 %", f.Statement, StringComparison.Ordinal);
        Assert.DoesNotContain("derated", ElectricalJob.One("electrical.voltage-unbalance", "{line to line: [480 V, 476 V, 472 V]}").Statement, StringComparison.Ordinal);
    }

    // 231.4/229.8/232.2: mean 231.13, 1.333/231.13 = 0.577 %. What one meter is off by shifts all three alike and cancels; each reading has its own
    // rounding of 0.1/√12 V, also where the maker counts it among the digits: 0.0289/231.13 · √((2/3)² + 2 (1/3)²) = 0.0102 %, U = 0.0204 %.
    [Theory]
    [InlineData("1 % of reading + 2 digits")]
    [InlineData("1 % of reading")]
    public void Each_reading_has_its_own_rounding(string accuracy)
    {
        var found = JobLines.Finding(
            JobLines.Of($"instruments: [{{id: meter, kind: multimeter, accuracy: {accuracy}, resolution: 0.1 V, calibrated: 2026-01-10, reads: [voltage]}}]\nelectrical: {{line to line: [231.4 V, 229.8 V, 232.2 V]}}"),
            "electrical.voltage-unbalance");
        Assert.Equal(0.577, 100 * found.Measured!.Value.Si, 0.0005);
        Assert.Equal(0.0204, 100 * found.Measured.ExpandedSi!.Value, 0.0004);
    }

    [Fact]
    public void One_voltage_has_no_unbalance() => Assert.Empty(ElectricalJob.All("electrical.voltage-unbalance", "{line to line: [236 V]}"));

    [Fact]
    public void Dead_phases_are_not_evaluated() =>
        Assert.Equal(Verdict.NotEvaluated, ElectricalJob.One("electrical.voltage-unbalance", "{line to line: [0 V, 0 V, 0 V]}").Verdict);

    [Fact]
    public void The_meters_gain_cancels_in_a_ratio_of_its_own_readings()
    {
        // A wrong gain of one meter scales all three alike; what stays is resolution.
        var f = ElectricalJob.One("electrical.voltage-unbalance", "{line to line: [460 V, 467 V, 450 V]}");
        Assert.True(100 * f.Measured!.ExpandedSi!.Value < 0.15, f.Measured.Text);
    }

    [Fact]
    public void Currents_within_ten_percent_pass()
    {
        // 12.0/12.6/11.4 A: mean 12.0, 0.6/12 = 5 %.
        var f = ElectricalJob.One("electrical.current-unbalance", "{compressor: [12.0 A, 12.6 A, 11.4 A]}");
        Assert.Equal(Verdict.Pass, f.Verdict);
        Assert.Equal(5.0, 100 * f.Measured!.Value.Si, 0.001);
    }

    [Fact]
    public void Currents_beyond_ten_percent_fail()
    {
        // 12.0/15.0/12.0 A: mean 13.0, 2/13 = 15.4 %.
        var f = ElectricalJob.One("electrical.current-unbalance", "{compressor: [12.0 A, 15.0 A, 12.0 A]}");
        Assert.Equal(Verdict.Fail, f.Verdict);
        Assert.Equal(15.385, 100 * f.Measured!.Value.Si, 0.001);
    }

    [Fact]
    public void Standing_motors_are_not_evaluated() =>
        Assert.Equal(Verdict.NotEvaluated, ElectricalJob.One("electrical.current-unbalance", "{compressor: [0 A, 0 A, 0 A]}").Verdict);

    [Fact]
    public void Unbalanced_currents_are_followed_by_moving_all_three_leads_never_two()
    {
        // Two leads changed over reverse the field, and a scroll compressor does not pump backwards (fact of the trade).
        var found = ElectricalJob.One("electrical.current-unbalance", "{compressor: [18.6 A, 16.0 A, 21.5 A]}");
        Assert.Equal(Verdict.Fail, found.Verdict);
        Assert.Equal("electrical.current-unbalance-next", found.Messages!.NextStep!.Id);
        Assert.Contains("all three leads on by one place", found.NextStep, StringComparison.Ordinal);
        Assert.DoesNotContain("swap", found.NextStep, StringComparison.Ordinal);
    }
}
