using System.Globalization;
using System.Text;

namespace Commission.Documents.Html;

/// <summary>Collects HTML; what comes from people is escaped, what comes from the program is not.</summary>
internal sealed class HtmlText(int capacity)
{
    private readonly StringBuilder _text = new(capacity);

    /// <summary>Adds HTML written by the program.</summary>
    public HtmlText Raw(string html)
    {
        _text.Append(html);
        return this;
    }

    /// <summary>Adds a number.</summary>
    public HtmlText Number(double value)
    {
        _text.Append(CultureInfo.InvariantCulture, $"{Math.Round(value, 1) + 0.0:0.#}");
        return this;
    }

    /// <summary>Adds text of an element.</summary>
    public HtmlText Text(string text) => Escaped(text, quotes: false);

    /// <summary>Adds the value of an attribute, between double quotes that the caller writes.</summary>
    public HtmlText Attribute(string text) => Escaped(text, quotes: true);

    /// <inheritdoc/>
    public override string ToString() => _text.ToString();

    private HtmlText Escaped(string text, bool quotes)
    {
        foreach (var c in text)
        {
            switch (c)
            {
                case '&':
                    _text.Append("&amp;");
                    break;
                case '<':
                    _text.Append("&lt;");
                    break;
                case '>':
                    _text.Append("&gt;");
                    break;
                case '"' when quotes:
                    _text.Append("&quot;");
                    break;
                default:
                    _text.Append(c);
                    break;
            }
        }

        return this;
    }
}
