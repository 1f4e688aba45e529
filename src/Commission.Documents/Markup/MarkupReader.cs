using System.Globalization;
using System.Xml;
using System.Xml.Linq;
using Commission.Messages;
using Commission.Source;

namespace Commission.Documents.Markup;

/// <summary>
/// Reads what a template wrote: XML without a document type, restricted to the elements that templates/README.md lists.
/// Every fault is reported at once with the template line it came from; XML that does not parse reports its first fault.
/// </summary>
internal static class MarkupReader
{
    private const int DeepestNesting = 60;

    /// <summary>Reads and checks markup.</summary>
    /// <param name="xml">The text a template gave, with <c>&lt;?at file:line?&gt;</c> marks before its elements.</param>
    /// <param name="hasFigure">Whether the record has a figure of an identifier.</param>
    /// <param name="hasPhoto">Whether there is a photo of a name.</param>
    /// <param name="problems">Receives what is wrong.</param>
    /// <returns>The document, without the marks; null when something is wrong.</returns>
    public static XDocument? Read(string xml, Func<string, bool> hasFigure, Func<string, bool> hasPhoto, ProblemList problems)
    {
        var before = problems.Count;
        var document = Parse(xml, problems);
        if (document is not null)
            new MarkupCheck(hasFigure, hasPhoto, problems).Run(document);
        return problems.Count == before ? document : null;
    }

    private static XDocument? Parse(string xml, ProblemList problems)
    {
        var settings = new XmlReaderSettings { DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null, IgnoreComments = true };
        var at = SourceLocation.WholeFile("record.liquid");
        var document = new XDocument();
        XContainer parent = document;
        var depth = 0;
        try
        {
            using var reader = XmlReader.Create(new StringReader(xml), settings);
            while (reader.Read())
            {
                switch (reader.NodeType)
                {
                    case XmlNodeType.ProcessingInstruction when string.Equals(reader.Name, "at", StringComparison.Ordinal):
                        at = Place(reader.Value);
                        break;
                    case XmlNodeType.Element:
                        if (++depth > DeepestNesting)
                        {
                            problems.Add(at, TemplateMessages.NestedTooDeep, null, TemplateMessages.NestedTooDeepNext, "nesting");
                            return null;
                        }

                        var (element, isEmpty) = Element(reader, at);
                        parent.Add(element);
                        if (isEmpty)
                            depth--;
                        else
                            parent = element;
                        break;
                    case XmlNodeType.EndElement:
                        depth--;
                        parent = parent.Parent ?? (XContainer)document;
                        break;
                    case XmlNodeType.Text or XmlNodeType.CDATA or XmlNodeType.SignificantWhitespace or XmlNodeType.Whitespace when parent is XElement inside:
                        inside.Add(new XText(reader.Value));
                        break;
                    default:
                        break;
                }
            }
        }
        catch (XmlException broken)
        {
            // The parser's own sentence speaks of its grammar; where it stopped and what usually causes it help more.
            problems.Add(at, TemplateMessages.NotXml(new(Near(xml, broken))), TemplateMessages.NotXmlExpected, TemplateMessages.NotXmlNext, "xml");
            return null;
        }

        return document;
    }

    private static (XElement Element, bool IsEmpty) Element(XmlReader reader, SourceLocation at)
    {
        var element = new XElement(XName.Get(reader.LocalName, reader.NamespaceURI));
        element.AddAnnotation(new TemplateLine(at));
        var isEmpty = reader.IsEmptyElement;
        while (reader.MoveToNextAttribute())
            element.Add(new XAttribute(XName.Get(reader.LocalName, string.Equals(reader.Prefix, "xmlns", StringComparison.Ordinal) ? "xmlns" : ""), reader.Value));
        return (element, isEmpty);
    }

    private static SourceLocation Place(string mark)
    {
        var colon = mark.LastIndexOf(':');
        return colon > 0 && int.TryParse(mark.AsSpan(colon + 1), NumberStyles.None, CultureInfo.InvariantCulture, out var line)
            ? new SourceLocation(mark[..colon], line, 0)
            : SourceLocation.WholeFile(mark);
    }

    private static string Near(string xml, XmlException broken)
    {
        var start = 0;
        for (var line = 1; line < broken.LineNumber; line++)
        {
            var next = xml.IndexOf('\n', start);
            if (next < 0)
                break;
            start = next + 1;
        }

        var at = Math.Clamp(start + broken.LinePosition - 1, 0, xml.Length);
        var from = Math.Max(start, at - 30);
        var end = xml.IndexOf('\n', at);
        var to = Math.Min(end < 0 ? xml.Length : end, at + 30);
        return $"\"{xml[from..Math.Max(from, to)].Trim()}\".";
    }
}

/// <summary>Remembers at every element which template line wrote it.</summary>
internal sealed class TemplateLine(SourceLocation at)
{
    public SourceLocation At { get; } = at;

    /// <summary>The template line of an element; of the nearest one outside when it has none.</summary>
    public static SourceLocation Of(XElement element)
    {
        for (var e = element; e is not null; e = e.Parent)
        {
            if (e.Annotation<TemplateLine>() is { } line)
                return line.At;
        }

        return SourceLocation.WholeFile("template");
    }
}
