using System.Globalization;
using Commission.Documents.Markup;

namespace Commission.Documents.Html;

/// <summary>A value with its U on the scale of its limit, in a row of a table. The numbers stand beside it, so nobody needs to hear it.</summary>
internal static class HtmlBar
{
    private const double Width = 72;

    /// <summary>Writes it.</summary>
    public static void Write(HtmlText page, LimitBar bar)
    {
        var (left, right) = (bar.LowerIsLimit ? At(0) : 0, bar.UpperIsLimit ? At(1) : Width);
        page.Raw("<svg class=\"bar\" viewBox=\"0 0 72 10\" aria-hidden=\"true\">").Raw(Invariant($"<rect class=\"zone\" x=\"{left:0.##}\" y=\"1.5\" width=\"{right - left:0.##}\" height=\"7\"/>"));
        if (bar.LowerIsLimit)
            page.Raw(Invariant($"<path d=\"M{left:0.##} 1v8\"/>"));
        if (bar.UpperIsLimit)
            page.Raw(Invariant($"<path d=\"M{right:0.##} 1v8\"/>"));
        if (bar is { Low: { } low, High: { } high })
            page.Raw(Invariant($"<path d=\"M{At(low):0.##} 5H{At(high):0.##}\"/>"));
        var at = At(bar.Value);
        page.Raw(bar.Value < LimitBar.From ? Invariant($"<path class=\"value\" d=\"M{at:0.##} 5l4-3v6z\"/>")
            : bar.Value > LimitBar.To ? Invariant($"<path class=\"value\" d=\"M{at:0.##} 5l-4-3v6z\"/>")
            : Invariant($"<path class=\"value\" d=\"M{at - 2.5:0.##} 5l2.5-3 2.5 3-2.5 3z\"/>")).Raw("</svg>");
    }

    private static double At(double place) => LimitBar.Share(place) * Width;

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
