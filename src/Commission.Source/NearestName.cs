namespace Commission.Source;

/// <summary>Finds the known name a misspelt word most likely meant.</summary>
public static class NearestName
{
    // Longer words are never near a name of the trade, and the comparison costs the product of both lengths.
    private const int LongestWord = 64;

    /// <summary>
    /// The nearest known name: same letters in another case or with other separators, the same words in another order,
    /// or few enough slips (optimal string alignment distance: insert, delete, replace, swap neighbours).
    /// </summary>
    /// <param name="word">What was written.</param>
    /// <param name="known">The names that would be right.</param>
    /// <returns>The nearest name, the earlier one on a tie; null when nothing is near.</returns>
    public static string? Of(string word, IEnumerable<string> known)
    {
        ArgumentNullException.ThrowIfNull(word);
        ArgumentNullException.ThrowIfNull(known);
        var wanted = Fold(word);
        if (wanted.Length is 0 or > LongestWord)
            return null;
        var wantedWords = SortedWords(wanted);
        string? best = null;
        var bestDistance = int.MaxValue;
        foreach (var name in known)
        {
            var candidate = Fold(name);
            if (candidate.Length is 0 or > LongestWord)
                continue;
            var allowed = AllowedSlips(Math.Max(wanted.Length, candidate.Length));
            int distance;
            if (string.Equals(wanted, candidate, StringComparison.Ordinal))
                distance = 0;
            else if (string.Equals(wantedWords, SortedWords(candidate), StringComparison.Ordinal))
                distance = 1;
            else if (Math.Abs(wanted.Length - candidate.Length) > allowed)
                continue;
            else
                distance = Distance(wanted, candidate);
            if (distance > allowed || distance >= bestDistance)
                continue;
            best = name;
            bestDistance = distance;
        }

        return best;
    }

    // One slip in a short word, one more for every five letters, never more than four.
    private static int AllowedSlips(int length) => length <= 2 ? 0 : Math.Min(4, 1 + (length / 5));

    private static string Fold(string text)
    {
        var folded = text.Trim().ToLowerInvariant().Replace('_', ' ').Replace('-', ' ');
        while (folded.Contains("  ", StringComparison.Ordinal))
            folded = folded.Replace("  ", " ", StringComparison.Ordinal);
        return folded;
    }

    private static string SortedWords(string folded) =>
        string.Join(' ', folded.Split(' ').Order(StringComparer.Ordinal));

    private static int Distance(string a, string b)
    {
        var beforeLast = new int[b.Length + 1];
        var last = new int[b.Length + 1];
        var current = new int[b.Length + 1];
        for (var j = 0; j <= b.Length; j++)
            last[j] = j;
        for (var i = 1; i <= a.Length; i++)
        {
            current[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var replace = last[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                current[j] = Math.Min(replace, Math.Min(last[j], current[j - 1]) + 1);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                    current[j] = Math.Min(current[j], beforeLast[j - 2] + 1);
            }

            (beforeLast, last, current) = (last, current, beforeLast);
        }

        return last[b.Length];
    }
}
