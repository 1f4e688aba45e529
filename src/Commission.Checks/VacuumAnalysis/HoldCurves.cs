using System.Collections.Immutable;
using MathNet.Numerics.LinearAlgebra;

namespace Commission.Checks.VacuumAnalysis;

/// <summary>Which rows of a hold were used.</summary>
/// <param name="InHold">Rows from isolation to the end of the hold.</param>
/// <param name="Skipped">Left out right after isolation, while pressures even out.</param>
/// <param name="OverRange">Left out because the gauge was over range.</param>
/// <param name="Outliers">Left out as lone spikes, more than six deviations from their neighbours.</param>
/// <param name="Used">Rows used.</param>
/// <param name="From">Time of the first used row, s; null without rows.</param>
/// <param name="To">Time of the last used row, s; null without rows.</param>
internal sealed record HoldRows(int InHold, int Skipped, int OverRange, int Outliers, int Used, double? From, double? To);

/// <summary>One averaged reading of a hold and its distance from the chosen curve.</summary>
/// <param name="Time">Mean time of the block on the clock of the log, s.</param>
/// <param name="Pressure">Mean pressure of the block, Pa.</param>
/// <param name="Residual">Mean pressure less the chosen curve, Pa.</param>
internal readonly record struct HoldPoint(double Time, double Pressure, double Residual);

/// <summary>A fitted curve for a figure, at most 200 points, with the 95 % band of its mean from the scatter alone
/// (a gain error moves readings and curve alike).</summary>
/// <param name="Model">The curve.</param>
/// <param name="Times">On the clock of the log, s.</param>
/// <param name="Pressures">Pa.</param>
/// <param name="Low">Lower edge of the band, Pa.</param>
/// <param name="High">Upper edge of the band, Pa.</param>
internal sealed record HoldCurve(
    HoldModel Model,
    ImmutableArray<double> Times,
    ImmutableArray<double> Pressures,
    ImmutableArray<double> Low,
    ImmutableArray<double> High);

/// <summary>What a figure of a hold draws.</summary>
internal static class HoldCurves
{
    private const int MostPoints = 200;

    internal static ImmutableArray<HoldCurve> Of(HoldEvidence evidence, double origin)
    {
        var curves = ImmutableArray.CreateBuilder<HoldCurve>();
        foreach (var model in (ReadOnlySpan<HoldModel>)[HoldModel.Flat, HoldModel.Line, HoldModel.Source, HoldModel.Outgassing, HoldModel.LineAndSource])
        {
            var fit = evidence.Fit(model);
            var noise = evidence.Noise(fit);
            if ((model == HoldModel.Flat || evidence.Aicc(fit) is not null) && double.IsFinite(noise.Variance))
                curves.Add(Curve(evidence, fit, noise, origin));
        }

        return curves.ToImmutable();
    }

    internal static ImmutableArray<HoldPoint> Points(HoldEvidence evidence, HoldFit.Fit preferred, double origin)
    {
        var blocks = evidence.Blocks;
        var group = (blocks.Count + MostPoints - 1) / MostPoints;
        var points = ImmutableArray.CreateBuilder<HoldPoint>();
        for (var i = 0; i < blocks.Count; i += group)
        {
            var (t, p, r, n) = (0.0, 0.0, 0.0, 0);
            for (var j = i; j < Math.Min(i + group, blocks.Count); j++, n++)
            {
                t += blocks.Time[j];
                p += blocks.Value[j];
                r += blocks.Value[j] - preferred.At(blocks.Time[j]);
            }

            points.Add(new HoldPoint(origin + t / n, p / n, r / n));
        }

        return points.ToImmutable();
    }

