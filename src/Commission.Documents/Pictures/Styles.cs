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

/// <summary>
/// Every colour a figure may use. Data colours are those of Okabe and Ito (Color Universal Design, 2008); text that belongs to a curve
/// takes a darker shade of the same hue so that small type keeps a contrast of at least 4.5 : 1 on paper. The web page maps exactly these
/// values to its light and dark schemes, so a colour not listed here would stay unreadable in the dark.
/// </summary>
internal static class Palette
{
    public static readonly Rgb Paper = new(0xffffff);
    public static readonly Rgb Ink = new(0x1a1a1a);
    public static readonly Rgb Quiet = new(0x595959);
    public static readonly Rgb Axis = new(0x8c8c8c);
    public static readonly Rgb Grid = new(0xe3e3e3);
    public static readonly Rgb Zone = new(0xe9f1ee);
    public static readonly Rgb ZoneEdge = new(0x7f9c92);

    public static readonly Rgb Blue = new(0x0072b2);
    public static readonly Rgb Vermilion = new(0xd55e00);
    public static readonly Rgb Green = new(0x009e73);
    public static readonly Rgb Purple = new(0xcc79a7);
    public static readonly Rgb Orange = new(0xe69f00);
    public static readonly Rgb Sky = new(0x56b4e9);

    public static readonly Rgb BlueText = new(0x005b8e);
    public static readonly Rgb VermilionText = new(0xa34700);
    public static readonly Rgb GreenText = new(0x00664a);
    public static readonly Rgb PurpleText = new(0x8a3f6b);
    public static readonly Rgb OrangeText = new(0x7d5600);

    public static readonly Rgb BlueTint = new(0xd6e7f2);
    public static readonly Rgb VermilionTint = new(0xf8e2d2);
    public static readonly Rgb GreenTint = new(0xd3ebe3);
    public static readonly Rgb PurpleTint = new(0xf3e1ea);

    /// <summary>All of them, in the order in which the style sheet names them.</summary>
    public static IReadOnlyList<Rgb> All { get; } =
    [
        Paper, Ink, Quiet, Axis, Grid, Zone, ZoneEdge,
        Blue, Vermilion, Green, Purple, Orange, Sky,
        BlueText, VermilionText, GreenText, PurpleText, OrangeText,
        BlueTint, VermilionTint, GreenTint, PurpleTint,
    ];
}
