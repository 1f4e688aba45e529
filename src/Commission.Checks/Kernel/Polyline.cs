namespace Commission.Checks.Kernel;

/// <summary>A line through points from left to right, level beyond them.</summary>
internal static class Polyline
{
    /// <summary>The line as a function.</summary>
    /// <param name="x">Rising.</param>
    /// <param name="y">As many, one at least.</param>
    public static Func<double, double> Through(double[] x, double[] y) => at =>
    {
        var after = Array.BinarySearch(x, at);
        if (after >= 0)
            return y[after];
        after = ~after;
        if (after == 0)
            return y[0];
        return after == x.Length ? y[^1] : y[after - 1] + ((y[after] - y[after - 1]) * (at - x[after - 1]) / (x[after] - x[after - 1]));
    };
}
