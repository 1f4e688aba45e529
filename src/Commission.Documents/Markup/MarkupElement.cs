namespace Commission.Documents.Markup;

/// <summary>What the subset allows for one element: its attributes and what may stand inside.</summary>
internal sealed class MarkupElement
{
    private static readonly string[] Inline = ["strong", "em", "code", "small", "br", "span", "a", "pageref"];
    private static readonly string[] Blocks = ["section", "div", "h1", "h2", "h3", "p", "ul", "ol", "table", "figure", "photo", "qr", "aside", "hr", "sign", "page-break"];

    private static readonly Dictionary<string, MarkupElement> Table = Build();

    private MarkupElement(bool text, string[] attributes, string[] children)
    {
        AllowsText = text;
        Attributes = attributes;
        Children = children;
    }

    /// <summary>True when text may stand directly inside.</summary>
    public bool AllowsText { get; }

    /// <summary>The attributes it may have.</summary>
    public string[] Attributes { get; }

    /// <summary>The elements that may stand directly inside.</summary>
    public string[] Children { get; }

    /// <summary>Names of all elements, for the nearest name.</summary>
    public static IEnumerable<string> Names => Table.Keys.Order(StringComparer.Ordinal);

    /// <summary>The rule for an element; null when the subset does not know it.</summary>
    public static MarkupElement? Of(string name) => Table.GetValueOrDefault(name);

    /// <summary>True for an element that stands in a line of text.</summary>
    public static bool IsInline(string name) => Array.IndexOf(Inline, name) >= 0;

    private static Dictionary<string, MarkupElement> Build()
    {
        string[] common = ["id", "class", "give", "instead"];
        string[] cell = ["id", "class", "width", "colspan", "scope"];
        string[] mixed = [.. Blocks, .. Inline];
        var flow = new MarkupElement(false, common, Blocks);
        var line = new MarkupElement(true, common, Inline);
        var item = new MarkupElement(true, common, [.. Inline, "ul", "ol"]);
        var row = new MarkupElement(false, common, ["th", "td"]);
        var rows = new MarkupElement(false, common, ["tr"]);
        return new Dictionary<string, MarkupElement>(StringComparer.Ordinal)
        {
            ["body"] = new(false, ["lang", "title"], Blocks),
            ["section"] = flow,
            ["div"] = new(false, [.. common, "width"], Blocks),
            ["h1"] = line,
            ["h2"] = line,
            ["h3"] = line,
            ["p"] = line,
            ["ul"] = new(false, common, ["li"]),
            ["ol"] = new(false, common, ["li"]),
            ["li"] = item,
            ["table"] = new(false, common, ["caption", "thead", "tbody", "tr"]),
            ["caption"] = line,
            ["thead"] = rows,
            ["tbody"] = rows,
            ["tr"] = row,
            ["th"] = new(true, cell, Inline),
            ["td"] = new(true, cell, [.. Inline, "bar"]),
            ["bar"] = new(false, ["class", "value", "low", "high", "lower", "upper"], []),
            ["figure"] = new(false, [.. common, "data-plot", "height"], ["figcaption"]),
            ["figcaption"] = line,
            ["photo"] = new(false, ["file", "alt", "class", "height"], []),
            ["qr"] = new(false, ["id", "class", "data", "alt", "width"], []),
            ["aside"] = new(true, common, mixed),
            ["hr"] = new(false, common, []),
            ["sign"] = new(false, ["field", "alt", "class"], []),
            ["page-break"] = new(false, [], []),
            ["strong"] = line,
            ["em"] = line,
            ["code"] = line,
            ["small"] = line,
            ["span"] = line,
            ["br"] = new(false, [], []),
            ["a"] = new(true, ["href", "class"], Inline),
            ["pageref"] = new(false, ["href"], []),
        };
    }
}
