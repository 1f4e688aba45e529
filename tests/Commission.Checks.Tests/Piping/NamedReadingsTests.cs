using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Piping;

/// <summary>What a finding of the lines rests on has its place in it; what was not written is not spoken of.</summary>
public sealed class NamedReadingsTests
{
    private const string Lines = "piping: {liquid: {od: 3/8 in, length: 12 m, rise: 3 m}, vapor: {od: 3/4 in, length: 12 m, traps: 1}, reused: yes, flushed: yes}";

    [Theory]
    [InlineData("piping.insulation", "vapor line insulated: yes, liquid line insulated: yes, insulation thickness: 13 mm, insulation joints sealed: yes, insulation weatherproof: yes", "insulation joints sealed, insulation thickness, insulation weatherproof, liquid line insulated, vapor line insulated")]
    [InlineData("piping.penetrations", "penetrations sealed: yes", "penetrations sealed")]
    [InlineData("piping.pipe-rating", "pipe rated for refrigerant: yes", "pipe rated for refrigerant, refrigerant")]
    [InlineData("piping.reused-lines", "notes: nothing", "flushed, reused")]
    [InlineData("piping.supports", "supports every: 1.5 m", "supports every")]
    [InlineData("piping.traps", "riser traps: 2", "riser traps, traps")]
    [InlineData("piping.traps", "notes: nothing", "traps")]
    [InlineData("piping.long-line", "riser traps: 2", "accessories, amount, length, long line accessories, metering, rise, riser traps")]
    [InlineData("piping.lengths", "notes: nothing", "length, rise, system")]
    public void What_it_rests_on_is_named(string check, string checks, string keys)
    {
        var yaml = PipingJob.Yaml($"{Lines}, accessories: [crankcase heater]", $"{{{checks}}}", "{long line accessories: [crankcase heater]}", PipingJob.Textbook, charging: "running: full, oil added: {amount: 100 mL}");
        Assert.Equal(keys.Split(", "), JobLines.Keys(yaml, JobLines.Finding(yaml, check)).Order());
    }

    [Fact]
    public void The_lines_of_a_tree_are_named_with_their_ends()
    {
        var yaml = PipingJob.Yaml("branch boxes: [{id: BB1}], indoor: [{id: I1}], piping: [{to: BB1, liquid: {od: 1/2 in, length: 20 m}}, {from: BB1, to: I1, liquid: {od: 1/4 in, length: 5 m}}]", system: "VRF");
        Assert.All(JobLines.Findings(yaml, "piping.lengths"), f => Assert.Equal(["from", "length", "system", "to"], JobLines.Keys(yaml, f).Order()));
        Assert.Equal(["total", "longest run", "first branch to the farthest unit", "height difference"], JobLines.Findings(yaml, "piping.lengths").Select(f => f.Subject));
    }

    // The number is told although no maximum is written; what the maker limits is judged by itself.
    [Fact]
    public void A_length_is_measured_with_or_without_a_maximum()
    {
        Assert.Equal(12, PipingJob.One("piping.lengths", Lines).Measured!.Value.Si);
        Assert.Contains("3.0", PipingJob.One("piping.lengths", Lines).Statement, StringComparison.Ordinal);
        Assert.DoesNotContain("height", PipingJob.One("piping.lengths", "piping: {liquid: {od: 3/8 in, length: 12 m}}").Statement, StringComparison.Ordinal);
        var judged = PipingJob.One("piping.lengths", Lines, limits: "{longest run: {maximum: 15 m, from: p. 5}}");
        Assert.Equal("longest run", judged.Subject);
        Assert.Equal("L", Assert.Single(judged.Trace).Symbol);
        var branching = PipingJob.All("piping.lengths", "branch boxes: [{id: BB1}], indoor: [{id: I1}], piping: [{to: BB1, liquid: {od: 1/2 in, length: 20 m, rise: 2 m}}, {from: BB1, to: I1, liquid: {od: 1/4 in, length: 5 m}}]", system: "multi-split");
        Assert.Equal([25.0, 25.0, 5.0, 2.0], branching.Select(f => f.Measured!.Value.Si));
    }

