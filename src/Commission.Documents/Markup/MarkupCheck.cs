using System.Globalization;
using System.Text;
using System.Xml.Linq;
using Commission.Source;

namespace Commission.Documents.Markup;

/// <summary>Holds a parsed document against the subset: elements, attributes, nesting, identifiers, links, figures.</summary>
internal sealed class MarkupCheck(Func<string, bool> hasFigure, Func<string, bool> hasPhoto, ProblemList problems)
{
    private const int MostBytesOfQr = 1000;

    private readonly HashSet<string> _ids = new(StringComparer.Ordinal);
    private readonly HashSet<string> _fields = new(StringComparer.Ordinal);
    private readonly List<XElement> _links = [];

    public void Run(XDocument document)
    {
        var root = document.Root!;
        if (!Is(root, "body"))
        {
            problems.Add(TemplateLine.Of(root), $"The outermost element is <{root.Name.LocalName}>.", "It must be <body>.", "Put one <body> around everything.", "root");
            return;
        }

        Check(root);
        foreach (var link in _links)
        {
            var target = link.Attribute("href")?.Value ?? "";
            if (target.Length < 2 || target[0] != '#' || !_ids.Contains(target[1..]))
                problems.Add(TemplateLine.Of(link), $"A link goes to \"{target}\", which is nowhere.", "A link goes to # and the id of an element of the document.", "Correct the href or give the element that id.", "link");
        }
    }

    private void Check(XElement element)
    {
        var name = element.Name.LocalName;
        var rule = MarkupElement.Of(name);
        if (rule is null)
        {
            Unknown(element, name);
            return;
        }

        CheckAttributes(element, name, rule);
        foreach (var node in element.Nodes())
        {
            if (node is XText text)
            {
                if (!rule.AllowsText && !string.IsNullOrWhiteSpace(text.Value))
                    problems.Add(TemplateLine.Of(element), $"Text stands directly in <{name}>: \"{Shorten(text.Value)}\".", "", $"Put it into a <p> or another element that <{name}> may hold.", "text");
            }
            else if (node is XElement child)
            {
                var childName = child.Name.LocalName;
                if (MarkupElement.Of(childName) is not null && Array.IndexOf(rule.Children, childName) < 0)
                    problems.Add(TemplateLine.Of(child), $"<{childName}> stands directly in <{name}>.", $"<{name}> may hold {Listed(rule)}.", "", "place");
                Check(child);
            }
        }
    }

    private void Unknown(XElement element, string name)
    {
        var nearest = NearestName.Of(name, MarkupElement.Names);
        problems.Add(
            TemplateLine.Of(element),
            $"<{name}> is not an element of the markup.",
            nearest is null ? "" : $"Did you mean <{nearest}>?",
            "templates/README.md lists the elements.",
            "element");
    }