    private static HoldCurve Curve(HoldEvidence evidence, HoldFit.Fit fit, HoldNoise noise, double origin)
    {
        var straight = fit.Step == 0;
        var count = straight ? 50 : MostPoints;
        var band = new HoldBand(evidence.Blocks, fit);
        var times = new double[count];
        var values = new double[count];
        var low = new double[count];
        var high = new double[count];
        for (var i = 0; i < count; i++)
        {
            var t = evidence.Blocks.Span * i / (count - 1);
            times[i] = origin + t;
            values[i] = fit.At(t);
            var reach = noise.Factor * Math.Sqrt(noise.Variance * band.Leverage(t));
            low[i] = values[i] - reach;
            high[i] = values[i] + reach;
        }

        return new HoldCurve(fit.Model, [.. times], [.. values], [.. low], [.. high]);
    }
}

/// <summary>Variance of a fitted curve's mean per unit of scatter: gᵀ(JᵀJ)⁻¹g with the derivatives of the curve to its free parameters.</summary>
internal sealed class HoldBand
{
    private readonly HoldFit.Fit _fit;
    private readonly double _span;
    private readonly Matrix<double> _inverse;

    internal HoldBand(HoldBlocks blocks, HoldFit.Fit fit)
    {
        _fit = fit;
        _span = blocks.Span;
        var size = Derivatives(0).Length;
        var normal = Matrix<double>.Build.Dense(size, size);
        for (var i = 0; i < blocks.Count; i++)
        {
            var g = Derivatives(blocks.Time[i]);
            for (var r = 0; r < size; r++)
            {
                for (var c = 0; c < size; c++)
                    normal[r, c] += blocks.Weight[i] * g[r] * g[c];
            }
        }

        _inverse = normal.PseudoInverse();
    }

    internal double Leverage(double t)
    {
        var g = Vector<double>.Build.Dense(Derivatives(t));
        return Math.Max(g * _inverse * g, 0);
    }

    // Only terms that the constraints left in the curve have a derivative.
    private double[] Derivatives(double t)
    {
        var slope = _fit.Model == HoldModel.Line || (_fit.Model == HoldModel.LineAndSource && _fit.Slope > 0);
        if (_fit.Step == 0)
            return slope ? [1, t / _span] : [1];
        var e = _fit.Shape.At(t / _fit.Tau);
        var toTau = _fit.Step * _fit.Shape.Slope(t / _fit.Tau) * t / _fit.Tau;
        return slope ? [1, t / _span, e, toTau] : [1, e, toTau];
    }
}

