namespace Commission.Jobs.Schema;

/// <summary>Finds what a short word of the trade may have meant: "suction" is the suction pressure or the suction line.</summary>
internal static class NearWords
{
    private const int Most = 4;
    private const int ShortestWord = 3;

    /// <summary>The names that hold every word of what was written, shortest first; none when there are too many to choose from.</summary>
    /// <param name="written">What was written.</param>
    /// <param name="names">The names that would be right.</param>
    public static IReadOnlyList<string> WithAllOf(string written, IEnumerable<string> names)
    {
        var words = Words(written);
        if (words.Length == 0 || words.Any(w => w.Length < ShortestWord))
            return [];
        var found = names.Where(n => words.All(Words(n).Contains)).OrderBy(n => n.Length).ThenBy(n => n, StringComparer.Ordinal).ToArray();
        return found.Length <= Most ? found : [];
    }

    private static string[] Words(string text) => text.ToLowerInvariant().Split([' ', '-', '_'], StringSplitOptions.RemoveEmptyEntries);
}
