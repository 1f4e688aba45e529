using System.Globalization;
using System.Text.RegularExpressions;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;

namespace Commission.Jobs.Logs;

/// <summary>The headings of a log: one row, two where the units stand in a row of their own, or none.</summary>
internal sealed partial class LogHeader
{
    private readonly string[] _texts;
    private readonly string? _unit;

    private LogHeader(string[] names, string[] texts, string? unit, int width, bool isWritten)
    {
        Names = names;
        _texts = texts;
        _unit = unit;
        Width = width;
        IsWritten = isWritten;
    }

    /// <summary>What the columns are called; a column without a heading by its number.</summary>
    public string[] Names { get; }

    /// <summary>How many cells a row may have.</summary>
    public int Width { get; }

    /// <summary>Whether the log has headings.</summary>
    public bool IsWritten { get; }

    /// <param name="rows">The first rows.</param>
    /// <param name="first">The first with readings.</param>
    public static LogHeader Of(List<LogSample> rows, int first)
    {
        var header = first > 0 && rows[first - 1].Cells.Count >= 2 ? rows[first - 1] : null;
        var above = header is not null && first > 1 && rows[first - 2] is { } upper && upper.Line + upper.Lines == header.Line && upper.Cells.Count == header.Cells.Count
            && header.Cells.All(IsUnit) && !upper.Cells.All(IsUnit) && !upper.Cells.Any(c => LogCell.TryNumber(c, false, out _)) ? upper : null;
        var cells = header?.Cells ?? [];
        var written = Enumerable.Range(0, cells.Count).LastOrDefault(i => cells[i].Length > 0 || above?.Cells[i].Length > 0, -1) + 1;
        var width = rows[first].Cells.Count;
        var names = new string[Math.Max(width, written)];
        var texts = new string[names.Length];
        for (var i = 0; i < names.Length; i++)
        {
            var own = i < cells.Count ? WhiteSpace().Replace(cells[i], " ") : "";
            texts[i] = above is null ? own : $"{above.Cells[i]} ({own.Trim('(', ')', '[', ']')})";
            names[i] = above is not null && above.Cells[i].Length > 0 ? texts[i] : own.Length > 0 ? own : string.Create(CultureInfo.InvariantCulture, $"column {i + 1}");
            if (texts[i].Length == 0)
                texts[i] = names[i];
        }

        var units = rows.Take(Math.Max(0, first - 1)).Select(r => UnitLine().Match(string.Join(' ', r.Cells.Where(c => c.Length > 0)))).Where(m => m.Success).Select(m => m.Groups["unit"].Value.Trim()).Distinct(StringComparer.Ordinal).ToArray();
        return new LogHeader(names, texts, units is [var unit] ? unit : null, written > 0 ? written : width, written > 0);
    }

    /// <summary>The column that the job file calls so.</summary>
    public int? Find(string stated)
    {
        var index = Array.FindIndex(Names, n => n.Equals(stated.Trim(), StringComparison.OrdinalIgnoreCase));
        return index < 0 ? null : index;
    }

    public LogTimeHeading Time(int column) => LogTimeHeading.Of(_texts[column]);

    /// <summary>What the heading says, and a line above all headings where it says the unit of a column that does not.</summary>
    public LogValueHeading Value(int column, Dimension asked)
    {
        var heading = LogValueHeading.Of(_texts[column], asked);
        return heading.Kind is LogHeadingKind.Quantity or LogHeadingKind.Reading && _unit is not null ? LogValueHeading.Of($"{_texts[column]} ({_unit})", asked) : heading;
    }

    private static bool IsUnit(string cell)
    {
        var plain = cell.Trim('(', ')', '[', ']', ' ');
        return plain.Length == 0 || plain == "-" || UnitTable.FindAny(plain).Any() || LogTimeHeading.Of(plain) is { Unit: not null } or { Shape: not LogClockShape.Unsaid };
    }

    [GeneratedRegex(@"^(units?|einheit|einheiten|unité|unidad|enhet|enhed)\b *[:=]? *(?<unit>\S.*)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex UnitLine();

    [GeneratedRegex(@"\s+", RegexOptions.CultureInvariant, 10_000)]
    private static partial Regex WhiteSpace();
}
