using System.Runtime.InteropServices;
using System.Text;
using System.Text.Unicode;
using nietras.SeparatedValues;

namespace Commission.Jobs.Logs;

/// <summary>
/// The text of a log: UTF-8, UTF-16 with its mark, or what gauges of another age write (Latin-1). It is decoded as it is read, a piece at a
/// time: a log of 47 MB is not held a second time as text.
/// </summary>
internal sealed class LogSource
{
    private readonly ArraySegment<byte> _bytes;
    private readonly Encoding _encoding;

    public LogSource(ReadOnlyMemory<byte> content)
    {
        if (!MemoryMarshal.TryGetArray(content, out _bytes))
            _bytes = content.ToArray();
        var bytes = _bytes.AsSpan();
        (_encoding, var mark) = bytes.StartsWith((ReadOnlySpan<byte>)[0xEF, 0xBB, 0xBF]) ? (Encoding.UTF8, 3)
            : bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE]) ? (Encoding.Unicode, 2)
            : bytes.StartsWith((ReadOnlySpan<byte>)[0xFE, 0xFF]) ? (Encoding.BigEndianUnicode, 2)
            : (Utf8.IsValid(bytes) ? Encoding.UTF8 : Encoding.Latin1, 0);
        _bytes = _bytes[mark..];
        if (_encoding.Equals(Encoding.UTF8) && mark > 0 && !Utf8.IsValid(_bytes))
            _encoding = Encoding.Latin1;
    }

    /// <summary>The first characters.</summary>
    /// <param name="most">How many at most.</param>
    public string Head(int most)
    {
        using var text = Text();
        var head = new char[most];
        return new string(head, 0, text.ReadBlock(head, 0, most));
    }

    /// <summary>Its rows, cut at the delimiter.</summary>
    public SepReader Rows(char delimiter) =>
        Sep.New(delimiter).Reader(o => o with { HasHeader = false, DisableColCountCheck = true, Unescape = true }).From(Text());

    private StreamReader Text() =>
        new(new MemoryStream(_bytes.Array!, _bytes.Offset, _bytes.Count, writable: false), _encoding, detectEncodingFromByteOrderMarks: false);
}

/// <summary>The first rows of a log, cut into cells.</summary>
/// <param name="Line">The line a row begins in, counted from 1.</param>
/// <param name="Lines">How many lines it takes: more than one where a quoted cell holds line breaks.</param>
/// <param name="Cells">Its cells, without quotes.</param>
internal sealed record LogSample(int Line, int Lines, IReadOnlyList<string> Cells)
{
    private const int Enough = 60;

    public static List<LogSample> Of(LogSource source, char delimiter)
    {
        var rows = new List<LogSample>();
        using var reader = source.Rows(delimiter);

        // The reader's own number of a first row is one too high: a row begins where the one before it ended.
        var next = 1;
        foreach (var row in reader)
        {
            var line = next;
            next = row.LineNumberToExcl;
            var cells = new string[row.ColCount];
            for (var i = 0; i < cells.Length; i++)
                cells[i] = row[i].Span.Trim().Trim('"').Trim().ToString();
            if (cells.Any(c => c.Length > 0))
                rows.Add(new LogSample(line, row.Span.TrimEnd().Count('\n') + 1, cells));
            if (rows.Count == Enough)
                break;
        }

        return rows;
    }

    /// <summary>Whether a quote in it opens a cell that runs over the rows behind it.</summary>
    public bool SwallowsRows(char delimiter) =>
        Lines > 1 && Cells.Any(c => c.Contains('\n', StringComparison.Ordinal) && c.Contains(delimiter, StringComparison.Ordinal));
}
