namespace Commission.Documents.Plots.Drawing;

/// <summary>How a line is drawn.</summary>
/// <param name="Color">One of <see cref="Palette"/>.</param>
/// <param name="Width">Width, pt.</param>
/// <param name="Dash">Lengths of strokes and gaps, pt, as SVG writes them; empty for a solid line.</param>
internal readonly record struct Stroke(string Color, double Width, string Dash = "");
