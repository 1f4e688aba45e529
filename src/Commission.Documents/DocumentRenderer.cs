using System.Globalization;
using System.Xml.Linq;
using Commission.Documents.Archive;
using Commission.Documents.Html;
using Commission.Documents.Markup;
using Commission.Documents.Media;
using Commission.Documents.Templates;
using Commission.Documents.Typesetting;
using Commission.Messages;
using Commission.Records;
using Commission.Source;
using PdfSharp.Pdf;

namespace Commission.Documents;

/// <summary>A finished PDF, in memory.</summary>
/// <param name="Bytes">The file.</param>
/// <param name="Pages">How many pages it has.</param>
public sealed record RenderedDocument(byte[] Bytes, int Pages);

/// <summary>
/// Turns a finished record into pages. Computes nothing: every number on a page is a member of the record. Starts no thread; markup and
/// figures need nothing of each other, nor do the two kinds of pages, so whoever calls may do them at the same time.
/// </summary>
public static class DocumentRenderer
{
    /// <summary>Renders the markup that both kinds of pages are made from.</summary>
    /// <param name="json">The sealed record as UTF-8 JSON: what templates see.</param>
    /// <param name="media">The figures and photos of the same record.</param>
    /// <param name="templates">The templates.</param>
    /// <param name="problems">Receives faults of the templates, each with its line.</param>
    /// <returns>The checked markup; null when a template is at fault.</returns>
    public static XDocument? ToMarkup(ReadOnlyMemory<byte> json, PageMedia media, TemplateSet templates, ProblemList problems)
    {
        ArgumentNullException.ThrowIfNull(media);
        ArgumentNullException.ThrowIfNull(templates);
        ArgumentNullException.ThrowIfNull(problems);
        return templates.Render(json, problems) is { } xml ? MarkupReader.Read(xml, media.Figures.Has, media.Photos.Knows, problems) : null;
    }

    /// <summary>Sets the PDF.</summary>
    /// <param name="record">The sealed record the markup was rendered from.</param>
    /// <param name="markup">What <see cref="ToMarkup"/> gave.</param>
    /// <param name="media">The figures and photos of the record.</param>
    /// <param name="attachments">Files to carry inside: the job file, its logs, the record as JSON.</param>
    /// <param name="isAnnexFull">Whether the way to every number is printed, too: sections of class <c>annex</c>.</param>
    /// <returns>The document; the same record, markup and attachments give the same bytes.</returns>
    public static RenderedDocument ToPdf(CommissioningRecord record, XDocument markup, PageMedia media, IReadOnlyList<Attachment> attachments, bool isAnnexFull = false)
    {
        ArgumentNullException.ThrowIfNull(record);
        ArgumentNullException.ThrowIfNull(markup);
        ArgumentNullException.ThrowIfNull(media);
        ArgumentNullException.ThrowIfNull(attachments);
        using var document = PdfArchive.Begin();
        markup = MarkupEdition.Paper(markup, isAnnexFull);
        var format = PageFormat.Of(record.Paper);
        var pages = Typesetter.Set(document, markup, new FlowContext(media, format.TextHeight), format, Furniture(record));
        return new RenderedDocument(PdfArchive.Finish(document, Facts(record, markup), attachments), pages);
    }

    /// <summary>Writes the web page.</summary>
    /// <param name="record">The sealed record the markup was rendered from.</param>
    /// <param name="markup">What <see cref="ToMarkup"/> gave.</param>
    /// <param name="media">The figures and photos of the record.</param>
    /// <returns>One self-contained page.</returns>
    public static string ToHtml(CommissioningRecord record, XDocument markup, PageMedia media)
    {
        ArgumentNullException.ThrowIfNull(record);
        ArgumentNullException.ThrowIfNull(markup);
        ArgumentNullException.ThrowIfNull(media);
        return HtmlPage.Write(MarkupEdition.Screen(markup), record, media);
    }

    private static PageFurniture Furniture(CommissioningRecord record)
    {
        var header = record.Header;
        return new PageFurniture(
            string.Join(" · ", new[] { header.Id, header.Revision is { } revision ? Say(PagesMessages.RevisionShort(revision.Number)) : "", header.Issued }.Where(part => part.Length > 0)),
            Say(PagesMessages.RecordHead(new(header.Site))),
            header.Date,
            PageWords.Seal(record),
            (page, pages) => Say(PagesMessages.PageOf(page, pages)));

        string Say(Message message) => PageWords.Text(message, record.Language);
    }

    private static DocumentFacts Facts(CommissioningRecord record, XDocument markup) => new(
        markup.Root!.Attribute("title")?.Value ?? record.Header.Id,
        record.Header.Issuer.Name,
        PageWords.Text(PagesMessages.Subject(new(record.Header.Work), new(record.Header.Site), RecordWords.Of(record.Outcome)), record.Language),
        markup.Root!.Attribute("lang")?.Value ?? "en",
        record.Program,
        DateTimeOffset.TryParse(record.AsOf, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var moment) ? moment : DateTimeOffset.UnixEpoch,
        record.Digest);
}
