using System.Text;
using Commission.Records;
using Commission.Records.Json;
using Commission.Records.Series;
using UglyToad.PdfPig;
using Xunit;

namespace Commission.Acceptance.Tests;

/// <summary>What the record of an example is on paper: few pages, the answer on the first, and nothing that the crew wrote left out.</summary>
public sealed class PagesOfExamplesTests
{
    private static readonly Dictionary<string, (CommissioningRecord Record, IReadOnlyList<string> Pages)> Rendered = new(StringComparer.Ordinal);

    public static TheoryData<string> Examples() => new(Repository.Examples);

    // The budgets of the project's own: a certificate of one page, the proof in few more.
    [Theory]
    [InlineData("first-split", 5)]
    [InlineData("tarn-lane", 7)]
    [InlineData("multi-split-by-weight", 7)]
    [InlineData("winter-start", 7)]
    [InlineData("cold-room", 8)]
    [InlineData("leak-repair", 8)]
    [InlineData("compressor-replacement", 10)]
    [InlineData("steady-rise", 5)]
    [InlineData("wet-system", 5)]
    [InlineData("wrong-curve", 5)]
    [InlineData("dry-heat-orifice", 5)]
    [InlineData("incomplete", 3)]
    public void A_record_keeps_its_budget_of_pages(string example, int most) => Assert.InRange(Of(example).Pages.Count, 2, most);

    [Theory]
    [MemberData(nameof(Examples))]
    public void Page_one_answers_and_is_one_page(string example)
    {
        var (record, pages) = Of(example);
        var first = pages[0];
        Assert.Contains(Plain(record.Certificate.Sentence), first, StringComparison.Ordinal);
        Assert.All(record.Certificate.Rows, row => Assert.Contains(Plain(row.Label), first, StringComparison.Ordinal));
        Assert.All(record.Certificate.Rows, row => Assert.Contains(Plain(row.Measured), first, StringComparison.Ordinal));
        Assert.All(record.Certificate.Failed.Take(3), failed => Assert.Contains(Plain(failed.Title), first, StringComparison.Ordinal));
        Assert.All(record.Certificate.Figures, id => Assert.Contains(Plain(record.Figures.Single(f => f.Id == id).Title), first, StringComparison.Ordinal));
        Assert.All(record.Certificate.Units.Take(2), unit => Assert.Contains(Plain(unit.Value.Split(' ')[^1]), first, StringComparison.Ordinal));
        Assert.All(new[] { "technician", "witness", "owner", "inspector" }, role => Assert.Contains(role, first, StringComparison.Ordinal));
        Assert.All(pages.Skip(1), page => Assert.DoesNotContain(Plain(record.Certificate.Sentence), page, StringComparison.Ordinal));
        Assert.Contains($"page1of{pages.Count}", first, StringComparison.Ordinal);
    }

    // Where the proof stands and how it is decided is the last thing of page 1 that may go.
    [Theory]
    [MemberData(nameof(Examples))]
    public void Page_one_tells_where_the_proof_stands_and_how_it_is_decided(string example)
    {
        var first = Of(example).Pages[0];
        Assert.Contains(Plain("Decision rule:"), first, StringComparison.Ordinal);
        Assert.Contains(Plain("cautions"), first, StringComparison.Ordinal);
    }

    // A caption tells what is drawn: a shade where a limit is, U where its bars leave their marks.
    [Theory]
    [MemberData(nameof(Examples))]
    public void A_caption_promises_nothing_that_is_not_drawn(string example)
    {
        var (record, _) = Of(example);
        foreach (var figure in record.Figures)
        {
            if (figure.Plot == "charge-time")
            {
                Assert.Equal(figure.Curves.Any(curve => curve.Role == CurveRole.Limit), figure.Caption.Contains("shaded", StringComparison.Ordinal));
                Assert.All(new[] { "superheat", "subcooling" }, name => Assert.Equal(figure.Curves.Any(curve => curve.Label == name), figure.Title.Contains(name, StringComparison.OrdinalIgnoreCase)));
            }

            if (figure is { Plot: "pressure-enthalpy", Y: { Min: { } low, Max: { } high } })
                Assert.Equal(SpreadBars.AreSeen(figure.Curves.Single(curve => curve.Role == CurveRole.State), low, high, AxisScale.Log10), figure.Caption.Contains("Bars are U", StringComparison.Ordinal));
        }
    }

    // The diagnosis stands in words above the list: the sentence takes what has a number.
    [Fact]
    public void The_diagnosis_comes_last_of_what_failed_in_the_start_up()
    {
        var (record, _) = Of("wrong-curve");
        var failed = record.Certificate.Failed;
        Assert.NotNull(record.Findings[failed[0].Finding - 1].Measured);
        Assert.Equal((Diagnosis.Check, "as told above"), (record.Findings[failed[^1].Finding - 1].Check, failed[^1].Measured));
        Assert.Contains($"{failed[0].Measured}, limit {failed[0].Limit}", record.Certificate.Sentence, StringComparison.Ordinal);
    }

