using Commission.Documents.Pictures;

namespace Commission.Documents.Typesetting;

/// <summary>
/// The runs of one paragraph, measured once: natural width, least width, and lines for any width. Lines break at spaces, but not
/// between a number and its unit; a word wider than the line breaks where it must.
/// </summary>
internal sealed class TextBlock
{
    private static readonly HashSet<string> Units = new(StringComparer.Ordinal)
    {
        "psig", "psia", "psi", "kPa", "Pa", "MPa", "bar", "micron", "mbar", "min", "s", "h", "lb", "oz", "kg", "g", "A", "V", "W", "kW", "Hz", "ft", "in",
        "mm", "m", "K", "cfm", "inwc", "ton", "kJ/kg", "years", "months",
    };

    private static readonly HashSet<string>.AlternateLookup<ReadOnlySpan<char>> UnitLookup = Units.GetAlternateLookup<ReadOnlySpan<char>>();

    // Looks like a blank and shares its glyph, so it must be drawn as one to be copied as one.
    private const char Unbroken = '\u00A0';

    private readonly IReadOnlyList<TextRun> _runs;
    private readonly int[] _starts;
    private readonly string _text;
    private readonly double[] _position;

    public TextBlock(IReadOnlyList<TextRun> runs)
    {
        _runs = runs;
        _starts = new int[runs.Count + 1];
        for (var r = 0; r < runs.Count; r++)
            _starts[r + 1] = _starts[r] + runs[r].Text.Length;
        _text = runs.Count == 1 ? runs[0].Text : string.Concat(runs.Select(run => run.Text));
        _position = new double[_text.Length + 1];
        var i = 0;
        foreach (var run in runs)
        {
            var style = run.Style;
            Leading = Math.Max(Leading, style.Leading);
            Size = Math.Max(Size, style.Size);
            foreach (var c in run.Text)
            {
                _position[i + 1] = _position[i] + (c == '\n' ? 0 : style.Face.Advance(c) * style.Size);
                i++;
            }
        }
    }

    /// <summary>Distance from baseline to baseline, the largest of the runs.</summary>
    public double Leading { get; }

    /// <summary>Largest size of the runs.</summary>
    public double Size { get; }

    public bool IsEmpty => _text.Length == 0;

    /// <summary>The whole text.</summary>
    public string Text => _text;

    /// <summary>Width of the longest line when nothing is broken but at line feeds.</summary>
    public double NaturalWidth()
    {
        var widest = 0.0;
        var start = 0;
        for (var i = 0; i <= _text.Length; i++)
        {
            if (i < _text.Length && _text[i] != '\n')
                continue;
            widest = Math.Max(widest, _position[i] - _position[start]);
            start = i + 1;
        }

        return widest;
    }

    /// <summary>Width of the longest piece that does not break by itself.</summary>
    public double LeastWidth()
    {
        var widest = 0.0;
        var start = 0;
        for (var i = 0; i < _text.Length; i++)
        {
            if (!BreaksAfter(i))
                continue;
            var end = char.IsWhiteSpace(_text[i]) ? i : i + 1;
            widest = Math.Max(widest, _position[end] - _position[start]);
            start = i + 1;
        }

        return Math.Max(widest, _position[^1] - _position[Math.Min(start, _text.Length)]);
    }

    /// <summary>Width of the text before a position.</summary>
    public double WidthBefore(int index) => _position[index];

    /// <summary>How many characters from the start fit a width.</summary>
    public int FittingLength(double width)
    {
        var length = 0;
        while (length < _text.Length && _position[length + 1] <= width)
            length++;
        return length;
    }

    /// <summary>Sets the lines.</summary>
    public List<TextLine> Lines(double width)
    {
        var lines = new List<TextLine>();
        var start = 0;
        var lastBreak = -1;
        var lastBlank = -1;
        for (var i = 0; i < _text.Length; i++)
        {
            if (_text[i] == '\n')
            {
                lines.Add(Line(start, i));
                start = i + 1;
                lastBreak = lastBlank = -1;
                continue;
            }

            // A thousandth of a point: a column as wide as its text must not break it over rounding.
            if (_position[i + 1] - _position[start] > width + 0.001 && _text[i] != ' ' && i > start)
            {
                // A number leaves its unit before a word is cut in its middle.
                var end = lastBreak > start ? lastBreak : lastBlank > start ? lastBlank : i;
                lines.Add(Line(start, end));
                start = end;
                while (start < _text.Length && _text[start] == ' ')
                    start++;
                lastBreak = lastBlank = -1;
                i = start - 1;
                continue;
            }

            if (BreaksAfter(i))
                lastBreak = i + 1;
            else if (_text[i] == ' ')
                lastBlank = i + 1;
        }

        if (start < _text.Length || lines.Count == 0)
            lines.Add(Line(start, _text.Length));
        return lines;
    }

    private TextLine Line(int start, int end)
    {
        while (end > start && _text[end - 1] == ' ')
            end--;
        var pieces = new List<TextPiece>(2);
        for (var r = 0; r < _runs.Count; r++)
        {
            var from = Math.Max(start, _starts[r]);
            var to = Math.Min(end, _starts[r + 1]);
            if (from >= to)
                continue;
            pieces.Add(new TextPiece(_position[from] - _position[start], _position[to] - _position[from], _text[from..to].Replace(Unbroken, ' '), _runs[r]));
        }

        return new TextLine([.. pieces], _position[end] - _position[start]);
    }

    private bool BreaksAfter(int i)
    {
        var c = _text[i];
        if (c == '\n')
            return true;
        if (c == ' ')
            return !IsGlue(i);
        if (c is '-' or '/' or '–' && i > 0 && i + 1 < _text.Length)
            return char.IsLetter(_text[i - 1]) && char.IsLetter(_text[i + 1]);
        return false;
    }

    // "12.9 ± 1.5 °F", "10 min" and "7 lb 9.9 oz" stay together.
    private bool IsGlue(int i)
    {
        if (i == 0 || i + 1 >= _text.Length)
            return false;
        var next = _text[i + 1];
        if (next is '°' or '%' or '±' or 'µ' or 'Ω')
            return true;
        var before = _text[i - 1];
        if (char.IsAsciiDigit(next) && i >= 3 && _text.AsSpan(i - 3, 3) is " lb")
            return true;
        if (before is '±' or '≤' or '≥' or '△' or '▲' or '✓' or '✗' or '□')
            return true;
        if (!char.IsAsciiDigit(before))
            return false;
        var end = i + 1;
        while (end < _text.Length && end - i < 8 && _text[end] is not (' ' or ',' or '.' or ';' or ':' or ')' or '\n'))
            end++;
        return UnitLookup.Contains(_text.AsSpan(i + 1, end - i - 1));
    }
}

/// <summary>A stretch of text in one style.</summary>
/// <param name="Text">The text; a line feed ends a line.</param>
/// <param name="Style">Its style.</param>
/// <param name="Link">The id it links to; null for none.</param>
internal sealed record TextRun(string Text, TextStyle Style, string? Link);

/// <summary>A set line: its pieces from left to right.</summary>
/// <param name="Pieces">The pieces.</param>
/// <param name="Width">Width in points.</param>
internal sealed record TextLine(TextPiece[] Pieces, double Width);

/// <summary>A part of a run that stands on one line.</summary>
/// <param name="X">Left edge, from the left edge of the paragraph.</param>
/// <param name="Width">Width in points.</param>
/// <param name="Text">The text.</param>
/// <param name="Run">The run it comes from.</param>
internal readonly record struct TextPiece(double X, double Width, string Text, TextRun Run);
