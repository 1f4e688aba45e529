using System.Globalization;
using System.Text;
using System.Xml.Linq;
using Commission.Documents.Markup;
using Commission.Documents.Pictures;
using Commission.Documents.Plots;

namespace Commission.Documents.Html;

/// <summary>
/// A figure inline, drawn twice: for a page and for a telephone held upright, where the wide drawing would shrink below reading size.
/// The style sheet shows one of them, to the eye and to a screen reader alike.
/// </summary>
internal static class HtmlFigure
{
    /// <summary>Writes a figure.</summary>
    /// <param name="page">The page.</param>
    /// <param name="figures">The figures of the record.</param>
    /// <param name="number">Its number on the page, from 1.</param>
    /// <param name="element">The markup's <c>figure</c>.</param>
    /// <param name="body">Writes a caption of the template's own.</param>
    public static void Write(HtmlText page, FigureShelf figures, int number, XElement element, HtmlBody body)
    {
        var data = figures.Data(element.Attribute("data-plot")!.Value);
        page.Raw("<figure").Raw(HtmlBody.Attributes(element)).Raw(">");
        Drawing(page, figures.Figure(data.Id, PictureSize.FullWidth), data.AltText, "wide", number);
        Drawing(page, figures.Figure(data.Id, PictureSize.NarrowWidth), data.AltText, "narrow", number);
        page.Raw("<figcaption>");
        if (element.Element("figcaption") is { } caption)
            body.Inside(caption);
        else
            page.Raw("<strong>").Text(data.Title.TrimEnd('.')).Raw(".</strong> ").Text(data.Caption);
        page.Raw("</figcaption></figure>");
    }

    private static void Drawing(HtmlText page, Picture picture, string altText, string variant, int number)
    {
        var clips = string.Create(CultureInfo.InvariantCulture, $"clip-{number}{variant[0]}-");
        page.Raw("<div class=\"plot ").Raw(variant).Raw("\"><svg role=\"img\" viewBox=\"0 0 ").Number(picture.Size.Width).Raw(" ").Number(picture.Size.Height)
            .Raw("\" aria-label=\"").Attribute(altText).Raw("\">").Raw(SvgWriter.Inside(picture, clips)).Raw("</svg>");
        if (picture.Hover.Count > 0)
            page.Raw("<script type=\"application/json\">").Raw(Json(picture)).Raw("</script>");
        page.Raw("</div>");
    }

    // [x, y, "text"] for each place, from left to right.
    private static string Json(Picture picture)
    {
        var json = new StringBuilder("[");
        foreach (var point in picture.Hover.OrderBy(point => point.X).ThenBy(point => point.Y))
        {
            if (json.Length > 1)
                json.Append(',');
            json.Append(CultureInfo.InvariantCulture, $"[{Math.Round(point.X, 1) + 0.0:0.#},{Math.Round(point.Y, 1) + 0.0:0.#},\"");
            foreach (var c in point.Text)
            {
                // '<' could end the script element, and the rest is what JSON asks for.
                if (c is '"' or '\\' or '<' || char.IsControl(c))
                    json.Append(CultureInfo.InvariantCulture, $"\\u{(int)c:x4}");
                else
                    json.Append(c);
            }

            json.Append("\"]");
        }

        return json.Append(']').ToString();
    }
}

/// <summary>A QR code as one path, dark on white with its quiet zone in every scheme: scanners want it so.</summary>
internal static class HtmlQr
{
    /// <summary>Writes the code.</summary>
    public static void Write(HtmlText page, XElement element)
    {
        var modules = QrModules.Of(element.Attribute("data")?.Value ?? "");
        var count = modules.GetLength(0);
        var size = count + 2 * QrModules.QuietZone;
        var width = MarkupWidth.TryRead(element.Attribute("width")?.Value ?? "88", out var read) && !read.IsShare ? read.Amount : 88;
        page.Raw("<svg").Raw(HtmlBody.Attributes(element, "qr")).Raw(" role=\"img\" aria-label=\"").Attribute(element.Attribute("alt")?.Value ?? "QR code")
            .Raw(string.Create(CultureInfo.InvariantCulture, $"\" viewBox=\"0 0 {size} {size}\" style=\"width:{width:0.##}pt\" shape-rendering=\"crispEdges\"><rect width=\"{size}\" height=\"{size}\" fill=\"#fff\"/><path fill=\"#000\" d=\""));
        for (var row = 0; row < count; row++)
        {
            for (var column = 0; column < count; column++)
            {
                var start = column;
                while (column < count && modules[row, column])
                    column++;
                if (column > start)
                    page.Raw(string.Create(CultureInfo.InvariantCulture, $"M{start + QrModules.QuietZone} {row + QrModules.QuietZone}h{column - start}v1h-{column - start}z"));
            }
        }

        page.Raw("\"/></svg>");
    }
}
