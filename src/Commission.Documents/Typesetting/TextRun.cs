namespace Commission.Documents.Typesetting;

/// <summary>A stretch of text in one style.</summary>
/// <param name="Text">The text; a line feed ends a line.</param>
/// <param name="Style">Its style.</param>
/// <param name="Link">The id it links to; null for none.</param>
internal sealed record TextRun(string Text, TextStyle Style, string? Link);
