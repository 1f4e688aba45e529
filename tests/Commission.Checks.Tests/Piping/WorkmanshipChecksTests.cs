using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Piping;

/// <summary>Traps, fall, supports, insulation, rating, reused lines, openings.</summary>
public sealed class WorkmanshipChecksTests
{
    [Theory]
    [InlineData("{riser traps: 2}", "{traps: {minimum: 2, from: p. 7}}", Verdict.Pass)]
    [InlineData("{riser traps: 1}", "{traps: {minimum: 2, from: p. 7}}", Verdict.Fail)]
    [InlineData("{penetrations sealed: yes}", "{traps: {minimum: 2, from: p. 7}}", Verdict.NotEvaluated)]
    [InlineData("{riser traps: 2}", "", Verdict.Information)]
    public void Traps(string checks, string limits, Verdict verdict) =>
        Assert.Equal(verdict, PipingJob.One("piping.traps", checks: checks, limits: limits).Verdict);

    [Fact]
    public void Traps_written_with_the_line_count() => Assert.Equal(
        Verdict.Pass, PipingJob.One("piping.traps", "piping: {vapor: {od: 3/4 in, length: 12 m, traps: 2}}", limits: "{traps: {minimum: 2, from: p. 7}}").Verdict);

    [Theory]
    [InlineData("yes", Verdict.Pass)]
    [InlineData("no", Verdict.Information)]
    public void Fall_of_the_vapor_line(string falls, Verdict verdict) =>
        Assert.Equal(verdict, PipingJob.One("piping.traps", checks: $"{{vapor line slopes to compressor: {falls}}}").Verdict);

    // 6 ft are 1.83 m (International Mechanical Code table 305.4, from memory).
    [Theory]
    [InlineData("1.8 m", Verdict.PassWithinUncertainty)]
    [InlineData("2.5 m", Verdict.Fail)]
    public void Supports(string every, Verdict verdict)
    {
        var f = PipingJob.One("piping.supports", checks: $"{{supports every: {every}}}");
        Assert.Equal(verdict, f.Verdict);
        Assert.Equal("from memory", f.Limits[0].Mark);
    }

    [Theory]
    [InlineData("vapor line insulated: yes, insulation joints sealed: yes", Verdict.Pass)]
    [InlineData("vapor line insulated: no", Verdict.Fail)]
    [InlineData("vapor line insulated: yes, insulation joints sealed: no", Verdict.Fail)]
    [InlineData("vapor line insulated: yes, insulation weatherproof: no", Verdict.Fail)]
    [InlineData("vapor line insulated: yes, liquid line insulated: no", Verdict.Pass)]
    [InlineData("insulation joints sealed: yes", Verdict.Conditional)]
    public void Insulation(string checks, Verdict verdict) =>
        Assert.Equal(verdict, PipingJob.One("piping.insulation", checks: $"{{{checks}}}").Verdict);

    [Theory]
    [InlineData("yes", Verdict.Pass)]
    [InlineData("no", Verdict.Fail)]
    public void Rating_of_the_tube(string rated, Verdict verdict) => Assert.Equal(verdict, PipingJob.One("piping.pipe-rating", checks: $"{{pipe rated for refrigerant: {rated}}}").Verdict);

    [Theory]
    [InlineData("flushed: yes", Verdict.Pass)]
    [InlineData("flushed: no", Verdict.Fail)]
    [InlineData("reused: yes", Verdict.NotEvaluated)]
    public void Reused_lines(string flushed, Verdict verdict) => Assert.Equal(
        verdict, PipingJob.One("piping.reused-lines", $"piping: {{liquid: {{od: 3/8 in, length: 12 m}}, {(flushed == "reused: yes" ? flushed : "reused: yes, " + flushed)}}}").Verdict);

    [Fact]
    public void New_lines_need_no_flushing() => Assert.Empty(PipingJob.All("piping.reused-lines", "piping: {liquid: {od: 3/8 in, length: 12 m}, reused: no}"));

    [Theory]
    [InlineData("yes", Verdict.Pass)]
    [InlineData("no", Verdict.Fail)]
    public void Openings(string closed, Verdict verdict) => Assert.Equal(verdict, PipingJob.One("piping.penetrations", checks: $"{{penetrations sealed: {closed}}}").Verdict);

    [Theory]
    [InlineData("piping.supports")]
    [InlineData("piping.insulation")]
    [InlineData("piping.pipe-rating")]
    [InlineData("piping.penetrations")]
    [InlineData("piping.traps")]
    public void What_is_not_written_gives_no_finding(string check) => Assert.Empty(PipingJob.All(check, checks: "{notes: nothing}"));
}
