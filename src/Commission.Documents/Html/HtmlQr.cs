using System.Globalization;
using System.Xml.Linq;
using Commission.Documents.Markup;

namespace Commission.Documents.Html;

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
