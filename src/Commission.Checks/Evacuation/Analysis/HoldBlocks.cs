namespace Commission.Checks.EvacuationAnalysis;

/// <summary>The used rows of a hold averaged into blocks. Times count from the first used row.</summary>
internal sealed class HoldBlocks
{
    private HoldBlocks(double[] time, double[] halfWidth, double[] value, double[] weight, double span, int length)
    {
        Time = time;
        HalfWidth = halfWidth;
        Value = value;
        Weight = weight;
        Span = span;
        Length = length;
    }

    /// <summary>Mean time, s after the first used row.</summary>
    internal double[] Time { get; }

    /// <summary>Half the time a block covers, s.</summary>
    internal double[] HalfWidth { get; }

    /// <summary>Mean pressure, Pa.</summary>
    internal double[] Value { get; }

    /// <summary>Rows in the block over the mean number of rows in a block.</summary>
    internal double[] Weight { get; }

    /// <summary>From the first to the last used row, s.</summary>
    internal double Span { get; }

    /// <summary>Rows a full block holds.</summary>
    internal int Length { get; }

    /// <summary>Number of blocks.</summary>
    internal int Count => Time.Length;

    /// <summary>The same blocks with pressures less a share of themselves that grows in proportion to time, to <paramref name="share"/> at the end.</summary>
    internal HoldBlocks Drifted(double share)
    {
        var value = new double[Count];
        for (var i = 0; i < Count; i++)
            value[i] = Value[i] * (1 - share * Time[i] / Span);
        return new HoldBlocks(Time, HalfWidth, value, Weight, Span, Length);
    }

    /// <summary>Averages rows; a gap ends a block, and what is left over joins the block before it.</summary>
    internal static HoldBlocks Average(double[] times, double[] pressures, int length, double interval)
    {
        var starts = new List<int>();
        var from = 0;
        while (from < times.Length)
        {
            var to = from + 1;
            while (to < times.Length && times[to] - times[to - 1] <= 5.5 * interval)
                to++;
            var rows = to - from;
            var blocks = Math.Max(1, (rows + length / 2) / length);
            for (var b = 0; b < blocks; b++)
                starts.Add(from + (int)((long)rows * b / blocks));
            from = to;
        }

        var n = starts.Count;
        var time = new double[n];
        var half = new double[n];
        var value = new double[n];
        var weight = new double[n];
        for (var b = 0; b < n; b++)
        {
            var end = b + 1 < n ? starts[b + 1] : times.Length;
            var count = end - starts[b];
            double sumT = 0;
            double sumP = 0;
            for (var i = starts[b]; i < end; i++)
            {
                sumT += times[i] - times[0];
                sumP += pressures[i];
            }

            time[b] = sumT / count;
            value[b] = sumP / count;
            weight[b] = (double)count * n / times.Length;
            half[b] = count > 1 ? (times[end - 1] - times[starts[b]]) / 2 * count / (count - 1) : 0;
        }

        return new HoldBlocks(time, half, value, weight, times[^1] - times[0], length);
    }
}
