using System.Globalization;
using System.Text.RegularExpressions;
using Commission.Checks.Kernel;
using Commission.Measurement.Decisions;
using Commission.Records.Findings;
using CsCheck;
using Xunit;

namespace Commission.Checks.Tests.Charge;

/// <summary>
/// A finding names every reading it rests on: changing one that it does not name leaves it as it was. Evidence may take it back; then the evidence
/// names the reading that was changed.
/// </summary>
public sealed partial class NamedReadingsTests
{
    private static readonly string[] Jobs =
    [
        ChargeJobs.TarnLane,
        ChargeJobs.FenRow.With("liquid line: 95.0", "liquid line: 95.0, liquid after drier: 94.2"),
        ChargeJobs.FenRow.With("instruments:", "limits: {charts: [{for: superheat, across: {reading: return wet bulb, at: [60, 75]}, values: [[8, 16]], tolerance: 4 °F, from: plate}], liquid pressure: {target: 340 psig, tolerance: 9 psi, from: plate}, approach: {target: 1 °F, tolerance: 3 °F, from: plate}}\ninstruments:"),
        ChargeJobs.FenRow.With("running: full", "running: full\n  standing test: {off for: 20 min, condenser fan on: yes, liquid pressure: 201.8, liquid line: 70.0, outdoor dry bulb: 70.2}"),
        ChargeJobs.FenRow.With("supply dry bulb: 61.8", "supply dry bulb: 55.1"),
    ];

    // A reading in a row: its key, and the number whose last digit is moved. Places keep their columns.
    [GeneratedRegex(@"(?<=(pressure|line|bulb|drier|before|after): )\d+\.\d+", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Number();

    [Fact]
    public void Changing_a_reading_a_finding_does_not_name_never_changes_it()
    {
        var jobs = Jobs.Select(yaml => (Yaml: yaml, Numbers: Number().Matches(yaml).ToArray(), Before: Charge(yaml))).ToArray();
        Assert.All(jobs, job => Assert.True(job.Numbers.Length >= 8 && job.Before.Count >= 8));
        Gen.Select(Gen.Int[0, jobs.Length - 1], Gen.Int[0, 1000], Gen.Int[1, 9]).Sample(
            (which, pick, by) =>
            {
                var (yaml, numbers, before) = jobs[which];
                var number = numbers[pick % numbers.Length];
                var (line, column) = Place(yaml, number.Index);
                var all = JobText.Evaluate(string.Concat(yaml.AsSpan(0, number.Index), Moved(number.Value, by), yaml.AsSpan(number.Index + number.Length)));
                var after = Charge(all);
                bool Names(Finding finding) => finding.Readings.Any(r => r.At.Line == line && r.At.Column == column);
                foreach (var (key, finding) in before)
                {
                    if (Names(finding))
                        continue;
                    Assert.True(after.TryGetValue(key, out var same), $"{key} has gone with {number.Value} at {line}:{column}.");
                    if (same!.IsTakenBack)
                        Assert.Contains(all, f => f.Impeached.Any(i => same.Readings.Any(r => r.At == i.At)) && Names(f));
                    else
                        Assert.Equal(Told(finding), Told(same));
                }
            },
            iter: 60,
            threads: 1);
    }

    [Fact]
    public void Every_reading_of_a_judged_row_is_named_by_some_finding()
    {
        foreach (var yaml in Jobs)
        {
            var named = Charge(yaml).Values.SelectMany(f => f.Readings).Select(r => (r.At.Line, r.At.Column)).ToHashSet();
            // The air of a row that is drawn and not judged is listed in the table of readings alone.
            var drawn = Place(yaml, yaml.IndexOf("{at: \"11:20\"", StringComparison.Ordinal) is var at and >= 0 ? at : 0).Line;
            Assert.All(Number().Matches(yaml).Where(n => Place(yaml, n.Index).Line != drawn), number => Assert.Contains(Place(yaml, number.Index), named));
        }
    }

    // Each named reading of a judged number moves it: by ten times its U across any limit.
    [Theory]
    [InlineData("vapor pressure: 118.9", "vapor pressure: 88.9", "charge.metering-superheat")]
    [InlineData("vapor line: 57.2", "vapor line: 77.2", "charge.metering-superheat")]
    [InlineData("liquid pressure: 340.8", "liquid pressure: 300.8", "charge.subcooling")]
    [InlineData("liquid line: 97.0", "liquid line: 87.0", "charge.subcooling")]
    [InlineData("after: 23.84", "after: 22.84", "charge.by-weight")]
    public void Moving_a_named_reading_across_the_limit_changes_the_verdict(string from, string to, string check)
    {
        Assert.True(Assert.Single(JobText.Evaluate(ChargeJobs.TarnLane, check)).Verdict is Verdict.Pass or Verdict.PassWithinUncertainty);
        Assert.Equal(Verdict.Fail, Assert.Single(JobText.Evaluate(ChargeJobs.TarnLane.With(from, to), check)).Verdict);
    }

    private static Dictionary<string, Finding> Charge(string yaml) => Charge(JobText.Evaluate(yaml));

    private static Dictionary<string, Finding> Charge(IEnumerable<Finding> findings) =>
        findings.Where(f => f.Phase == Phases.Charge).ToDictionary(f => $"{f.Check} [{f.Subject}]", StringComparer.Ordinal);

    private static string Told(Finding f) => string.Join(
        "\n",
        [
            f.Verdict.ToString(), f.Statement, f.Reason, f.Reservation, f.NextStep, f.Measured?.Text,
            f.ProbabilityOfConformity?.ToString("R", CultureInfo.InvariantCulture),
            .. f.Limits.Select(l => l.ToString()),
            .. f.Trace.Select(s => s.ToString()),
            .. f.Budget.Select(b => b.ToString()),
            .. f.Readings.Select(r => r.ToString()),
        ]);

    private static string Moved(string number, int by)
    {
        var digit = (number[^1] - '0' + by) % 10;
        return string.Concat(number.AsSpan(0, number.Length - 1), digit.ToString(CultureInfo.InvariantCulture));
    }

    private static (int Line, int Column) Place(string yaml, int index)
    {
        var lines = yaml[..index].Split('\n');
        return (lines.Length, lines[^1].Length + 1);
    }
}
