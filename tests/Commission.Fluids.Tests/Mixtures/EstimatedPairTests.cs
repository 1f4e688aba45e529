using System.Text.Json;
using Commission.Fluids.Data;
using Commission.Fluids.Mixtures;
using Xunit;

namespace Commission.Fluids.Tests.Mixtures;

/// <summary>
/// The deviations of estimated pairs, worked out anew from the boiling points that ANSI/ASHRAE 34 lists (from memory of the standard, as
/// the index of refrigerants marks them).
/// </summary>
public sealed class EstimatedPairTests
{
    [Fact]
    public void Each_deviation_is_that_of_all_its_sisters()
    {
        using var file = EmbeddedData.Open("mixtures/estimates.json");
        foreach (var pair in file.RootElement.GetProperty("pairs").EnumerateArray())
        {
            string a = pair.Text("a"), b = pair.Text("b");
            var sisters = Listed().Where(r => r.EstimatedPairs.Any(p => p.StartsWith($"{a} + {b}:", StringComparison.Ordinal) || p.StartsWith($"{b} + {a}:", StringComparison.Ordinal))).ToArray();
            Assert.Equal(sisters.Select(s => s.Info.Designation), Sisters(pair));
            Covers(pair, sisters);
        }
    }

    [Fact]
    public void A_rule_deviates_as_far_as_the_worst_blend_that_is_estimated_by_it_alone()
    {
        using var file = EmbeddedData.Open("mixtures/estimates.json");
        foreach (var entry in file.RootElement.GetProperty("rules").EnumerateArray())
        {
            var rule = entry.Text("rule") == "relative" ? CombiningRule.Relative : CombiningRule.LorentzBerthelot;
            var listed = Listed().Where(r => r.CombiningRules.SequenceEqual([rule])).ToArray();
            Covers(entry, listed);
            Assert.Contains(listed.MaxBy(r => Shares(r).Dew)!.Info.Designation, Sisters(entry));
        }
    }

    [Fact]
    public void Every_listed_blend_with_Lorentz_Berthelot_pairs_that_lie_off_is_a_sister()
    {
        // R-401A, 401B, 409A by 7 to 8 % of the pressure, R-402A, 402B, 408A by 6 to 11 %.
        Assert.Equal((0.055, 0.085), Deviation("R-401C"));
        Assert.Equal((0.055, 0.085), Deviation("R-409B"));
        Assert.Equal((0.055, 0.085), Deviation("R-414A"));
        Assert.Equal((0.055, 0.085), Deviation("R-414B"));
        Assert.Equal("R-22 + R-124", Fluids.Get("R-414A").EstimateDeviation!.Pair);
        Assert.True(Fluids.Get("R-414A").EstimateDeviation!.HoldPair);
        Assert.Null(Fluids.Get("R-410A").EstimateDeviation);
    }

    [Theory]
    [InlineData("R-403A", 0.035, 0.053)]
    [InlineData("R-403B", 0.035, 0.053)]
    [InlineData("R-405A", 0.035, 0.053)]
    [InlineData("R-413A", 0.035, 0.053)]
    [InlineData("R-429A", 0.1, 0.106)]
    [InlineData("R-435A", 0.1, 0.106)]
    [InlineData("R-461A", 0.1, 0.106)]
    [InlineData("R-468A", 0.1, 0.106)]
    [InlineData("R-468B", 0.1, 0.106)]
    [InlineData("R-468C", 0.1, 0.106)]
    [InlineData("R-473A", 0.1, 0.106)]
    public void A_pair_that_no_listed_blend_holds_deviates_as_its_rule_does(string designation, double bubble, double dew)
    {
        Assert.Equal((bubble, dew), Deviation(designation));
        Assert.False(Fluids.Get(designation).EstimateDeviation!.HoldPair);
    }

    private static (double Bubble, double Dew) Deviation(string designation)
    {
        var d = Fluids.Get(designation).EstimateDeviation!;
        return (d.Bubble, d.Dew);
    }

    private static IEnumerable<Refrigerant> Listed() =>
        RefrigerantCatalogue.All.Where(i => i is { ListedBoilingRange: not null, IsComputable: true }).Select(i => Fluids.Get(i.Designation)).Where(r => !r.EstimatedPairs.IsEmpty);

    private static string[] Sisters(JsonElement entry) => [.. entry.GetProperty("sisters").EnumerateArray().Select(s => s.GetString()!)];

    // Rounded up to 0.1 %: not below the largest, and less than that step above.
    private static void Covers(JsonElement entry, Refrigerant[] blends)
    {
        Assert.NotEmpty(blends);
        double bubble = blends.Max(b => Shares(b).Bubble), dew = blends.Max(b => Shares(b).Dew);
        Assert.InRange(entry.Number("bubble"), bubble, bubble + 0.001);
        Assert.InRange(entry.Number("dew"), dew, dew + 0.001);
    }

    private static (double Bubble, double Dew) Shares(Refrigerant fluid)
    {
        var d = Fluids.Value(fluid.CompareWithListedBoilingRange());
        var (bubble, dew) = (Fluids.Value(fluid.BubbleAtPressure(101_325)), Fluids.Value(fluid.DewAtPressure(101_325)));
        return (Math.Abs(d.Bubble) * bubble.PressureSlope / bubble.Pressure, Math.Abs(d.Dew) * dew.PressureSlope / dew.Pressure);
    }
}
