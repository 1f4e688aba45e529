using System.Globalization;
using System.Xml.Linq;
using Commission.Documents.Archive;
using Commission.Documents.Html;
using Commission.Documents.Markup;
using Commission.Documents.Typesetting;
using Commission.Messages;
using Commission.Records;
using Commission.Records.Json;
using Commission.Source.Problems;
using PdfSharp.Pdf;

namespace Commission.Documents;

/// <summary>Turns a finished record into pages. Computes nothing: every number on a page is a member of the record.</summary>
public static class DocumentRenderer
{
    /// <summary>Renders the markup that both kinds of pages are made from.</summary>
    /// <param name="record">The sealed record.</param>
    /// <param name="templates">The templates.</param>
    /// <param name="problems">Receives faults of the templates, each with its line.</param>
    /// <returns>The checked markup; null when a template is at fault.</returns>
    public static XDocument? ToMarkup(CommissioningRecord record, TemplateSet templates, ProblemList problems)
    {
        ArgumentNullException.ThrowIfNull(record);
        ArgumentNullException.ThrowIfNull(templates);
        ArgumentNullException.ThrowIfNull(problems);
        return templates.Render(RecordJson.Write(record), problems) is { } xml
            ? MarkupReader.Read(xml, record.Figures.Select(figure => figure.Id).ToHashSet(StringComparer.Ordinal), problems)
            : null;
    }

    /// <summary>Sets the PDF.</summary>
    /// <param name="record">The sealed record.</param>
    /// <param name="templates">The templates.</param>
    /// <param name="attachments">Files to carry inside: the job file, its logs, the record as JSON.</param>
    /// <param name="problems">Receives faults of the templates, each with its line.</param>
    /// <returns>The document; null when a template is at fault.</returns>
    public static RenderedDocument? ToPdf(CommissioningRecord record, TemplateSet templates, IReadOnlyList<Attachment> attachments, ProblemList problems)
    {
        // Neither needs the other: the figures are drawn while the template is rendered.
        var figures = FigureShelf.Begin(record);
        return ToMarkup(record, templates, problems) is { } markup ? ToPdf(record, markup, figures, attachments) : null;
    }

    /// <summary>Sets the PDF from markup that was already rendered.</summary>
    /// <param name="record">The sealed record the markup was rendered from.</param>
    /// <param name="markup">What <see cref="ToMarkup"/> gave.</param>
    /// <param name="attachments">Files to carry inside.</param>
    /// <returns>The document; the same record, markup and attachments give the same bytes.</returns>
    public static RenderedDocument ToPdf(CommissioningRecord record, XDocument markup, IReadOnlyList<Attachment> attachments)
    {
        ArgumentNullException.ThrowIfNull(record);
        ArgumentNullException.ThrowIfNull(markup);
        return ToPdf(record, markup, FigureShelf.Begin(record), attachments);
    }

    /// <summary>Writes the web page.</summary>
    /// <param name="record">The sealed record.</param>
    /// <param name="templates">The templates.</param>
    /// <param name="problems">Receives faults of the templates, each with its line.</param>
    /// <returns>One self-contained page; null when a template is at fault.</returns>
    public static string? ToHtml(CommissioningRecord record, TemplateSet templates, ProblemList problems) =>
        ToMarkup(record, templates, problems) is { } markup ? HtmlPage.Write(markup, record) : null;

    private static RenderedDocument ToPdf(CommissioningRecord record, XDocument markup, FigureShelf figures, IReadOnlyList<Attachment> attachments)
    {
        ArgumentNullException.ThrowIfNull(attachments);
        using var document = new PdfDocument();

        // The archive pass compresses: PDFsharp's own streams end without the checksum that strict readers expect.
        document.Options.NoCompression = true;
        document.Options.CompressContentStreams = false;
        var format = PageFormat.Of(record.Paper);
        var pages = Typesetter.Set(document, markup, new FlowContext(figures, format.TextHeight), format, Furniture(record));
        using var saved = new MemoryStream();
        document.Save(saved, closeStream: false);
        return new RenderedDocument(PdfArchive.Write(saved.GetBuffer().AsSpan(0, (int)saved.Length), Facts(record, markup), attachments), pages);
    }

    private static PageFurniture Furniture(CommissioningRecord record) => new(
        record.Header.Id,
        "Commissioning record · " + record.Header.Site,
        record.Header.Date,
        record.Digest.Length < 12 ? record.Digest : record.Digest[..12],
        record.Program);

    private static DocumentFacts Facts(CommissioningRecord record, XDocument markup) => new(
        markup.Root!.Attribute("title")?.Value ?? record.Header.Id,
        $"{record.Header.Work}, {record.Header.Site}: {RecordWords.Text(RecordWords.Of(record.Outcome), Language.English)}",
        "",
        markup.Root!.Attribute("lang")?.Value ?? "en",
        record.Program,
        DateTimeOffset.TryParse(record.AsOf, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var moment) ? moment : DateTimeOffset.UnixEpoch,
        record.Digest);
}
