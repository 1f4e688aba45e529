using System.Globalization;
using System.Text;
using Commission.Checks.Kernel;
using Commission.Checks.Recording;
using Commission.Checks.Tests.Recording;
using Commission.Measurement.Decisions;
using Commission.Messages;
using Commission.Records;
using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.Corpus;

/// <summary>Every job of the corpus ends as an expert would end it, in both systems of units.</summary>
public sealed class CorpusTests(ITestOutputHelper output)
{
    private static readonly string[] Systems = ["us", "si"];

    public static TheoryData<string, string> Jobs() => new(CorpusJob.All.SelectMany(j => Systems.Select(s => (j.Name, s))));

    [Theory]
    [MemberData(nameof(Jobs))]
    public void A_job_ends_as_an_expert_would_end_it(string name, string units)
    {
        var job = CorpusJob.All.Single(j => j.Name == name);
        var wrong = Faults(job, units).ToList();
        Assert.True(wrong.Count == 0, $"{job.Story}{Environment.NewLine}{string.Join(Environment.NewLine, wrong)}");
    }

    [Theory]
    [MemberData(nameof(Jobs))]
    public void A_danger_never_stands_in_an_accepted_record(string name, string units)
    {
        var job = CorpusJob.All.Single(j => j.Name == name);
        if (job.Outcomes.Contains(CorpusJob.Refused, StringComparer.Ordinal))
            return;
        var record = Evaluate(job, units);
        if (record.Findings.Any(f => f.IsDanger))
            Assert.Equal(Outcome.NotAccepted, record.Outcome);
    }

    [Fact]
    public void Every_job_names_a_source_and_only_marks_that_exist()
    {
        var marks = Enum.GetValues<Verdict>().Select(Word).Append("absent").ToHashSet(StringComparer.Ordinal);
        foreach (var job in CorpusJob.All)
        {
            Assert.False(string.IsNullOrWhiteSpace(job.Source), job.Name);
            Assert.All(job.Findings.Concat(job.Never).SelectMany(f => f.Value), mark => Assert.Contains(mark, marks));
            Assert.All(job.Findings.Concat(job.Never).Select(f => f.Key), id => Assert.True(CheckCatalogue.Find(id) is not null, $"{job.Name}: there is no check {id}"));
        }
    }

    /// <summary>The table that <c>tests/run-long corpus</c> commits.</summary>
    [Fact(Explicit = true)]
    public void Table()
    {
        var text = new StringBuilder("| job | expected | got | right |\n|---|---|---|---|\n");
        var right = 0;
        foreach (var job in CorpusJob.All)
        {
            var wrong = Systems.SelectMany(s => Faults(job, s)).Distinct().ToList();
            right += wrong.Count == 0 ? 1 : 0;
            var expected = string.Join(" or ", job.Outcomes) + (job.Diagnosis is { } kinds ? $"; {string.Join(", ", kinds)}" : "");
            text.Append(CultureInfo.InvariantCulture, $"| {job.Name} | {expected} | {GotOf(job)} | {(wrong.Count == 0 ? "yes" : string.Join("; ", wrong).Replace("|", "/", StringComparison.Ordinal))} |\n");
        }

        text.Append(CultureInfo.InvariantCulture, $"\n{right} of {CorpusJob.All.Count} jobs right, each in us and in si.\n");
        output.WriteLine(text.ToString());
        if (Environment.GetEnvironmentVariable("COMMISSION_TABLE") is { Length: > 0 } path)
            File.WriteAllText(path, text.ToString());
    }

    private static string GotOf(CorpusJob job)
    {
        try
        {
            return Got(Evaluate(job, Systems[0]));
        }
        catch (InvalidDataException)
        {
            return CorpusJob.Refused;
        }
    }

    private static IEnumerable<string> Faults(CorpusJob job, string units)
    {
        try
        {
            return [.. Faults(job, Evaluate(job, units))];
        }
        catch (InvalidDataException refused)
        {
            return job.Outcomes.Contains(CorpusJob.Refused, StringComparer.Ordinal) ? [] : [refused.Message.ReplaceLineEndings(" ")];
        }
    }

    private static CommissioningRecord Evaluate(CorpusJob job, string units)
    {
        var read = JobText.Read(job.In(units), job.Files);
        return RecordBuilder.Build(read, new CheckSettings(read.Identity.Date.Value), new RecordInputs("Commission", "2026-01-01", [], []));
    }

