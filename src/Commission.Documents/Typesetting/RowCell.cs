using PdfSharp.Drawing;

namespace Commission.Documents.Typesetting;

/// <summary>A cell as it is drawn.</summary>
/// <param name="X">Left edge of its text, from the left edge of the table.</param>
/// <param name="Left">Left edge of the cell.</param>
/// <param name="Width">Width of the cell.</param>
/// <param name="Lines">Its lines.</param>
/// <param name="Shifts">How far each line is moved to the right for its alignment.</param>
/// <param name="Block">The text, for size and leading.</param>
/// <param name="Tag">Structure element.</param>
/// <param name="Tint">Tint of the cell; null for none.</param>
internal sealed record RowCell(double X, double Left, double Width, IReadOnlyList<TextLine> Lines, double[] Shifts, TextBlock Block, TagStart Tag, XColor? Tint);
