using Commission.Checks.Formulas;
using Commission.Checks.VacuumAnalysis;

namespace Commission.Checks.Tests.EvacuationAnalysis.Simulation;

/// <summary>
/// Whether a simulated hold can tell its truth at all, from the truth and the noise alone (no product code). "Away" is χ²: the
/// least squares distance, in units of the noise with its correlation, from the truth to the best curve of another explanation.
/// The rule, with E the rise that counts:
/// Clear: ten independent readings (six for tight), a digit change each; each term rises by 1.5 E or more; every other explanation
/// whose own term counts is away by χ² ≥ 32; for tight, a rise of E is; a source has 4 readings ≤ τ, 60 s ≤ τ, τ + 2 u(τ) ≤ half the hold.
/// Hidden: another explanation is away by χ² ≤ 4 only, or τ exceeds half the hold by 15 %.
/// Between: the rest.
/// </summary>
internal sealed class Identifiability
{
    internal enum Class
    {
        Clear,
        Between,
        Hidden,
    }

    private const int MostPoints = 160;
    private readonly HoldTruth truth;
    private readonly double span;
    private readonly double start;
    private readonly double readings;
    private readonly double[] t;
    private readonly double phi;
    private readonly double wanderVariance;
    private readonly double digitVariance;

    private Identifiability(HoldTruth truth)
    {
        this.truth = truth;
        start = Math.Min(60, Math.Max(30, truth.Length / 10));
        span = truth.Length - start;
        var rows = span / truth.Interval * (1 - truth.DroppedShare);
        var memory = (1 + truth.Correlation) / (1 - truth.Correlation);
        var steps = 0.8 * truth.Noise * Math.Sqrt(2 * (1 - truth.Correlation)) / truth.Resolution;
        var changes = (truth.At(truth.Length) - truth.At(start)) / truth.Resolution + rows * steps;
        readings = Math.Min(rows / memory, changes);
        var points = (int)Math.Min(MostPoints, rows);
        var spacing = rows / points;
        t = [.. Enumerable.Range(0, points).Select(i => start + span * (i + 0.5) / points)];

        // Where a point spans many memories the long-run variance tells all; else the process is sampled.
        phi = memory < spacing ? 0 : Math.Pow(truth.Correlation, spacing);
        wanderVariance = truth.Noise * truth.Noise * (phi == 0 ? memory / spacing : 1);
        digitVariance = truth.Resolution * truth.Resolution / 12 * points / Math.Clamp(changes, 1, rows);
    }

    public static Class Of(HoldTruth truth) => new Identifiability(truth).Judge();

    private Class Judge()
    {
        var half = truth.Length / 2;
        var shortest = Math.Max(3 * span / readings, 30);
        var line = truth.Slope * truth.Length;
        var source = truth.Step * (Math.Exp(-start / truth.Tau) - Math.Exp(-truth.Length / truth.Tau));
        var y = t.Select(truth.At).ToArray();
        var counting = truth.Counting;
        double away;
        bool clear;
        switch (truth.Kind)
        {
            case HoldConclusion.Held:
                away = Math.Min(
                    Away(t.Select(x => counting * x / truth.Length).ToArray(), [], withLine: false),
                    Math.Min(CountingSource(shortest, withLine: false, counting), CountingSource(half, withLine: false, counting)));
                clear = readings >= 6;
                break;
            case HoldConclusion.SteadyRise:
                away = Math.Min(Away(y, Taus(Math.Min(shortest, half), half), withLine: false), CountingSource(half, withLine: true, Math.Max(counting, 0.3 * line)));
                clear = readings >= 10 && line >= 1.5 * counting;
                break;
            case HoldConclusion.Source:
                away = Math.Min(Away(y, [], withLine: true), CountingLine(Math.Max(counting, 0.3 * source)));
                clear = readings >= 10 && source >= 1.5 * counting && TauIsClear();
                break;
            default:
                away = Math.Min(Away(y, [], withLine: true), Away(y, Taus(Math.Min(shortest, half), 50 * truth.Length), withLine: false));
                clear = readings >= 10 && source >= 1.5 * counting && line >= 1.5 * counting && TauIsClear();
                break;
        }

        if (away <= 4 || (truth.Step > 0 && truth.Tau > 1.15 * half))
            return Class.Hidden;
        return clear && away >= 32 ? Class.Clear : Class.Between;
    }

    private bool TauIsClear()
    {
        var e = t.Select(x => Math.Exp(-x / truth.Tau)).ToArray();
        var d = t.Select(x => truth.Step * x / truth.Tau / truth.Tau * Math.Exp(-x / truth.Tau)).ToArray();
        var u = Math.Sqrt(1 / ChiSquare(d, truth.Kind == HoldConclusion.Source ? [Ones, e] : [Ones, t, e]));
        return truth.Tau >= Math.Max(4 * span / readings, 60) && truth.Tau + 2 * u <= truth.Length / 2;
    }

    // A source of that rise, laid on top, is away by this.
    private double CountingSource(double tau, bool withLine, double rise)
    {
        var share = 1 - Math.Exp(-span / tau);
        var e = t.Select(x => rise / share * Math.Exp(-(x - start) / tau)).ToArray();
        return ChiSquare(e, withLine ? [Ones, t] : [Ones]);
    }

    private double CountingLine(double rise) =>
        ChiSquare(t.Select(x => rise * x / truth.Length).ToArray(), [Ones, t.Select(x => Math.Exp(-x / truth.Tau)).ToArray()]);

    private double Away(double[] y, IEnumerable<double> taus, bool withLine)
    {
        var least = ChiSquare(y, withLine ? [Ones, t] : [Ones]);
        foreach (var tau in taus)
        {
            var e = t.Select(x => Math.Exp(-x / tau)).ToArray();
            least = Math.Min(least, ChiSquare(y, withLine ? [Ones, t, e] : [Ones, e]));
        }

        return least;
    }

    private static IEnumerable<double> Taus(double from, double to)
    {
        for (var tau = from; tau < to; tau *= 1.15)
            yield return tau;
        yield return to;
    }

    private double[] Ones => [.. t.Select(_ => 1.0)];

    // Least squares distance of y from the space of the others: wander (whitened) and digit steps add as variances.
    private double ChiSquare(double[] y, double[][] others)
    {
        var byDigits = Residual(y, others) / digitVariance;
        var byWander = Residual(Whiten(y), [.. others.Select(Whiten)]) / wanderVariance;
        return 1 / (1 / byDigits + 1 / byWander);
    }

    private double[] Whiten(double[] v)
    {
        if (phi == 0)
            return v;
        var w = new double[v.Length];
        w[0] = v[0];
        for (var i = 1; i < v.Length; i++)
            w[i] = (v[i] - phi * v[i - 1]) / Math.Sqrt(1 - phi * phi);
        return w;
    }

    // Gram–Schmidt done twice.
    private static double Residual(double[] y, double[][] others)
    {
        var basis = new List<double[]>();
        foreach (var o in others)
        {
            var off = Off(o, basis);
            var length = Math.Sqrt(off.Sum(x => x * x));
            basis.Add([.. off.Select(x => x / length)]);
        }

        return Off(y, basis).Sum(v => v * v);
    }

    private static double[] Off(double[] y, List<double[]> basis)
    {
        var r = (double[])y.Clone();
        for (var pass = 0; pass < 2; pass++)
        {
            foreach (var b in basis)
            {
                double dot = 0;
                for (var i = 0; i < r.Length; i++)
                    dot += r[i] * b[i];
                for (var i = 0; i < r.Length; i++)
                    r[i] -= dot * b[i];
            }
        }

        return r;
    }
}