    private static IEnumerable<string> Faults(CorpusJob job, CommissioningRecord record)
    {
        var outcome = RecordWords.Text(RecordWords.Of(record.Outcome), Language.English);
        if (!job.Outcomes.Contains(outcome, StringComparer.Ordinal))
            yield return $"outcome {outcome}: {string.Join(" / ", record.Reasons)}";
        foreach (var part in record.Missing.Where(_ => job.Ordinary || job.Outcomes is ["accepted"]))
            yield return $"missing: {part.Sentence}";
        if (job.Ordinary)
        {
            foreach (var finding in record.Findings.Where(f => f.IsToLookAt || f.Verdict == Verdict.Conditional))
                yield return $"{finding.Check} is no plain job: {finding.Statement} {finding.Reservation}";
        }

        foreach (var (check, marks) in job.Findings)
        {
            var found = record.Findings.Where(f => f.Check == check).Select(f => Word(f.Verdict)).DefaultIfEmpty("absent").ToArray();
            if (!found.Any(f => marks.Contains(f, StringComparer.Ordinal)))
                yield return $"{check} {string.Join(", ", found)}, not {string.Join(" or ", marks)}: {Said(record, check)}";
        }

        foreach (var (check, marks) in job.Never)
        {
            // A check of several findings passes where none of them does worse: a time that was long enough is no pass of a system that still moves.
            var given = record.Findings.Where(f => f.Check == check).Select(f => f.Verdict).ToArray();
            var isWorse = given.Any(v => v is Verdict.Fail or Verdict.Conditional or Verdict.CannotDecide or Verdict.NotEvaluated);
            var counted = given.Where(v => !isWorse || v is not (Verdict.Pass or Verdict.PassWithinUncertainty)).Select(Word).DefaultIfEmpty("absent");
            var found = counted.Where(f => marks.Contains(f, StringComparer.Ordinal)).ToArray();
            if (found.Length > 0)
                yield return $"{check} must not be {found[0]}: {Said(record, check)}";
        }

        foreach (var check in job.ToLookAt.Where(check => !record.Findings.Any(f => f.Check == check && f.IsToLookAt)))
            yield return $"{check} is not shown as something to look at: {Said(record, check)}";
        foreach (var hint in record.Findings.Select(f => f.InFile).OfType<string>())
        {
            if (SchemaKeys.Unknown(hint) is { } way)
                yield return $"{hint} shows {way}, which no job file has";
        }

        if (job.Danger is { } danger && danger != record.Findings.Any(f => f.IsDanger))
            yield return danger ? "no danger is told" : $"false danger: {record.Findings.First(f => f.IsDanger).Statement}";
        foreach (var fault in DiagnosisFaults(job, record))
            yield return fault;
    }

    private static IEnumerable<string> DiagnosisFaults(CorpusJob job, CommissioningRecord record)
    {
        if (job.Diagnosis is not { } expected)
            yield break;
        var ranked = record.Diagnosis is { } diagnosis ? diagnosis.Ranked.Select(r => r.Cause).ToArray() : [];
        var first = ranked.Length == 0 ? "none" : ranked[0];
        if (first != expected[0] && !expected.Contains(first, StringComparer.Ordinal) && !job.Or.Contains(first, StringComparer.Ordinal))
            yield return $"diagnosis {string.Join(", ", ranked.DefaultIfEmpty("none"))}, not {string.Join(", ", expected)}: {record.Diagnosis?.Sentence}";
        else if (expected[0] != "none" && first != "none" && !ranked.Any(r => expected[0] == r || job.Or.Contains(r, StringComparer.Ordinal)))
            yield return $"{expected[0]} is not among {string.Join(", ", ranked)}";
        if (job.Not.Contains(first, StringComparer.Ordinal))
            yield return $"concluded {first}";
        if (record.Diagnosis is { } told && job.AdviceNot.Contains(told.Advice, StringComparer.Ordinal))
            yield return $"advises to {told.Advice}";
    }

    private static string Said(CommissioningRecord record, string check) =>
        string.Join(" / ", record.Findings.Where(f => f.Check == check).Select(f => f.Reason is { } reason ? $"{f.Statement} ({reason})" : f.Statement));

    private static string Got(CommissioningRecord record) =>
        RecordWords.Text(RecordWords.Of(record.Outcome), Language.English) + (record.Diagnosis is { } d ? $"; {string.Join(", ", d.Ranked.Select(r => r.Cause).DefaultIfEmpty("none"))}" : "");

    private static string Word(Verdict verdict) => RecordWords.Text(RecordWords.Of(verdict), Language.English);
}
