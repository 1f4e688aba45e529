using Commission.Documents.Markup;
using Commission.Documents.Templates;
using Commission.Records.Json;
using Commission.Records.Tests.Samples;
using Commission.Source;
using Xunit;

namespace Commission.Documents.Tests.Templates;

public sealed class TemplateSetTests
{
    [Fact]
    public void Texts_are_escaped()
    {
        var (markup, problems) = Render("<body><p>{{ header.site }}</p></body>");
        Assert.Empty(problems);
        Assert.Contains("<p>Test flats, unit 14 &amp; stairs &lt;north&gt;</p>", markup, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_element_carries_its_template_line()
    {
        var (markup, _) = Render("<body>\n{% if findings.size > 2 %}<p>\n<strong>{{ outcome }}</strong></p>{% endif %}\n{% include 'parts/x' %}</body>", ("parts/x.liquid", "\n\n<hr/>"));
        Assert.Equal("<?at record.liquid:1?><body>\n<?at record.liquid:2?><p>\n<?at record.liquid:3?><strong>accepted with conditions</strong></p>\n\n\n<?at parts/x.liquid:3?><hr/></body>", markup);
    }

    [Theory]
    [InlineData("<body>\n<p>{{ header.idd }}</p></body>", "record.liquid:2: The record has no member \"idd\" here. Did you mean \"id\"? There are date, groups, id, issued, issuer, notes, revision, site, system, work.")]
    [InlineData("<body>\n<p>{{ hedder.id }}</p></body>", "record.liquid:2: The template cannot be carried out: *hedder*")]
    [InlineData("<body>\n<p>{{ outcome | upcasse }}</p></body>", "record.liquid:2: *upcasse*")]
    [InlineData("<body>\n\n{% for f in findings %}<p/></body>", "record.liquid:*: The template is not good Liquid: *")]
    [InlineData("<body>\n<p/>{% include 'parts/none' %}</body>", "record.liquid:2: There is no template \"parts/none\"*")]
    [InlineData("<body>\n<p/>{% include 'parts/bad' %}</body>", "record.liquid:2: The template is not good Liquid: *")]
    public void A_fault_of_a_template_is_said_with_its_line(string template, string expected)
    {
        var (markup, problems) = Render(template, ("parts/bad.liquid", "{% if %}"));
        Assert.Null(markup);
        var said = Assert.Single(problems);
        var at = 0;
        foreach (var part in expected.Split('*'))
        {
            at = said.IndexOf(part, at, StringComparison.Ordinal);
            Assert.True(at >= 0, $"\"{part}\" is not in: {said}");
            at += part.Length;
        }
    }

    [Fact]
    public void A_member_without_a_value_is_no_fault()
    {
        var (markup, problems) = Render("<body>{% for f in findings %}{% if f.measured %}<p>{{ f.measured.text }}</p>{% endif %}{% endfor %}</body>");
        Assert.Empty(problems);
        Assert.Contains("12.9 ± 1.5 °F", markup, StringComparison.Ordinal);
    }

    [Fact]
    public void Control_characters_of_a_record_do_not_break_the_markup()
    {
        var record = SampleRecord.Bare with { Program = "a\u001b\ud83d b\ufffe" };
        var problems = new ProblemList();
        var markup = TemplateSet.With(new Dictionary<string, string>(StringComparer.Ordinal) { [TemplateSet.Main] = "<body><p>{{ program }}</p></body>" })
            .Render(Replaced(record), problems);
        Assert.NotNull(MarkupReader.Read(markup!, static _ => false, static _ => false, problems));
    }

    private static byte[] Replaced(Records.CommissioningRecord record) => RecordJson.Write(record);

    private static (string? Markup, List<string> Problems) Render(string main, params (string Name, string Text)[] parts)
    {
        var files = new Dictionary<string, string>(StringComparer.Ordinal) { [TemplateSet.Main] = main };
        foreach (var (name, text) in parts)
            files[name] = text;
        var problems = new ProblemList();
        var markup = TemplateSet.With(files).Render(RecordJson.Write(SampleRecord.Full), problems);
        return (markup, [.. problems.Sorted().Select(problem => problem.ToString())]);
    }
}
