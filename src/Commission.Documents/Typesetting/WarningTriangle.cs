using PdfSharp.Drawing;

namespace Commission.Documents.Typesetting;

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
