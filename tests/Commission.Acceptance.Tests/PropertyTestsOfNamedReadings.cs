using System.Collections.Immutable;
using System.Globalization;
using Commission.Checks.Kernel;
using Commission.Checks.Recording;
using Commission.Records.Findings;
using Xunit;

namespace Commission.Acceptance.Tests;

/// <summary>
/// A finding names every reading it rests on: changing any other number of the job file leaves it as it was, in every word and every
/// digit. All checks, all examples; the numbers are changed in the text of the job file, by one part in a hundred.
/// </summary>
public sealed class PropertyTestsOfNamedReadings
{
    // Numbers near one another in the file belong together, so one way of grouping keeps neighbours together and the other apart.
    private const int GroupSize = 10;

    public static TheoryData<string> Examples => ExamplesLibrary.Names;

    [Theory]
    [MemberData(nameof(Examples))]
    public void A_number_that_a_finding_does_not_name_does_not_change_it(string example)
    {
        var text = ExamplesLibrary.Text(example);
        var numbers = PropertyTestsNumbers.Of(ExamplesLibrary.Read(example).Input!, text);
        var before = ExamplesLibrary.Keyed(ExamplesLibrary.Findings(example)).ToList();
        var (pairs, groups, refused) = (0, 0, 0);
        var faults = new SortedSet<string>(StringComparer.Ordinal);
        foreach (var group in Groups(numbers))
        {
            groups++;
            if ((Changed(example, text, group, 0.01) ?? Changed(example, text, group, -0.01)) is not { } after)
            {
                refused++;
                continue;
            }

            foreach (var (key, finding) in before)
            {
                if (CheckCatalogue.Find(finding.Check) is IReviewCheck || group.Any(n => n.IsNamedBy(finding)))
                    continue;
                pairs += group.Length;
                if (!after.TryGetValue(key, out var changed))
                    faults.Add(Line($"{key} is gone after a change of {string.Join(", ", group.Select(n => n.Path))}"));
                else if (Difference(finding, changed) is { } difference)
                    faults.Add(Line($"{key}: {difference}, after a change of {string.Join(", ", group.Select(n => n.Path))}"));
            }
        }

        TestContext.Current.TestOutputHelper?.WriteLine(Line($"{example}: {numbers.Length} numbers, {before.Count} findings, {pairs} pairs held apart, {refused} of {groups} changed files refused"));
        Assert.True(refused * 4 <= groups, Line($"{example}: {refused} of {groups} changed files were refused by the reader, so too little was tried."));
        Assert.True(faults.Count == 0, $"{example}:\n{string.Join('\n', faults)}");
    }

    private static IEnumerable<PropertyTestsNumber[]> Groups(ImmutableArray<PropertyTestsNumber> numbers)
    {
        foreach (var neighbours in numbers.Chunk(GroupSize))
            yield return neighbours;
        var strides = (numbers.Length + GroupSize - 1) / GroupSize;
        for (var first = 0; first < strides; first++)
            yield return [.. numbers.Where((_, i) => i % strides == first)];
    }

    // Null when the reader refuses the changed job: it then says why, and no record comes of it.
    private static Dictionary<string, Finding>? Changed(string example, string text, PropertyTestsNumber[] group, double by)
    {
        var reading = ExamplesLibrary.Read(example, PropertyTestsNumbers.Change(text, group, by));
        return reading.Job is null ? null : ExamplesLibrary.Keyed(RecordBuilder.Evaluate(ExamplesLibrary.Context(reading))).ToDictionary(f => f.Key, f => f.Finding, StringComparer.Ordinal);
    }

    private static string? Difference(Finding a, Finding b)
    {
        (string What, string A, string B)[] parts =
        [
            ("verdict", a.Verdict.ToString(), b.Verdict.ToString()),
            ("statement", a.Statement, b.Statement),
            ("reason", a.Reason ?? "", b.Reason ?? ""),
            ("reservation", a.Reservation ?? "", b.Reservation ?? ""),
            ("next step", a.NextStep ?? "", b.NextStep ?? ""),
            ("number", a.Measured?.ToString() ?? "", b.Measured?.ToString() ?? ""),
            ("limits", string.Join("; ", a.Limits), string.Join("; ", b.Limits)),
            ("steps", Steps(a), Steps(b)),
            ("budget", string.Join("; ", a.Budget), string.Join("; ", b.Budget)),
            ("readings", string.Join("; ", a.Readings.Select(r => $"{r.Name} {r.Text} {r.Instrument}")), string.Join("; ", b.Readings.Select(r => $"{r.Name} {r.Text} {r.Instrument}"))),
        ];
        return parts.Where(p => p.A != p.B).Select(p => $"{p.What} was \"{Cut(p.A, p.B)}\" and is \"{Cut(p.B, p.A)}\"").FirstOrDefault();
    }

    // Where a step was printed before is the record's matter, and moves when another finding comes or goes.
    private static string Steps(Finding finding) => string.Join("; ", finding.Trace.Select(t => t with { ShownIn = null }));

    // From where the two differ, and not too much of it.
    private static string Cut(string text, string other)
    {
        var same = text.Zip(other).TakeWhile(c => c.First == c.Second).Count();
        var from = Math.Max(0, same - 30);
        return text[from..Math.Min(text.Length, same + 50)];
    }

    private static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
