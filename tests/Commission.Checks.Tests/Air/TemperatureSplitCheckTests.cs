using Commission.Checks.Tests.Charge;
using Commission.Measurement.Decisions;
using Commission.Messages;
using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.Air;

/// <summary>
/// Temperature split against California table RA3.2-3 (from memory), ± 3 °F of the installer (published, RA3-16). The table at 75 °F and 63 °F is
/// 18.6 °F; its cells around are 17.9 (64 °F), 19.2 (76/63) and 18.5 (76/64).
/// </summary>
public sealed class TemperatureSplitCheckTests
{
    private const string Enough = "return dry bulb: 75.0, return wet bulb: 63.0, supply dry bulb: 56.4";
    private const string Warm = "return dry bulb: 75.0, return wet bulb: 63.0, supply dry bulb: 60.5";

    [Fact]
    public void The_tarn_lane_split_is_19_40_against_19_06()
    {
        // 76.0 − 56.6 = 19.40 °F. The table at 76.0/63.2: between 19.2 (63) and 18.5 (64), 19.2 − 0.2·0.7 = 19.06 °F.
        var f = Assert.Single(JobText.Evaluate(ChargeJobs.TarnLane, "air.temperature-split"));
        Assert.Equal(Verdict.Pass, f.Verdict);
        Assert.Equal("11:35", f.Subject);
        Assert.Equal(19.40, f.Measured!.Value.Si * 1.8, 0.005);
        Assert.Equal(19.06, f.Limits[0].TargetSi!.Value * 1.8, 0.005);
        Assert.Equal(22.06, f.Limits[0].UpperSi!.Value * 1.8, 0.005);
    }

    [Fact]
    public void The_U_of_the_target_is_in_U()
    {
        // One probe read both dry bulbs, so its accuracy cancels in the split; it stays in the target through both slopes.
        // U from the three resolutions and (0.60 − 0.70)·accuracy and the table's rounding; with the probe's accuracy ten times as large U grows.
        static double U(string accuracy) => AirJobsWith(accuracy).Measured!.ExpandedSi!.Value;
        Assert.True(U("5.0 °F") > 2 * U("0.5 °F"));
    }

    [Fact]
    public void On_the_target_it_passes()
    {
        var f = AirJobs.One("air.temperature-split", readings: [Enough]);
        Assert.Equal(Verdict.Pass, f.Verdict);
        Assert.Equal(18.6, f.Limits[0].TargetSi!.Value * 1.8, 1e-6);
        Assert.Equal("from memory", f.Limits[0].Mark);
        Assert.Contains(f.Readings, r => r.Name.StartsWith("return wet bulb", StringComparison.Ordinal));
    }

    [Fact]
    public void Three_degrees_above_the_airflow_is_low()
    {
        var f = AirJobs.One("air.temperature-split", readings: ["return dry bulb: 75.0, return wet bulb: 63.0, supply dry bulb: 53.0"]);
        Assert.Equal(Verdict.Fail, f.Verdict);
        Assert.Contains("airflow is low", f.Statement, StringComparison.Ordinal);
        Assert.NotNull(f.NextStep);
    }

    [Fact]
    public void Three_degrees_below_it_is_measured_again()
    {
        var f = AirJobs.One("air.temperature-split", readings: [Warm]);
        Assert.Equal(Verdict.Conditional, f.Verdict);
        Assert.Contains("read once", f.Reservation, StringComparison.Ordinal);
        Assert.Contains("again", f.NextStep, StringComparison.Ordinal);
    }

    [Fact]
    public void Measured_twice_below_it_is_an_alarm_and_no_pass()
    {
        var f = AirJobs.One("air.temperature-split", readings: [Warm, Warm]);
        Assert.Equal(Verdict.Information, f.Verdict);
        Assert.Contains(f.Messages!.Statement, m => m == AirMessages.SplitLowTwiceRemark);
    }

