namespace Commission.Documents.Archive;

/// <summary>A file to be carried inside the PDF.</summary>
/// <param name="Name">File name, unique within the document; folders are separated by a forward slash.</param>
/// <param name="MediaType">Media type, for example <c>application/json</c>.</param>
/// <param name="Kind">How it relates to the pages.</param>
/// <param name="Description">What it is, for a person.</param>
/// <param name="Content">Its bytes.</param>
public sealed record Attachment(string Name, string MediaType, AttachmentKind Kind, string Description, ReadOnlyMemory<byte> Content);

/// <summary>How an attached file relates to the pages (AFRelationship of ISO 32000-2 and PDF/A-3).</summary>
public enum AttachmentKind
{
    /// <summary>The pages were made from it: the job file, a log.</summary>
    Source,

    /// <summary>It says the same as the pages in a form for programs: the record as JSON.</summary>
    Data,
}
