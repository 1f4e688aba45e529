using System.Globalization;
using System.Text;

namespace Commission.Messages.Fluent;

/// <summary>
/// Reads catalogue files in the syntax of Fluent 1.0 (projectfluent.org): messages, terms with arguments, comments, texts over several lines,
/// quoted texts, numbers, variables, references, selectors. Attributes and functions are not supported. Where the standard skips what it
/// cannot read, this is an error with its place: a sentence must not disappear quietly.
/// </summary>
public sealed class FluentParser
{
    private const char End = '\0';

    private readonly string _file;
    private readonly string _text;
    private int _at;
    private int _countedTo;
    private int _lines = 1;
    private int _lineStart;

    private FluentParser(string file, string text)
    {
        _file = file;
        _text = text;
    }

    private char Here => _at < _text.Length ? _text[_at] : End;

    /// <summary>Reads a file.</summary>
    /// <param name="file">The file, as it is to be shown in errors.</param>
    /// <param name="text">Its text.</param>
    /// <returns>Its messages and terms.</returns>
    /// <exception cref="FluentException">The text does not follow the syntax, or uses a part of it that is not supported.</exception>
    public static FluentResource Parse(string file, string text) => new FluentParser(file, text.IndexOf('\r') < 0 ? text : text.Replace("\r\n", "\n")).Resource();

    private FluentResource Resource()
    {
        var entries = new List<FluentEntry>();
        var known = new HashSet<string>();
        var comment = new List<string>();
        while (_at < _text.Length)
        {
            if (SkipBlankLine())
            {
                comment.Clear();
            }
            else if (Here == '#')
            {
                Comment(comment);
            }
            else
            {
                var start = _at;
                var entry = Entry(comment);
                if (!known.Add((entry.IsTerm ? "-" : "") + entry.Id))
                    throw Fault(start, "“" + entry.Id + "” stands in this file twice; give one of them another name");
                entries.Add(entry);
                comment.Clear();
            }
        }

        return new FluentResource(_file, entries);
    }

    // A line of one number sign belongs to what follows it; two head a group, three the file.
    private void Comment(List<string> comment)
    {
        var start = _at;
        while (Here == '#')
            _at++;
        var signs = _at - start;
        if (signs > 3 || Here is not (' ' or '\n' or End))
            throw Fault(start, "a comment is one to three number signs and a space");
        if (Here == ' ')
            _at++;
        var text = RestOfLine();
        if (signs == 1)
            comment.Add(text);
        else
            comment.Clear();
    }

    private FluentEntry Entry(List<string> comment)
    {
        var start = _at;
        var isTerm = Here == '-';
        if (isTerm)
            _at++;
        if (!IsLetter(Here))
            throw Fault(start, Here == ' ' ? "an indented line belongs to no message; a message begins in the first column" : "expected a message (name = text), a term (-name = text) or a comment (# …)");
        var id = Identifier();
        SkipSpaces();
        Expect('=', "“=” after the name " + id);
        SkipSpaces();
        var pattern = Pattern() ?? throw Fault(start, NextLineBegins('.') ? "attributes are not supported: make “" + id + "” a message with a text, and a message of its own of each attribute" : "“" + id + "” has no text");
        if (NextLineBegins('.'))
        {
            SkipBlank();
            throw Fault(_at, "attributes are not supported: make a message of its own of it");
        }

        if (Here is not ('\n' or End))
            throw Fault(_at, "expected the end of the line");
        if (_at < _text.Length)
            _at++;
        return new FluentEntry(id, isTerm, pattern, comment.ToArray(), Place(start).Line);
    }

    // A text goes on over lines that are indented, or begin with a placeable. The indent that all of them share is not part of it.
    private FluentPattern? Pattern()
    {
        var pieces = new List<object>();
        var literal = new StringBuilder();
        var literalAt = _at;
        while (true)
        {
            if (Here == '{')
            {
                Flush();
                pieces.Add(Placeable());
                literalAt = _at;
            }
            else if (Here == '}')
            {
                throw Fault(_at, "a closing brace closes nothing here; written as text it is {\"}\"}");
            }
            else if (Here is '\n' or End)
            {
                if (Continuation() is not { } indent)
                    break;
                Flush();
                pieces.Add(indent);
                literalAt = _at;
            }
            else
            {
                literal.Append(Here);
                _at++;
            }
        }

        Flush();
        return pieces.Count == 0 ? null : new FluentPattern(Joined(pieces));

        void Flush()
        {
            if (literal.Length == 0)
                return;
            var (line, column) = Place(literalAt);
            pieces.Add(new Written(literal.ToString(), line, column));
            literal.Clear();
        }
    }

    // Stands at the end of a line. Moves behind the indent of the next line of text, when there is one.
    private Indent? Continuation()
    {
        var next = _at;
        var lines = 0;
        while (next < _text.Length && _text[next] == '\n')
        {
            var begin = next + 1;
            var content = begin;
            while (content < _text.Length && _text[content] == ' ')
                content++;
            lines++;
            var c = content < _text.Length ? _text[content] : End;
            if (c == '\n')
            {
                next = content;
                continue;
            }

            if (c != '{' && (content == begin || c is End or '}' or '.' or '[' or '*'))
                return null;
            _at = content;
            return new Indent(lines, content - begin);
        }

        return null;
    }

