namespace Commission.Documents.Typesetting;

/// <summary>Finds the widths of columns: what is asked for first, then what the words need, then a fair share of the rest.</summary>
internal static class TableColumns
{
    // No word of the trade is longer, pt; what is (a string of digits without end) may be broken anywhere.
    private const double LongestWord = 100;

    /// <summary>The widths of all columns, in points; together they are the width of the table.</summary>
    public static double[] Widths(List<List<TableCell>> rows, int count, double width, double gutter, (double Before, double After)[] points)
    {
        var (least, natural, wanted, isNumeric) = Needs(rows, count, width, gutter, points);
        if (least.Sum() > width)
            Relent(least, width);
        var widths = Fit(least, natural, wanted, isNumeric, width);
        if (least.Sum() < width && natural.Sum() > width)
            Settle(rows, widths, least, gutter);
        return widths;
    }

    /// <summary>What each column needs so that no word is cut, in points.</summary>
    public static double[] Least(List<List<TableCell>> rows, int count, double width, double gutter, (double Before, double After)[] points) =>
        Array.ConvertAll(Needs(rows, count, width, gutter, points).Least, least => Math.Min(least, LongestWord));

    /// <summary>
    /// Shares the columns of a table that is too wide out to tables one below the other: as few as it takes, about equally wide, each with the
    /// first column before its own.
    /// </summary>
    /// <param name="least">What each column needs.</param>
    /// <param name="width">What there is.</param>
    /// <returns>The columns of each table, from 0.</returns>
    public static List<List<int>> Parts(double[] least, double width)
    {
        const double Step = 4;
        var fewest = Fill(width).Count;
        for (var room = least[0] + ((least.Sum() - least[0]) / fewest); room < width; room += Step)
        {
            if (Fill(room) is var parts && parts.Count == fewest)
                return parts;
        }

        return Fill(width);

        List<List<int>> Fill(double room)
        {
            var parts = new List<List<int>>();
            var used = room;
            for (var c = 1; c < least.Length; c++)
            {
                if (parts.Count == 0 || used + least[c] > room)
                {
                    parts.Add([0]);
                    used = least[0];
                }

                parts[^1].Add(c);
                used += least[c];
            }

            return parts;
        }
    }

    // What exceeds any word gives way first.
    private static void Relent(double[] least, double width)
    {
        var over = least.Sum(need => Math.Max(0, need - LongestWord));
        if (over <= 0)
            return;
        var kept = Math.Max(0, 1 - ((least.Sum() - width) / over));
        for (var c = 0; c < least.Length; c++)
            least[c] = Math.Min(least[c], LongestWord) + (Math.Max(0, least[c] - LongestWord) * kept);
    }

    private static (double[] Least, double[] Natural, double[] Wanted, bool[] IsNumeric) Needs(List<List<TableCell>> rows, int count, double width, double gutter, (double Before, double After)[] points)
    {
        var least = new double[count];
        var natural = new double[count];
        var wanted = new double[count];
        var isNumeric = new bool[count];
        foreach (var row in rows)
        {
            var column = 0;
            foreach (var cell in row)
            {
                if (cell.Span == 1 && column < count)
                {
                    if (cell.Width is { } asked)
                        wanted[column] = Math.Max(wanted[column], asked.Points(width));
                    least[column] = Math.Max(least[column], Math.Min(cell.Block.LeastWidth(), width * 0.4) + (2 * gutter));
                    natural[column] = Math.Max(natural[column], cell.Block.NaturalWidth() + (2 * gutter));
                    isNumeric[column] |= cell.Align is TextAlign.Decimal or TextAlign.Right || cell.Verdict is not null;
                }

                column += cell.Span;
            }
        }

        for (var c = 0; c < count; c++)
        {
            var numbers = points[c].Before + points[c].After + (2 * gutter);
            if (points[c] != default)
            {
                // A column of numbers does not wrap: its least width is all of the numbers.
                least[c] = Math.Max(least[c], Math.Min(numbers, width * 0.4));
                natural[c] = Math.Max(natural[c], numbers);
            }

            if (wanted[c] > 0)
            {
                least[c] = Math.Max(wanted[c], Math.Min(least[c], width * 0.25));
                natural[c] = least[c];
            }
        }

        Spread(rows, count, gutter, least, natural);
        return (least, natural, wanted, isNumeric);
    }

