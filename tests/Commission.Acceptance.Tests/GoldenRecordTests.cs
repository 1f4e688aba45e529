using System.Globalization;
using System.Text;
using System.Text.Json;
using Commission.Checks.Kernel;
using Commission.Checks.Recording;
using Commission.Records;
using Commission.Records.Json;
using Commission.Source;
using Xunit;

namespace Commission.Acceptance.Tests;

/// <summary>
/// The record of the long example as it was last looked at: every value, verdict and text. Numbers may differ by one part in 10⁹, which is
/// what processors differ by; words may not. After a change that is meant, run with COMMISSION_GOLDEN=write and read the difference.
/// </summary>
public sealed class GoldenRecordTests
{
    private static readonly JsonSerializerOptions Readable = new() { Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private const double Relative = 1e-9;
    private const string Program = "commission 0.0.0 (golden)";
    private static readonly string Stored = Repository.PathTo("tests", "Commission.Acceptance.Tests", "Data", "tarn-lane.record.json");

    [Fact]
    public void The_long_example_gives_the_record_it_gave()
    {
        var record = JobEvaluation.Evaluate(ExamplesLibrary.Read("tarn-lane"), new RecordChoices(), Program, new ProblemList())!;

        // The digest covers the last bits; inputs and the job as read have their own hashes and trees; of a figure its words and ranges are
        // enough; the budgets are what Monte Carlo confirms.
        using var fresh = JsonDocument.Parse(RecordJson.Write(record with
        {
            Digest = "",
            Inputs = [],
            Job = [],
            Figures = [.. record.Figures.Select(f => f with { Curves = [] })],
            Findings = [.. record.Findings.Select(f => f with { Budget = [] })],
        }));
        if (Environment.GetEnvironmentVariable("COMMISSION_GOLDEN") == "write")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(Stored)!);
            File.WriteAllText(Stored, Lines(fresh.RootElement));
        }

        using var stored = JsonDocument.Parse(File.ReadAllBytes(Stored));
        var differences = new List<string>();
        Compare("", stored.RootElement, fresh.RootElement, differences);
        Assert.True(differences.Count == 0, $"{differences.Count} differences; after a change that is meant, run with COMMISSION_GOLDEN=write.\n{string.Join('\n', differences.Take(20))}");
    }

    // One line for each item, so that a difference in version control shows what changed and nothing else.
    private static string Lines(JsonElement record)
    {
        var text = new StringBuilder("{\n");
        foreach (var (part, i) in record.EnumerateObject().Select((p, i) => (p, i)))
        {
            text.Append(i == 0 ? "" : ",\n").Append(CultureInfo.InvariantCulture, $"\"{part.Name}\": ");
            if (part.Value.ValueKind == JsonValueKind.Array)
                text.Append("[\n").AppendJoin(",\n", part.Value.EnumerateArray().Select(Compact)).Append("\n]");
            else
                text.Append(Compact(part.Value));
        }

        return text.Append("\n}\n").ToString();
    }

    private static string Compact(JsonElement element) => JsonSerializer.Serialize(element, Readable);

    private static void Compare(string path, JsonElement stored, JsonElement fresh, List<string> differences)
    {
        if (stored.ValueKind != fresh.ValueKind)
        {
            differences.Add($"{path}: was {Short(stored)}, is {Short(fresh)}");
            return;
        }

        switch (stored.ValueKind)
        {
            case JsonValueKind.Object:
                var names = stored.EnumerateObject().Select(p => p.Name).Union(fresh.EnumerateObject().Select(p => p.Name), StringComparer.Ordinal);
                foreach (var name in names)
                {
                    var was = stored.TryGetProperty(name, out var a);
                    var isNow = fresh.TryGetProperty(name, out var b);
                    if (was && isNow)
                        Compare($"{path}/{name}", a, b, differences);
                    else
                        differences.Add($"{path}/{name}: {(was ? "is gone" : "is new")}");
                }

                break;
            case JsonValueKind.Array:
                if (stored.GetArrayLength() != fresh.GetArrayLength())
                    differences.Add(string.Create(CultureInfo.InvariantCulture, $"{path}: {stored.GetArrayLength()} items before, {fresh.GetArrayLength()} now"));
                foreach (var (a, b, i) in stored.EnumerateArray().Zip(fresh.EnumerateArray()).Select((pair, i) => (pair.First, pair.Second, i)))
                    Compare(string.Create(CultureInfo.InvariantCulture, $"{path}/{i}"), a, b, differences);
                break;
            case JsonValueKind.Number:
                var (x, y) = (stored.GetDouble(), fresh.GetDouble());
                if (Math.Abs(x - y) > Relative * Math.Max(Math.Abs(x), Math.Abs(y)))
                    differences.Add(string.Create(CultureInfo.InvariantCulture, $"{path}: was {x:R}, is {y:R}"));
                break;
            case JsonValueKind.String when stored.GetString() != fresh.GetString():
                differences.Add($"{path}: was {Short(stored)}, is {Short(fresh)}");
                break;
        }
    }

    private static string Short(JsonElement element)
    {
        var text = element.GetRawText();
        return text.Length <= 160 ? text : text[..160] + "…";
    }
}
