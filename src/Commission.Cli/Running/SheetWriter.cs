using Commission.Checks.Sheets;

namespace Commission.Cli.Running;

/// <summary>Prints a sheet: tables in columns as wide as their cells, the last column as it comes.</summary>
internal static class SheetWriter
{
    private const int WidestColumn = 60;

    public static void Write(Sheet sheet, TextWriter output)
    {
        output.WriteLine(sheet.Title);
        foreach (var part in sheet.Parts.Where(p => p.Rows.Length > 0))
        {
            output.WriteLine();
            if (part.Title.Length > 0)
                output.WriteLine(part.Title);
            if (part.Head.IsEmpty)
            {
                foreach (var line in part.Rows)
                    output.WriteLine("  " + line[0]);
                continue;
            }

            var rows = part.Rows.Insert(0, part.Head);
            var widths = Enumerable.Range(0, part.Head.Length).Select(c => Math.Min(WidestColumn, rows.Max(r => c < r.Length ? r[c].Length : 0))).ToArray();
            foreach (var row in rows)
                output.WriteLine(("  " + string.Join("  ", row.Select((cell, c) => c == row.Length - 1 ? cell : cell.PadRight(widths[c])))).TrimEnd());
        }
    }
}
