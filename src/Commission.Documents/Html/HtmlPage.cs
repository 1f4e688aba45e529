using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Xml.Linq;
using Commission.Documents.Media;
using Commission.Documents.Templates;
using Commission.Messages;
using Commission.Records;

namespace Commission.Documents.Html;

/// <summary>
/// Makes one self-contained web page of the markup that the PDF is set from too: styles, script and figures are inside, nothing is
/// fetched. Everything can be read without the script; it adds values at the pointer, folding of all traces at once, and copying.
/// </summary>
internal static class HtmlPage
{
    private static readonly Lazy<string> Style = new(() => Resource("Html/page.css") + Resource("Html/figures.css"));
    private static readonly Lazy<string> Script = new(() => Resource("Html/page.js"));

    /// <summary>Writes the page.</summary>
    /// <param name="markup">The markup, checked by the reader of markup.</param>
    /// <param name="record">The record that the markup was made from; it gives the foot of the page.</param>
    /// <param name="media">Its figures and photos.</param>
    /// <returns>The page, with line feeds; the same markup and record give the same text.</returns>
    public static string Write(XDocument markup, CommissioningRecord record, PageMedia media)
    {
        var root = markup.Root!;
        var contents = HtmlContents.Of(root);
        var body = new HtmlBody(media, contents, record.Language);
        var main = body.Write(root);
        var title = root.Attribute("title")?.Value ?? Say(PagesMessages.RecordTitle(new(record.Header.Id)));

        var page = new HtmlText(main.Length + 32_000);
        page.Raw("<!DOCTYPE html>\n<html lang=\"").Attribute(root.Attribute("lang")?.Value ?? "en").Raw("\">\n<head>\n<meta charset=\"utf-8\">\n")
            .Raw("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n")
            .Raw("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; img-src data:; style-src 'unsafe-inline'; script-src 'sha256-").Raw(ScriptHash()).Raw("'\">\n")
            .Raw("<meta name=\"color-scheme\" content=\"light dark\">\n<meta name=\"generator\" content=\"").Attribute(record.Program).Raw("\">\n<title>")
            .Text(title).Raw("</title>\n<style>\n").Raw(Style.Value).Raw("@page{size:").Raw(string.Equals(record.Paper, "a4", StringComparison.Ordinal) ? "A4" : "letter").Raw("}\n</style>\n</head>\n<body>\n")
            .Raw("<a class=\"skip\" href=\"#record\">").Text(Say(PagesMessages.Skip)).Raw("</a>\n");
        contents.WriteNavigation(page, Say(PagesMessages.Contents));
        page.Raw("<main id=\"record\" tabindex=\"-1\">\n").Raw(main).Raw("</main>\n");
        WriteFoot(page, record);
        page.Raw("<script type=\"application/json\" id=\"words\">").Raw(Words(Say)).Raw("</script>\n");
        page.Raw("<script>").Raw(Script.Value).Raw("</script>\n</body>\n</html>\n");
        return page.ToString();

        string Say(Message message) => PageWords.Text(message, record.Language);
    }

    private static void WriteFoot(HtmlText page, CommissioningRecord record)
    {
        var parts = new[] { PageWords.Text(PagesMessages.FootJob(new(record.Header.Id)), record.Language), PageWords.Seal(record), PageWords.Text(PagesMessages.FootAsOf(new(record.AsOf)), record.Language) };
        page.Raw("<footer><p>").Text(string.Join(" · ", parts)).Raw("</p></footer>\n");
    }

    // What the script says, by the names it has there; the encoder leaves no sign that could end the element.
    private static string Words(Func<Message, string> say)
    {
        var words = new (string Name, Message Text)[]
        {
            ("read", PagesMessages.ReadFigure),
            ("idle", PagesMessages.ReadIdle),
            ("point", PagesMessages.ReadPoint),
            ("unfold", PagesMessages.UnfoldAll),
            ("fold", PagesMessages.FoldAll),
            ("copy", PagesMessages.Copy),
            ("copied", PagesMessages.Copied),
        };
        return $"{{{string.Join(',', words.Select(word => $"\"{word.Name}\":\"{JsonEncodedText.Encode(say(word.Text))}\""))}}}";
    }

    private static string ScriptHash() => Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(Script.Value)));

    // Line feeds whatever the checkout did: the bytes of a page must not depend on the machine that built the program.
    private static string Resource(string name)
    {
        using var stream = typeof(HtmlPage).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"{name} is not embedded in this build.");
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }
}