    // What an outside reader found false on page 1 of these records.
    [Theory]
    [InlineData("cold-room", "Superheat, subcooling", "evaporator superheat", "pass")]
    [InlineData("wrong-curve", "Charge", "0.400 ± 0.012 kg added", "not judged")]
    [InlineData("leak-repair", "Charge", "3.240 ± 0.019 kg weighed in", "pass")]
    [InlineData("air-to-water", "Safety", "", "not shown")]
    [InlineData("steady-rise", "Airflow, split", "", "not shown")]
    [InlineData("incomplete", "Superheat, subcooling", "Subcooling 10.2", "not evaluated")]
    public void A_row_of_page_one_tells_what_the_pages_behind_tell(string example, string label, string measured, string word)
    {
        var row = Of(example).Record.Certificate.Rows.Single(r => r.Label == label);
        Assert.Equal(word, row.Word);
        Assert.StartsWith(measured, row.Measured, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void What_is_only_usual_stands_beside_no_ceiling() =>
        Assert.Equal("usual: at least 550.0 psig; at least 60 min", Of("steady-rise").Record.Certificate.Rows[0].Limit);

    // What is said to be worth a look stands on the page that page 1 names.
    [Fact]
    public void What_is_worth_a_look_is_on_the_page_that_is_named()
    {
        var (record, pages) = Of("copied-readings");
        var step = record.FirstStep!;
        var page = Enumerable.Range(1, pages.Count - 1).Single(i => pages[i].Contains(Plain(record.Findings[step.Finding!.Value - 1].Statement), StringComparison.Ordinal)) + 1;
        Assert.Contains(Plain($"{step.Text} (page {page})"), pages[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_says_page_one_on_page_one() => Assert.All(Repository.Examples, example => Assert.DoesNotMatch("notshown1[A-Z]", Of(example).Pages[0]));

    // What is named on page 1 as not shown is what stands below as missing, one for one.
    [Fact]
    public void The_count_of_what_is_not_shown_is_that_of_what_is_missing()
    {
        foreach (var (record, _) in Repository.Examples.Select(Of).Where(r => r.Record.Outcome == Outcome.Incomplete))
        {
            var names = record.Missing.SelectMany(m => m.Names).ToList();
            Assert.All(names.Take(3), name => Assert.Contains(Plain(name), Plain(record.Certificate.Sentence), StringComparison.OrdinalIgnoreCase));
            if (names.Count > 3)
                Assert.Contains($"and {names.Count - 3} more", record.Certificate.Sentence, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void The_owner_reads_first_that_the_work_is_not_accepted() =>
        Assert.StartsWith("The work is not accepted yet", Of("wet-system").Record.Certificate.Owner[0], StringComparison.Ordinal);

    // Nobody writes in vain: each value of the job file stands on a page, or its number under the unit of its column.
    [Theory]
    [MemberData(nameof(Examples))]
    public void Everything_that_is_written_is_printed(string example)
    {
        var (record, pages) = Of(example);
        var text = string.Concat(pages);
        var lost = record.Job.SelectMany(node => Leaves(node, node.Key)).Where(leaf => !IsPrinted(leaf, text)).Select(leaf => $"{leaf.Path}: {leaf.Text}").ToList();
        Assert.True(lost.Count == 0, $"{lost.Count} of {example}:\n{string.Join('\n', lost)}");
    }

    // Versions, units of display and names of limit packs say nothing of the system; the packs stand with the sources of their limits.
    private static bool IsPrinted((string Path, string Text) leaf, string text)
    {
        if (leaf.Path is "commission" || leaf.Path.StartsWith("units", StringComparison.Ordinal) || leaf.Path.StartsWith("limits.packs", StringComparison.Ordinal) || leaf.Path.EndsWith(".reads", StringComparison.Ordinal) || leaf.Path.Contains(".reads.", StringComparison.Ordinal))
            return true;
        return text.Contains(Plain(leaf.Text), StringComparison.OrdinalIgnoreCase) || (leaf.Text.Split(' ')[0] is [var digit, ..] number && (char.IsAsciiDigit(digit) || digit is '-' or '\u2212') && text.Contains(Plain(number), StringComparison.Ordinal));
    }

    private static IEnumerable<(string Path, string Text)> Leaves(InputNode node, string path) =>
        node.Text is { Length: > 0 } text ? [(path, text)] : node.Children.SelectMany(child => Leaves(child, $"{path}.{child.Key}"));

    private static (CommissioningRecord Record, IReadOnlyList<string> Pages) Of(string example)
    {
        lock (Rendered)
        {
            if (Rendered.TryGetValue(example, out var known))
                return known;
            using var folder = new TemporaryFolder();
            CommandRun.Of("render", Repository.PathTo("examples", example, "job.yaml"), "--out", folder.Path, "--format", "pdf,json");
            var record = RecordJson.Read(File.ReadAllBytes(Assert.Single(Directory.GetFiles(folder.Path, "*.json"))));
            using var document = PdfDocument.Open(Assert.Single(Directory.GetFiles(folder.Path, "*.pdf")));
            return Rendered[example] = (record, [.. document.GetPages().Select(page => Plain(string.Concat(page.Letters.Select(letter => letter.Value))))]);
        }
    }

    // Lines break anywhere, and a minus is set as one: blanks and hyphens say nothing here.
    private static string Plain(string text)
    {
        var plain = new StringBuilder(text.Length);
        foreach (var c in text)
        {
            if (!char.IsWhiteSpace(c) && c is not ('-' or '\u2212' or '\u00AD'))
                plain.Append(c);
        }

        return plain.ToString();
    }
}
