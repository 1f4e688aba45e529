using System.Globalization;
using PdfSharp.Drawing;

namespace Commission.Documents.Typesetting;

/// <summary>Reads the colours our figures use: <c>#rrggbb</c> and <c>none</c>.</summary>
internal static class SvgColor
{
    /// <summary>Reads a colour.</summary>
    /// <param name="text">The attribute; null and <c>none</c> paint nothing.</param>
    /// <param name="opacity">0 to 1; mixed with white, because transparency has no place in a page that is printed in grey.</param>
    public static XColor? Read(string? text, double opacity)
    {
        if (text is null or "none" || text.Length != 7 || text[0] != '#') return null;
        var rgb = int.Parse(text.AsSpan(1), NumberStyles.HexNumber, CultureInfo.InvariantCulture);
        return XColor.FromArgb(Mixed(rgb >> 16, opacity), Mixed((rgb >> 8) & 0xFF, opacity), Mixed(rgb & 0xFF, opacity));
    }

    private static int Mixed(int channel, double opacity) => (int)Math.Round(255 + ((channel - 255) * Math.Clamp(opacity, 0, 1)));
}
