using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Piping;

/// <summary>Lengths along the lines as written, against the maker's.</summary>
public sealed class LengthsCheckTests
{
    // Outdoor 20 m (rise 6 m) to BB1, from there 5 m (rise 1 m) to I1 and 12 m (rise −2 m) to I2: total 37, longest 32, after the first branch 12, height 7 m.
    private const string Tree = """
        branch boxes: [{id: BB1}], indoor: [{id: I1}, {id: I2}], piping: [{to: BB1, liquid: {od: 1/2 in, length: 20 m, rise: 6 m}}, {from: BB1, to: I1, liquid: {od: 1/4 in, length: 5 m, rise: 1 m}}, {from: BB1, to: I2, liquid: {od: 1/4 in, length: 12 m, rise: -2 m}}]
        """;

    private const string Limits = "{total length: {maximum: 40 m, from: p. 5}, longest run: {maximum: 30 m, from: p. 5}, first branch: {maximum: 15 m, from: p. 5}, height difference: {maximum: 10 m, from: p. 5}}";

    [Fact]
    public void A_tree_of_two_branches()
    {
        var all = PipingJob.All("piping.lengths", Tree, limits: Limits, system: "VRF");
        Assert.Equal(["total", "longest run", "first branch to the farthest unit", "height difference"], all.Select(f => f.Subject));
        Assert.Equal([37.0, 32.0, 12.0, 7.0], all.Select(f => f.Measured!.Value.Si));
        Assert.Equal([Verdict.Pass, Verdict.Fail, Verdict.Pass, Verdict.Pass], all.Select(f => f.Verdict));
        Assert.All(all, f => Assert.Equal("maker", f.Limits[0].Basis));
        Assert.All(all, f => Assert.True(f.Readings.Length >= 6));
    }

    [Fact]
    public void A_branching_system_without_the_makers_figures_is_not_evaluated()
    {
        var all = PipingJob.All("piping.lengths", Tree, system: "VRF");
        Assert.Equal(4, all.Count);
        Assert.All(all, f => Assert.Equal(Verdict.NotEvaluated, f.Verdict));
        Assert.All(all, f => Assert.NotNull(f.NextStep));
    }

    [Fact]
    public void A_multi_split_with_its_own_lines_has_no_branch()
    {
        var all = PipingJob.All(
            "piping.lengths", "indoor: [{id: I1}, {id: I2}], piping: [{to: I1, liquid: {od: 1/4 in, length: 8 m, rise: 2 m}}, {to: I2, liquid: {od: 1/4 in, length: 14 m, rise: -3 m}}]",
            limits: "{total length: {maximum: 30 m, from: p. 5}, longest run: {maximum: 15 m, from: p. 5}, height difference: {maximum: 5 m, from: p. 5}}", system: "multi-split");
        Assert.Equal(["total", "longest run", "height difference"], all.Select(f => f.Subject));
        Assert.Equal([22.0, 14.0, 3.0], all.Select(f => f.Measured!.Value.Si));
        Assert.All(all, f => Assert.Equal(Verdict.Pass, f.Verdict));
    }

    [Fact]
    public void A_split_without_the_makers_figure_is_information()
    {
        var f = PipingJob.One("piping.lengths", "piping: {liquid: {od: 3/8 in, length: 12 m, rise: 3 m}, vapor: {od: 3/4 in, length: 12 m}}");
        Assert.Equal(Verdict.Information, f.Verdict);
        // Written to 1 m: u = 1/√12 = 0.289 m, U = 0.58 m.
        Assert.Contains("12.0 m", f.Statement, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("12 m", Verdict.Pass)]
    [InlineData("18 m", Verdict.Fail)]
    public void A_split_against_the_makers_longest_run(string length, Verdict verdict) => Assert.Equal(
        verdict, PipingJob.One("piping.lengths", $"piping: {{liquid: {{od: 3/8 in, length: {length}}}}}", limits: "{longest run: {maximum: 15 m, from: p. 5}}").Verdict);

    [Fact]
    public void A_height_that_nobody_wrote_is_asked_for() => Assert.Equal(
        Verdict.NotEvaluated, PipingJob.One("piping.lengths", "piping: {liquid: {od: 3/8 in, length: 12 m}}", limits: "{height difference: {maximum: 10 m, from: p. 5}}").Verdict);

    [Fact]
    public void Lines_that_turn_in_a_ring_end_all_the_same()
    {
        var all = PipingJob.All(
            "piping.lengths", "branch boxes: [{id: A}, {id: B}], piping: [{from: A, to: B, liquid: {od: 1/2 in, length: 5 m}}, {from: B, to: A, liquid: {od: 1/2 in, length: 5 m}}]", limits: Limits, system: "VRF");
        Assert.Equal(Verdict.Pass, all[0].Verdict);
        Assert.Equal(Verdict.NotEvaluated, all[1].Verdict);
    }

    [Fact]
    public void Without_lines_there_is_no_finding() => Assert.Empty(PipingJob.All("piping.lengths", "compressor: fixed"));
}
