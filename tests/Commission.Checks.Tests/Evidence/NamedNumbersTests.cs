using System.Globalization;
using System.Text.RegularExpressions;
using Commission.Checks.Kernel;
using Commission.Checks.Recording;
using Commission.Checks.Tests.Limits;
using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.Evidence;

/// <summary>
/// The findings of safety, refrigerant, function and evidence name every number they rest on: moving the last digit of one that they do
/// not name leaves them as they were. Tried on the numbers of the example jobs.
/// </summary>
public sealed partial class NamedNumbersTests
{
    private static readonly string[] OwnPhases = [Phases.Safety, Phases.Refrigerant, Phases.Functional, Phases.Evidence];

    // A value behind a key: its number, wherever it stands; not a time, not a date, not a word with a digit in it.
    [GeneratedRegex(@"(?<=[a-z]: \[?)-?\d+(\.\d+)?(?= (psig|micron|Pa|F|°F|°C|K|lb|oz|kg|g/yr|ft|m|ft2|m2|bar\(g\)|inwc|A|V|h|min|%)\b|, |\}|\])", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Number();

    [GeneratedRegex(@"\n(?=[a-z])", RegexOptions.None, 10_000)]
    private static partial Regex EndOfPart();

    [Theory]
    [InlineData("tarn-lane")]
    [InlineData("cold-room")]
    [InlineData("leak-repair")]
    [InlineData("propane-monobloc")]
    [InlineData("multi-split-by-weight")]
    [InlineData("dry-heat-orifice")]
    public void Moving_a_number_a_finding_does_not_name_never_changes_it(string example)
    {
        var yaml = Repository.Read("examples", example, "job.yaml").ReplaceLineEndings("\n");
        var files = Directory.EnumerateFiles(Path.Combine(Repository.Root, "examples", example), "*", SearchOption.AllDirectories)
            .Where(f => !f.EndsWith("job.yaml", StringComparison.Ordinal))
            .Select(f => (Path.GetRelativePath(Path.Combine(Repository.Root, "examples", example), f).Replace('\\', '/'), File.ReadAllText(f)))
            .ToArray();
        var before = Own(yaml, files)!;
        var tried = 0;
        // An instrument's own figures stand behind its name, which the readings carry.
        var from = yaml.IndexOf("\ninstruments:", StringComparison.Ordinal);
        var to = from < 0 ? -1 : EndOfPart().Match(yaml, from + 1).Index;
        foreach (var number in Number().Matches(yaml).Where(n => n.Index < from || n.Index > to).Where((_, i) => i % 2 == 0))
        {
            var (line, column) = Place(yaml, number.Index);
            if (Own(string.Concat(yaml.AsSpan(0, number.Index), Moved(number.Value), yaml.AsSpan(number.Index + number.Length)), files) is not { } after)
                continue;
            tried++;
            foreach (var (key, finding) in before)
            {
                if (finding.Readings.Any(r => r.At.Line == line && r.At.Column == column))
                    continue;
                Assert.True(after.TryGetValue(key, out var same), $"{key} has gone with {number.Value} at {line}:{column}.");
                Assert.True(Told(finding) == Told(same!), $"{key} changed with {number.Value} at {line}:{column}:\n{Told(finding)}\n{Told(same!)}");
            }
        }

        Assert.True(tried > 8, tried.ToString(CultureInfo.InvariantCulture));
    }

    private static Dictionary<string, Finding>? Own(string yaml, (string, string)[] files)
    {
        try
        {
            var job = JobText.Read(yaml, files);
            var context = new CheckContext(job, new CheckSettings(job.Identity.Date.Value));
            return CheckCatalogue.All.Where(c => OwnPhases.Contains(c.Phase) && c is not IReviewCheck).SelectMany(c => c.Evaluate(context)).ToDictionary(f => $"{f.Check} [{f.Subject}]", StringComparer.Ordinal);
        }
        catch (InvalidDataException)
        {
            // The moved number is one the reader refuses.
            return null;
        }
    }

    private static string Told(Finding f) => string.Join(
        "\n",
        [f.Verdict.ToString(), f.Statement, f.Reason, f.Reservation, f.NextStep, f.Measured?.Text, .. f.Limits.Select(l => l.ToString()), .. f.Trace.Select(s => s.ToString()), .. f.Readings.Select(r => r.ToString())]);

    private static string Moved(string number) => string.Concat(number.AsSpan(0, number.Length - 1), ((number[^1] - '0' + 1) % 10).ToString(CultureInfo.InvariantCulture));

    private static (int Line, int Column) Place(string yaml, int index)
    {
        var lines = yaml[..index].Split('\n');
        return (lines.Length, lines[^1].Length + 1);
    }
}
