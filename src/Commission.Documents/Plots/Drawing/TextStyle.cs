using Commission.Documents.Fonts;

namespace Commission.Documents.Plots.Drawing;

/// <summary>How a text in a figure is set.</summary>
/// <param name="Size">Size of type, pt.</param>
/// <param name="Color">Fill, one of <see cref="Palette"/>.</param>
/// <param name="Bold">Semibold face.</param>
internal readonly record struct TextStyle(double Size, string Color, bool Bold = false)
{
    /// <summary>Height of a capital or a digit, pt (0.66 em in Source Sans 3).</summary>
    public double CapHeight => 0.66 * Size;

    /// <summary>Reach above the baseline that other labels keep clear of, pt.</summary>
    public double Ascent => 0.75 * Size;

    /// <summary>Reach below the baseline, pt.</summary>
    public double Descent => 0.22 * Size;

    /// <summary>Width of a text in this style, pt.</summary>
    /// <param name="text">The text; a character our face lacks counts as a full em, as wide as a browser's substitute may be.</param>
    /// <returns>Its width.</returns>
    public double Width(string text)
    {
        var face = Bold ? FontFace.SemiBold : FontFace.Regular;
        var sum = 0.0;
        foreach (var c in text)
            sum += face.Has(c) ? face.Advance(c) : char.IsLowSurrogate(c) ? 0 : 1;
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
}
