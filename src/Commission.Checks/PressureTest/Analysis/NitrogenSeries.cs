namespace Commission.Checks.PressureTest.Analysis;

/// <summary>A nitrogen hold that was logged: pressures and temperatures row by row.</summary>
public static class NitrogenSeries
{
    private const double Window = 300;
    private const double LargestShare = 0.1;

    /// <summary>
    /// Loss over a log. Rows within the first and last five minutes (at most a tenth of the time each) are averaged; what stays doubtful
    /// (temperature, repeatability, step) is not made smaller by that, because neighbouring rows share it.
    /// </summary>
    /// <param name="times">Times, s, rising.</param>
    /// <param name="readings">One reading a row.</param>
    /// <param name="errors">What makes the readings doubtful.</param>
    /// <param name="density">Density of nitrogen, kg/m³, at a temperature (K) and an absolute pressure (Pa); null outside its range.</param>
    /// <returns>The loss; null with fewer than three rows, or readings outside the range of the density.</returns>
    /// <exception cref="ArgumentException">The lists differ in length: a fault of the caller.</exception>
    public static NitrogenSeriesResult? Analyze(
        IReadOnlyList<double> times, IReadOnlyList<NitrogenReading> readings, NitrogenErrors errors, Func<double, double, double?> density)
    {
        ArgumentNullException.ThrowIfNull(times);
        ArgumentNullException.ThrowIfNull(readings);
        if (times.Count != readings.Count)
            throw new ArgumentException("Times and readings must have the same length.", nameof(readings));
        if (times.Count < 3)
            return null;

        var window = Math.Min(Window, LargestShare * (times[^1] - times[0]));
        var (start, first) = Mean(readings, times, t => t <= times[0] + window);
        var (end, last) = Mean(readings, times, t => t >= times[^1] - window);
        if (NitrogenHold.Between(start, end, errors, density) is not { } loss)
            return null;

        var referred = new double[times.Count];
        for (var i = 0; i < referred.Length; i++)
        {
            if (NitrogenHold.Refer(readings[i].Absolute, readings[i].Temperature, start.Temperature, density) is not { } p)
                return null;
            referred[i] = p;
        }

        var middle = (times[0] + times[^1]) / 2;
        var (half, _) = Mean(readings, times, t => Math.Abs(t - middle) <= Math.Max(window / 2, NearestTo(times, middle)));
        var firstHalf = NitrogenHold.Between(start, half, errors, density)?.Loss.Value;
        var secondHalf = NitrogenHold.Between(half, end, errors, density)?.Loss.Value;
        if (firstHalf is not { } a || secondHalf is not { } b)
            return null;
        return new NitrogenSeriesResult(loss, [.. times], [.. referred], a, b, Math.Min(first, last));
    }

    private static double NearestTo(IReadOnlyList<double> times, double middle) => times.Min(t => Math.Abs(t - middle));

    private static (NitrogenReading Mean, int Count) Mean(IReadOnlyList<NitrogenReading> readings, IReadOnlyList<double> times, Func<double, bool> inside)
    {
        var (gauge, air, kelvin, n) = (0.0, 0.0, 0.0, 0);
        for (var i = 0; i < readings.Count; i++)
        {
            if (!inside(times[i]))
                continue;
            gauge += readings[i].Gauge;
            air += readings[i].Atmosphere;
            kelvin += readings[i].Temperature;
            n++;
        }

        return (new NitrogenReading(gauge / n, air / n, kelvin / n), n);
    }
}
