using System.Collections.Frozen;
using System.Xml.Linq;
using Commission.Documents.Markup;
using Commission.Documents.Typesetting;
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
            ? MarkupReader.Read(xml, record.Figures.Select(figure => figure.Id).ToFrozenSet(StringComparer.Ordinal), problems)
            : null;
    }

    internal static byte[] Raw(CommissioningRecord record, XDocument markup)
    {
        using var document = new PdfDocument();
        document.Options.NoCompression = true;
        var furniture = new PageFurniture(record.Header.Id, "Commissioning record · " + record.Header.Site, record.Header.Date, record.Digest.Length < 12 ? record.Digest : record.Digest[..12], record.Program);
        var format = PageFormat.Of(record.Paper);
        Typesetter.Set(document, markup, new FlowContext(record.Figures.ToFrozenDictionary(figure => figure.Id, StringComparer.Ordinal), format.TextHeight), format, furniture);
        using var buffer = new MemoryStream();
        document.Save(buffer, closeStream: false);
        return buffer.ToArray();
    }
}
