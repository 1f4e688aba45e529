using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Commission.Cli;
using Commission.Source;
using Commission.Source.Yaml;
using Xunit;

namespace Commission.Acceptance.Tests;

/// <summary>
/// Slips of the pen in every key that an example writes: the program answers each with a record or with a problem at its line, never with
/// a fault of its own, and prints no number that nobody can read.
/// </summary>
public sealed partial class SlipTests
{
    // One slip in so many is tried with every commit, all of them in the long run.
    private const int Thinning = 23;

    [Fact]
    public void No_slip_is_a_fault_of_the_program() => Assert.Empty(Faults(Slips().Where((_, i) => i % Thinning == 0)));

    /// <summary>Some minutes: <c>-explicit only</c> runs it.</summary>
    [Fact(Explicit = true)]
    public void No_slip_at_all_is_a_fault_of_the_program() => Assert.Empty(Faults(Slips()));

    private static List<string> Faults(IEnumerable<(string Example, string What, string Text)> slips)
    {
        var faults = new List<string>();
        var count = 0;
        string? copied = null;
        var folder = new TemporaryFolder();
        try
        {
            foreach (var (example, what, text) in slips)
            {
                count++;
                if (copied != example)
                {
                    folder.Dispose();
                    folder = new TemporaryFolder();
                    Copy(Repository.PathTo("examples", example), folder.Path);
                    copied = example;
                }

                var job = Path.Combine(folder.Path, "job.yaml");
                File.WriteAllText(job, text);
                using var output = new StringWriter(CultureInfo.InvariantCulture);
                using var error = new StringWriter(CultureInfo.InvariantCulture);
                var code = CommissionProgram.Run(["check", job], output, error);
                if (code == 3)
                    faults.Add($"{example}: {what}: {error}");
                else if (Unreadable().Match(output.ToString() + error) is { Success: true } odd)
                    faults.Add($"{example}: {what}: prints {odd.Value}");
            }
        }
        finally
        {
            folder.Dispose();
        }

        TestContext.Current.TestOutputHelper?.WriteLine($"{count} slips, {faults.Count} faults");
        Assert.True(count > 100, $"{count} slips");
        return faults;
    }

    // Every key path once, in the first example that writes it.
    private static IEnumerable<(string Example, string What, string Text)> Slips()
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var example in Repository.Examples)
        {
            var text = ExamplesLibrary.Text(example);
            var lines = text.Split('\n');
            var source = SourceText.Decode("job.yaml", Encoding.UTF8.GetBytes(text), new ProblemList())!;
            foreach (var (path, scalar) in Scalars("", YamlReader.Read(source, new ProblemList())!))
            {
                if (!seen.Add(path))
                    continue;
                foreach (var slip in SlipsOf(scalar.Text))
                {
                    var line = lines[scalar.Location.Line - 1];
                    var changed = (string[])lines.Clone();
                    changed[scalar.Location.Line - 1] = line[..(scalar.Location.Column - 1)] + slip + line[(scalar.Location.Column - 1 + scalar.Length)..];
                    yield return (example, $"{path}: {scalar.Text} → {slip}", string.Join('\n', changed));
                }
            }
        }
    }

    private static IEnumerable<string> SlipsOf(string written)
    {
        if (Quantity().Match(written) is { Success: true } match)
        {
            var (number, unit) = (match.Groups["number"].Value, match.Groups["unit"].Value);
            var odd = new[] { "-" + number, "0", "1e-300", "1e30", number + "e300", "1e12", "1e-12" };
            foreach (var slip in odd)
                yield return Quoted(slip + unit);
            yield return unit.Contains("kg", StringComparison.Ordinal) ? "3 °C" : "3 kg";
            yield return Quoted(number);
            yield return Quoted(string.Concat(number.Select(c => char.IsAsciiDigit(c) ? (char)(c - '0' + '٠') : c)) + unit);
        }
        else if (Clock().IsMatch(written))
        {
            foreach (var slip in new[] { "9999999999 min", "1e300 min", "0 min", "9999-12-31 23:59", "0001-01-01 00:00", "٠٩:٢٥", "25:00", "00:00" })
                yield return Quoted(slip);
        }
        else
        {
            yield return "-1";
            yield return "1e300";
            yield return Quoted("٤٤٠");
            yield return Quoted("0001-01-01");
            yield return Quoted("9999-12-31");
        }

        yield return "yes";
        yield return "[1, 2]";
    }

    private static IEnumerable<(string Path, SourceScalar Scalar)> Scalars(string path, SourceNode node) => node switch
    {
        SourceScalar scalar when scalar.Length > 0 && !scalar.IsEmpty => [(path, scalar)],
        SourceMapping mapping => mapping.Entries.SelectMany(e => Scalars($"{path}/{e.Key.Text}", e.Value)),
        SourceSequence sequence => sequence.Items.SelectMany(i => Scalars(path, i)),
        _ => [],
    };

    private static string Quoted(string text) => $"\"{text}\"";

    private static void Copy(string from, string to)
    {
        foreach (var file in Directory.GetFiles(from, "*", SearchOption.AllDirectories))
        {
            var target = Path.Combine(to, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(file, target, overwrite: true);
        }
    }

    [GeneratedRegex(@"^(?<number>[+-]?[0-9]+(?:\.[0-9]+)?)(?<unit>(?: ?[^0-9: -][^0-9]*)?)$", RegexOptions.None, 10_000)]
    private static partial Regex Quantity();

    [GeneratedRegex(@"^[0-9-]* ?[0-9]{1,2}:[0-9]{2}", RegexOptions.None, 10_000)]
    private static partial Regex Clock();

    [GeneratedRegex("Infinity|NaN|∞|[0-9]{25}", RegexOptions.None, 10_000)]
    private static partial Regex Unreadable();
}