    // Without a rise nothing is asked of the height, and the sentence has none.
    [Theory]
    [InlineData("12 m", "3 m", Verdict.Information, "12.0 m")]
    [InlineData("20 m", "3 m", Verdict.NotEvaluated, "length")]
    [InlineData("12 m", "7 m", Verdict.NotEvaluated, "height")]
    [InlineData("20 m", "7 m", Verdict.NotEvaluated, "length and height")]
    public void What_makes_a_line_long_is_told(string length, string rise, Verdict verdict, string told)
    {
        var finding = PipingJob.One("piping.long-line", $"piping: {{liquid: {{od: 3/8 in, length: {length}, rise: {rise}}}}}");
        Assert.Equal(verdict, finding.Verdict);
        Assert.Contains(told, finding.Statement, StringComparison.Ordinal);
        Assert.NotNull(finding.Measured);
        Assert.Equal(2, finding.Limits.Length);
        Assert.DoesNotContain("height", PipingJob.One("piping.long-line", "piping: {liquid: {od: 3/8 in, length: 20 m}}").Statement, StringComparison.Ordinal);
    }

    // What stands elsewhere in the job is fitted: the metering device, traps that were counted, a drier in the liquid line.
    [Theory]
    [InlineData("liquid drier", "drier: {line: liquid}", "notes: nothing", true)]
    [InlineData("liquid drier", "drier: {model: D-083}", "notes: nothing", true)]
    [InlineData("liquid drier", "drier: {line: suction}", "notes: nothing", false)]
    [InlineData("liquid drier", "capacity: 7 kW", "notes: nothing", false)]
    [InlineData("oil traps", "capacity: 7 kW", "riser traps: 1", true)]
    [InlineData("oil traps", "capacity: 7 kW", "riser traps: 0", false)]
    [InlineData("oil traps", "capacity: 7 kW", "notes: nothing", false)]
    [InlineData("TXV", "capacity: 7 kW", "notes: nothing", true)]
    [InlineData("start kit", "capacity: 7 kW", "notes: nothing", false)]
    public void An_accessory_counts_where_it_stands_elsewhere(string asked, string equipment, string checks, bool isFitted) => Assert.Equal(
        isFitted ? Verdict.Pass : Verdict.Fail,
        PipingJob.One("piping.long-line", $"{equipment}, piping: {{liquid: {{od: 3/8 in, length: 20 m}}}}", $"{{{checks}}}", $"{{long line accessories: [{asked}]}}").Verdict);

    [Fact]
    public void Oil_that_was_added_for_a_long_line_is_told() => Assert.Contains(
        "100 mL",
        PipingJob.One("piping.long-line", "piping: {liquid: {od: 3/8 in, length: 20 m}}, accessories: [crankcase heater]", limits: "{long line accessories: [crankcase heater]}", reading: PipingJob.Textbook, charging: "running: full, oil added: {amount: 100 mL}").Statement,
        StringComparison.Ordinal);

