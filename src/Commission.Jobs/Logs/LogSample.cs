using nietras.SeparatedValues;

namespace Commission.Jobs.Logs;

/// <summary>The first rows of a log, cut into cells.</summary>
/// <param name="Line">The line a row begins in, counted from 1.</param>
/// <param name="Cells">Its cells, without quotes.</param>
internal sealed record LogSample(int Line, IReadOnlyList<string> Cells)
{
    private const int Enough = 60;

    public static List<LogSample> Of(string text, char delimiter)
    {
        var rows = new List<LogSample>();
        using var reader = Open(text, delimiter);

        // The reader's own number of a first row is one too high: a row begins where the one before it ended.
        var next = 1;
        foreach (var row in reader)
        {
            var line = next;
            next = row.LineNumberToExcl;
            var cells = new string[row.ColCount];
            for (var i = 0; i < cells.Length; i++) cells[i] = row[i].Span.Trim().Trim('"').Trim().ToString();
            if (cells.Any(c => c.Length > 0)) rows.Add(new LogSample(line, cells));
            if (rows.Count == Enough) break;
        }

        return rows;
    }

    public static SepReader Open(string text, char delimiter) =>
        Sep.New(delimiter).Reader(o => o with { HasHeader = false, DisableColCountCheck = true, Unescape = true }).FromText(text);
}
