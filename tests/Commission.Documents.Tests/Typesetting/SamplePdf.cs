using Commission.Documents.Archive;
using Commission.Documents.Media;
using Commission.Documents.Plots;
using Commission.Documents.Templates;
using Commission.Records;
using Commission.Records.Json;
using Commission.Records.Tests.Samples;
using Commission.Source;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using Xunit;

namespace Commission.Documents.Tests.Typesetting;

/// <summary>Sets records for tests and reads the pages back.</summary>
internal static class SamplePdf
{
    private static readonly Lazy<RenderedDocument> Rendered = new(() => Render(SampleRecord.Full));

    /// <summary>The rich sample, set once.</summary>
    public static RenderedDocument Full => Rendered.Value;

    public static IReadOnlyList<Attachment> Attachments { get; } =
    [
        new("record.json", "application/json", AttachmentKind.Data, "The record for programs", RecordJson.Write(SampleRecord.Full)),
        new("job.yaml", "application/yaml", AttachmentKind.Source, "The job file, ± as written", "commission: 1\nunits: us\n"u8.ToArray()),
        new("logs/evacuation.csv", "text/csv", AttachmentKind.Source, "Vacuum log", new byte[] { 0, 1, 2, 255, (byte)'\n' }),
    ];

    public static RenderedDocument Render(CommissioningRecord record) => Render(record, TemplateSet.BuiltIn, Attachments);

    /// <summary>Sets a template of its own over the sample record.</summary>
    public static RenderedDocument RenderTemplate(string body, CommissioningRecord? record = null)
    {
        var templates = TemplateSet.With(new Dictionary<string, string>(StringComparer.Ordinal) { [TemplateSet.Main] = $"<body lang=\"en\" title=\"Test\">{body}</body>" });
        return Render(record ?? SampleRecord.Full, templates, []);
    }

    /// <summary>The sample record with the way to every number.</summary>
    public static RenderedDocument WithAnnex => field ??= Render(SampleRecord.Full, TemplateSet.BuiltIn, Attachments, isAnnexFull: true);

    private static RenderedDocument Render(CommissioningRecord record, TemplateSet templates, IReadOnlyList<Attachment> attachments, bool isAnnexFull = false)
    {
        var problems = new ProblemList();
        var media = new PageMedia(new FigureShelf(record), PhotoShelf.Empty);
        var markup = DocumentRenderer.ToMarkup(RecordJson.Write(record), media, templates, problems);
        Assert.Empty(problems.Sorted());
        return DocumentRenderer.ToPdf(record, markup!, media, attachments, isAnnexFull);
    }

    public static PdfDocument Open(RenderedDocument document) => PdfDocument.Open(document.Bytes);

    /// <summary>The text of a page line by line, without running head and foot.</summary>
    public static List<string> Lines(Page page)
    {
        var letters = page.Letters.Where(letter => letter.StartBaseLine.Y > 44 && letter.StartBaseLine.Y < page.Height - 44).ToList();
        return [.. letters
            .GroupBy(letter => Math.Round(letter.StartBaseLine.Y, 1))
            .OrderByDescending(line => line.Key)
            .Select(line => string.Concat(line.OrderBy(letter => letter.StartBaseLine.X).Select(letter => letter.Value)))];
    }

    /// <summary>All text of a page in the order in which it is drawn.</summary>
    public static string Text(Page page) => string.Concat(page.Letters.Select(letter => letter.Value));
}
