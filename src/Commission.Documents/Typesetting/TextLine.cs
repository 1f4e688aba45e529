namespace Commission.Documents.Typesetting;

/// <summary>A set line: its pieces from left to right.</summary>
/// <param name="Pieces">The pieces.</param>
/// <param name="Width">Width in points.</param>
internal sealed record TextLine(TextPiece[] Pieces, double Width);