    [Fact]
    public void A_rater_is_allowed_four_degrees()
    {
        // 75 − 53 = 22.0, 3.4 °F above 18.6.
        const string Reading = "return dry bulb: 75.0, return wet bulb: 63.0, supply dry bulb: 53.0";
        Assert.Equal(Verdict.PassWithinUncertainty, AirJobs.One("air.temperature-split", readings: [Reading], limits: "{packs: [california-title-24-rater]}").Verdict);
        Assert.Equal(Verdict.Fail, AirJobs.One("air.temperature-split", readings: [Reading]).Verdict);
    }

    [Theory]
    [InlineData("return dry bulb: 68.0, return wet bulb: 60.0, supply dry bulb: 50.0", "below the table")]
    [InlineData("return dry bulb: 77.0, return wet bulb: 50.0, supply dry bulb: 55.0", "gives no target here")]
    [InlineData("return dry bulb: 75.0, supply dry bulb: 56.4", "wet bulb")]
    public void Where_the_table_says_nothing_it_is_not_evaluated(string reading, string why)
    {
        var f = AirJobs.One("air.temperature-split", readings: [reading]);
        Assert.Equal(Verdict.NotEvaluated, f.Verdict);
        Assert.Contains(why, f.Reason, StringComparison.Ordinal);
        Assert.NotNull(f.NextStep);
    }

    [Fact]
    public void Ten_minutes_after_the_start_it_is_not_evaluated()
    {
        var yaml = AirJobs.Yaml(readings: [Enough]).Replace("compressor started: \"10:00\"", "compressor started: \"10:20\"", StringComparison.Ordinal);
        Assert.Equal(Verdict.NotEvaluated, Assert.Single(JobText.Evaluate(yaml, "air.temperature-split")).Verdict);
    }

    [Fact]
    public void At_part_load_the_table_says_nothing() =>
        Assert.Equal(Verdict.NotEvaluated, AirJobs.One("air.temperature-split", readings: [Enough], charging: "running: part").Verdict);

    [Theory]
    [InlineData("{temperature split: {minimum: 16 °F, maximum: 22 °F, from: manual p. 9}}", Verdict.Pass)]
    [InlineData("{temperature split: {target: 21 °F, tolerance: 2 °F, from: manual p. 9}}", Verdict.Conditional)]
    [InlineData("{temperature split: {minimum: 10 °F, maximum: 15 °F, from: manual p. 9}}", Verdict.Fail)]
    public void The_makers_figure_comes_first(string limits, Verdict verdict)
    {
        // 75.0 − 56.4 = 18.6 °F, no wet bulb needed.
        var f = AirJobs.One("air.temperature-split", readings: ["return dry bulb: 75.0, supply dry bulb: 56.4"], limits: limits);
        Assert.Equal(verdict, f.Verdict);
        Assert.Equal("maker", f.Limits[0].Basis);
    }

    [Fact]
    public void A_multi_split_gives_information()
    {
        var yaml = AirJobs.Yaml(readings: [Enough]).Replace("system: split", "system: multi-split", StringComparison.Ordinal);
        Assert.Equal(Verdict.Information, Assert.Single(JobText.Evaluate(yaml, "air.temperature-split")).Verdict);
    }

    [Fact]
    public void A_cold_room_has_no_such_table()
    {
        var yaml = AirJobs.Yaml(readings: [Enough]).Replace("system: split", "system: refrigeration, application: medium temperature", StringComparison.Ordinal);
        Assert.Empty(JobText.Evaluate(yaml, "air.temperature-split"));
    }

    private static Finding AirJobsWith(string accuracy) => Assert.Single(JobText.Evaluate(
        AirJobs.Yaml(readings: [Enough]).Replace("kind: psychrometer, accuracy: 0.5 °F", $"kind: psychrometer, accuracy: {accuracy}", StringComparison.Ordinal), "air.temperature-split"));
}
