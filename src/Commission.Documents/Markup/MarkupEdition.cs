using System.Xml.Linq;

namespace Commission.Documents.Markup;

/// <summary>What of the markup one kind of pages leaves out.</summary>
internal static class MarkupEdition
{
    /// <summary>Class of what proves each number: always on the screen, on paper when it is asked for.</summary>
    private const string Annex = "annex";

    /// <summary>Class of what stands on paper where the annex does not.</summary>
    private const string InsteadOfAnnex = "instead-of-annex";

    /// <summary>Class of what helps on a screen only.</summary>
    private const string OnScreen = "screen";

    /// <summary>What a screen shows: all of the annex, and nothing that stands in for what paper has no room for.</summary>
    /// <param name="markup">The markup; it stays as it is.</param>
    public static XDocument Screen(XDocument markup) => Without(markup, element => MarkupClass.Has(element, InsteadOfAnnex) || element.Attribute("instead") is not null);

    /// <summary>What paper shows.</summary>
    /// <param name="markup">The markup; it stays as it is.</param>
    /// <param name="isAnnexFull">Whether the annex is printed.</param>
    public static XDocument Paper(XDocument markup, bool isAnnexFull) => Without(markup, element => MarkupClass.Has(element, OnScreen) || MarkupClass.Has(element, isAnnexFull ? InsteadOfAnnex : Annex));

    // Links that led into what is left out become plain text.
    private static XDocument Without(XDocument markup, Func<XElement, bool> isLeft)
    {
        var edition = new XDocument(markup);
        foreach (var element in edition.Descendants().Where(isLeft).ToList())
            element.Remove();
        var ids = edition.Descendants().Select(element => element.Attribute("id")?.Value).OfType<string>().ToHashSet(StringComparer.Ordinal);
        foreach (var link in edition.Descendants().Where(link => link.Name.LocalName is "a" or "pageref").Where(link => !ids.Contains(link.Attribute("href")!.Value[1..])).ToList())
            link.ReplaceWith(link.Nodes());
        HeadingLevels.Assign(edition.Root!);
        return edition;
    }
}