    [Theory]
    [InlineData("vapor line insulated: no, insulation joints sealed: no", Verdict.Fail, true)]
    [InlineData("insulation joints sealed: yes", Verdict.Conditional, true)]
    [InlineData("insulation thickness: 13 mm", Verdict.Conditional, true)]
    [InlineData("liquid line insulated: no", Verdict.Conditional, true)]
    [InlineData("insulation weatherproof: yes", Verdict.Conditional, true)]
    [InlineData("vapor line insulated: yes, liquid line insulated: no, insulation thickness: 13 mm", Verdict.Pass, false)]
    public void Insulation_that_is_written_is_judged(string checks, Verdict verdict, bool next)
    {
        var finding = PipingJob.One("piping.insulation", checks: $"{{{checks}}}");
        Assert.Equal((verdict, next, verdict == Verdict.Conditional), (finding.Verdict, finding.NextStep is not null, finding.Reservation is not null));
        Assert.Equal(checks.Contains("13 mm", StringComparison.Ordinal), finding.Statement.Contains("13 mm", StringComparison.Ordinal));
        Assert.Equal(checks.Contains("liquid", StringComparison.Ordinal), finding.Statement.Contains("liquid line is not insulated", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("piping.penetrations", "penetrations sealed: yes", "penetrations sealed: no")]
    [InlineData("piping.pipe-rating", "pipe rated for refrigerant: yes", "pipe rated for refrigerant: no")]
    [InlineData("piping.supports", "supports every: 1.5 m", "supports every: 2.5 m")]
    [InlineData("piping.traps", "riser traps: 2", "riser traps: 1")]
    [InlineData("piping.traps", "vapor line slopes to compressor: yes", "vapor line slopes to compressor: no")]
    public void What_is_wrong_has_a_next_step(string check, string good, string bad)
    {
        var limits = good.Contains("riser", StringComparison.Ordinal) ? "{traps: {minimum: 2, from: p. 7}}" : "";
        var passed = PipingJob.One(check, checks: $"{{{good}}}", limits: limits);
        var failed = PipingJob.One(check, checks: $"{{{bad}}}", limits: limits);
        Assert.Equal((Verdict.Pass, true, false), (passed.Verdict, passed.NextStep is null, failed.NextStep is null));
        Assert.NotEqual(Verdict.Pass, failed.Verdict);
        Assert.NotEqual(passed.Statement, failed.Statement);
        Assert.Equal(check == "piping.traps" ? failed.Subject : null, failed.Subject);
    }

    [Fact]
    public void Traps_are_counted_along_all_lines_unless_somebody_counted_them()
    {
        const string Two = "indoor: [{id: I1}, {id: I2}], piping: [{to: I1, vapor: {od: 3/4 in, length: 8 m, traps: 1}}, {to: I2, vapor: {od: 3/4 in, length: 9 m, traps: 2}}]";
        Assert.Contains("3 oil traps", PipingJob.One("piping.traps", Two, system: "multi-split").Statement, StringComparison.Ordinal);
        Assert.Contains("one oil trap", PipingJob.One("piping.traps", Two, "{riser traps: 1}", system: "multi-split").Statement, StringComparison.Ordinal);
        Assert.Equal(["traps", "fall"], PipingJob.All("piping.traps", checks: "{riser traps: 1, vapor line slopes to compressor: yes}").Select(f => f.Subject));
    }

    // Of several runs each is named by where it ends, or counted.
    [Fact]
    public void Each_reused_line_speaks_for_itself()
    {
        var all = PipingJob.All("piping.reused-lines", "indoor: [{id: I1}, {id: I2}], piping: [{to: I1, liquid: {od: 1/4 in, length: 8 m}, reused: yes, flushed: yes}, {to: I2, liquid: {od: 1/4 in, length: 9 m}, reused: yes, flushed: no}, {liquid: {od: 1/4 in, length: 9 m}, reused: yes}, {to: I2, liquid: {od: 1/4 in, length: 9 m}}]", system: "multi-split");
        Assert.Equal(["I1", "I2", "run 3"], all.Select(f => f.Subject));
        Assert.Equal([Verdict.Pass, Verdict.Fail, Verdict.NotEvaluated], all.Select(f => f.Verdict));
        Assert.Equal([true, false, false], all.Select(f => f.NextStep is null));
        Assert.Null(PipingJob.One("piping.reused-lines", Lines).Subject);
    }

    [Fact]
    public void The_velocity_names_circuit_and_tube()
    {
        var yaml = PipingJob.Yaml("compressor: fixed, capacity: 7.18 kW, piping: {vapor: {od: 7/8 in, length: 10 m, rise: -4 m}, liquid: {od: 3/8 in, length: 10 m}}", reading: PipingJob.Textbook, system: "refrigeration");
        var named = JobLines.Keys(yaml, JobLines.Finding(yaml, "piping.velocity", "vapor line, full load")).ToList();
        foreach (var needed in new[] { "compressor", "capacity", "od", "liquid line", "liquid pressure", "vapor line", "vapor pressure" })
            Assert.Contains(needed, named);
        Assert.Contains("rise", JobLines.Keys(yaml, JobLines.Finding(yaml, "piping.velocity", "vapor riser")));
        Assert.Equal(["vapor line, horizontal", "vapor riser", "vapor line, full load", "liquid line"], JobLines.Findings(yaml, "piping.velocity").Select(f => f.Subject));
        Assert.Contains(JobLines.Finding(yaml, "piping.velocity", "vapor line, full load").Trace, s => s.Symbol == "v");
        Assert.Contains(JobLines.Finding(yaml, "piping.velocity", "vapor line, full load").Trace, s => s.Symbol == "d");
        Assert.All(JobLines.Findings(yaml, "piping.velocity"), f => Assert.NotNull(f.Measured));
    }

    // The vapor rises where the liquid falls: the height of either tube counts, the vapor's first.
    [Theory]
    [InlineData("", ", rise: -4 m", true)]
    [InlineData("", ", rise: 4 m", false)]
    [InlineData(", rise: -4 m", ", rise: 4 m", true)]
    [InlineData(", rise: 0 m", ", rise: -4 m", false)]
    public void The_height_of_the_liquid_line_stands_for_the_vapors(string vapor, string liquid, bool isRiser) => Assert.Equal(
        isRiser,
        PipingJob.All("piping.velocity", $"compressor: fixed, capacity: 7.18 kW, piping: {{vapor: {{od: 7/8 in, length: 10 m{vapor}}}, liquid: {{od: 3/8 in, length: 10 m{liquid}}}}}", reading: PipingJob.Textbook, system: "refrigeration").Any(f => f.Subject == "vapor riser"));
}
