using System.Xml.Linq;

namespace Commission.Documents.Markup;

/// <summary>Reads the class attribute.</summary>
internal static class MarkupClass
{
    /// <summary>True when an element carries a class.</summary>
    public static bool Has(XElement element, string name)
    {
        if (element.Attribute("class")?.Value is not { } classes) return false;
        foreach (var part in classes.AsSpan().Split(' '))
        {
            if (classes.AsSpan(part).Equals(name, StringComparison.Ordinal)) return true;
        }

        return false;
    }

    /// <summary>The verdict class beside <c>verdict</c>; null when the element shows no verdict.</summary>
    public static string? Verdict(XElement element)
    {
        if (!Has(element, "verdict")) return null;
        foreach (var name in VerdictMark.Classes)
        {
            if (Has(element, name)) return name;
        }

        return null;
    }
}