    // A single long cell can make a column wide that other rows leave empty: points wander from column to column as long as the
    // table gets shorter by it. Lines are estimated from widths; setting them would cost more than it is worth.
    private static void Settle(List<List<TableCell>> rows, double[] widths, double[] least, double gutter)
    {
        const double Step = 6;
        var natural = rows.ConvertAll(row => row.ConvertAll(cell => cell.Span == 1 ? cell.Block.NaturalWidth() : 0));
        if (natural.Exists(row => row.Count > widths.Length))
            return;
        var cost = Cost(rows, natural, widths, gutter);
        for (var round = 0; round < 80; round++)
        {
            var (best, from, to) = (cost, -1, -1);
            for (var f = 0; f < widths.Length; f++)
            {
                if (widths[f] - Step < least[f])
                    continue;
                for (var t = 0; t < widths.Length; t++)
                {
                    if (t == f)
                        continue;
                    widths[f] -= Step;
                    widths[t] += Step;
                    var moved = Cost(rows, natural, widths, gutter);
                    widths[f] += Step;
                    widths[t] -= Step;
                    if (moved < best - 1e-9)
                        (best, from, to) = (moved, f, t);
                }
            }

            if (from < 0)
                return;
            widths[from] -= Step;
            widths[to] += Step;
            cost = best;
        }
    }

    // Lines of all rows; a little for every cell that is far wider than its column keeps the search going where lines do not change yet.
    private static double Cost(List<List<TableCell>> rows, List<List<double>> natural, double[] widths, double gutter)
    {
        var cost = 0.0;
        for (var r = 0; r < rows.Count; r++)
        {
            var lines = 1.0;
            var column = 0;
            for (var c = 0; c < rows[r].Count; c++)
            {
                var room = widths[Math.Min(column, widths.Length - 1)] - (2 * gutter);
                if (natural[r][c] > room)
                {
                    // Words do not fill their lines to the end.
                    var fill = natural[r][c] * 1.06 / room;
                    lines = Math.Max(lines, Math.Ceiling(fill));
                    cost += 0.02 * fill;
                }

                column += rows[r][c].Span;
            }

            cost += lines;
        }

        return cost;
    }

    // A cell over several columns widens the last of them when it would not fit otherwise.
    private static void Spread(List<List<TableCell>> rows, int count, double gutter, double[] least, double[] natural)
    {
        foreach (var row in rows)
        {
            var column = 0;
            foreach (var cell in row)
            {
                var last = Math.Min(count, column + cell.Span) - 1;
                if (cell.Span > 1 && last > column)
                {
                    var have = 0.0;
                    for (var c = column; c <= last; c++)
                        have += least[c];
                    var missing = Math.Min(cell.Block.LeastWidth() + (2 * gutter), 120) - have;
                    if (missing > 0)
                    {
                        least[last] += missing;
                        natural[last] = Math.Max(natural[last], least[last]);
                    }
                }

                column += cell.Span;
            }
        }
    }

    private static double[] Fit(double[] least, double[] natural, double[] wanted, bool[] isNumeric, double width)
    {
        var widths = new double[least.Length];
        var sumLeast = least.Sum();
        var sumNatural = natural.Sum();
        if (sumLeast >= width)
        {
            for (var c = 0; c < widths.Length; c++)
                widths[c] = least[c] * width / sumLeast;
        }
        else if (sumNatural >= width)
        {
            // Between the two: a column that asks for much gets more, but not so much that its neighbours stand on stilts.
            var asks = new double[least.Length];
            for (var c = 0; c < asks.Length; c++)
                asks[c] = Math.Sqrt(Math.Max(0, natural[c] - least[c]));
            Distribute(widths, least, natural, asks, width - sumLeast);
        }
        else
        {
            // Room to spare goes to the columns of words; numbers stay close to what they belong to.
            var share = 0.0;
            for (var c = 0; c < widths.Length; c++)
                share += Weight(c);
            for (var c = 0; c < widths.Length; c++)
                widths[c] = natural[c] + (share == 0 ? (width - sumNatural) / widths.Length : (width - sumNatural) * Weight(c) / share);
        }

        return widths;

        double Weight(int c) => isNumeric[c] || wanted[c] > 0 ? 0 : natural[c];
    }

    private static void Distribute(double[] widths, double[] least, double[] natural, double[] asks, double rest)
    {
        least.CopyTo(widths, 0);
        for (var round = 0; round < widths.Length && rest > 0.01; round++)
        {
            var open = 0.0;
            for (var c = 0; c < widths.Length; c++)
                open += widths[c] < natural[c] - 0.01 ? asks[c] : 0;
            if (open == 0)
                break;
            var given = 0.0;
            for (var c = 0; c < widths.Length; c++)
            {
                if (widths[c] >= natural[c] - 0.01)
                    continue;
                var more = Math.Min(rest * asks[c] / open, natural[c] - widths[c]);
                widths[c] += more;
                given += more;
            }

            rest -= given;
        }
    }
}
