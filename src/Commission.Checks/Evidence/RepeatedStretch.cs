namespace Commission.Checks.Evidence;

/// <summary>
/// Finds a stretch of a log that comes twice, digit for digit and at the same pace. A flat hold repeats a few values for ever, so a stretch counts only where it has many
/// different values, or where neighbouring rows are so unlike that chance does not repeat it.
/// </summary>
internal static class RepeatedStretch
{
    /// <summary>Values that a stretch of many different ones has at least.</summary>
    public const int Shortest = 30;

    private const int LeastDifferent = 15;

    // A shorter stretch is looked at once its rows say something.
    private const int Seed = 12;
    private const double SeedBits = 12;
    private const int ShortestLag = 5;
    private const int LongestLag = 60;
    private const int Rounds = 3;
    private const int DifferentInRound = 5;

    // Beyond chance by so much: once in a million million logs.
    private const double BeyondChance = 40;

    // Rows on either side that tell what follows a value by itself, and how often it has to have come.
    private const int Neighbours = 40;
    private const int Fewest = 3;

    // Two rows keep pace when their times differ by less than this share of the step, s.
    private const double SamePace = 0.05;
    private const ulong Base = 1_000_003;

    /// <summary>The first stretch that comes again.</summary>
    /// <param name="values">The log.</param>
    /// <param name="times">Its times, s; null for rows at one pace.</param>
    /// <returns>Begin of both stretches and their length; null when nothing comes twice.</returns>
    public static (int First, int Second, int Length)? Find(IReadOnlyList<double> values, IReadOnlyList<double>? times = null)
    {
        var log = new Log(values, times);
        return OfManyValues(log) ?? BeyondAllChance(log) ?? Periodic(log);
    }

    // A few rows pasted again and again: three full rounds of several different values.
    private static (int First, int Second, int Length)? Periodic(Log log)
    {
        for (var lag = ShortestLag; lag <= Math.Min(LongestLag, log.Values.Count / Rounds); lag++)
        {
            for (var i = 0; i + lag < log.Values.Count; i++)
            {
                var same = log.Same(i, i + lag);
                if (same >= (Rounds - 1) * lag && log.Values.Skip(i).Take(lag).Distinct().Count() >= DifferentInRound)
                    return (i, i + lag, lag);
                i += same;
            }
        }

        return null;
    }

    private static (int First, int Second, int Length)? OfManyValues(Log log)
    {
        var values = log.Values;
        if (values.Count < 2 * Shortest)
            return null;
        var seen = new Dictionary<ulong, int>();
        var counts = new Dictionary<double, int>();
        foreach (var (begin, hash) in Windows(values, Shortest, counts))
        {
            if (counts.Count < LeastDifferent || seen.TryAdd(hash, begin))
                continue;
            var first = seen[hash];
            if (begin - first >= Shortest && Math.Min(log.Same(first, begin), begin - first) is >= Shortest and var length)
                return (first, begin, length);
        }

        return null;
    }

    private static (int First, int Second, int Length)? BeyondAllChance(Log log)
    {
        var values = log.Values;
        if (values.Count < 2 * Seed)
            return null;
        var bits = Bits(values);
        var least = BeyondChance + (2 * Math.Log2(values.Count)) - 1;
        var seen = new Dictionary<ulong, (int First, int Last)>();
        var next = 0;
        foreach (var (begin, hash) in Windows(values, Seed, counts: null))
        {
            if (bits[begin + Seed] - bits[begin] < SeedBits)
                continue;
            if (!seen.TryGetValue(hash, out var at))
            {
                seen.Add(hash, (begin, begin));
                continue;
            }

            seen[hash] = (at.First, begin);
            if (begin < next)
                continue;
            foreach (var first in at.First == at.Last ? [at.First] : new[] { at.Last, at.First })
            {
                if (begin - first < ShortestLag)
                    continue;
                var length = log.Same(first, begin);
                if (bits[begin + length] - bits[begin] >= least)
                    return (first, begin, Math.Min(length, begin - first));
                next = Math.Max(next, begin + length - Seed + 1);
            }
        }

        return null;
    }

    // Each window of so many values with a hash of it; the counts follow the window.
    private static IEnumerable<(int Begin, ulong Hash)> Windows(IReadOnlyList<double> values, int length, Dictionary<double, int>? counts)
    {
        var highest = 1UL;
        for (var i = 1; i < length; i++)
            highest *= Base;
        var hash = 0UL;
        for (var end = 0; end < values.Count; end++)
        {
            if (end >= length)
            {
                var gone = values[end - length];
                hash -= Mixed(gone) * highest;
                if (counts is not null && --counts[gone] == 0)
                    counts.Remove(gone);
            }

            hash = (hash * Base) + Mixed(values[end]);
            if (counts is not null)
                counts[values[end]] = counts.GetValueOrDefault(values[end]) + 1;
            if (end >= length - 1)
                yield return (end - length + 1, hash);
        }
    }

    // Sum of what the rows before each row say: −log2 of how often, near by, the value before is followed by the value that follows it here.
    private static double[] Bits(IReadOnlyList<double> values)
    {
        var sum = new double[values.Count + 1];
        for (var t = 0; t < values.Count; t++)
        {
            var (pairs, alike) = (0, 0);
            for (var s = Math.Max(1, t - Neighbours); t > 0 && s <= Math.Min(values.Count - 1, t + Neighbours); s++)
            {
                if (s == t || !values[s - 1].Equals(values[t - 1]))
                    continue;
                pairs++;
                alike += values[s].Equals(values[t]) ? 1 : 0;
            }

            sum[t + 1] = sum[t] + (pairs < Fewest ? 0 : -Math.Log2((alike + 1.0) / (pairs + 1)));
        }

        return sum;
    }

    private static ulong Mixed(double value) => BitConverter.DoubleToUInt64Bits(value) * 0x9E3779B97F4A7C15UL;

    private readonly record struct Log(IReadOnlyList<double> Values, IReadOnlyList<double>? Times)
    {
        /// <summary>How many rows from the second on are those from the first on; the two may run into each other.</summary>
        public int Same(int first, int second)
        {
            var length = 0;
            while (second + length < Values.Count && Values[first + length].Equals(Values[second + length]) && KeepPace(first, second, length))
                length++;
            return length;
        }

        private bool KeepPace(int first, int second, int row)
        {
            if (Times is null || row == 0)
                return true;
            var (then, now) = (Times[first + row] - Times[first + row - 1], Times[second + row] - Times[second + row - 1]);
            return Math.Abs(now - then) <= SamePace * Math.Max(now, then);
        }
    }
}
