using Commission.Messages;

namespace Commission.Source.Yaml;

// A YAML parser speaks about tokens and indicators; a crew needs to know which bracket, quote or colon to look at.
internal static class YamlSyntaxFault
{
    public static Problem Translate(SourceText text, string message, SourceLocation at, (char Bracket, SourceLocation At)? open)
    {
        var tab = TabInIndentation(text, at.Line);
        if (tab is { } tabPlace)
            return Make(tabPlace, YamlMessages.Tab, YamlMessages.TabExpected, YamlMessages.TabNext, "yaml-tab");

        bool Says(string words) => message.Contains(words, StringComparison.OrdinalIgnoreCase);

        if (Says("quoted scalar") && (Says("end of stream") || Says("wrong indentation") || Says("document indicator")))
            return Unquoted(text, at);
        if (open is { } bracket && !Says("cannot start any token") && !Says("escape"))
            return OpenBracket(text, at, bracket.Bracket, bracket.At);
        if (Says("cannot start any token"))
            return Make(at, BadStart(text, at), null, YamlMessages.InQuotes, "yaml-start");

        if (Says("unknown escape") || Says("hexadecimal") || Says("escape code") || Says("surrogates"))
        {
            var backslash = text.Lines[at.Line - 1].IndexOf('\\', Math.Min(at.Column - 1, text.Lines[at.Line - 1].Length));
            return Make(backslash < 0 ? at : at with { Column = backslash + 1 },
                YamlMessages.Escape, null, YamlMessages.EscapeNext, "yaml-escape");
        }

        if (Says("expected ':'") || (Says("expected key") && HasNoColon(text.Lines[at.Line - 1])))
            return Make(at, YamlMessages.LineWithoutColon, YamlMessages.LineWithoutColonExpected, YamlMessages.LineWithoutColonNext, "yaml-colon");
        if (Says("mapping values are not allowed") || Says("invalid mapping"))
        {
            if (text.Lines[at.Line - 1].IndexOf(':', StringComparison.Ordinal) >= at.Column - 1)
                return Make(at, YamlMessages.IndentedFurther, YamlMessages.SameColumn, YamlMessages.IndentedFurtherNext, "yaml-indent");
            return Make(at, YamlMessages.SecondColon, null, YamlMessages.SecondColonNext, "yaml-colon");
        }

        if (Says("block sequence entries"))
            return Make(at, YamlMessages.Dash, null, YamlMessages.DashNext, "yaml-dash");
        if (Says("expected key") || Says("'-' indicator") || Says("<document start>") || Says("document end"))
        {
            return Make(at, YamlMessages.NotInLine, YamlMessages.SameColumn, YamlMessages.NotInLineNext, "yaml-indent");
        }

        if (Says("directive") || Says("%YAML"))
            return Make(at, YamlMessages.Directive, null, YamlMessages.DirectiveNext, "yaml-directive");
        if (Says("anchor") || Says("tag"))
            return Make(at, YamlMessages.Sign, null, YamlMessages.InQuotes, "yaml-sign");
        return Make(at, YamlMessages.NotYaml, null, YamlMessages.NotYamlNext, "yaml");
    }

    private static bool HasNoColon(string line) =>
        line.Trim().Length > 0 && !line.Contains(": ", StringComparison.Ordinal) && !line.TrimEnd().EndsWith(':');

    private static Problem OpenBracket(SourceText text, SourceLocation at, char bracket, SourceLocation opened)
    {
        var closing = bracket == '{' ? "}" : "]";
        if (at.Line > opened.Line || at.Column > text.Lines[at.Line - 1].Length)
        {
            return Make(opened, YamlMessages.BracketOpen(new(bracket.ToString())), YamlMessages.BracketExpected(new(closing)),
                CommentInside(text, opened) is { } hash ? YamlMessages.BracketComment(hash) : YamlMessages.WriteAtEnd(new(closing)), "yaml-bracket");
        }

        var kind = bracket == '{' ? YamlMessages.InsideBracketExpectedKind.Entries : YamlMessages.InsideBracketExpectedKind.Items;
        return Make(at, YamlMessages.InsideBracket(new(bracket.ToString()), opened.Column), YamlMessages.InsideBracketExpected(kind, new(closing)), YamlMessages.InsideBracketNext, "yaml-bracket");
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
                return Make(place, YamlMessages.QuoteOpen(new(quote.ToString())), null, YamlMessages.QuoteOpenNext(new(quote.ToString())), "yaml-quote");
            }
        }

        return Make(at, YamlMessages.SomeQuoteOpen, null, YamlMessages.SomeQuoteOpenNext, "yaml-quote");
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

    private static Message BadStart(SourceText text, SourceLocation at)
    {
        var line = text.Lines[at.Line - 1];
        return at.Column <= line.Length ? YamlMessages.BadStart(new(line[at.Column - 1].ToString())) : YamlMessages.BadStartHere;
    }

    private static Problem Make(SourceLocation at, Message found, Message? expected, Message advice, string code) =>
        new(at, found, expected, advice) { Code = code };
}
