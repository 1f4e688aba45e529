using PdfSharp.Drawing;

namespace Commission.Documents.Typesetting;

/// <summary>A horizontal rule; with room above it is a line to write on.</summary>
internal sealed class RuleSlab : Slab
{
    private readonly double _width;
    private readonly XColor _color;
    private readonly double _thickness;

    public RuleSlab(double width, double room, XColor color, double thickness)
    {
        _width = width;
        _color = color;
        _thickness = thickness;
        Height = room + thickness;
    }

    public override void Draw(Ink ink, double x, double y)
    {
        ink.BeginArtifact();
        ink.Rule(x, y + Height - (_thickness / 2), x + _width, _color, _thickness);
        ink.EndArtifact();
    }
}
