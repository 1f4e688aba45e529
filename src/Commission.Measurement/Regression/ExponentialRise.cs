using Commission.Measurement.Uncertainty;

namespace Commission.Measurement.Regression;

/// <summary>The finite-source model of a vacuum hold: y = y∞ − (y∞ − y0)·exp(−t/τ), with or without a steady rise a·t beside it.</summary>
public sealed class ExponentialRise
{
    private const int GridPoints = 60;
    private const double LeastShape = 1e-20;

    private ExponentialRise(NonlinearFit fit, bool withLine, bool timeConstantAtBound)
    {
        Fit = fit;
        Start = fit.Parameters[0];
        Rise = fit.Parameters[1];
        TimeConstant = fit.Parameters[2];
        Slope = withLine ? fit.Parameters[3] : null;
        TimeConstantAtBound = timeConstantAtBound;
    }

    /// <summary>The fit underneath: residuals, their sum of squares, degrees of freedom.</summary>
    public NonlinearFit Fit { get; }

    /// <summary>y0, the value at t = 0.</summary>
    public Uncertain Start { get; }

    /// <summary>y∞ − y0, what the source adds in the end.</summary>
    public Uncertain Rise { get; }

    /// <summary>τ, in the unit of the times.</summary>
    public Uncertain TimeConstant { get; }

    /// <summary>a, the steady rise beside the source; nothing when the model has none.</summary>
    public Uncertain? Slope { get; }

    /// <summary>y∞, where the source alone would level off.</summary>
    public Uncertain Final => Start + Rise;

    /// <summary>Whether τ lies outside the bounds given, or the best inside them is a bound: the data do not show a source of such a time constant.</summary>
    public bool TimeConstantAtBound { get; }

    /// <summary>Fits the model. For a fixed τ it is linear, so τ is searched for first; Levenberg–Marquardt then finishes all parameters together.</summary>
    /// <param name="name">What is fitted, for the budget.</param>
    /// <param name="t">Times from the start.</param>
    /// <param name="y">Values.</param>
    /// <param name="withLine">Whether a steady rise stands beside the source.</param>
    /// <param name="shortest">Shortest time constant to look for, above zero.</param>
    /// <param name="longest">Longest time constant to look for.</param>
    /// <returns>The fit; nothing when there are too few points or the data cannot tell the parameters apart.</returns>
    public static ExponentialRise? Of(string name, IReadOnlyList<double> t, IReadOnlyList<double> y, bool withLine, double shortest, double longest)
    {
        if (!(shortest > 0) || !(longest > shortest))
            throw new ArgumentException("The bounds of the time constant are above zero and in order.", nameof(longest));
        var values = y.ToArray();
        if (t.Count <= (withLine ? 4 : 3) || values.Max().Equals(values.Min()))
            return null;
        if (Search([.. t], values, withLine, shortest, longest) is not { } start
            || NonlinearFit.Fit(name, Model, Gradient, t, y, start) is not { } fit)
        {
            return null;
        }

        var tau = fit.Parameters[2].Value;
        return new ExponentialRise(fit, withLine, !(tau > shortest && tau < longest));
    }

    private static double Model(IReadOnlyList<double> p, double t) =>
        p[0] - (p[1] * double.ExpM1(-t / p[2])) + (p.Count > 3 ? p[3] * t : 0);

    private static double[] Gradient(IReadOnlyList<double> p, double t)
    {
        var decay = Math.Exp(-t / p[2]);
        var byTau = -p[1] * t / (p[2] * p[2]) * decay;
        return p.Count > 3 ? [1, -double.ExpM1(-t / p[2]), byTau, t] : [1, -double.ExpM1(-t / p[2]), byTau];
    }

    // What a constant, or a constant and a line, explain is taken off both the data and the exponential; what is left of the two is then in proportion (Frisch and Waugh 1933). One pass over the data for each τ.
    private static double[]? Search(double[] t, double[] y, bool withLine, double shortest, double longest)
    {
        var left = LeftOver(t, y, withLine).Residuals;
        var ratio = Math.Pow(longest / shortest, 1.0 / (GridPoints - 1));
        (double[] Start, double Explained)? best = null;
        for (var i = 0; i < GridPoints; i++)
        {
            var tau = shortest * Math.Pow(ratio, i);
            var shape = Array.ConvertAll(t, time => 1 - Math.Exp(-time / tau));
            var own = LeftOver(t, shape, withLine).Residuals;
            double square = 0, product = 0;
            for (var k = 0; k < own.Length; k++)
            {
                square += own[k] * own[k];
                product += own[k] * left[k];
            }

            // The shape is a straight line here, to the last digits: nothing tells it from the others.
            if (square < LeastShape * t.Length)
                continue;
            var explained = product * product / square;
            if (explained <= (best?.Explained ?? 0))
                continue;
            var rise = product / square;
            var (intercept, slope, _) = LeftOver(t, [.. y.Select((v, k) => v - (rise * shape[k]))], withLine);
            best = (withLine ? [intercept, rise, tau, slope] : [intercept, rise, tau], explained);
        }

        return best?.Start;
    }

    private static (double Intercept, double Slope, double[] Residuals) LeftOver(double[] t, double[] values, bool withLine)
    {
        double meanT = t.Average(), mean = values.Average(), squares = 0, products = 0;
        if (withLine)
        {
            for (var k = 0; k < t.Length; k++)
            {
                squares += (t[k] - meanT) * (t[k] - meanT);
                products += (t[k] - meanT) * (values[k] - mean);
            }
        }

        var slope = squares > 0 ? products / squares : 0;
        var residuals = new double[t.Length];
        for (var k = 0; k < t.Length; k++)
            residuals[k] = values[k] - mean - (slope * (t[k] - meanT));
        return (mean - (slope * meanT), slope, residuals);
    }
}
