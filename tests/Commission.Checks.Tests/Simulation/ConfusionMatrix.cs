using System.Globalization;
using System.Text;
using Commission.Checks.Inference;
using Commission.Checks.Kernel;
using Commission.Records;
using Xunit;

namespace Commission.Checks.Tests.Simulation;

/// <summary>
/// The diagnosis against circuits whose fault is known: drawn from an own model of the cycle, with drawn weather, severity and instrument errors.
/// "Right" is the true cause in front; "ranked" the true cause among the at most three named.
/// </summary>
public sealed class ConfusionMatrix(ITestOutputHelper output)
{
    private const int Seed = 20261130;

    [Fact]
    public void A_hundred_circuits_are_told_rightly()
    {
        var (rows, wronglyAdded) = Run(Seed, 100);
        Assert.InRange(rows.Count(IsRanked) / (double)rows.Count, 0.85, 1);
        Assert.InRange(wronglyAdded / (double)rows.Count, 0, 0.02);
    }

    /// <summary>The table that <c>tests/run-long diagnosis</c> commits.</summary>
    [Fact(Explicit = true)]
    public void Table()
    {
        var (rows, wronglyAdded) = Run(Seed, 600);
        var truths = rows.Select(r => r.Truth).Distinct().Order(StringComparer.Ordinal).ToArray();
        var told = rows.Select(r => r.First).Distinct().Order(StringComparer.Ordinal).ToArray();
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"{rows.Count} circuits, seed {Seed}. Right: {Share(rows.Count(r => r.First == r.Truth), rows.Count)}; right or among the at most three ranked: {Share(rows.Count(IsRanked), rows.Count)}; \"add refrigerant\" advised where the charge is not low: {Share(wronglyAdded, rows.Count)} ({wronglyAdded}).\n\n");
        text.Append(CultureInfo.InvariantCulture, $"| true cause | drawn | right | ranked | told first instead |\n|---|---|---|---|---|\n");
        foreach (var truth in truths)
        {
            var of = rows.Where(r => r.Truth == truth).ToArray();
            var instead = of.Where(r => r.First != truth).GroupBy(r => r.First).OrderByDescending(g => g.Count()).Select(g => $"{g.Key} {g.Count()}");
            text.Append(CultureInfo.InvariantCulture, $"| {truth} | {of.Length} | {Share(of.Count(r => r.First == truth), of.Length)} | {Share(of.Count(IsRanked), of.Length)} | {string.Join(", ", instead)} |\n");
        }

        output.WriteLine(text.ToString());
        output.WriteLine(string.Join(", ", told));
        foreach (var row in rows.Where(r => !IsRanked(r)).Take(60))
            output.WriteLine($"{row.Truth} -> {string.Join(", ", row.Ranked)}: {row.Description}: {row.Sentence}");
        if (Environment.GetEnvironmentVariable("COMMISSION_TABLE") is { Length: > 0 } path)
            File.WriteAllText(path, text.ToString());
    }

    private static (List<Told> Rows, int WronglyAdded) Run(int seed, int count)
    {
        var rows = new List<Told>(count);
        var wronglyAdded = 0;
        foreach (var job in FaultedJobs.Draw(seed, count))
        {
            var diagnosis = JobText.Context(job.Yaml).Get<CircuitDiagnosis>().Result;
            var ranked = diagnosis?.Ranked.Select(r => r.Cause).ToArray() ?? [];
            rows.Add(new Told(job.Truth, ranked, job.Description, diagnosis?.Sentence ?? ""));
            if (diagnosis?.Advice == "add" && job.Truth != "low charge")
                wronglyAdded++;
        }

        return (rows, wronglyAdded);
    }

    private static bool IsRanked(Told row) => row.Ranked.Contains(row.Truth, StringComparer.Ordinal);

    private static string Share(int part, int whole) => string.Create(CultureInfo.InvariantCulture, $"{100.0 * part / Math.Max(whole, 1):0.0} %");

    private sealed record Told(string Truth, string[] Ranked, string Description, string Sentence)
    {
        public string First => Ranked.Length == 0 ? "none" : Ranked[0];
    }
}
