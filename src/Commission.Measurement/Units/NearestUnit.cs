namespace Commission.Measurement.Units;

/// <summary>The unit somebody probably meant.</summary>
internal static class NearestUnit
{
    /// <summary>The first unit whose spelling is one slip away (two for a longer word): a letter more, less, wrong, or two swapped.</summary>
    public static Unit? Of(string spelling, IEnumerable<Unit> units)
    {
        var written = UnitSpelling.FoldCase(spelling);
        Unit? nearest = null;
        var allowed = written.Length <= 3 ? 1 : 2;
        var best = allowed + 1;
        foreach (var unit in units)
        {
            foreach (var known in unit.Aliases.Prepend(unit.Symbol))
            {
                var key = UnitSpelling.FoldCase(known);

                // One letter for another one-letter unit is no slip.
                if (key.Length < 2 && written.Length < 2)
                    continue;
                var distance = Distance(written, key);
                if (distance < best && distance < Math.Max(written.Length, key.Length))
                    (nearest, best) = (unit, distance);
            }
        }

        return nearest;
    }

    // Optimal string alignment: Levenshtein with neighbouring letters swapped as one step.
    private static int Distance(string a, string b)
    {
        int[] before = new int[b.Length + 1], last = new int[b.Length + 1], now = new int[b.Length + 1];
        for (var j = 0; j <= b.Length; j++)
            last[j] = j;
        for (var i = 1; i <= a.Length; i++)
        {
            now[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var cost = a[i - 1] == b[j - 1] ? 0 : 1;
                now[j] = Math.Min(Math.Min(now[j - 1] + 1, last[j] + 1), last[j - 1] + cost);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                    now[j] = Math.Min(now[j], before[j - 2] + 1);
            }

            (before, last, now) = (last, now, before);
        }

        return last[b.Length];
    }
}
