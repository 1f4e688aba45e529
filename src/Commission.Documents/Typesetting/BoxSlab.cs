using PdfSharp.Drawing;

namespace Commission.Documents.Typesetting;

/// <summary>A slab inside a box. Each slab brings its own part of the box, so that a long box can run over a page.</summary>
internal sealed class BoxSlab : Slab
{
    /// <summary>Room left of the text.</summary>
    public const double Left = 10;

    /// <summary>Room left of the text when a warning triangle stands there.</summary>
    public const double LeftOfCaution = 26;

    /// <summary>Room at the other sides.</summary>
    public const double Padding = 5;

    private readonly Slab _inner;
    private readonly BoxKind _kind;
    private readonly double _width;
    private readonly double _above;
    private readonly bool _isFirst;

    public BoxSlab(Slab inner, BoxKind kind, double width, double above, double below, bool isFirst)
    {
        _inner = inner;
        _kind = kind;
        _width = width;
        _above = above;
        _isFirst = isFirst;
        Height = above + inner.Height + below;
        KeepWithNext = inner.KeepWithNext;
    }

    /// <summary>Which outcome it tells, as a class of the markup; empty for none.</summary>
    public string Outcome { get; init; } = "";

    public override IEnumerable<(Slab Inner, double Y)> Inside => [(_inner, _above)];

    public static double Indent(BoxKind kind) => kind == BoxKind.Caution ? LeftOfCaution : Left;

    public override void Draw(Ink ink, double x, double y)
    {
        ink.BeginArtifact();
        var (ground, edge) = _kind == BoxKind.Caution ? (Look.CautionTint, Look.CautionEdge) : Look.OutcomeColors(Outcome);
        ink.Fill(new XRect(x, y, _width, Height), ground);
        if (_kind != BoxKind.Note)
            ink.Fill(new XRect(x, y, _kind == BoxKind.Caution ? 2.5 : 4, Height), edge);
        if (_kind == BoxKind.Caution && _isFirst)
            WarningTriangle.Draw(ink, x + 8, y + _above + 0.5, 12);
        ink.EndArtifact();
        _inner.DrawTagged(ink, x + Indent(_kind), y + _above);
    }
}

/// <summary>How a box looks.</summary>
internal enum BoxKind
{
    /// <summary>Tinted, with a warning triangle.</summary>
    Caution,

    /// <summary>Light grey, with a bar in the accent.</summary>
    Outcome,

    /// <summary>Light grey.</summary>
    Note,
}

/// <summary>The general warning sign in outline; the typeface has none.</summary>
internal static class WarningTriangle
{
    public static void Draw(Ink ink, double x, double y, double size)
    {
        var height = size * 0.88;
        ink.Outline([new XPoint(x + (size / 2), y), new XPoint(x + size, y + height), new XPoint(x, y + height)], Look.CautionEdge, size / 11);
        var centre = x + (size / 2);
        ink.Fill(new XRect(centre - (size / 18), y + (height * 0.36), size / 9, height * 0.32), Look.CautionEdge);
        ink.Fill(new XRect(centre - (size / 18), y + (height * 0.75), size / 9, size / 9), Look.CautionEdge);
    }
}