    private void CheckAttributes(XElement element, string name, MarkupElement rule)
    {
        foreach (var attribute in element.Attributes())
        {
            if (Array.IndexOf(rule.Attributes, attribute.Name.LocalName) >= 0)
                continue;
            var nearest = NearestName.Of(attribute.Name.LocalName, rule.Attributes);
            problems.Add(TemplateLine.Of(element), $"<{name}> has no attribute \"{attribute.Name.LocalName}\".", nearest is null ? "" : $"Did you mean \"{nearest}\"?", "", "attribute");
        }

        if (element.Attribute("id")?.Value is { } id && !_ids.Add(id))
            problems.Add(TemplateLine.Of(element), $"The id \"{id}\" is used twice.", "", "Give every element its own id.", "id");
        if (Is(element, "a") || Is(element, "pageref"))
            _links.Add(element);
        if (Is(element, "pageref") && !element.Ancestors("section").Any(s => MarkupClass.Has(s, "one-page")))
            problems.Add(TemplateLine.Of(element), "<pageref> stands outside the first page.", "The number of a page is known to the section of class one-page only, which is set last.", "Use <a href=\"#…\"> here.", "pageref");
        if (Is(element, "section") && MarkupClass.Has(element, "one-page") && (element.Parent is not { Name.LocalName: "body" } || element.ElementsBeforeSelf().Any()))
            problems.Add(TemplateLine.Of(element), "A section of class one-page is not the first thing of the document.", "Only the first page is fitted.", "Put it first in <body>.", "one-page");
        if (Is(element, "figure") && (element.Attribute("data-plot")?.Value is not { } plot || !hasFigure(plot)))
            problems.Add(TemplateLine.Of(element), $"The record has no figure \"{element.Attribute("data-plot")?.Value}\".", "", "Draw figures in a loop over the record's figures, or test whether there is one.", "figure");
        if (Is(element, "photo") && (element.Attribute("file")?.Value is not { } file || !hasPhoto(file)))
            problems.Add(TemplateLine.Of(element), $"There is no photo \"{element.Attribute("file")?.Value}\".", "", "Show photos in a loop over the record's photos that are shown.", "photo");
        if (Is(element, "photo") && element.Attribute("alt") is null)
            problems.Add(TemplateLine.Of(element), "<photo> lacks alt.", "It needs the words for people who do not see it.", "", "attribute");
        if (Is(element, "sign") && (element.Attribute("field")?.Value is not { Length: > 0 } || element.Attribute("alt") is null))
            problems.Add(TemplateLine.Of(element), "<sign> lacks field or alt.", "It needs the name of its signature field and the words for people who do not see the line.", "", "attribute");
        if (Is(element, "sign") && element.Attribute("field")?.Value is { } field && !_fields.Add(field))
            problems.Add(TemplateLine.Of(element), $"The signature field \"{field}\" stands twice.", "", "Give every <sign> its own field.", "field");
        if (Is(element, "qr") && (element.Attribute("data") is null || element.Attribute("alt") is null))
            problems.Add(TemplateLine.Of(element), "<qr> lacks data or alt.", "It needs the text to encode and the text for people who do not see it.", "", "attribute");
        if (Is(element, "qr") && element.Attribute("data") is { } data && Encoding.UTF8.GetByteCount(data.Value) > MostBytesOfQr)
            problems.Add(TemplateLine.Of(element), $"The text of a <qr> is {Encoding.UTF8.GetByteCount(data.Value)} bytes long.", $"At most {MostBytesOfQr} bytes can still be read from paper.", "Shorten it, for example with the filter truncate.", "qr");
        CheckNumber(element, "colspan", value => int.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out var n) && n is > 0 and < 100, "a whole number from 1 to 99");
        CheckNumber(element, "give", value => int.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out var n) && n is > 0 and < 100, "a whole number from 1 to 99");
        CheckNumber(element, "instead", value => int.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out var n) && n is > 0 and < 100, "a whole number from 1 to 99");
        // A figure has axes and labels, which a photo has not.
        var lowest = Is(element, "figure") ? 80 : 20;
        CheckNumber(element, "height", value => double.TryParse(value, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var n) && n >= lowest && n <= 400, string.Create(CultureInfo.InvariantCulture, $"points from {lowest} to 400"));
        if (Is(element, "bar"))
        {
            foreach (var place in (ReadOnlySpan<string>)["value", "low", "high"])
                CheckNumber(element, place, static value => value.Length == 0 || double.TryParse(value, NumberStyles.Float, CultureInfo.InvariantCulture, out _), "a number, 0 at the lower and 1 at the upper limit");
            if (element.Attribute("value") is null)
                problems.Add(TemplateLine.Of(element), "<bar> lacks value.", "It needs the place of the value on the scale of its limit.", "", "attribute");
        }

        CheckNumber(element, "width", value => MarkupWidth.TryRead(value, out _), "per cent such as 12% or points such as 60");
    }

    private void CheckNumber(XElement element, string attribute, Func<string, bool> isGood, string expected)
    {
        if (element.Attribute(attribute)?.Value is { } value && !isGood(value))
            problems.Add(TemplateLine.Of(element), $"{attribute} is \"{value}\".", $"It must be {expected}.", "", "attribute");
    }

    private static bool Is(XElement element, string name) => string.Equals(element.Name.LocalName, name, StringComparison.Ordinal);

    private static string Listed(MarkupElement rule) =>
        rule.Children.Length == 0 ? "nothing" : string.Join(", ", rule.Children.Order(StringComparer.Ordinal).Select(child => $"<{child}>"));

    private static string Shorten(string text)
    {
        var line = text.Trim();
        return line.Length <= 40 ? line : line[..39] + "…";
    }
}
