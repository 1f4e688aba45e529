using System.Globalization;
using Commission.Checks.Air;
using Commission.Checks.AirReadings;
using Commission.Checks.Kernel;
using Commission.Measurement.Decisions;
using Commission.Measurement.Quantities;
using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.Air;

/// <summary>
/// Capacity on the air side. The trade's worked numbers use 4.5·cfm·Δh and I-P enthalpies; the check computes with the air's own volume and the SI
/// form and shows the field factor beside it. The forms differ by up to 0.1 % in capacity.
/// </summary>
public sealed class CapacityCheckTests
{
    private const string Air = "{airflow: {method: unit display, value: 1200 cfm}}";
    private const string Summer = "return dry bulb: 75.0, return wet bulb: 63.0, supply dry bulb: 57.0, supply wet bulb: 55.0";
    private const string Humid = "return dry bulb: 80.0, return wet bulb: 67.0, supply dry bulb: 60.0, supply wet bulb: 58.0";

    private static double BtuPerHour(Finding f, string symbol) =>
        double.Parse(Assert.Single(f.Trace, s => s.Symbol == symbol).Result.Split(' ')[0].Replace(",", "", StringComparison.Ordinal), CultureInfo.InvariantCulture);

    [Fact]
    public void Capacity_of_1200_cfm_from_75_63_to_57_55_is_28397_by_the_field_factor()
    {
        // 4.5 · 1200 · (28.428 − 23.169) = 28 397 Btu/h; pure I-P equations 28 413 [computed].
        Assert.Equal(28397, BtuPerHour(AirJobs.One("air.capacity", Air, [Summer]), "Q_field"), 30.0);
    }

    [Fact]
    public void Capacity_of_1200_cfm_from_80_67_to_60_58_is_34448_by_the_field_factor()
    {
        // 34 448 Btu/h; pure I-P equations 34 465 [computed].
        Assert.Equal(34448, BtuPerHour(AirJobs.One("air.capacity", Air, [Humid]), "Q_field"), 36.0);
    }

    [Fact]
    public void The_airs_own_volume_makes_it_a_little_less()
    {
        // Return air of 75/63 fills 13.686 ft³/lb [computed]: 60/13.686 = 4.384 instead of 4.5, so 28 397 · 4.384/4.5 = 27 665 Btu/h.
        var f = AirJobs.One("air.capacity", Air, [Summer]);
        Assert.Equal(Verdict.Information, f.Verdict);
        Assert.Equal(27665, Power.FromSi(f.Measured!.Value.Si).BtuPerHour, 35.0);
    }

    [Fact]
    public void Sensible_is_the_moist_heat_capacity_times_the_drop()
    {
        // 1200·60/13.686 lb/h · (1.006 + 1.86·0.009529)/4.1868 Btu/(lb °F) · 18 °F = 5260.9 · 0.24451 · 18 = 23 154 Btu/h.
        var capacity = JobText.Context(AirJobs.Yaml(Air, [Summer])).Get<AirCapacity>();
        Assert.Equal(23154, Power.FromSi(capacity.Sensible.Value).BtuPerHour, 6.0);
    }

    [Fact]
    public void U_is_wide_because_of_the_wet_bulbs()
    {
        // Two probes, four bulbs: nothing of their accuracy is common to both air streams.
        var f = AirJobs.One("air.capacity", Air, [Summer]);
        Assert.InRange(f.Measured!.ExpandedSi!.Value / f.Measured.Value.Si, 0.08, 0.14);
        Assert.Contains(f.Budget, b => b.Cause.StartsWith("air probe", StringComparison.Ordinal));
    }

    [Fact]
    public void The_plates_rating_stands_beside_it_without_a_verdict() =>
        Assert.Contains("77 %", AirJobs.One("air.capacity", Air, [Summer]).Statement, StringComparison.Ordinal);

    [Fact]
    public void A_hood_counts_supply_air()
    {
        // Supply air of 57/55 is denser: v 13.20 against 13.686 ft³/lb, so the same cfm carry 3.6 % more.
        var hood = JobText.Context(AirJobs.Yaml("{airflow: {method: hood, hood: [600 cfm, 600 cfm]}}", [Summer])).Get<AirCapacity>();
        var display = JobText.Context(AirJobs.Yaml(Air, [Summer])).Get<AirCapacity>();
        Assert.Equal(1.0365, hood.Total!.Value / display.Total!.Value, 0.001);
    }

    [Theory]
    [InlineData("{filter: clean}", Summer, "airflow")]
    [InlineData(Air, "return dry bulb: 75.0, return wet bulb: 63.0, supply dry bulb: 57.0", "wet bulb")]
    [InlineData(Air, "return dry bulb: 75.0", "wet bulb")]
    public void What_is_missing_is_told(string air, string reading, string why)
    {
        var f = AirJobs.One("air.capacity", air, [reading]);
        Assert.Equal(Verdict.NotEvaluated, f.Verdict);
        Assert.Contains(why, f.Reason, StringComparison.Ordinal);
        Assert.NotNull(f.NextStep);
    }

    [Fact]
    public void Dry_bulbs_without_airflow_give_no_finding() => Assert.Empty(AirJobs.All("air.capacity", "{filter: clean}", ["return dry bulb: 75.0, supply dry bulb: 57.0"]));
}
