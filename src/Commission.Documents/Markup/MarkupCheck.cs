using System.Globalization;
using System.Text;
using System.Xml.Linq;
using Commission.Messages;
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
            problems.Add(TemplateLine.Of(root), TemplateMessages.WrongRoot(Tag(root.Name.LocalName)), TemplateMessages.WrongRootExpected, TemplateMessages.WrongRootNext, "root");
            return;
        }

        Check(root);
        foreach (var link in _links)
        {
            var target = link.Attribute("href")?.Value ?? "";
            if (target.Length < 2 || target[0] != '#' || !_ids.Contains(target[1..]))
                problems.Add(TemplateLine.Of(link), TemplateMessages.DeadLink(new(target)), TemplateMessages.DeadLinkExpected, TemplateMessages.DeadLinkNext, "link");
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
                    problems.Add(TemplateLine.Of(element), TemplateMessages.StrayText(Tag(name), new(Shorten(text.Value))), null, TemplateMessages.StrayTextNext(Tag(name)), "text");
            }
            else if (node is XElement child)
            {
                var childName = child.Name.LocalName;
                if (MarkupElement.Of(childName) is not null && Array.IndexOf(rule.Children, childName) < 0)
                    problems.Add(TemplateLine.Of(child), TemplateMessages.WrongChild(Tag(childName), Tag(name)), Listed(name, rule), null, "place");
                Check(child);
            }
        }
    }

    private void Unknown(XElement element, string name)
    {
        var nearest = NearestName.Of(name, MarkupElement.Names);
        problems.Add(
            TemplateLine.Of(element),
            TemplateMessages.NoElement(Tag(name)),
            nearest is null ? null : TemplateMessages.DidYouMean(Tag(nearest)),
            TemplateMessages.NoElementNext,
            "element");
    }

    private void CheckAttributes(XElement element, string name, MarkupElement rule)
    {
        foreach (var attribute in element.Attributes())
        {
            if (Array.IndexOf(rule.Attributes, attribute.Name.LocalName) >= 0)
                continue;
            var nearest = NearestName.Of(attribute.Name.LocalName, rule.Attributes);
            problems.Add(TemplateLine.Of(element), TemplateMessages.NoAttribute(Tag(name), new(attribute.Name.LocalName)), nearest is null ? null : TemplateMessages.DidYouMean(new($"\"{nearest}\"")), null, "attribute");
        }

        if (element.Attribute("id")?.Value is { } id && !_ids.Add(id))
            problems.Add(TemplateLine.Of(element), TemplateMessages.IdTwice(new(id)), null, TemplateMessages.IdTwiceNext, "id");
        if (Is(element, "a") || Is(element, "pageref"))
            _links.Add(element);
        if (Is(element, "pageref") && !element.Ancestors("section").Any(s => MarkupClass.Has(s, "one-page")))
            problems.Add(TemplateLine.Of(element), TemplateMessages.PagerefOutside, TemplateMessages.PagerefOutsideExpected, TemplateMessages.PagerefOutsideNext(new("<a href=\"#…\">")), "pageref");
        if (Is(element, "section") && MarkupClass.Has(element, "one-page") && (element.Parent is not { Name.LocalName: "body" } || element.ElementsBeforeSelf().Any()))
            problems.Add(TemplateLine.Of(element), TemplateMessages.OnePageNotFirst, TemplateMessages.OnePageNotFirstExpected, TemplateMessages.OnePageNotFirstNext, "one-page");
        if (Is(element, "figure") && (element.Attribute("data-plot")?.Value is not { } plot || !hasFigure(plot)))
            problems.Add(TemplateLine.Of(element), TemplateMessages.NoFigure(new(element.Attribute("data-plot")?.Value ?? "")), null, TemplateMessages.NoFigureNext, "figure");
        if (Is(element, "photo") && (element.Attribute("file")?.Value is not { } file || !hasPhoto(file)))
            problems.Add(TemplateLine.Of(element), TemplateMessages.NoPhoto(new(element.Attribute("file")?.Value ?? "")), null, TemplateMessages.NoPhotoNext, "photo");
        if (Is(element, "photo") && element.Attribute("alt") is null)
            problems.Add(TemplateLine.Of(element), TemplateMessages.Lacks(Tag("photo"), new("alt")), TemplateMessages.PhotoAlt, null, "attribute");
        if (Is(element, "sign") && (element.Attribute("field")?.Value is not { Length: > 0 } || element.Attribute("alt") is null))
            problems.Add(TemplateLine.Of(element), TemplateMessages.LacksOne(Tag("sign"), new("field"), new("alt")), TemplateMessages.SignNeeds, null, "attribute");
        if (Is(element, "sign") && element.Attribute("field")?.Value is { } field && !_fields.Add(field))
            problems.Add(TemplateLine.Of(element), TemplateMessages.FieldTwice(new(field)), null, TemplateMessages.FieldTwiceNext, "field");
        if (Is(element, "qr") && (element.Attribute("data") is null || element.Attribute("alt") is null))
            problems.Add(TemplateLine.Of(element), TemplateMessages.LacksOne(Tag("qr"), new("data"), new("alt")), TemplateMessages.QrNeeds, null, "attribute");
        if (Is(element, "qr") && element.Attribute("data") is { } data && Encoding.UTF8.GetByteCount(data.Value) > MostBytesOfQr)
            problems.Add(TemplateLine.Of(element), TemplateMessages.QrTooLong(Encoding.UTF8.GetByteCount(data.Value)), TemplateMessages.QrTooLongExpected(MostBytesOfQr), TemplateMessages.QrTooLongNext, "qr");
        CheckNumber(element, "colspan", value => int.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out var n) && n is > 0 and < 100, TemplateMessages.WholeNumber);
        CheckNumber(element, "give", value => int.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out var n) && n is > 0 and < 100, TemplateMessages.WholeNumber);
        CheckNumber(element, "instead", value => int.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out var n) && n is > 0 and < 100, TemplateMessages.WholeNumber);
        // A figure has axes and labels, which a photo has not.
        var lowest = Is(element, "figure") ? 80 : 20;
        CheckNumber(element, "height", value => double.TryParse(value, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var n) && n >= lowest && n <= 400, TemplateMessages.PointsFrom(lowest));
        if (Is(element, "bar"))
        {
            foreach (var place in (ReadOnlySpan<string>)["value", "low", "high"])
                CheckNumber(element, place, static value => value.Length == 0 || double.TryParse(value, NumberStyles.Float, CultureInfo.InvariantCulture, out _), TemplateMessages.PlaceOnScale);
            if (element.Attribute("value") is null)
                problems.Add(TemplateLine.Of(element), TemplateMessages.Lacks(Tag("bar"), new("value")), TemplateMessages.BarNeeds, null, "attribute");
        }

        CheckNumber(element, "width", value => MarkupWidth.TryRead(value, out _), TemplateMessages.Width);
    }

    private void CheckNumber(XElement element, string attribute, Func<string, bool> isGood, Message expected)
    {
        if (element.Attribute(attribute)?.Value is { } value && !isGood(value))
            problems.Add(TemplateLine.Of(element), TemplateMessages.AttributeIs(new(attribute), new(value)), expected, null, "attribute");
    }

    private static bool Is(XElement element, string name) => string.Equals(element.Name.LocalName, name, StringComparison.Ordinal);

    private static NameValue Tag(string element) => new($"<{element}>");

    private static Message Listed(string name, MarkupElement rule) => rule.Children.Length == 0
        ? TemplateMessages.MayHoldNothing(Tag(name))
        : TemplateMessages.MayHold(Tag(name), new([.. rule.Children.Order(StringComparer.Ordinal).Select(Tag)], ListJoin.Comma));

    private static string Shorten(string text)
    {
        var line = text.Trim();
        return line.Length <= 40 ? line : line[..39] + "…";
    }
}
