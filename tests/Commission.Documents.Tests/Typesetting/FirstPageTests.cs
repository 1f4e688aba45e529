using System.Globalization;
using Commission.Records;
using Commission.Records.Tests.Samples;
using Xunit;

namespace Commission.Documents.Tests.Typesetting;

/// <summary>The first page is one page, whatever it has to say: figures grow smaller, then what may go goes, and what stands for it comes.</summary>
public sealed class FirstPageTests
{
    private const string Rest = "<section id=\"rest\" instead=\"1\"><h2>Behind</h2></section><section id=\"last\"><h2>Last</h2></section>";

    private static string Page(int lines) =>
        $"<section class=\"one-page\"><h1>First</h1>{string.Concat(Enumerable.Range(1, lines).Select(i => $"<p>line {i.ToString(CultureInfo.InvariantCulture)}</p>"))}<figure data-plot=\"hold\" height=\"200\" give=\"2\"/><p give=\"1\">may go</p><p give=\"1\">and this</p><p give=\"1\">and that</p><p give=\"1\">and more</p><p instead=\"1\">came, page <pageref href=\"#rest\"/>, last <pageref href=\"#last\"/></p></section>";

    [Theory]
    [InlineData(5, true, true)]
    [InlineData(39, false, true)]
    [InlineData(46, false, false)]
    public void What_has_no_room_is_given_up_in_order(int lines, bool keepsText, bool keepsFigure)
    {
        var document = SamplePdf.RenderTemplate(Page(lines) + Rest);
        using var pdf = SamplePdf.Open(document);
        Assert.Equal(2, document.Pages);
        var first = SamplePdf.Text(pdf.GetPage(1));
        Assert.Equal(keepsText, first.Contains("may go", StringComparison.Ordinal));
        Assert.Equal(!keepsText, first.Contains("came, page 2, last 2", StringComparison.Ordinal));
        Assert.Equal(keepsFigure, first.Contains("Isolated hold", StringComparison.Ordinal) || first.Contains(SampleRecord.Full.Figures.Single(f => f.Id == "hold").Title, StringComparison.Ordinal));
        Assert.Equal(!keepsText, SamplePdf.Text(pdf.GetPage(2)).Contains("Behind", StringComparison.Ordinal));
    }

    // Nothing to give and too much to say: it runs over, and the pages behind it are numbered all the same.
    [Fact]
    public void What_fits_on_no_page_runs_over_and_covers_nothing()
    {
        var document = SamplePdf.RenderTemplate($"<section class=\"one-page\">{string.Concat(Enumerable.Repeat("<p>line</p>", 80))}<p>see <pageref href=\"#last\"/></p></section><section id=\"last\"><h2>Last</h2></section>");
        using var pdf = SamplePdf.Open(document);
        Assert.Equal(3, document.Pages);
        Assert.Contains("see 3", SamplePdf.Text(pdf.GetPage(2)), StringComparison.Ordinal);
        Assert.Contains("Last", SamplePdf.Text(pdf.GetPage(3)), StringComparison.Ordinal);
    }

    // Twelve indoor units, fifteen failures, texts two fifths longer.
    [Theory]
    [InlineData("letter")]
    [InlineData("a4")]
    public void Fifteen_failures_and_twelve_units_in_long_words_are_one_page(string paper)
    {
        static string Longer(string text) => text + string.Concat(text.Take(text.Length * 2 / 5));
        var of = SampleRecord.Full.Certificate;
        var numbers = SampleRecord.Full.Findings.Where(f => f.Phase is not ("evidence" or "instruments") && f.Verdict is not (Measurement.Decisions.Verdict.Information or Measurement.Decisions.Verdict.NotEvaluated)).Select(f => f.Number).ToList();
        var record = SampleRecord.Full with
        {
            Paper = paper,
            Outcome = Outcome.NotAccepted,
            FirstStep = new PunchItem(Longer(string.Concat(Enumerable.Repeat("Shut the rig off from the circuit and watch hoses and gauge alone: what rises there is no fault of the circuit. ", 8)))),
            Missing = [.. Enumerable.Range(1, 9).Select(i => new MissingPart([$"m{i.ToString(CultureInfo.InvariantCulture)}"], Longer("Charge by weight or by readings: nothing is written and the readings are too early."), Longer("Charge by weight or by readings: nothing is written and the readings are too early.")))],
            Certificate = of with
            {
                Sentence = Longer("Not accepted: Vacuum hold (1141 ± 26 micron, limit at most 1000 micron after 10 min) failed, and 14 more checks."),
                Rows = [.. Enumerable.Range(0, 9).Select(i => of.Rows[0] with { Label = Longer("Vacuum at isolation"), Measured = Longer("287 ± 33 micron, held 65 min"), Limit = Longer("at most 500 micron; at least 60 min"), Finding = numbers[i] })],
                Failed = [.. Enumerable.Range(0, 15).Select(i => new FailedCheck(Longer("Voltage unbalance between the phases"), "3.1 ± 0.2 %", Longer("at most 2 %"), numbers[i]))],
                Units = [.. Enumerable.Range(1, 13).Select(i => new LabelValue(Longer("Indoor unit"), Longer($"Test IC-36 serial {i.ToString(CultureInfo.InvariantCulture)}")))],
            },
        };
        var document = SamplePdf.Render(record);
        using var pdf = SamplePdf.Open(document);
        var first = SamplePdf.Text(pdf.GetPage(1));
        Assert.Contains("I received this record.", first, StringComparison.Ordinal);
        Assert.Contains("And 12 more", first, StringComparison.Ordinal);
        Assert.DoesNotContain("I received this record.", SamplePdf.Text(pdf.GetPage(2)), StringComparison.Ordinal);
        Assert.Empty(Overlaps.In(pdf.GetPage(1)));
        Margins.Check(pdf.GetPage(1));
    }
}
