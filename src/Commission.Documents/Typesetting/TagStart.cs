namespace Commission.Documents.Typesetting;

/// <summary>The beginning of a structure element (ISO 32000-1, 14.8.4).</summary>
/// <param name="Name">Structure type, for example <c>P</c> or <c>TH</c>.</param>
/// <param name="Scope">Scope of a header cell: <c>Row</c> or <c>Column</c>; null otherwise.</param>
/// <param name="ColumnSpan">Columns a cell spans.</param>
internal sealed record TagStart(string Name, string? Scope = null, int ColumnSpan = 1);
