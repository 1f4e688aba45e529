using System.Globalization;
using System.Text.RegularExpressions;
using Commission.Jobs.Problems;
using Commission.Messages;

namespace Commission.Jobs.Logs;

/// <summary>
/// Which mark a log writes before its decimals, decided from all its rows: a log may run for an hour on whole numbers, or on numbers such as
/// 1,234 that say either, before one tells.
/// </summary>
internal sealed partial class LogDecimalMark
{
    /// <summary>The first cell that can only have a decimal comma; null when none does.</summary>
    public LogMarkedCell? Comma { get; private set; }

    /// <summary>The first cell that can only have a decimal point; null when none does.</summary>
    public LogMarkedCell? Point { get; private set; }

    /// <summary>The first cell whose comma may be a decimal mark or stand between thousands.</summary>
    public LogMarkedCell? Either { get; private set; }

    /// <param name="source">The log.</param>
    /// <param name="delimiter">What stands between its cells.</param>
    /// <param name="firstLine">The first row with readings.</param>
    public static LogDecimalMark Of(LogSource source, char delimiter, int firstLine)
    {
        var mark = new LogDecimalMark();
        var next = 1;
        using var reader = source.Rows(delimiter);
        foreach (var row in reader)
        {
            var line = next;
            next = row.LineNumberToExcl;
            if (line < firstLine)
                continue;
            for (var i = 0; i < row.ColCount; i++)
                mark.Look(row[i].Span.Trim().Trim('"').Trim(), line);
        }

        return mark;
    }

    private void Look(ReadOnlySpan<char> cell, int line)
    {
        if (cell.Length > 40 || cell.IndexOfAny(',', '.') < 0)
            return;
        LogMarkedCell Here(ReadOnlySpan<char> text) => new(text.ToString(), line);
        if (CommaAlone().IsMatch(cell))
            Comma ??= Here(cell);
        else if (PointAlone().IsMatch(cell))
            Point ??= Here(cell);
        else if (CommaOrThousands().IsMatch(cell))
            Either ??= Here(cell);
    }

    // 66,7 · 0,450 · 1234,567 · 1.234,5: a group of thousands has three digits, begins with no zero and is never followed by more than its like.
    [GeneratedRegex(@"^[+-]?(?:[0-9]{1,3}(?:\.[0-9]{3})+,[0-9]+|0[0-9]*,[0-9]+|[0-9]+,(?:[0-9]{1,2}|[0-9]{4,})|[0-9]{4,},[0-9]+)(?:[eE][+-]?[0-9]+)?$", RegexOptions.CultureInvariant, 10_000)]
    private static partial Regex CommaAlone();

    // 66.7 · 0.450 · 1234.567 · 1,234.5 · 1,234,567. A point before three digits is read as a decimal point, as it is everywhere else.
    [GeneratedRegex(@"^[+-]?(?:[0-9]{1,3}(?:,[0-9]{3})+\.[0-9]*|[0-9]+\.[0-9]+|[1-9][0-9]{0,2}(?:,[0-9]{3}){2,})(?:[eE][+-]?[0-9]+)?$", RegexOptions.CultureInvariant, 10_000)]
    private static partial Regex PointAlone();

    [GeneratedRegex(@"^[+-]?[1-9][0-9]{0,2},[0-9]{3}$", RegexOptions.CultureInvariant, 10_000)]
    private static partial Regex CommaOrThousands();
}

/// <summary>A cell that shows the decimal mark.</summary>
/// <param name="Text">What is written.</param>
/// <param name="Line">Its line in the log.</param>
internal sealed record LogMarkedCell(string Text, int Line)
{
    /// <summary>What is written, and where.</summary>
    public Message Words => LogMessages.MarkedCell(ValueText.Short(Text), Line);
}
