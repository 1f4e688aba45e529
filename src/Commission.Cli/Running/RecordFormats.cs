using System.Collections.Immutable;
using System.Text;
using System.Xml.Linq;
using Commission.Documents;
using Commission.Documents.Archive;
using Commission.Documents.Media;
using Commission.Documents.Templates;
using Commission.Jobs;
using Commission.Messages;
using Commission.Records.Integrity;
using Commission.Source;

namespace Commission.Cli.Running;

/// <summary>What the pages of a format are read on.</summary>
internal enum PageKind
{
    /// <summary>The format has no pages.</summary>
    None,

    /// <summary>Sheets of one size.</summary>
    Paper,

    /// <summary>Screens of any width: figures are drawn for a telephone, too.</summary>
    Screen,
}

/// <summary>A kind of file that a record is written as.</summary>
/// <param name="Name">What the command line calls it.</param>
/// <param name="Suffix">End of the file's name.</param>
/// <param name="Pages">The pages set from the template's markup.</param>
/// <param name="Write">Makes the file. Formats need nothing of each other and may be made at the same time.</param>
internal sealed record RecordFormat(string Name, string Suffix, PageKind Pages, Func<RecordPages, ReadOnlyMemory<byte>> Write)
{
    /// <summary>Every kind, one line each, in the order they are written.</summary>
    public static readonly ImmutableArray<RecordFormat> All =
    [
        new("pdf", ".pdf", PageKind.Paper, pages => DocumentRenderer.ToPdf(pages.Sealed.Record, pages.Markup!, pages.Media, pages.Attachments, pages.IsAnnexFull).Bytes),
        new("html", ".html", PageKind.Screen, pages => Encoding.UTF8.GetBytes(DocumentRenderer.ToHtml(pages.Sealed.Record, pages.Markup!, pages.Media))),
        new("json", ".record.json", PageKind.None, pages => pages.Sealed.Json),
    ];
}

/// <summary>What the files of one record are made from.</summary>
/// <param name="Name">Name of its files, without an end.</param>
/// <param name="Reading">The job file as read.</param>
/// <param name="Sealed">The record.</param>
/// <param name="Media">Its figures and photos.</param>
/// <param name="Markup">What the template made of it; null where no asked format has pages.</param>
internal sealed record RecordPages(string Name, JobReading Reading, SealedRecord Sealed, PageMedia Media, XDocument? Markup)
{
    /// <summary>Whether the PDF carries the way to every number, which JSON and HTML always do.</summary>
    public bool IsAnnexFull { get; init; }

    // A longer log stays beside the record: its hash proves which it is, and a page that is mailed stays small.
    private const int LargestAttachment = 1 << 20;

    /// <summary>What a PDF carries inside.</summary>
    public IReadOnlyList<Attachment> Attachments =>
    [
        .. Reading.Files.Where(f => f.Role != JobFileRole.Photo && f.Content.Length <= LargestAttachment).Select(f =>
            new Attachment(Path.GetFileName(f.Name), MediaType(f.Name), f.Role == JobFileRole.Log ? AttachmentKind.Data : AttachmentKind.Source, Describe(f.Role), f.Content)),
        new Attachment(Name + ".record.json", "application/json", AttachmentKind.Data, Say(CliMessages.AttachedRecord), Sealed.Json),
    ];

    private string Describe(JobFileRole role) => Say(role switch
    {
        JobFileRole.Job => CliMessages.AttachedJob,
        JobFileRole.Log => CliMessages.AttachedLog,
        JobFileRole.Kit => CliMessages.AttachedKit,
        _ => CliMessages.AttachedPack,
    });

    private string Say(Message message) => MessageWriter.Words.Format(message, Language.Find(Sealed.Record.Language) ?? Language.English);

    private static string MediaType(string name) => Path.GetExtension(name).ToLowerInvariant() switch
    {
        ".csv" => "text/csv",
        ".json" => "application/json",
        _ => "application/yaml",
    };
}

/// <summary>Reads a crew's own templates: every .liquid file of a folder, in place of the built-in one of the same name.</summary>
internal static class TemplateFolder
{
    public static TemplateSet Read(string folder)
    {
        if (!Directory.Exists(folder))
            throw new RefusedException(CliMessages.NoTemplateFolder(new(folder)));
        var files = Directory.EnumerateFiles(folder, "*.liquid", SearchOption.AllDirectories)
            .ToDictionary(path => Path.GetRelativePath(folder, path).Replace('\\', '/'), File.ReadAllText, StringComparer.Ordinal);
        return files.Count > 0
            ? TemplateSet.With(files)
            : throw new RefusedException(CliMessages.NoTemplate(new(folder), new(TemplateSet.Main)));
    }
}
