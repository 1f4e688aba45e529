using System.Globalization;
using System.Xml.Linq;
using Commission.Documents.Markup;
using Commission.Documents.Media;
using Commission.Documents.Templates;
using Commission.Messages;

namespace Commission.Documents.Html;

/// <summary>Turns the elements of the markup into HTML. The markup was checked: unknown elements do not come here.</summary>
internal sealed class HtmlBody(PageMedia media, HtmlContents contents, string language)
{
    private readonly HtmlText _page = new(64_000);
    private int _figures;

    /// <summary>Writes everything inside the root.</summary>
    /// <param name="root">The root of the markup.</param>
    /// <returns>The HTML.</returns>
    public string Write(XElement root)
    {
        Inside(root);
        return _page.ToString();
    }

    /// <summary>Writes what an element holds.</summary>
    internal void Inside(XElement element)
    {
        foreach (var node in element.Nodes())
        {
            if (node is XText text)
                _page.Text(text.Value);
            else if (node is XElement child)
                Element(child);
        }
    }

    private void Element(XElement element)
    {
        switch (element.Name.LocalName)
        {
            case "section":
                Section(element);
                break;
            case "div":
                Div(element);
                break;
            case "h1" or "h2" or "h3":
                Heading(element);
                break;
            case "table":
                new HtmlTable(_page, this).Write(element);
                break;
            case "figure":
                HtmlFigure.Write(_page, media.Figures, ++_figures, element, this);
                break;
            case "qr":
                HtmlQr.Write(_page, element);
                break;
            case "aside":
                Aside(element);
                break;
            case "hr":
                _page.Raw("<hr").Raw(Attributes(element)).Raw(">");
                break;
            case "photo":
                Photo(element);
                break;
            case "sign":
                _page.Raw("<hr").Raw(Attributes(element, "sign")).Raw(">");
                break;
            case "br":
                _page.Raw("<br>");
                break;
            case "pageref":
                _page.Raw("<a href=\"").Attribute(element.Attribute("href")!.Value).Raw("\" aria-label=\"").Attribute(PageWords.Text(PagesMessages.GoThere, language)).Raw("\">→</a>");
                break;
            case "bar":
                HtmlBar.Write(_page, LimitBar.In(element.Parent!)!);
                break;
            case "page-break":
                _page.Raw("<div class=\"page-break\"></div>");
                break;
            case "span" when MarkupClass.Verdict(element) is { } verdict:
                _page.Raw("<span").Raw(Attributes(element)).Raw(">");
                Mark(verdict);
                Inside(element);
                _page.Raw("</span>");
                break;
            default:
                Same(element);
                break;
        }
    }

    /// <summary>Writes the sign of a verdict; the word that follows says the same to people who do not see it.</summary>
    /// <param name="verdict">Class of the verdict.</param>
    internal void Mark(string verdict)
    {
        var mark = VerdictMark.Of(verdict);
        if (mark.Length > 0)
            _page.Raw("<span class=\"mark\" aria-hidden=\"true\">").Raw(mark).Raw("</span> ");
    }

    /// <summary>The identifier and the classes of an element, as HTML.</summary>
    /// <param name="element">The element.</param>
    /// <param name="more">A further class.</param>
    /// <returns>Attributes with a space before each; empty when there are none.</returns>
    internal static string Attributes(XElement element, string more = "")
    {
        var text = new HtmlText(64);
        if (element.Attribute("id")?.Value is { } id)
            text.Raw(" id=\"").Attribute(id).Raw("\"");
        var classes = string.Join(' ', new[] { element.Attribute("class")?.Value, more }.Where(name => !string.IsNullOrEmpty(name)));
        if (classes.Length > 0)
            text.Raw(" class=\"").Attribute(classes).Raw("\"");
        return text.ToString();
    }

    private void Same(XElement element)
    {
        var name = element.Name.LocalName;
        _page.Raw("<").Raw(name).Raw(Attributes(element));
        if (element.Attribute("href")?.Value is { } target)
            _page.Raw(" href=\"").Attribute(target).Raw("\"");
        _page.Raw(">");
        Inside(element);
        _page.Raw("</").Raw(name).Raw(">");
    }

