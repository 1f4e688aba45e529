using System.Globalization;
using System.Xml.Linq;

namespace Commission.Documents.Markup;

/// <summary>Reads the class attribute.</summary>
internal static class MarkupClass
{
    /// <summary>True when an element carries a class.</summary>
    public static bool Has(XElement element, string name)
    {
        if (element.Attribute("class")?.Value is not { } classes)
            return false;
        foreach (var part in classes.AsSpan().Split(' '))
        {
            if (classes.AsSpan(part).Equals(name, StringComparison.Ordinal))
                return true;
        }

        return false;
    }

    /// <summary>The verdict class beside <c>verdict</c>; null when the element shows no verdict.</summary>
    public static string? Verdict(XElement element)
    {
        if (!Has(element, "verdict"))
            return null;
        foreach (var name in VerdictMark.Classes)
        {
            if (Has(element, name))
                return name;
        }

        return null;
    }
}

/// <summary>A width as markup gives it: a share of the room there is, or points.</summary>
/// <param name="Amount">Per cent (0 to 100) or points.</param>
/// <param name="IsShare">True for per cent.</param>
internal readonly record struct MarkupWidth(double Amount, bool IsShare)
{
    public static bool TryRead(string text, out MarkupWidth width)
    {
        var isShare = text.EndsWith('%');
        var number = isShare ? text.AsSpan(0, text.Length - 1) : text.EndsWith("pt", StringComparison.Ordinal) ? text.AsSpan(0, text.Length - 2) : text;
        var good = double.TryParse(number, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var amount) && amount > 0 && amount <= (isShare ? 100 : 2000);
        width = good ? new MarkupWidth(amount, isShare) : default;
        return good;
    }

    /// <summary>The width in points within the room given.</summary>
    public double Points(double room) => IsShare ? room * Amount / 100 : Math.Min(Amount, room);
}

/// <summary>
/// The mark that stands before a verdict's word. Each has a shape of its own, so that a page printed in grey or read without
/// colours says the same.
/// </summary>
internal static class VerdictMark
{
    /// <summary>Verdict classes of the markup.</summary>
    public static IReadOnlyList<string> Classes { get; } = ["pass", "pass-within-uncertainty", "conditional", "fail", "cannot-decide", "not-evaluated", "information"];

    /// <summary>The mark of a verdict class; empty for information, which judges nothing.</summary>
    public static string Of(string verdictClass) => verdictClass switch
    {
        "pass" => "✓",
        "pass-within-uncertainty" => "(✓)",
        "conditional" => "△",
        "fail" => "✗",
        "cannot-decide" => "?",
        "not-evaluated" => "□",
        _ => "",
    };
}
