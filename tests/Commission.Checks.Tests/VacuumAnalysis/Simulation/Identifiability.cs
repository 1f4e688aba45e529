using Commission.Checks.Formulas;
using Commission.Checks.VacuumAnalysis;

namespace Commission.Checks.Tests.VacuumAnalysis.Simulation;

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
    private readonly HoldTruth _truth;
    private readonly double _span;
    private readonly double _start;
    private readonly double _readings;
    private readonly double[] _t;
    private readonly double _phi;
    private readonly double _wanderVariance;
    private readonly double _digitVariance;

    private Identifiability(HoldTruth truth)
    {
        _truth = truth;
        _start = Math.Min(60, Math.Max(30, truth.Length / 10));
        _span = truth.Length - _start;
        var rows = _span / truth.Interval * (1 - truth.DroppedShare);
        var memory = (1 + truth.Correlation) / (1 - truth.Correlation);
        var steps = 0.8 * truth.Noise * Math.Sqrt(2 * (1 - truth.Correlation)) / truth.Resolution;
        var changes = (truth.At(truth.Length) - truth.At(_start)) / truth.Resolution + rows * steps;
        _readings = Math.Min(rows / memory, changes);
        var points = (int)Math.Min(MostPoints, rows);
        var spacing = rows / points;
        _t = [.. Enumerable.Range(0, points).Select(i => _start + _span * (i + 0.5) / points)];

        // Where a point spans many memories the long-run variance tells all; else the process is sampled.
        _phi = memory < spacing ? 0 : Math.Pow(truth.Correlation, spacing);
        _wanderVariance = truth.Noise * truth.Noise * (_phi == 0 ? memory / spacing : 1);
        _digitVariance = truth.Resolution * truth.Resolution / 12 * points / Math.Clamp(changes, 1, rows);
    }

    public static Class Of(HoldTruth truth) => new Identifiability(truth).Judge();

    private Class Judge()
    {
        var half = _truth.Length / 2;
        var shortest = Math.Max(3 * _span / _readings, 30);
        var line = _truth.Slope * _truth.Length;
        var source = _truth.Step * (Math.Exp(-_start / _truth.Tau) - Math.Exp(-_truth.Length / _truth.Tau));
        var y = _t.Select(_truth.At).ToArray();
        var counting = _truth.Counting;
        double away;
        bool clear;
        switch (_truth.Kind)
        {
            case HoldConclusion.Held:
                away = Math.Min(
                    Away(_t.Select(x => counting * x / _truth.Length).ToArray(), [], withLine: false),
                    Math.Min(CountingSource(shortest, withLine: false, counting), CountingSource(half, withLine: false, counting)));
                clear = _readings >= 6;
                break;
            case HoldConclusion.SteadyRise:
                away = Math.Min(Away(y, Taus(Math.Min(shortest, half), half), withLine: false), CountingSource(half, withLine: true, Math.Max(counting, 0.3 * line)));
                clear = _readings >= 10 && line >= 1.5 * counting;
                break;
            case HoldConclusion.Source:
                away = Math.Min(Away(y, [], withLine: true), CountingLine(Math.Max(counting, 0.3 * source)));
                clear = _readings >= 10 && source >= 1.5 * counting && TauIsClear();
                break;
            default:
                away = Math.Min(Away(y, [], withLine: true), Away(y, Taus(Math.Min(shortest, half), 50 * _truth.Length), withLine: false));
                clear = _readings >= 10 && source >= 1.5 * counting && line >= 1.5 * counting && TauIsClear();
                break;
        }

        if (away <= 4 || (_truth.Step > 0 && _truth.Tau > 1.15 * half))
            return Class.Hidden;
        return clear && away >= 32 ? Class.Clear : Class.Between;
    }

    private bool TauIsClear()
    {
        var e = _t.Select(x => Math.Exp(-x / _truth.Tau)).ToArray();
        var d = _t.Select(x => _truth.Step * x / _truth.Tau / _truth.Tau * Math.Exp(-x / _truth.Tau)).ToArray();
        var u = Math.Sqrt(1 / ChiSquare(d, _truth.Kind == HoldConclusion.Source ? [Ones, e] : [Ones, _t, e]));
        return _truth.Tau >= Math.Max(4 * _span / _readings, 60) && _truth.Tau + 2 * u <= _truth.Length / 2;
    }

    // A source of that rise, laid on top, is away by this.
    private double CountingSource(double tau, bool withLine, double rise)
    {
        var share = 1 - Math.Exp(-_span / tau);
        var e = _t.Select(x => rise / share * Math.Exp(-(x - _start) / tau)).ToArray();
        return ChiSquare(e, withLine ? [Ones, _t] : [Ones]);
    }

    private double CountingLine(double rise) =>
        ChiSquare(_t.Select(x => rise * x / _truth.Length).ToArray(), [Ones, _t.Select(x => Math.Exp(-x / _truth.Tau)).ToArray()]);

    private double Away(double[] y, IEnumerable<double> taus, bool withLine)
    {
        var least = ChiSquare(y, withLine ? [Ones, _t] : [Ones]);
        foreach (var tau in taus)
        {
            var e = _t.Select(x => Math.Exp(-x / tau)).ToArray();
            least = Math.Min(least, ChiSquare(y, withLine ? [Ones, _t, e] : [Ones, e]));
        }

        return least;
    }

    private static IEnumerable<double> Taus(double from, double to)
    {
        for (var tau = from; tau < to; tau *= 1.15)
            yield return tau;
        yield return to;
    }

    private double[] Ones => [.. _t.Select(_ => 1.0)];

    // Least squares distance of y from the space of the others: wander (whitened) and digit steps add as variances.
    private double ChiSquare(double[] y, double[][] others)
    {
        var byDigits = Residual(y, others) / _digitVariance;
        var byWander = Residual(Whiten(y), [.. others.Select(Whiten)]) / _wanderVariance;
        return 1 / (1 / byDigits + 1 / byWander);
    }

    private double[] Whiten(double[] v)
    {
        if (_phi == 0)
            return v;
        var w = new double[v.Length];
        w[0] = v[0];
        for (var i = 1; i < v.Length; i++)
            w[i] = (v[i] - _phi * v[i - 1]) / Math.Sqrt(1 - _phi * _phi);
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
