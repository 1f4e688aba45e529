using Commission.Measurement.Uncertainty;
using MathNet.Numerics;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.Optimization;

namespace Commission.Measurement.Regression;

/// <summary>Least squares for a model that is not linear in its parameters, by Levenberg–Marquardt.</summary>
public sealed class NonlinearFit
{
    private const double Tolerance = 1e-12;
    private const int MostIterations = 400;
    private const int FinishingSteps = 12;
    private const double SettledPart = 1e-9;
    private const double RoundingPart = 1e-13;

    private NonlinearFit(IReadOnlyList<Uncertain> parameters, double residualSumOfSquares, double degreesOfFreedom, IReadOnlyList<double> residuals)
    {
        Parameters = parameters;
        ResidualSumOfSquares = residualSumOfSquares;
        DegreesOfFreedom = degreesOfFreedom;
        Residuals = residuals;
    }

    /// <summary>The parameters, correlated as the fit makes them; their causes form one group of <see cref="DegreesOfFreedom"/>.</summary>
    public IReadOnlyList<Uncertain> Parameters { get; }

    /// <summary>Sum of the squared residuals.</summary>
    public double ResidualSumOfSquares { get; }

    /// <summary>Number of points less number of parameters.</summary>
    public double DegreesOfFreedom { get; }

    /// <summary>s, the standard deviation of the residuals.</summary>
    public double ResidualStandardDeviation => Math.Sqrt(ResidualSumOfSquares / DegreesOfFreedom);

    /// <summary>Observed minus fitted, in the order of the data.</summary>
    public IReadOnlyList<double> Residuals { get; }

    /// <summary>Fits a model.</summary>
    /// <param name="name">What is fitted, for the budget.</param>
    /// <param name="model">Value of the model: parameters, abscissa.</param>
    /// <param name="gradient">Derivatives of the model by each parameter: parameters, abscissa.</param>
    /// <param name="x">Abscissae, taken as exact.</param>
    /// <param name="y">Ordinates.</param>
    /// <param name="start">Where to begin; the better, the surer.</param>
    /// <returns>The fit; nothing when there are no more points than parameters, or the search ends where the parameters cannot be told apart.</returns>
    public static NonlinearFit? Fit(
        string name,
        Func<IReadOnlyList<double>, double, double> model,
        Func<IReadOnlyList<double>, double, double[]> gradient,
        IReadOnlyList<double> x,
        IReadOnlyList<double> y,
        IReadOnlyList<double> start)
    {
        if (x.Count != y.Count)
            throw new ArgumentException("There are as many ordinates as abscissae.", nameof(y));
        if (x.Count <= start.Count)
            return null;

        // The damping of the method starts from the size of the parameters: each in units of its start, or a large one would hold the others still.
        var unit = start.Select(p => p == 0 ? 1 : Math.Abs(p)).ToArray();
        double[] Real(Vector<double> scaled) => [.. unit.Select((u, k) => u * scaled[k])];
        var objective = ObjectiveFunction.NonlinearModel(
            (p, xs) =>
            {
                var at = Real(p);
                return Vector<double>.Build.Dense(xs.Count, i => model(at, xs[i]));
            },
            (p, xs) =>
            {
                var at = Real(p);
                return Matrix<double>.Build.DenseOfRowArrays(xs.Select(v => gradient(at, v).Select((g, k) => g * unit[k]).ToArray()));
            },
            Vector<double>.Build.DenseOfEnumerable(x),
            Vector<double>.Build.DenseOfEnumerable(y));

        // The absolute test of the residual sum would stop a fit of very small numbers at once: only relative steps count.
        var minimizer = new LevenbergMarquardtMinimizer(gradientTolerance: 0, stepTolerance: Tolerance, functionTolerance: 0, maximumIterations: MostIterations);
        NonlinearMinimizationResult found;
        try
        {
            found = minimizer.FindMinimum(objective, Vector<double>.Build.DenseOfEnumerable(start.Select((p, k) => p / unit[k])));
        }
        catch (Exception e) when (e is ArgumentException or NonConvergenceException or OptimizationException)
        {
            // The library's way of saying that the model left the numbers, not a fault of ours.
            return null;
        }

        return Finish(model, gradient, x, y, Real(found.MinimizingPoint)) is { } parameters ? Of(name, model, gradient, x, y, parameters) : null;
    }

    // The minimizer stops when the sum of squares no longer moves, and there half the digits of the parameters are still free. Gauss–Newton steps, which follow the residuals themselves, settle them, and show whether this is a minimum at all.
    private static double[]? Finish(
        Func<IReadOnlyList<double>, double, double> model,
        Func<IReadOnlyList<double>, double, double[]> gradient,
        IReadOnlyList<double> x,
        IReadOnlyList<double> y,
        double[] parameters)
    {
        for (var i = 0; i < FinishingSteps; i++)
        {
            var residuals = x.Select((v, k) => y[k] - model(parameters, v)).ToArray();
            double[][] jacobian = [.. x.Select(v => gradient(parameters, v))];
            if (CovarianceFactor.Solve(jacobian, residuals) is not { } step || !step.All(double.IsFinite))
                return null;
            parameters = [.. parameters.Zip(step, (p, d) => p + d)];

            // Measured by what the step moves on the curve: a parameter that is truly zero has no size to compare with.
            var moved = jacobian.Select(row => row.Zip(step, (g, d) => g * d).Sum());
            if (Length(moved) <= (SettledPart * Length(residuals)) + (RoundingPart * Length(y)))
                return parameters;
        }

        return null;

        static double Length(IEnumerable<double> values) => Math.Sqrt(values.Sum(v => v * v));
    }

    private static NonlinearFit? Of(
        string name,
        Func<IReadOnlyList<double>, double, double> model,
        Func<IReadOnlyList<double>, double, double[]> gradient,
        IReadOnlyList<double> x,
        IReadOnlyList<double> y,
        double[] parameters)
    {
        var residuals = x.Select((v, i) => y[i] - model(parameters, v)).ToArray();
        var squares = residuals.Sum(r => r * r);
        if (!double.IsFinite(squares))
            return null;
        double freedom = x.Count - parameters.Length;
        var factor = CovarianceFactor.Of([.. x.Select(v => gradient(parameters, v))], Math.Sqrt(squares / freedom));
        if (factor is null)
            return null;
        var group = new RootGroup(name, freedom);
        var causes = parameters.Select((_, k) => new RootCause($"{name}: fit, direction {k + 1}", $"scatter of {x.Count} points about the model", 1, group: group)).ToArray();
        var uncertain = parameters.Select((p, i) => Uncertain.From(p, [.. causes.Select((cause, k) => cause * factor[i, k])])).ToArray();
        return new NonlinearFit(uncertain, squares, freedom, residuals);
    }
}
