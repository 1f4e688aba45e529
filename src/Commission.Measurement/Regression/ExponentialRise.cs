using Commission.Measurement.Uncertainty;
using MathNet.Numerics.LinearRegression;

namespace Commission.Measurement.Regression;

/// <summary>The finite-source model of a vacuum hold: y = y∞ − (y∞ − y0)·exp(−t/τ), with or without a steady rise a·t beside it.</summary>
public sealed class ExponentialRise
{
    private const int GridPoints = 60;

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
        var (best, coefficients) = Search(t, values, withLine, shortest, longest);
        if (coefficients is null)
            return null;
        double[] start = withLine ? [coefficients[0], coefficients[1], best, coefficients[2]] : [coefficients[0], coefficients[1], best];
        var fit = NonlinearFit.Fit(name, Model, Gradient, t, y, start);
        if (fit is null)
            return null;
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

    private static (double TimeConstant, double[]? Coefficients) Search(IReadOnlyList<double> t, double[] y, bool withLine, double shortest, double longest)
    {
        var ratio = Math.Pow(longest / shortest, 1.0 / (GridPoints - 1));
        (double Tau, double[]? Coefficients, double Squares) best = (shortest, null, double.PositiveInfinity);
        for (var i = 0; i < GridPoints; i++)
        {
            var tau = shortest * Math.Pow(ratio, i);
            var rows = t.Select(time => withLine ? new[] { 1, -double.ExpM1(-time / tau), time } : [1, -double.ExpM1(-time / tau)]).ToArray();
            double[] coefficients;
            try
            {
                coefficients = MultipleRegression.QR(rows, y);
            }
            catch (ArgumentException)
            {
                // The library's word for columns that are the same: this τ is a straight line here.
                continue;
            }

            var squares = rows.Select((row, k) => y[k] - row.Zip(coefficients, (a, b) => a * b).Sum()).Sum(r => r * r);
            if (squares < best.Squares)
                best = (tau, coefficients, squares);
        }

        return (best.Tau, best.Coefficients);
    }
}