    private static FluentElement[] Joined(List<object> pieces)
    {
        var common = int.MaxValue;
        foreach (var piece in pieces)
        {
            if (piece is Indent i && i.Spaces < common)
                common = i.Spaces;
        }

        var elements = new List<FluentElement>();
        var text = new StringBuilder();
        var (line, column) = (0, 0);
        for (var i = 0; i < pieces.Count; i++)
        {
            switch (pieces[i])
            {
                case Indent indent:
                    // Empty lines before the first line of text are not part of it.
                    text.Append('\n', i == 0 ? 0 : indent.Lines).Append(' ', indent.Spaces - common);
                    break;
                case Written piece:
                    (line, column) = (piece.Line, piece.Column);
                    text.Append(piece.Text);
                    break;
                case FluentElement placeable:
                    Add();
                    elements.Add(placeable);
                    break;
            }
        }

        // Spaces and empty lines at the end are not part of the text.
        while (text.Length > 0 && text[text.Length - 1] is ' ' or '\n')
            text.Length--;
        Add();
        return elements.ToArray();

        void Add()
        {
            if (text.Length == 0)
                return;
            elements.Add(new FluentText(text.ToString(), line, column));
            text.Clear();
        }
    }

    private FluentElement Placeable()
    {
        var open = _at;
        _at++;
        SkipBlank();
        var start = _at;
        var (line, column) = Place(start);
        var expression = Expression(line, column);
        SkipBlank();
        if (Here == '-' && _at + 1 < _text.Length && _text[_at + 1] == '>')
        {
            if (expression is not FluentVariable selector)
                throw Fault(start, "only a variable ($name) can choose between texts");
            _at += 2;
            expression = Select(selector.Name, line, column);
            SkipBlank();
        }

        if (Here == End)
            throw Fault(open, "this brace is never closed");
        Expect('}', "“}”");
        return expression;
    }

    private FluentElement Expression(int line, int column)
    {
        var start = _at;
        switch (Here)
        {
            case '{':
                return Placeable();
            case '"':
                return new FluentText(Quoted(), line, column);
            case '$':
                _at++;
                return new FluentVariable(Identifier(), line, column);
            case '-' when !IsDigit(Next()):
                _at++;
                var term = Identifier();
                RefuseAttribute(start);
                return new FluentReference(term, true, Here == '(' ? Arguments() : [], line, column);
            case var c when c == '-' || IsDigit(c):
                return new FluentText(Number(), line, column);
            case var c when IsLetter(c):
                var id = Identifier();
                RefuseAttribute(start);
                if (Here == '(')
                    throw Fault(start, "functions such as " + id + "() are not supported: how a value is written belongs to the value");
                return new FluentReference(id, false, [], line, column);
            default:
                throw Fault(start, "expected a variable ($name), a term (-name), a message, a quoted text or a number");
        }
    }

    private void RefuseAttribute(int start)
    {
        if (Here == '.')
            throw Fault(start, "attributes are not supported");
    }

    private List<KeyValuePair<string, string>> Arguments()
    {
        var arguments = new List<KeyValuePair<string, string>>();
        _at++;
        SkipBlank();
        while (Here != ')')
        {
            var start = _at;
            if (!IsLetter(Here))
                throw Fault(start, "a term takes arguments by name: (case: \"dative\")");
            var name = Identifier();
            SkipBlank();
            Expect(':', "“:” after " + name + "; a term takes arguments by name: (case: \"dative\")");
            SkipBlank();
            arguments.Add(new(name, Here == '"' ? Quoted() : IsDigit(Here) || Here == '-' ? Number() : throw Fault(_at, "an argument is a quoted text or a number")));
            SkipBlank();
            if (Here != ')')
                Expect(',', "“,” or “)”");
            SkipBlank();
        }

        _at++;
        return arguments;
    }

    private FluentSelect Select(string selector, int line, int column)
    {
        var variants = new List<FluentVariant>();
        var standard = -1;
        SkipSpaces();
        if (Here != '\n')
            throw Fault(_at, "each text of a choice begins on a line of its own");
        while (true)
        {
            SkipBlank();
            var start = _at;
            if (Here == '*')
            {
                if (standard >= 0)
                    throw Fault(start, "only one text can be the one that is taken when no other fits (*)");
                standard = variants.Count;
                _at++;
            }
            else if (Here != '[')
            {
                break;
            }

            variants.Add(Variant());
        }

        if (variants.Count == 0)
            throw Fault(_at, "expected a text with its key: [one] …");
        if (standard < 0)
            throw Fault(_at, "one text must be marked with a star: it is taken when no other fits");
        return new FluentSelect(selector, variants.ToArray(), standard, line, column);
    }

