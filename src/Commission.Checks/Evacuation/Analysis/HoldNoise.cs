namespace Commission.Checks.EvacuationAnalysis;

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
