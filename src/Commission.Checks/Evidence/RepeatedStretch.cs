namespace Commission.Checks.Evidence;

/// <summary>Finds a stretch of a log that comes twice. A flat hold repeats a few values for ever, so only stretches of many different values count.</summary>
internal static class RepeatedStretch
{
    /// <summary>Values a stretch has at least.</summary>
    public const int Shortest = 30;

    private const int LeastDifferent = 15;
    private const ulong Base = 1_000_003;

    /// <summary>The first stretch that comes again, in full length.</summary>
    /// <param name="values">The log.</param>
    /// <returns>Begin of both stretches and their length; null when nothing comes twice.</returns>
    public static (int First, int Second, int Length)? Find(IReadOnlyList<double> values)
    {
        if (values.Count < 2 * Shortest)
            return null;
        var highest = 1UL;
        for (var i = 1; i < Shortest; i++)
            highest *= Base;
        var seen = new Dictionary<ulong, int>();
        var counts = new Dictionary<double, int>();
        var hash = 0UL;
        for (var end = 0; end < values.Count; end++)
        {
            if (end >= Shortest)
            {
                var gone = values[end - Shortest];
                hash -= Bits(gone) * highest;
                if (--counts[gone] == 0)
                    counts.Remove(gone);
            }

            hash = (hash * Base) + Bits(values[end]);
            counts[values[end]] = counts.GetValueOrDefault(values[end]) + 1;
            var begin = end - Shortest + 1;
            if (begin < 0 || counts.Count < LeastDifferent || seen.TryAdd(hash, begin))
                continue;
            var first = seen[hash];
            if (begin - first >= Shortest && Same(values, first, begin) is >= Shortest and var length)
                return (first, begin, length);
        }

        return null;
    }

    private static ulong Bits(double value) => BitConverter.DoubleToUInt64Bits(value) * 0x9E3779B97F4A7C15UL;

    private static int Same(IReadOnlyList<double> values, int first, int second)
    {
        var length = 0;
        while (second + length < values.Count && first + length < second && values[first + length].Equals(values[second + length]))
            length++;
        return length;
    }
}
