namespace Commission.Documents.Typesetting;

/// <summary>A heading for the outline.</summary>
/// <param name="Level">1 to 3.</param>
/// <param name="Title">Its text.</param>
internal sealed record OutlineEntry(int Level, string Title);