    // One that a template set smaller than its level keeps its look.
    private void Heading(XElement element)
    {
        var asked = element.Name.LocalName;
        var name = "h" + element.Attribute(HeadingLevels.Attribute)!.Value;
        _page.Raw("<").Raw(name).Raw(Attributes(element, name == asked ? "" : "as-" + asked));
        if (contents.IdOf(element) is { } id)
            _page.Raw(" id=\"").Attribute(id).Raw("\"");
        _page.Raw(">");
        Inside(element);
        _page.Raw("</").Raw(name).Raw(">");
    }

    private void Section(XElement element)
    {
        if (MarkupClass.Has(element, "trace") && element.Elements().FirstOrDefault() is { } heading && heading.Name.LocalName is "h1" or "h2" or "h3")
        {
            // The identifier is inside: a browser that follows a link into folded details unfolds them by itself.
            _page.Raw("<details").Raw(Attributes(new XElement("details", element.Attribute("class")))).Raw("><summary>");
            Heading(heading);
            _page.Raw("</summary><div class=\"told\"").Raw(Attributes(new XElement("div", element.Attribute("id")))).Raw(">");
            foreach (var node in element.Nodes().SkipWhile(node => node != heading).Skip(1))
            {
                if (node is XElement child)
                    Element(child);
                else if (node is XText text)
                    _page.Text(text.Value);
            }

            _page.Raw("</div></details>");
            return;
        }

        _page.Raw("<section").Raw(Attributes(element)).Raw(">");
        if (MarkupClass.Has(element, "fold") && element.Elements().FirstOrDefault() is { } title && title.Name.LocalName is "h1" or "h2" or "h3")
        {
            // Open, so that nothing is hidden where no script runs; the script folds it on a telephone.
            _page.Raw("<details class=\"fold\" open><summary>");
            Heading(title);
            _page.Raw("</summary>");
            foreach (var child in element.Elements().Skip(1))
                Element(child);
            _page.Raw("</details>");
        }
        else
        {
            Inside(element);
        }

        _page.Raw("</section>");
    }

    private void Div(XElement element)
    {
        _page.Raw("<div").Raw(Attributes(element));
        if (element.Attribute("width")?.Value is { } text && MarkupWidth.TryRead(text, out var width))
        {
            // A share grows and shrinks with its neighbours and goes below them when it would become unreadable.
            var least = width.Amount < 25 ? 6 : width.Amount < 40 ? 11 : 17;
            _page.Raw(width.IsShare
                ? string.Create(CultureInfo.InvariantCulture, $" style=\"flex:{width.Amount:0.##} 1 max({least}rem,{width.Amount:0.##}% - 2rem)\"")
                : string.Create(CultureInfo.InvariantCulture, $" style=\"flex:0 0 {width.Amount:0.##}pt\""));
        }

        _page.Raw(">");
        Inside(element);
        _page.Raw("</div>");
    }

    private void Photo(XElement element)
    {
        if (media.Photos.Photo(element.Attribute("file")!.Value) is not { } photo)
            return;
        var (width, height) = photo.IsAcross ? (photo.Height, photo.Width) : (photo.Width, photo.Height);
        _page.Raw("<img").Raw(Attributes(element, "photo")).Raw(string.Create(CultureInfo.InvariantCulture, $" width=\"{width}\" height=\"{height}\" alt=\"")).Attribute(element.Attribute("alt")!.Value)
            .Raw("\" src=\"data:image/jpeg;base64,").Raw(Convert.ToBase64String(photo.Turned.Span)).Raw("\">");
    }

    // An aside inside the main text would count as a landmark of its own; these are notes.
    private void Aside(XElement element)
    {
        var isCaution = MarkupClass.Has(element, "caution");
        _page.Raw("<div role=\"note\"").Raw(Attributes(element, "aside")).Raw(">");
        if (isCaution)
            _page.Raw("<svg class=\"warning\" viewBox=\"0 0 24 22\" role=\"img\" aria-label=\"").Attribute(PageWords.Text(PagesMessages.Caution, language)).Raw("\"><path d=\"M12 1.5 23 20.5H1Z\" fill=\"none\" stroke=\"currentColor\" stroke-width=\"2\" stroke-linejoin=\"round\"/><path d=\"M11 8h2l-.4 6.5h-1.2ZM11 16h2v2h-2Z\" fill=\"currentColor\"/></svg>");
        _page.Raw("<div>");
        Inside(element);
        _page.Raw("</div></div>");
    }
}
