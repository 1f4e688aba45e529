using System.Globalization;

namespace Commission.Source.Yaml;

// A YAML parser speaks about tokens and indicators; a crew needs to know which bracket, quote or colon to look at.
internal static class YamlSyntaxFault
{
    public static Problem Translate(SourceText text, string message, SourceLocation at, (char Bracket, SourceLocation At)? open)
    {
        var tab = TabInIndentation(text, at.Line);
        if (tab is { } tabPlace)
            return Make(tabPlace, "A tab stands in the indentation.", "Only spaces indent.", "Replace it by spaces.", "yaml-tab");

        bool Says(string words) => message.Contains(words, StringComparison.OrdinalIgnoreCase);

        if (Says("quoted scalar") && (Says("end of stream") || Says("wrong indentation") || Says("document indicator")))
            return Unquoted(text, at);
        if (open is { } bracket && !Says("cannot start any token") && !Says("escape"))
            return OpenBracket(text, at, bracket.Bracket, bracket.At);
        if (Says("cannot start any token"))
        {
            var c = CharacterAt(text, at);
            return Make(at, $"A value cannot begin with {c}.", "", "Put the value in quotes.", "yaml-start");
        }

        if (Says("unknown escape") || Says("hexadecimal") || Says("escape code") || Says("surrogates"))
        {
            var backslash = text.Lines[at.Line - 1].IndexOf('\\', Math.Min(at.Column - 1, text.Lines[at.Line - 1].Length));
            return Make(backslash < 0 ? at : at with { Column = backslash + 1 },
                "A backslash in double quotes begins an escape, and this one does not exist.", "",
                "Use single quotes, or write \\\\ for a backslash.", "yaml-escape");
        }

        if (Says("expected ':'") || (Says("expected key") && HasNoColon(text.Lines[at.Line - 1])))
            return Make(at, "This line has no colon.", "A key is followed by a colon and a space.", "Write key: value.", "yaml-colon");
        if (Says("mapping values are not allowed") || Says("invalid mapping"))
        {
            if (text.Lines[at.Line - 1].IndexOf(':', StringComparison.Ordinal) >= at.Column - 1)
                return Make(at, "This line is indented further than its neighbours.", "Keys of one block begin in the same column.", "Correct the indentation.", "yaml-indent");
            return Make(at, "A second colon stands in this line.", "",
                "Put a value that contains a colon in quotes.", "yaml-colon");
        }

        if (Says("block sequence entries"))
            return Make(at, "A dash stands where a list cannot begin.", "", "Begin the list on a line of its own, below its key.", "yaml-dash");
        if (Says("expected key") || Says("'-' indicator") || Says("<document start>") || Says("document end"))
        {
            return Make(at, "This line does not line up with the ones above.", "Keys of one block begin in the same column.",
                "Correct the indentation of this line or of the one before.", "yaml-indent");
        }

        if (Says("directive") || Says("%YAML"))
            return Make(at, "A line that begins with %.", "", "Delete it: a job file needs none.", "yaml-directive");
        if (Says("anchor") || Says("tag"))
            return Make(at, "A value that begins with & * or ! is read as a YAML sign.", "", "Put the value in quotes.", "yaml-sign");
        return Make(at, "This is not YAML.", "", "Look at this line and the one before it: quotes, colons, brackets, indentation.", "yaml");
    }

    private static bool HasNoColon(string line) =>
        line.Trim().Length > 0 && !line.Contains(": ", StringComparison.Ordinal) && !line.TrimEnd().EndsWith(':');

    private static Problem OpenBracket(SourceText text, SourceLocation at, char bracket, SourceLocation opened)
    {
        var closing = bracket == '{' ? '}' : ']';
        if (at.Line > opened.Line || at.Column > text.Lines[at.Line - 1].Length)
        {
            return Make(opened, $"This {bracket} is never closed.", $"A {closing} is expected.",
                CommentInside(text, opened) is { } hash
                    ? $"The # in column {hash.ToString(CultureInfo.InvariantCulture)} begins a comment and hides the rest of the line: put that value in quotes."
                    : $"Write {closing} at its end.", "yaml-bracket");
        }

        var between = bracket == '{' ? "between two entries" : "between two items";
        return Make(at, string.Create(CultureInfo.InvariantCulture, $"Something is wrong inside the {bracket} that opens in column {opened.Column}."),
            $"A comma is expected {between}, and {closing} at the end.", "Put a value that holds a comma, colon, bracket or quote in quotes.", "yaml-bracket");
    }

    private static Problem Unquoted(SourceText text, SourceLocation at)
    {
        // The fault is noticed at the end of the file; the mistake is the quote that was opened.
        for (var line = at.Line; line >= 1; line--)
        {
            var content = text.Lines[line - 1];
            foreach (var quote in new[] { '"', '\'' })
            {
                if (content.Count(c => c == quote) % 2 == 0)
                    continue;
                var place = new SourceLocation(at.File, line, content.IndexOf(quote, StringComparison.Ordinal) + 1);
                return Make(place, $"A quote {quote} is opened and never closed.", "", $"Write {quote} at the end of the value.", "yaml-quote");
            }
        }

        return Make(at, "A quote is opened and never closed.", "", "Write the quote at the end of the value.", "yaml-quote");
    }

    private static int? CommentInside(SourceText text, SourceLocation opened)
    {
        var line = text.Lines[opened.Line - 1];
        var hash = line.IndexOf(" #", Math.Min(opened.Column - 1, line.Length), StringComparison.Ordinal);
        return hash < 0 ? null : hash + 2;
    }

    // The library's place for a tab is the first character of the file: look for the tab itself.
    private static SourceLocation? TabInIndentation(SourceText text, int upTo)
    {
        for (var line = 1; line <= text.Lines.Count; line++)
        {
            if (upTo > 1 && line > upTo)
                return null;
            var content = text.Lines[line - 1];
            var indent = content.TakeWhile(c => c is ' ' or '\t').Count();
            var tab = content.IndexOf('\t', StringComparison.Ordinal);
            if (tab >= 0 && tab < indent && indent < content.Length && content[indent] != '#')
                return new SourceLocation(text.File, line, tab + 1);
        }

        return null;
    }

    private static string CharacterAt(SourceText text, SourceLocation at)
    {
        var line = text.Lines[at.Line - 1];
        return at.Column <= line.Length ? line[at.Column - 1].ToString() : "this character";
    }

    private static Problem Make(SourceLocation at, string found, string expected, string advice, string code) =>
        new(at, found, expected, advice) { Code = code };
}
