using Commission.Documents.Fonts;
using PdfSharp.Drawing;

namespace Commission.Documents.Typesetting;

/// <summary>How a piece of text looks.</summary>
/// <param name="Face">Face.</param>
/// <param name="Size">Size in points.</param>
/// <param name="Color">Colour.</param>
internal sealed record TextStyle(FontFace Face, double Size, XColor Color)
{
    /// <summary>Distance from one baseline to the next.</summary>
    public double Leading => Size * 1.25;

    /// <summary>The same, emphasised.</summary>
    public TextStyle Strong => Face == FontFace.SemiBold ? this : this with { Face = FontFace.SemiBold };

    /// <summary>The same, in italics.</summary>
    public TextStyle Emphasis => this with { Face = FontFace.Italic };
}
