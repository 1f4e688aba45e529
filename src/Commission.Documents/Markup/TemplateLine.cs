using System.Xml.Linq;
using Commission.Source;

namespace Commission.Documents.Markup;

/// <summary>Remembers at every element which template line wrote it.</summary>
internal sealed class TemplateLine(SourceLocation at)
{
    public SourceLocation At { get; } = at;

    /// <summary>The template line of an element; of the nearest one outside when it has none.</summary>
    public static SourceLocation Of(XElement element)
    {
        for (var e = element; e is not null; e = e.Parent)
        {
            if (e.Annotation<TemplateLine>() is { } line) return line.At;
        }

        return SourceLocation.WholeFile("template");
    }
}
