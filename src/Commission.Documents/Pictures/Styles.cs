using System.Globalization;
using Commission.Documents.Fonts;

namespace Commission.Documents.Pictures;

/// <summary>A colour as red, green and blue, 8 bits each.</summary>
/// <param name="Value">0xRRGGBB.</param>
internal readonly record struct Rgb(int Value)
{
    /// <summary>As style sheets and SVG write it: <c>#rrggbb</c>.</summary>
    public string Hex => string.Create(CultureInfo.InvariantCulture, $"#{Value:x6}");
}

/// <summary>How a line is drawn.</summary>
/// <param name="Color">Its colour; one of <see cref="Palette"/>.</param>
/// <param name="Width">Width, pt.</param>
/// <param name="Dash">Its dashes; null for a solid line.</param>
internal readonly record struct Stroke(Rgb Color, double Width, Dash? Dash = null);

/// <summary>A pattern of dashes, repeated along a line.</summary>
/// <param name="lengths">Lengths of strokes and gaps in turn, pt.</param>
internal sealed class Dash(params double[] lengths)
{
    public ReadOnlySpan<double> Lengths => lengths;
}

/// <summary>Which point of a line of text its position names: the left end, the middle or the right end.</summary>
internal enum TextAnchor
{
    Start,
    Middle,
    End,
}

/// <summary>How a piece of text looks.</summary>
/// <param name="Face">Face.</param>
/// <param name="Size">Size of type, pt.</param>
/// <param name="Color">Colour.</param>
internal sealed record TextStyle(FontFace Face, double Size, Rgb Color)
{
    /// <summary>Distance from one baseline to the next, pt.</summary>
    public double Leading => Size * 1.25;

    /// <summary>Height of a capital or a digit, pt (0.66 em in Source Sans 3).</summary>
    public double CapHeight => 0.66 * Size;

    /// <summary>Reach above the baseline that labels keep clear of, pt.</summary>
    public double Ascent => 0.75 * Size;

    /// <summary>Reach below the baseline, pt.</summary>
    public double Descent => 0.22 * Size;

    /// <summary>The same, emphasised.</summary>
    public TextStyle Strong => Face == FontFace.SemiBold ? this : this with { Face = FontFace.SemiBold };

    /// <summary>The same, in italics.</summary>
    public TextStyle Emphasis => this with { Face = FontFace.Italic };

    /// <summary>Width of a text, pt; a character our face lacks counts as a full em, as wide as a browser's substitute may be.</summary>
    public double Width(string text)
    {
        var sum = 0.0;
        foreach (var c in text)
            sum += Face.Has(c) ? Face.Advance(c) : char.IsLowSurrogate(c) ? 0 : 1;
        return sum * Size;
    }

    /// <summary>Shortens a text with an ellipsis until it fits.</summary>
    /// <param name="text">The text.</param>
    /// <param name="room">Room, pt.</param>
    /// <returns>The text itself where it fits.</returns>
    public string Fit(string text, double room)
    {
        if (Width(text) <= room)
            return text;
        for (var length = text.Length - 1; length > 0; length--)
        {
            if (char.IsHighSurrogate(text[length - 1]))
                continue;
            var cut = string.Concat(text.AsSpan(0, length).TrimEnd(), "…");
            if (Width(cut) <= room)
                return cut;
        }

        return "…";
    }

    /// <summary>The rectangle that a line of text covers.</summary>
    /// <param name="x">Position of its anchor, pt.</param>
    /// <param name="y">Its baseline, pt.</param>
    /// <param name="text">The text.</param>
    /// <param name="anchor">Which point of it stands at <paramref name="x"/>.</param>
    public Box BoxOf(double x, double y, string text, TextAnchor anchor = TextAnchor.Start)
    {
        var width = Width(text);
        var left = anchor switch { TextAnchor.Start => x, TextAnchor.Middle => x - width / 2, _ => x - width };
        return new Box(left, y - Ascent, left + width, y + Descent);
    }
}
