using Commission.Measurement.Uncertainty;

namespace Commission.Measurement.Regression;

/// <summary>A straight line fitted by least squares, with the uncertainty of every point on it (GUM H.3).</summary>
/// <remarks>Height at the centre of the data and slope are uncorrelated; everything else follows from these two causes, which form one group.</remarks>
public sealed class StraightLine
{
    private readonly double centre;
    private readonly Uncertain height;

    private StraightLine(double origin, double centre, Uncertain height, Uncertain slope, double[] residuals, double residualSumOfSquares, double degreesOfFreedom)
    {
        Origin = origin;
        this.centre = centre;
        this.height = height;
        Slope = slope;
        Residuals = residuals;
        ResidualSumOfSquares = residualSumOfSquares;
        DegreesOfFreedom = degreesOfFreedom;
    }

    /// <summary>Where the intercept is taken.</summary>
    public double Origin { get; }

    /// <summary>Value of the line at the origin.</summary>
    public Uncertain Intercept => At(Origin);

    /// <summary>Slope of the line.</summary>
    public Uncertain Slope { get; }

    /// <summary>Observed minus fitted, in the order of the data.</summary>
    public IReadOnlyList<double> Residuals { get; }

    /// <summary>Sum of the squared residuals; of a weighted fit, chi squared.</summary>
    public double ResidualSumOfSquares { get; }

    /// <summary>Number of points less two.</summary>
    public double DegreesOfFreedom { get; }

    /// <summary>s, the standard deviation of the residuals; of a weighted fit, the root of the reduced chi squared.</summary>
    public double ResidualStandardDeviation => Math.Sqrt(ResidualSumOfSquares / DegreesOfFreedom);

    /// <summary>Fits a line where every point is equally good and the scatter tells how good.</summary>
    /// <param name="name">What is fitted, for the budget.</param>
    /// <param name="x">Abscissae, taken as exact.</param>
    /// <param name="y">Ordinates.</param>
    /// <param name="origin">Where the intercept is taken.</param>
    /// <returns>The line; nothing for fewer than three points or when all x are equal.</returns>
    public static StraightLine? Fit(string name, ReadOnlySpan<double> x, ReadOnlySpan<double> y, double origin = 0) => Fit(name, x, y, [], origin);

    /// <summary>Fits a line through points of known standard uncertainty; the scatter is not used for the uncertainty of the result.</summary>
    /// <param name="name">What is fitted, for the budget.</param>
    /// <param name="x">Abscissae, taken as exact.</param>
    /// <param name="y">Ordinates.</param>
    /// <param name="standardUncertainties">Standard uncertainty of each ordinate, above zero.</param>
    /// <param name="origin">Where the intercept is taken.</param>
    /// <returns>The line; nothing for fewer than three points or when all x are equal.</returns>
    public static StraightLine? FitWeighted(string name, ReadOnlySpan<double> x, ReadOnlySpan<double> y, ReadOnlySpan<double> standardUncertainties, double origin = 0)
    {
        if (standardUncertainties.Length != y.Length)
            throw new ArgumentException("Every ordinate has its standard uncertainty.", nameof(standardUncertainties));
        return Fit(name, x, y, standardUncertainties, origin);
    }

    /// <summary>The line at a place known exactly.</summary>
    /// <param name="x">The place.</param>
    public Uncertain At(double x) => height + (Slope * (x - centre));

    /// <summary>The line at a place that is itself uncertain.</summary>
    /// <param name="x">The place.</param>
    public Uncertain At(Uncertain x) => height + (Slope * (x - centre));

    private static StraightLine? Fit(string name, ReadOnlySpan<double> x, ReadOnlySpan<double> y, ReadOnlySpan<double> u, double origin)
    {
        if (x.Length != y.Length)
            throw new ArgumentException("There are as many ordinates as abscissae.", nameof(y));
        var n = x.Length;
        if (n < 3)
            return null;
        double sum = 0, sumX = 0, sumY = 0;
        for (var i = 0; i < n; i++)
        {
            var w = Weight(u, i);
            sum += w;
            sumX += w * x[i];
            sumY += w * y[i];
        }

        double meanX = sumX / sum, meanY = sumY / sum, sxx = 0, sxy = 0;
        for (var i = 0; i < n; i++)
        {
            var w = Weight(u, i);
            sxx += w * (x[i] - meanX) * (x[i] - meanX);
            sxy += w * (x[i] - meanX) * (y[i] - meanY);
        }

        if (!(sxx > 0))
            return null;
        var slope = sxy / sxx;
        var residuals = new double[n];
        var squares = 0.0;
        for (var i = 0; i < n; i++)
        {
            residuals[i] = y[i] - meanY - (slope * (x[i] - meanX));
            squares += Weight(u, i) * residuals[i] * residuals[i];
        }

        var freedom = n - 2.0;
        var (scale, group, source) = u.IsEmpty
            ? (Math.Sqrt(squares / freedom), new RootGroup(name, freedom), $"scatter of {n} points about a line")
            : (1.0, null, $"stated uncertainty of {n} points");
        var heightCause = new RootCause($"{name}: height of the line", source, scale / Math.Sqrt(sum), group: group);
        var slopeCause = new RootCause($"{name}: slope of the line", source, scale / Math.Sqrt(sxx), group: group);
        return new StraightLine(origin, meanX, Uncertain.From(meanY, heightCause), Uncertain.From(slope, slopeCause), residuals, squares, freedom);
    }

    private static double Weight(ReadOnlySpan<double> u, int i) => u.IsEmpty ? 1 : 1 / (u[i] * u[i]);
}