    private FluentVariant Variant()
    {
        var (line, column) = Place(_at);
        Expect('[', "“[”");
        SkipBlank();
        double? number = null;
        string key;
        if (IsDigit(Here) || Here == '-')
        {
            key = Number();
            number = double.Parse(key, CultureInfo.InvariantCulture);
        }
        else
        {
            key = Identifier();
        }

        SkipBlank();
        Expect(']', "“]”");
        SkipSpaces();
        var pattern = Pattern() ?? throw Fault(_at, "[" + key + "] has no text; nothing at all is {\"\"}");
        return new FluentVariant(key, number, pattern, line, column);
    }

    private string Quoted()
    {
        var start = _at;
        var text = new StringBuilder();
        _at++;
        while (Here != '"')
        {
            if (Here is '\n' or End)
                throw Fault(start, "this quoted text is not closed on its line");
            if (Here == '\\')
                Escape(text);
            else
                text.Append(_text[_at++]);
        }

        _at++;
        return text.ToString();
    }

    private void Escape(StringBuilder text)
    {
        var start = _at;
        _at++;
        var kind = Here;
        _at++;
        switch (kind)
        {
            case '"' or '\\':
                text.Append(kind);
                return;
            case 'u' or 'U':
                var digits = kind == 'u' ? 4 : 6;
                var code = 0;
                for (var i = 0; i < digits; i++)
                {
                    var value = "0123456789abcdef".IndexOf(char.ToLowerInvariant(Here));
                    if (value < 0)
                        throw Fault(start, "expected " + digits + " hexadecimal digits of a character");
                    code = (16 * code) + value;
                    _at++;
                }

                if (code > 0x10FFFF)
                    throw Fault(start, "no character has this number; the last one is U+10FFFF");
                // Half of a surrogate pair is no character; the standard puts U+FFFD in its place.
                text.Append(code is >= 0xD800 and <= 0xDFFF ? "\uFFFD" : char.ConvertFromUtf32(code));
                return;
            default:
                throw Fault(start, "a backslash in a quoted text stands before a quotation mark, a backslash, uXXXX or UXXXXXX");
        }
    }

    private string Number()
    {
        var start = _at;
        if (Here == '-')
            _at++;
        Digits();
        if (Here == '.')
        {
            _at++;
            Digits();
        }

        return _text.Substring(start, _at - start);

        void Digits()
        {
            if (!IsDigit(Here))
                throw Fault(_at, "expected a digit");
            while (IsDigit(Here))
                _at++;
        }
    }

    private string Identifier()
    {
        var start = _at;
        if (!IsLetter(Here))
            throw Fault(start, "expected a name, which begins with a letter");
        while (IsLetter(Here) || IsDigit(Here) || Here is '-' or '_')
            _at++;
        return _text.Substring(start, _at - start);
    }

    private string RestOfLine()
    {
        var start = _at;
        var end = _text.IndexOf('\n', start);
        _at = end < 0 ? _text.Length : end + 1;
        return _text.Substring(start, (end < 0 ? _text.Length : end) - start);
    }

    private bool SkipBlankLine()
    {
        var end = _at;
        while (end < _text.Length && _text[end] == ' ')
            end++;
        if (end < _text.Length && _text[end] != '\n')
            return false;
        _at = Math.Min(end + 1, _text.Length);
        return true;
    }

    private bool NextLineBegins(char sign)
    {
        var i = _at;
        while (i < _text.Length && _text[i] is ' ' or '\n')
            i++;
        return i < _text.Length && _text[i] == sign;
    }

    private void SkipSpaces()
    {
        while (Here == ' ')
            _at++;
    }

    private void SkipBlank()
    {
        while (Here is ' ' or '\n')
            _at++;
    }

    private void Expect(char sign, string expected)
    {
        if (Here != sign)
            throw Fault(_at, "expected " + expected + ", found " + (Here is '\n' or End ? "the end of the line" : "“" + Here + "”"));
        _at++;
    }

    private char Next() => _at + 1 < _text.Length ? _text[_at + 1] : End;

    private FluentException Fault(int at, string fault)
    {
        var (line, column) = Place(at);
        return new FluentException(_file, line, column, fault);
    }

    private (int Line, int Column) Place(int at)
    {
        // Places are asked for in the order of the text, but for faults: counting goes on from the last one.
        if (at < _countedTo)
            (_countedTo, _lines, _lineStart) = (0, 1, 0);
        for (; _countedTo < at; _countedTo++)
        {
            if (_text[_countedTo] == '\n')
            {
                _lines++;
                _lineStart = _countedTo + 1;
            }
        }

        return (_lines, at - _lineStart + 1);
    }

    private static bool IsLetter(char c) => c is >= 'a' and <= 'z' or >= 'A' and <= 'Z';

    private static bool IsDigit(char c) => c is >= '0' and <= '9';

    // Text between placeables: its blanks at the end of the whole text are dropped, those of a quoted text are not.
    private sealed class Written(string text, int line, int column)
    {
        public string Text { get; } = text;

        public int Line { get; } = line;

        public int Column { get; } = column;
    }

    private sealed class Indent(int lines, int spaces)
    {
        public int Lines { get; } = lines;

        public int Spaces { get; } = spaces;
    }
}
