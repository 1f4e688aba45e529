namespace Commission.Documents.Typesetting;

/// <summary>A part of a run that stands on one line.</summary>
/// <param name="X">Left edge, from the left edge of the paragraph.</param>
/// <param name="Width">Width in points.</param>
/// <param name="Text">The text.</param>
/// <param name="Run">The run it comes from.</param>
internal readonly record struct TextPiece(double X, double Width, string Text, TextRun Run);
