using System.Globalization;
using System.Xml.Linq;

namespace Commission.Documents.Markup;

/// <summary>
/// The level of each heading as readers for the blind count: without a gap (ISO 14289-1, 7.4.2), whatever size the template set it in. Worked out
/// for what a kind of pages shows, since a part that is left out takes its headings with it.
/// </summary>
internal static class HeadingLevels
{
    /// <summary>The attribute that carries it, from 1.</summary>
    public const string Attribute = "level";

    /// <summary>Gives every heading its level.</summary>
    public static void Assign(XElement root)
    {
        var above = new Stack<int>();
        foreach (var heading in root.Descendants().Where(element => element.Name.LocalName is "h1" or "h2" or "h3"))
        {
            var asked = heading.Name.LocalName[1] - '0';
            while (above.TryPeek(out var outer) && outer >= asked)
                above.Pop();
            above.Push(asked);
            heading.SetAttributeValue(Attribute, above.Count.ToString(CultureInfo.InvariantCulture));
        }
    }
}
