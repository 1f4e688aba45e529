using System.Globalization;
using System.Text;
using System.Xml.Linq;
using Commission.Documents.Fonts;
using Commission.Documents.Markup;
using Commission.Documents.Pictures;

namespace Commission.Documents.Typesetting;

/// <summary>Turns the inline content of an element into runs: blanks collapsed, marks before verdicts, unknown characters replaced.</summary>
internal static class InlineReader
{
    private const char SoftHyphen = '\u00AD';

    /// <summary>Stands for a character that the typeface cannot draw.</summary>
    private const char Missing = '□';

    /// <summary>Reads an element's own inline nodes.</summary>
    public static TextBlock Read(XElement element, TextStyle style)
    {
        var runs = new List<TextRun>();
        if (MarkupClass.Verdict(element) is { } verdict)
        {
            style = Look.VerdictText(style, verdict);
            AddMark(runs, verdict, style);
        }

        Collect(element, style, link: null, runs);
        return new TextBlock(Trimmed(runs));
    }

    /// <summary>Reads a plain text.</summary>
    public static TextBlock Plain(string text, TextStyle style) => new([new TextRun(Drawable(text), style, null)]);

    /// <summary>Reads a plain text with an emphasised title before it.</summary>
    public static TextBlock Titled(string title, string text, TextStyle style) => title.Length == 0
        ? Plain(text, style)
        : new([new TextRun(Drawable(title) + ". ", style.Strong, null), new TextRun(Drawable(text), style, null)]);

    private static void Collect(XElement element, TextStyle style, string? link, List<TextRun> runs)
    {
        foreach (var node in element.Nodes())
        {
            if (node is XText text)
            {
                Add(runs, text.Value, style, link);
                continue;
            }

            if (node is not XElement child || !MarkupElement.IsInline(child.Name.LocalName))
                continue;
            switch (child.Name.LocalName)
            {
                case "br":
                    runs.Add(new TextRun("\n", style, null));
                    break;
                case "strong":
                    Collect(child, style.Strong, link, runs);
                    break;
                case "em":
                    Collect(child, style.Emphasis, link, runs);
                    break;
                case "code":
                    Collect(child, style, link, runs);
                    break;
                case "small":
                    Collect(child, style with { Size = Look.Small }, link, runs);
                    break;
                case "pageref":
                    Add(runs, child.Value, style with { Color = Look.Accent }, child.Attribute("href")!.Value[1..]);
                    break;
                case "a":
                    Collect(child, style with { Color = Look.Accent }, child.Attribute("href")!.Value[1..], runs);
                    break;
                default:
                    CollectSpan(child, style, link, runs);
                    break;
            }
        }
    }

    private static void CollectSpan(XElement span, TextStyle style, string? link, List<TextRun> runs)
    {
        if (MarkupClass.Verdict(span) is { } verdict)
        {
            style = Look.VerdictText(style, verdict);
            AddMark(runs, verdict, style);
        }
        else if (MarkupClass.Has(span, "quiet"))
        {
            // In a heading a quiet remark also steps back in weight and size.
            style = style with { Color = Look.Quiet, Face = style.Face == FontFace.SemiBold ? FontFace.Regular : style.Face, Size = Math.Min(style.Size, Look.Body) };
        }
        else if (MarkupClass.Has(span, "ink"))
        {
            style = style with { Color = Look.Ink };
        }
        else if (MarkupClass.Has(span, "accent"))
        {
            style = style with { Color = Look.Accent };
        }

        Collect(span, style, link, runs);
    }

    private static void AddMark(List<TextRun> runs, string verdict, TextStyle style)
    {
        var mark = VerdictMark.Of(verdict);
        if (mark.Length > 0)
            runs.Add(new TextRun(mark + " ", style.Strong, null));
    }

    private static void Add(List<TextRun> runs, string text, TextStyle style, string? link)
    {
        var collapsed = Collapse(text, runs.Count == 0 || runs[^1].Text[^1] is ' ' or '\n');
        if (collapsed.Length == 0)
            return;
        if (runs.Count > 0 && ReferenceEquals(runs[^1].Style, style) && string.Equals(runs[^1].Link, link, StringComparison.Ordinal))
            runs[^1] = runs[^1] with { Text = runs[^1].Text + collapsed };
        else
            runs.Add(new TextRun(collapsed, style, link));
    }

    private static List<TextRun> Trimmed(List<TextRun> runs)
    {
        while (runs.Count > 0)
        {
            var text = runs[^1].Text.TrimEnd(' ', '\n');
            if (text.Length > 0)
            {
                if (text.Length < runs[^1].Text.Length)
                    runs[^1] = runs[^1] with { Text = text };
                break;
            }

            runs.RemoveAt(runs.Count - 1);
        }

        return runs;
    }

    private static string Collapse(string text, bool afterBlank)
    {
        var output = new StringBuilder(text.Length);
        foreach (var c in text)
        {
            if (c is ' ' or '\t' or '\n' or '\r')
            {
                if (!afterBlank)
                    output.Append(' ');
                afterBlank = true;
            }
            else if (AppendDrawable(output, c))
            {
                afterBlank = false;
            }
        }

        return output.ToString();
    }

    private static string Drawable(string text)
    {
        var output = new StringBuilder(text.Length);
        foreach (var c in text)
            AppendDrawable(output, c is '\t' or '\r' or '\n' ? ' ' : c);
        return output.ToString();
    }

    private static bool AppendDrawable(StringBuilder output, char c)
    {
        if (c != SoftHyphen && FontFace.Regular.Has(c))
        {
            output.Append(c == '\u00A0' ? c : FontFace.Regular.Twin(c));
            return true;
        }

        // The second half of a pair and signs that only steer layout leave nothing.
        if (char.IsLowSurrogate(c) || char.GetUnicodeCategory(c) is UnicodeCategory.Format or UnicodeCategory.Control)
            return false;
        output.Append(Missing);
        return true;
    }
}
