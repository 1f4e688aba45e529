namespace Commission.Documents.Archive;

/// <summary>An object of a PDF file as bytes.</summary>
/// <param name="Number">Object number.</param>
/// <param name="Body">What stands between <c>obj</c> and <c>endobj</c>, without a stream.</param>
/// <param name="Stream">The bytes of its stream; null when it has none.</param>
internal sealed record PdfObjectText(int Number, byte[] Body, byte[]? Stream);
