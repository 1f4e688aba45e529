using Commission.Checks.Tests.Limits;
using Commission.Checks.Tests.Verdicts;
using Commission.Measurement.Decisions;
using Commission.Records;
using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.Recording;

/// <summary>The word of danger has one source, and what it stands before decides. The rule is the project's own.</summary>
public sealed class DangerTests
{
    private const string Word = "DANGER";

    [Fact]
    public void In_every_row_of_the_tables_the_word_and_the_mark_go_together()
    {
        var marked = 0;
        foreach (var job in VerdictTable.Rows.Select(r => r.Job).Distinct(StringComparer.Ordinal))
        {
            var record = JobLines.Record(job, ("plate.jpg", "plate"), ("label.jpg", "label"));
            AssertMarked(record);
            marked += record.Findings.Count(f => f.IsDanger);
        }

        // The tables hold at least a gas, an over-pressured section, a full cylinder, a charge and steps that endanger people.
        Assert.True(marked >= 5, $"{marked}");
    }

    [Fact]
    public void No_text_of_the_program_but_one_message_holds_the_word()
    {
        var root = Path.Combine(Repository.Root, "src");
        var written = Directory.EnumerateFiles(root, "*.*", SearchOption.AllDirectories)
            .Where(f => f.EndsWith(".cs", StringComparison.Ordinal) || f.EndsWith(".ftl", StringComparison.Ordinal) || f.EndsWith(".yaml", StringComparison.Ordinal))
            .Where(f => !Path.GetRelativePath(root, f).Split(Path.DirectorySeparatorChar).Any(part => part is "obj" or "bin"))
            .SelectMany(f => File.ReadLines(f).Where(line => line.Contains(Word, StringComparison.Ordinal)).Select(line => $"{Path.GetFileName(f)}: {line.Trim()}"))
            .ToList();
        Assert.Equal("common.ftl: danger = DANGER: { $sentences }", Assert.Single(written, w => !w.Contains("///", StringComparison.Ordinal)));
    }

    /// <summary>Holds a record to the rule.</summary>
    internal static void AssertMarked(CommissioningRecord record)
    {
        foreach (var finding in record.Findings)
        {
            Assert.Equal(finding.IsDanger, finding.Statement.StartsWith($"{Word}: ", StringComparison.Ordinal));
            Assert.Equal(finding.IsDanger ? 1 : 0, Texts(finding).Sum(t => Occurrences(t)));
            if (finding.IsDanger)
                Assert.Equal(Verdict.Fail, finding.Verdict);
        }

        if (record.Findings.Any(f => f.IsDanger))
            Assert.Equal(Outcome.NotAccepted, record.Outcome);
    }

    private static IEnumerable<string> Texts(Finding finding) =>
        new[] { finding.Statement, finding.Reason, finding.Reservation, finding.NextStep, finding.Title, finding.Subject }
            .Concat(finding.Limits.SelectMany(l => new[] { l.Text, l.Source }))
            .Concat(finding.Trace.SelectMany(s => new[] { s.Name, s.Formula, s.Substitution, s.Result, s.Source }))
            .OfType<string>();

    private static int Occurrences(string text) => text.Split(Word).Length - 1;
}
