using Commission.Documents.Plots;
using PdfSharp.Drawing;

namespace Commission.Documents.Typesetting;

/// <summary>A figure of the record, drawn as vectors.</summary>
internal sealed class FigureSlab : Slab
{
    private readonly SvgFigure _picture;
    private readonly string _alt;

    public FigureSlab(SvgFigure picture, string alt)
    {
        _picture = picture;
        _alt = alt;
        Height = picture.Height;
    }

    public override void Draw(Ink ink, double x, double y)
    {
        var place = new XRect(x, y, _picture.Width, _picture.Height);
        ink.OpenFigure(_alt, place);
        ink.Picture(_picture, place);
        ink.Close();
    }
}
