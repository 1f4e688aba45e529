using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Commission.Jobs;

namespace Commission.Acceptance.Tests;

/// <summary>Finds the numbers of a job file that can be changed a little, and changes them.</summary>
internal static partial class PropertyTestsNumbers
{
    // Words, names, counts and times: they are no measured numbers, or a small change of them is another kind of job.
    private static readonly HashSet<string> Left = new(StringComparer.Ordinal)
    {
        "commission", "id", "at", "date", "started", "compressor started", "last change", "crankcase heater on since", "calibrated", "interval", "detector checked", "next due", "by",
        "start-up date", "serial", "model", "wire", "RCD", "count", "stages", "traps", "riser traps", "elbows", "phases", "hoses", "defrosts per day", "file", "person certificate", "revision",
    };

    /// <summary>The numbers of a job, in the order of the file. Maker's limits are left out: a finding states the limit and its page.</summary>
    public static ImmutableArray<PropertyTestsNumber> Of(JobInput root, string text)
    {
        var lines = LineStarts(text);
        var found = ImmutableArray.CreateBuilder<PropertyTestsNumber>();
        Walk(root, "", null);
        return [.. found.OrderBy(n => n.Start)];

        void Walk(JobInput node, string path, string? instrument)
        {
            foreach (var (child, index) in node.Children.Select((c, i) => (c, i)))
            {
                var key = node.IsList ? (index + 1).ToString(CultureInfo.InvariantCulture) : child.Key;
                var here = path.Length == 0 ? key : $"{path}, {key}";
                if (here == "limits" || Left.Contains(key))
                    continue;
                if (child.Children.Length > 0)
                    Walk(child, here, path == "instruments" ? child.Children.FirstOrDefault(c => c.Key == "id")?.Text : instrument);
                else if (child.Text is not null && child.At.File == "job.yaml" && Digits(text, lines[child.At.Line - 1] + child.At.Column - 1) is var (start, length) && length > 0)
                    found.Add(new PropertyTestsNumber(here, child.At.Line, child.At.Column, start, length, Describes(here) ? instrument : null));
            }
        }
    }

    /// <summary>The text with some numbers changed by a share of them, every other one down.</summary>
    public static string Change(string text, IReadOnlyCollection<PropertyTestsNumber> numbers, double by)
    {
        var changed = new StringBuilder(text);
        foreach (var number in numbers.OrderByDescending(n => n.Start))
        {
            var digits = text.Substring(number.Start, number.Length);
            var value = digits.Contains('/', StringComparison.Ordinal)
                ? double.Parse(digits.Split('/')[0], CultureInfo.InvariantCulture) / double.Parse(digits.Split('/')[1], CultureInfo.InvariantCulture)
                : double.Parse(digits, CultureInfo.InvariantCulture);
            var decimals = digits.IndexOf('.', StringComparison.Ordinal) is >= 0 and var point ? digits.Length - point - 1 : 0;
            // The sign follows from the place, so that neighbours move apart and the same file always changes in the same way.
            var moved = value == 0 ? by : value * (1 + (number.Start % 2 == 0 ? by : -by));
            changed.Remove(number.Start, number.Length).Insert(number.Start, moved.ToString($"F{Math.Min(decimals + 3, 6)}", CultureInfo.InvariantCulture));
        }

        return changed.ToString();
    }

    // What describes an instrument goes with it; what it read at its checks is named reading by reading.
    private static bool Describes(string path) => path.StartsWith("instruments, ", StringComparison.Ordinal) && !path.Contains(", checks, ", StringComparison.Ordinal);

    private static (int Start, int Length) Digits(string text, int at)
    {
        var end = text.AsSpan(at).IndexOfAny(",}]\n");
        var match = Number().Match(text, at, end < 0 ? text.Length - at : end);
        return match.Success ? (match.Groups["number"].Index, match.Groups["number"].Length) : (0, 0);
    }

    private static List<int> LineStarts(string text)
    {
        var starts = new List<int> { 0 };
        for (var i = text.IndexOf('\n', StringComparison.Ordinal); i >= 0; i = text.IndexOf('\n', i + 1))
            starts.Add(i + 1);
        return starts;
    }

    // A number with or without a unit; of "6 lb 8 oz" the last part, of "300.0 psig +/- 0.6" the reading.
    [GeneratedRegex(@"\G(?:-?\d+ (?:lb|h|ft) )?(?<number>-?\d+(?:\.\d+)?(?:/\d+)?)(?![\d-])", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Number();
}