/// <summary>The scatter of blocks around a curve, as it carries into parameters.</summary>
/// <param name="Variance">Long-run variance of a block of weight 1, Pa²: correlation between blocks is in it.</param>
/// <param name="Freedom">Degrees of freedom ν.</param>
internal readonly record struct HoldNoise(double Variance, double Freedom)
{
    /// <summary>
    /// From the residual sum of squares of a curve with <paramref name="parameters"/> (σ not counted). Blocks of (1+ρ)/(1−ρ)
    /// rows still remember their neighbour a little (0.33 for slow processes): the long-run variance is
    /// <paramref name="inflation"/> times the variance, and slow parameters eat that much more of the residuals.
    /// </summary>
    internal static HoldNoise Of(double rss, int blocks, int parameters, double floor, double inflation, double loss)
    {
        if (blocks <= parameters)
            return new HoldNoise(double.PositiveInfinity, 1);
        var left = Math.Max(blocks - inflation * parameters, (blocks - parameters) / 4.0);
        return new HoldNoise(inflation * Math.Max(rss / left, floor), Math.Max(left / loss, 1));
    }

    /// <summary>Two-sided 95 % Student factor.</summary>
    internal double Factor => CoverageHalfWidth.Student(Freedom);
}

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
    internal HoldBlocks Drifted(double share) => Less(time => share * time / Span);

    /// <summary>The same blocks with pressures less a share of themselves, given the time since the first used row, s.</summary>
    internal HoldBlocks Less(Func<double, double> share)
    {
        var value = new double[Count];
        for (var i = 0; i < Count; i++)
            value[i] = Value[i] * (1 - share(Time[i]));
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

/// <summary>
/// How long the readings of a hold remember each other. A first-order process with lag-1 correlation ρ asks for blocks of
/// (1+ρ)/(1−ρ) rows; ρ is taken from the residuals of the richest curve and corrected for the parameters that were fitted.
/// </summary>
internal static class HoldCorrelation
{
    private const double Most = 0.9995;

    /// <summary>Lag-1 correlation of residuals, pairs across dropped rows left out, corrected for <paramref name="parameters"/>.</summary>
    internal static double Lag1(ReadOnlySpan<double> residuals, ReadOnlySpan<double> times, double interval, int parameters)
    {
        double mean = 0;
        foreach (var r in residuals)
            mean += r;
        mean /= Math.Max(residuals.Length, 1);
        double products = 0;
        double squares = 0;
        var pairs = 0;
        for (var i = 1; i < residuals.Length; i++)
        {
            if (times[i] - times[i - 1] > 1.5 * interval)
                continue;
            var a = residuals[i - 1] - mean;
            var b = residuals[i] - mean;
            products += a * b;
            squares += (a * a + b * b) / 2;
            pairs++;
        }

        if (pairs < 3 || squares <= 0)
            return 0;
        var rho = products / squares;

        // Kendall (1954) for a mean, −(1+3ρ)/n; each further slow regressor takes about (1+ρ)/n more.
        var corrected = rho + (parameters + (parameters + 2) * Math.Max(rho, 0)) / pairs;
        return Math.Clamp(corrected, 0, Most);
    }

    /// <summary>(1+ρ)/(1−ρ).</summary>
    internal static double BlockLength(double rho) => (1 + rho) / (1 - rho);

    /// <summary>
    /// Correlation of the means of neighbouring blocks for a process that forgets with time constant θ, blocks x·θ long:
    /// (1−e^(−x))²/(2(x−1+e^(−x))).
    /// </summary>
    internal static double BetweenBlocks(double x)
    {
        if (x < 1e-3)
            return 1 - 2 * x / 3;
        var e = Math.Exp(-x);
        return (1 - e) * (1 - e) / (2 * (x - 1 + e));
    }

    /// <summary>The x at which <see cref="BetweenBlocks"/> takes a value in (0, 1).</summary>
    internal static double InverseBetweenBlocks(double correlation)
    {
        var low = 1e-3;
        var high = 1e3;
        for (var i = 0; i < 60; i++)
        {
            var x = Math.Sqrt(low * high);
            if (BetweenBlocks(x) > correlation)
                low = x;
            else
                high = x;
        }

        return Math.Sqrt(low * high);
    }

    /// <summary>
    /// By how much the long-run variance of block means exceeds their variance, for an AR(1) process with correlation ρ in
    /// blocks of m rows: m·(1+ρ)/(1−ρ) / (m + 2·Σ(m−k)·ρ^k).
    /// </summary>
    internal static double Inflation(double rho, double m)
    {
        if (rho <= 0)
            return 1;

        // Σ_{k=1}^{m−1} (m−k)ρ^k = ρ(m(1−ρ) − (1−ρ^m))/(1−ρ)²
        var sum = rho * (m * (1 - rho) - (1 - Math.Pow(rho, m))) / ((1 - rho) * (1 - rho));
        return Math.Max(1, m * (1 + rho) / (1 - rho) / (m + 2 * sum));
    }

    /// <summary>
    /// Sum of squared correlations between block means, 1 + 2Σr_k², by which correlated residuals count for fewer degrees of
    /// freedom (r_k = r_1·ρ^(m(k−1)) for AR(1)).
    /// </summary>
    internal static double FreedomLoss(double rho, double m)
    {
        if (rho <= 0)
            return 1;
        var x = -Math.Log(rho) * m;
        var r1 = BetweenBlocks(x);
        return 1 + 2 * r1 * r1 / (1 - Math.Exp(-2 * x));
    }
}
