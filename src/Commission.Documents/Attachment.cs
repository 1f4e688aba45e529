namespace Commission.Documents;

/// <summary>A file to be carried inside the PDF.</summary>
/// <param name="Name">File name, unique within the document; folders are separated by a forward slash.</param>
/// <param name="MediaType">Media type, for example <c>application/json</c>.</param>
/// <param name="Kind">How it relates to the pages.</param>
/// <param name="Description">What it is, for a person.</param>
/// <param name="Content">Its bytes.</param>
public sealed record Attachment(string Name, string MediaType, AttachmentKind Kind, string Description, ReadOnlyMemory<byte> Content);
