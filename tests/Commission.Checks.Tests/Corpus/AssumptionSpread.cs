using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.Recording;
using Commission.Checks.Tests.Limits;
using Commission.Measurement.Decisions;
using Commission.Messages;
using Commission.Records;
using Commission.Source;
using Xunit;

namespace Commission.Checks.Tests.Corpus;

/// <summary>
/// Figures that stand behind many budgets and have no source: each is made half and half as large again, and every job of the corpus is judged anew. What
/// does not move a verdict needs no better figure; what does is named.
/// </summary>
public sealed partial class AssumptionSpread(ITestOutputHelper output)
{
    private static readonly double[] Factors = [0.5, 1.5];

    /// <summary>The table that <c>tests/run-long assumptions</c> commits.</summary>
    [Fact(Explicit = true)]
    public void Table()
    {
        var pack = Repository.Read("src", "Commission.Checks", "Limits", "Packs", "common-practice.yaml");
        var before = CorpusJob.All.ToDictionary(j => j.Name, j => Judge(j, LimitLibrary.Embedded), StringComparer.Ordinal);
        var text = new StringBuilder("| figure | stands at | times | verdicts that move | outcomes that move |\n|---|---|---|---|---|\n");
        foreach (var (id, figure) in Unsourced(pack))
        {
            foreach (var factor in Factors)
            {
                var library = LimitLibrary.Embedded.InPlace(SourceText.Decode("common-practice.yaml", Encoding.UTF8.GetBytes(Scaled(pack, id, factor)), new ProblemList())!);
                var moved = new Dictionary<string, int>(StringComparer.Ordinal);
                var outcomes = new List<string>();
                foreach (var job in CorpusJob.All)
                {
                    var (was, now) = (before[job.Name], Judge(job, library));
                    foreach (var (key, verdict) in now.Verdicts)
                    {
                        if (was.Verdicts.TryGetValue(key, out var old) && old != verdict)
                            moved[$"{key.Check}: {Word(old)} → {Word(verdict)}"] = moved.GetValueOrDefault($"{key.Check}: {Word(old)} → {Word(verdict)}") + 1;
                    }

                    if (was.Outcome != now.Outcome)
                        outcomes.Add($"{job.Name}: {RecordWords.Text(RecordWords.Of(was.Outcome), Language.English)} → {RecordWords.Text(RecordWords.Of(now.Outcome), Language.English)}");
                }

                var verdicts = moved.Count == 0 ? "none" : string.Join("; ", moved.OrderByDescending(m => m.Value).ThenBy(m => m.Key, StringComparer.Ordinal).Select(m => m.Value == 1 ? m.Key : $"{m.Key} ({m.Value})"));
                text.Append(CultureInfo.InvariantCulture, $"| {id} | {figure} | {factor:0.0} | {verdicts} | {(outcomes.Count == 0 ? "none" : string.Join("; ", outcomes))} |\n");
            }
        }

        output.WriteLine(text.ToString());
        if (Environment.GetEnvironmentVariable("COMMISSION_TABLE") is { Length: > 0 } path)
            File.WriteAllText(path, text.ToString());
    }

    // A figure twice as large is found: a pack in place of the one of its name is used.
    [Fact]
    public void A_pack_may_stand_in_for_the_one_of_its_name()
    {
        var pack = Repository.Read("src", "Commission.Checks", "Limits", "Packs", "common-practice.yaml");
        var library = LimitLibrary.Embedded.InPlace(SourceText.Decode("common-practice.yaml", Encoding.UTF8.GetBytes(Scaled(pack, "assumption.ice-bath", 2)), new ProblemList())!);
        var job = JobText.Read(JobLines.Of(""));
        Assert.Equal(0.05, new CheckContext(job, new CheckSettings(job.Identity.Date.Value)).Assume(LimitIds.AssumptionIceBath), 1e-12);
        Assert.Equal(0.10, new CheckContext(job, new CheckSettings(job.Identity.Date.Value) { Library = library }).Assume(LimitIds.AssumptionIceBath), 1e-12);
        Assert.Contains(Unsourced(pack), f => f.Id == "assumption.ice-bath");
        Assert.DoesNotContain(Unsourced(pack), f => f.Id == "assumption.airflow.blower-heat");
    }

    private static IEnumerable<(string Id, string Figure)> Unsourced(string pack) => Entry().Matches(pack)
        .Where(m => SourceOf(m.Groups["id"].Value) is var source && (source.Contains("default of this program", StringComparison.Ordinal) || source.Contains("common practice, no source", StringComparison.Ordinal)))
        .Select(m => (m.Groups["id"].Value, Figures().Match(m.Groups["body"].Value).Groups["line"].Value.Trim()));

    private static string SourceOf(string id) => LimitLibrary.Embedded.Find(LimitPack.CommonPractice)!.Limits[id][0].SourceText(LimitWords.In);

    // Every number of the entry's figures, its companions too.
    private static string Scaled(string pack, string id, double factor) => Entry().Replace(pack, m => m.Groups["id"].Value != id ? m.Value : Figures().Replace(
        m.Value, f => Number().Replace(f.Value, n => (factor * double.Parse(n.Value, CultureInfo.InvariantCulture)).ToString("0.######", CultureInfo.InvariantCulture))));

    private static (Outcome Outcome, Dictionary<(string Check, string Subject, int Nth), Verdict> Verdicts) Judge(CorpusJob job, LimitLibrary library)
    {
        var read = JobText.Read(job.In("us"), job.Files);
        var record = RecordBuilder.Build(read, new CheckSettings(read.Identity.Date.Value) { Library = library }, new RecordInputs("Commission", "2026-01-01", [], []));
        return (record.Outcome, record.Findings.GroupBy(f => (f.Check, Subject: f.Subject ?? "")).SelectMany(g => g.Select((f, i) => ((g.Key.Check, g.Key.Subject, i), f.Verdict))).ToDictionary(v => v.Item1, v => v.Verdict));
    }

    private static string Word(Verdict verdict) => RecordWords.Text(RecordWords.Of(verdict), Language.English);

    [GeneratedRegex(@"^  (?<id>assumption\.[a-z.\-]+):\n(?<body>(?:    .*\n)+)", RegexOptions.Multiline, 10_000)]
    private static partial Regex Entry();

    [GeneratedRegex(@"^    (?:target|with):(?<line>.*)$", RegexOptions.Multiline, 10_000)]
    private static partial Regex Figures();

    [GeneratedRegex(@"(?<![\w.])\d+(?:\.\d+)?", RegexOptions.None, 10_000)]
    private static partial Regex Number();
}
