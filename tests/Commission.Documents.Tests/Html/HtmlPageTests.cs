using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Commission.Documents.Html;
using Commission.Documents.Markup;
using Commission.Documents.Media;
using Commission.Documents.Pictures;
using Commission.Documents.Plots;
using Commission.Documents.Tests.Plots;
using Commission.Records;
using Commission.Source;
using Xunit;

namespace Commission.Documents.Tests.Html;

/// <summary>The page that the markup becomes.</summary>
public partial class HtmlPageTests
{
    private static readonly CommissioningRecord Record = new()
    {
        Header = new JobHeader { Id = "TEST-7", Work = "new installation", Date = "2026-06-18", Site = "Test site <north> & stairs" },
        Outcome = Outcome.Accepted,
        Figures = [FigureSamples.PullDown(), FigureSamples.Hold()],
        Program = "Commission 0.0.0-test",
        AsOf = "2026-06-18T12:00:00Z",
        Digest = new string('a', 64),
    };

    [Fact]
    public void Text_of_people_is_escaped_everywhere()
    {
        var page = Page("<body title=\"A &amp; B\"><h1>Unit &lt;14&gt; &amp; stairs</h1><p>&lt;script&gt;alert(1)&lt;/script&gt;</p><aside class=\"note\">x &lt; y</aside></body>");
        Assert.Contains("<title>A &amp; B</title>", page, StringComparison.Ordinal);
        Assert.Contains("<h1>Unit &lt;14&gt; &amp; stairs</h1>", page, StringComparison.Ordinal);
        Assert.DoesNotContain("<script>alert", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_is_fetched_from_anywhere()
    {
        var page = Page(Everything);
        Assert.DoesNotMatch(FetchPattern(), page);
        Assert.Contains("default-src 'none'", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Identifiers_are_unique_and_links_lead_somewhere()
    {
        var page = Page(Everything);
        var ids = IdPattern().Matches(page).Select(match => match.Groups["it"].Value).ToArray();
        Assert.Equal(ids.Length, ids.Distinct(StringComparer.Ordinal).Count());
        foreach (Match link in LinkPattern().Matches(page))
            Assert.Contains(link.Groups["it"].Value, ids);
        foreach (Match clip in ClipPattern().Matches(page))
            Assert.Contains(clip.Groups["it"].Value, ids);
    }

    [Fact]
    public void Every_figure_is_there_for_wide_and_narrow_screens_with_its_words()
    {
        var page = Page("<body><h1>x</h1><figure data-plot=\"hold\"/><figure data-plot=\"pull-down\"><figcaption>An <em>own</em> caption</figcaption></figure></body>");
        Assert.Equal(4, Count(page, "<svg role=\"img\""));
        Assert.Equal(2, Count(page, "class=\"plot wide\""));
        Assert.Equal(2, Count(page, "class=\"plot narrow\""));
        Assert.Equal(4, Count(page, "aria-label=\"An invented figure.\""));
        Assert.Contains("<figcaption>An <em>own</em> caption</figcaption>", page, StringComparison.Ordinal);
        Assert.Contains("<strong>hold.</strong> An invented figure.", page, StringComparison.Ordinal);
    }

    [Fact]
    public void A_part_that_folds_on_a_telephone_is_open_where_no_script_runs()
    {
        var page = Page("<body><h1>x</h1><section id=\"air\" class=\"fold\"><h2>Air</h2><p>dry</p></section><section class=\"fold\"><p>no heading</p></section></body>");
        Assert.Contains("<section id=\"air\" class=\"fold\"><details class=\"fold\" open><summary><h2>Air</h2></summary><p>dry</p></details></section>", page, StringComparison.Ordinal);
        Assert.Contains("<section class=\"fold\"><p>no heading</p></section>", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Values_at_the_pointer_are_json_that_cannot_end_its_element()
    {
        var curve = FigureSamples.HoldTwoReadings();
        var nasty = curve with { Id = "nasty", Curves = [curve.Curves[0] with { Label = "a </script> \"b\" \\ c" }] };
        var record = Record with { Figures = [nasty] };
        var page = HtmlPage.Write(Markup("<body><h1>x</h1><figure data-plot=\"nasty\"/></body>", record), record, new PageMedia(new FigureShelf(record), PhotoShelf.Empty));
        Assert.Equal(4, Count(page, "</script>")); // two drawings, the words of the script, the script
        var json = JsonPattern().Match(page).Groups["it"].Value;
        using var parsed = System.Text.Json.JsonDocument.Parse(json);
        Assert.Equal("a </script> \"b\" \\ c: 410 micron (390 micron to 430 micron) at 0.0 min", parsed.RootElement[0][2].GetString());
    }

    [Fact]
    public void Every_colour_of_the_figures_has_a_rule_in_the_style_sheet()
    {
        var page = Page("<body><h1>x</h1></body>");
        foreach (var colour in Palette.All)
        {
            Assert.Contains(string.Create(CultureInfo.InvariantCulture, $".plot [fill=\"{colour.Hex}\"]"), page, StringComparison.Ordinal);
            Assert.Contains(string.Create(CultureInfo.InvariantCulture, $".plot [stroke=\"{colour.Hex}\"]"), page, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_verdict_has_its_sign_before_its_word()
    {
        var page = Page("<body><h1>x</h1><table><thead><tr><th>A</th><th>Verdict</th></tr></thead><tbody><tr><th>a</th><td class=\"verdict fail\">fail</td></tr></tbody></table><p>so <span class=\"verdict pass\">pass</span></p></body>");
        Assert.Contains("<span class=\"mark\" aria-hidden=\"true\">✗</span> fail</td>", page, StringComparison.Ordinal);
        Assert.Contains("<span class=\"verdict pass\"><span class=\"mark\" aria-hidden=\"true\">✓</span> pass</span>", page, StringComparison.Ordinal);
    }

    [Fact]
    public void A_table_with_named_rows_restacks_and_keeps_its_roles()
    {
        var page = Page("<body><h1>x</h1><table><thead><tr><th>Check</th><th class=\"decimal\">Measured</th></tr></thead><tbody><tr><th>a</th><td class=\"decimal\">9.5</td></tr></tbody></table></body>");
        Assert.Contains("<table class=\"stack\" role=\"table\">", page, StringComparison.Ordinal);
        Assert.Contains("<th scope=\"col\" role=\"columnheader\">Check</th>", page, StringComparison.Ordinal);
        Assert.Contains("<th scope=\"row\" role=\"rowheader\">a</th>", page, StringComparison.Ordinal);
        Assert.Contains("<td class=\"decimal\" role=\"cell\" data-label=\"Measured\">9.5</td>", page, StringComparison.Ordinal);
        Assert.DoesNotContain("class=\"scroll\"", page, StringComparison.Ordinal);
    }

    [Fact]
    public void A_table_of_readings_scrolls_in_a_frame_that_the_keyboard_reaches()
    {
        var page = Page("<body><h1>x</h1><table><caption>Readings</caption><thead><tr><th>Time</th></tr></thead><tbody><tr><td>11:05</td></tr></tbody></table></body>");
        Assert.Contains("<div class=\"scroll\" role=\"group\" tabindex=\"0\" aria-label=\"Table: Readings\"><table><caption>Readings</caption>", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Numbers_of_a_decimal_column_stand_on_their_point()
    {
        var page = Page("<body><h1>x</h1><table><thead><tr><th>A</th><th class=\"decimal\">B</th></tr></thead><tbody>"
            + "<tr><th>a</th><td class=\"decimal\">1,250.5 micron</td></tr><tr><th>b</th><td class=\"decimal\">9.5 ± 0.2</td></tr><tr><th>c</th><td class=\"decimal\">none</td></tr></tbody></table></body>");
        // Three figure spaces and one punctuation space make up for "1,25".
        Assert.Contains("data-label=\"B\"><span class=\"pad\" aria-hidden=\"true\">\u2007\u2007\u2007\u2008</span>9.5 ± 0.2</td>", page, StringComparison.Ordinal);
        Assert.Contains("data-label=\"B\">1,250.5 micron</td>", page, StringComparison.Ordinal);
        Assert.Contains("data-label=\"B\">none</td>", page, StringComparison.Ordinal);
    }

    [Fact]
    public void An_empty_head_cell_is_no_head()
    {
        var page = Page("<body><h1>x</h1><table><thead><tr><th></th><th>B</th></tr></thead><tbody><tr><th>a</th><td>b</td></tr></tbody></table></body>");
        Assert.Contains("<thead role=\"rowgroup\"><tr role=\"row\"><td role=\"cell\"></td>", page, StringComparison.Ordinal);
    }

    [Fact]
    public void A_trace_folds_and_a_link_leads_inside_it()
    {
        var page = Page("<body><h1>x</h1><section class=\"trace\" id=\"trace-1\"><h3>1 Superheat</h3><p>how</p></section><section class=\"trace\" id=\"trace-2\"><p>short</p></section></body>");
        Assert.Contains("<details class=\"trace\"><summary><h2 class=\"as-h3\">1 Superheat</h2></summary><div class=\"told\" id=\"trace-1\"><p>how</p></div></details>", page, StringComparison.Ordinal);
        Assert.Contains("<section id=\"trace-2\" class=\"trace\"><p>short</p></section>", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Headings_nest_without_a_gap_and_keep_their_look()
    {
        var page = Page("<body><h1>A</h1><h3>B</h3><h3>C</h3><h2>D</h2><h3 class=\"own\">E</h3></body>");
        Assert.Contains("<h1>A</h1><h2 class=\"as-h3\">B</h2><h2 class=\"as-h3\">C</h2><h2 id=\"part-1\">D</h2><h3 class=\"own\">E</h3>", page, StringComparison.Ordinal);
    }

    [Fact]
    public void The_list_of_contents_names_sections_without_their_quiet_remarks()
    {
        var page = Page("<body><h1>x</h1><section id=\"air\"><h2>6 Air <span class=\"quiet\">nothing was written</span></h2></section><h2>Loose &amp; alone</h2><h2 id=\"own\">Own</h2></body>");
        Assert.Contains("<li><a href=\"#air\">6 Air</a></li>\n<li><a href=\"#part-1\">Loose &amp; alone</a></li>\n<li><a href=\"#own\">Own</a></li>", page, StringComparison.Ordinal);
        Assert.Contains("<h2 id=\"part-1\">Loose &amp; alone</h2>", page, StringComparison.Ordinal);
    }

    [Fact]
    public void A_code_for_scanners_is_dark_on_white_with_its_quiet_zone()
    {
        var page = Page("<body><h1>x</h1><qr data=\"TEST-7|accepted\" alt=\"QR code\" width=\"88\"/></body>");
        var code = CodePattern().Match(page);
        Assert.True(code.Success);
        // 15 bytes at level M fit version 2 (25 modules, ISO/IEC 18004 table 7: 26 bytes); version 1 holds 14. With 4 modules on each side: 33.
        Assert.Equal("33", code.Groups["size"].Value);
        Assert.StartsWith("M4 4h7v1h-7z", code.Groups["it"].Value, StringComparison.Ordinal); // the finder pattern's upper edge is seven modules
    }

    [Fact]
    public void The_foot_names_job_digest_program_and_moment()
        => Assert.Contains("<footer><p>Job TEST-7 · digest aaaaaaaaaaaa · Commission 0.0.0-test · as of 2026-06-18T12:00:00Z</p></footer>", Page(Everything), StringComparison.Ordinal);

    [Fact]
    public void The_same_record_gives_the_same_page_whatever_the_language_of_the_machine()
    {
        var first = Page(Everything);
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("de-DE");
            Assert.Equal(first, Page(Everything));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Line_ends_are_line_feeds() => Assert.DoesNotContain('\r', Page(Everything));

    private const string Everything = """
        <body lang="en" title="Record">
        <section id="top"><div class="columns"><div width="82%"><h1>Record</h1></div><div width="18%"><qr data="x" alt="code"/></div></div>
        <div class="outcome"><p class="lead">Outcome</p></div><aside class="caution"><p><strong>Pressure.</strong> Stand clear.</p></aside>
        <h2>One</h2><figure data-plot="hold"/><figure data-plot="hold"/><figure data-plot="pull-down"/></section>
        <section id="two"><h2>Two</h2><table class="facts"><caption>Facts</caption><tbody><tr><th>a</th><td>b</td></tr></tbody></table>
        <ul><li>one</li></ul><ol><li>two</li></ol><hr/><page-break/><p class="note">See <a href="#trace-1">1</a><br/><code>abc</code></p></section>
        <section class="trace" id="trace-1"><h3>1</h3><p><strong>5</strong></p></section>
        </body>
        """;

    private static string Page(string markup) => HtmlPage.Write(Markup(markup, Record), Record, new PageMedia(new FigureShelf(Record), PhotoShelf.Empty));

    private static XDocument Markup(string xml, CommissioningRecord record)
    {
        var problems = new ProblemList();
        var document = MarkupReader.Read(xml, record.Figures.Select(figure => figure.Id).Contains, static _ => false, problems);
        Assert.Empty(problems.Sorted());
        return MarkupEdition.Screen(document!);
    }

    private static int Count(string text, string part) => text.Split(part).Length - 1;

    [GeneratedRegex("""(src|href)="(?!#|data:)|url\((?!#clip)|@import|<link|fetch\(|XMLHttpRequest""", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex FetchPattern();

    [GeneratedRegex(""" id="(?<it>[^"]*)["]""", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex IdPattern();

    [GeneratedRegex("""href="#(?<it>[^"]*)["]""", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex LinkPattern();

    [GeneratedRegex("""url\(#(?<it>[^)]*)\)""", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex ClipPattern();

    [GeneratedRegex("""<script type="application/json">(?<it>.*?)</script>""", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex JsonPattern();

    [GeneratedRegex("""class="qr"[^>]*viewBox="0 0 (?<size>\d+) \d+"[^>]*><rect[^>]*fill="#fff"/><path fill="#000" d="(?<it>[^"]*)["]""", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex CodePattern();
}
