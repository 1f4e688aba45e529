using System.Xml.Linq;
using Commission.Documents.Markup;

namespace Commission.Documents.Html;

/// <summary>The list of sections: every second-level heading, with the place a link to it goes to.</summary>
internal sealed class HtmlContents
{
    private readonly Dictionary<XElement, string> _ids = [];
    private readonly List<(string Id, string Title)> _entries = [];

    private HtmlContents()
    {
    }

    /// <summary>Reads the headings of a document.</summary>
    public static HtmlContents Of(XElement root)
    {
        var contents = new HtmlContents();
        var taken = root.DescendantsAndSelf().Select(element => element.Attribute("id")?.Value).OfType<string>().ToHashSet(StringComparer.Ordinal);
        foreach (var heading in root.Descendants("h2"))
        {
            var title = Title(heading);
            if (title.Length == 0)
                continue;
            contents._entries.Add((contents.Place(heading, taken), title));
        }

        return contents;
    }

    /// <summary>The identifier that a heading got because it had none and its section has none.</summary>
    /// <param name="heading">The heading.</param>
    /// <returns>The identifier; null when it needs none.</returns>
    public string? IdOf(XElement heading) => _ids.GetValueOrDefault(heading);

    /// <summary>Writes the navigation; nothing when there is at most one section.</summary>
    /// <param name="page">The page.</param>
    /// <param name="name">What it is called.</param>
    public void WriteNavigation(HtmlText page, string name)
    {
        if (_entries.Count < 2)
            return;
        page.Raw("<nav aria-label=\"").Attribute(name).Raw("\"><details><summary>").Text(name).Raw("</summary><ul>\n");
        foreach (var (id, title) in _entries)
            page.Raw("<li><a href=\"#").Attribute(id).Raw("\">").Text(title).Raw("</a></li>\n");
        page.Raw("</ul></details></nav>\n");
    }

    private string Place(XElement heading, HashSet<string> taken)
    {
        if (heading.Attribute("id")?.Value is { } own)
            return own;
        if (heading.Parent is { } section && section.Attribute("id")?.Value is { } id && section.Elements().First() == heading)
            return id;
        var number = _ids.Count + 1;
        string made;
        while (!taken.Add(made = FormattableString.Invariant($"part-{number}")))
            number++;
        _ids.Add(heading, made);
        return made;
    }

    // Quiet remarks beside a heading ("nothing was written") do not belong into the list.
    private static string Title(XElement heading)
        => string.Concat(heading.DescendantNodes().OfType<XText>().Where(text => !text.Ancestors("span").Any(span => MarkupClass.Has(span, "quiet"))).Select(text => text.Value)).Trim();
}
