namespace Commission.Checks.Tests.VacuumAnalysis.Holds;

/// <summary>The families between which a hold has to tell.</summary>
internal enum HoldFamily
{
    Flat,
    Line,
    Source,
    Both,
    Outgassing,
}

/// <summary>
/// Whether a hold can tell its family at all, from the noiseless curve and the noise at hand: each family is fitted to the curve by least
/// squares, and AICc = n·ln(v + misfit²) + 2k + 2k(k+1)/(n−k−1) is compared, with n independent readings of variance v (Hurvich and Tsai,
/// Biometrika 76 (1989) 297; from memory). A reading is independent after two memories of the wander, and after a digit where the noise does
/// not move the digits; within that time the noise averages. Clear is 10 and more from every family that says something else. A richer
/// family always fits, so against it the curve that has to be told apart is this one with the smallest term that counts laid on top. A leak beneath a
/// source has to be apart from the laws of outgassing, too.
/// </summary>
internal sealed class HoldClarity
{
    public const double Apart = 10;

    private const int MostPoints = 100;
    private const double Skipped = 60;
    private const double GridRatio = 1.2;

    private readonly SimulatedHold _hold;
    private readonly double _counting;
    private readonly double[] _t;
    private readonly double _n;
    private readonly double _variance;
    private readonly double _length;

    private HoldClarity(SimulatedHold hold, double counting)
    {
        _hold = hold;
        _counting = counting;
        _length = hold.Length;
        var skip = Skip(hold.Length);
        var span = hold.Length - skip;
        var noise = Math.Sqrt(hold.White * hold.White + hold.Wander * hold.Wander);
        var step = hold.Gauge.StepAt(hold.Pressure(hold.Length / 2));
        var dithered = noise > 0.4 * step;
        var changes = Math.Max(1, Math.Abs(hold.Pressure(hold.Length) - hold.Pressure(skip)) / step);
        var block = Math.Max(hold.Interval, Math.Max(hold.Wander > 0 ? 2 * hold.Memory : 0, dithered ? 0 : span / changes));
        block = Math.Max(block, span / 400);
        _n = span / block;
        var rows = Math.Max(1, block / hold.Interval);
        var x = block / hold.Memory;
        var wander = hold.Wander * hold.Wander * (hold.Interval >= hold.Memory ? 1 / rows : 2 / (x * x) * (x - 1 + Math.Exp(-x)));
        _variance = hold.White * hold.White / rows + wander + step * step / 12 / (dithered ? rows : 1);
        var points = (int)Math.Clamp(span / hold.Interval, 10, MostPoints);
        _t = [.. Enumerable.Range(0, points).Select(i => skip + span * (i + 0.5) / points)];
    }

    /// <summary>Whether the family of a hold is clear.</summary>
    /// <param name="hold">The hold.</param>
    /// <param name="truth">Its family.</param>
    /// <param name="counting">The smallest rise that counts, Pa.</param>
    public static bool IsClear(SimulatedHold hold, HoldFamily truth, double counting) => new HoldClarity(hold, counting).Clear(truth);

    /// <summary>Whether the curve shows no bend through the noise: then a straight line is all that anybody sees.</summary>
    public static bool IsStraight(SimulatedHold hold, double counting)
    {
        var clarity = new HoldClarity(hold, counting);
        return clarity._n < 10 || !clarity.IsApart(clarity.Curve(hold.Pressure), HoldFamily.Both, HoldFamily.Line);
    }

    /// <summary>Time that is left out after isolation while pressures even out, s.</summary>
    public static double Skip(double length) => Math.Min(Skipped, length / 10);

    private bool Clear(HoldFamily truth)
    {
        if (_n < 10)
            return false;
        var y = Curve(_hold.Pressure);
        return truth switch
        {
            HoldFamily.Flat => Beats(y, HoldFamily.Flat, Line(_counting)) && Counting(y, HoldFamily.Flat, _counting),
            HoldFamily.Line => IsApart(y, HoldFamily.Line, HoldFamily.Flat) && IsApart(y, HoldFamily.Line, HoldFamily.Source, _length / 2) && IsApart(y, HoldFamily.Line, HoldFamily.Outgassing, _length / 2)
                && Counting(y, HoldFamily.Line, Math.Max(_counting, 0.3 * Rise(y))),
            HoldFamily.Source => IsApart(y, HoldFamily.Source, HoldFamily.Flat) && IsApart(y, HoldFamily.Source, HoldFamily.Line) && IsApart(y, HoldFamily.Source, HoldFamily.Outgassing) && Beats(y, HoldFamily.Source, Line(Math.Max(_counting, 0.3 * Rise(y)))),
            _ => IsApart(y, HoldFamily.Both, HoldFamily.Flat) && IsApart(y, HoldFamily.Both, HoldFamily.Line) && IsApart(y, HoldFamily.Both, HoldFamily.Source, 50 * _length) && IsApart(y, HoldFamily.Both, HoldFamily.Outgassing) && IsApartFromTwoPockets(y),
        };
    }

    private double[] Curve(Func<double, double> of) => [.. _t.Select(of)];

    private static double Rise(double[] y) => y[^1] - y[0];

    private double[] Line(double rise) => Curve(t => rise * t / _length);

    // The curve of the truth against another family.
    private bool IsApart(double[] y, HoldFamily truth, HoldFamily other, double? longest = null) =>
        Criterion(Misfit(y, other, longest ?? 50 * _length), Parameters(other)) - Criterion(0, Parameters(truth)) >= Apart;

    // Two pockets slow down without a leak: two exponentials, the slower no slower than two holds.
    private bool IsApartFromTwoPockets(double[] y)
    {
        var ones = Curve(_ => 1);
        var least = Criterion(0, Parameters(HoldFamily.Both)) + Apart;
        double[] constants = [.. Taus(10, 2 * _length)];
        return constants.All(fast => constants.Where(slow => slow > 2 * fast).All(slow =>
            Criterion(Residual(y, ones, Curve(t => Math.Exp(-t / fast)), Curve(t => Math.Exp(-t / slow))), 6) >= least));
    }

    // A term that counts on top of the truth must be seen: the family of the truth does not fit the sum.
    private bool Beats(double[] y, HoldFamily truth, double[] term)
    {
        var sum = y.Zip(term, (a, b) => a + b).ToArray();
        var richer = truth == HoldFamily.Flat ? HoldFamily.Line : HoldFamily.Both;
        return Criterion(Misfit(sum, truth, 50 * _length), Parameters(truth)) - Criterion(0, Parameters(richer)) >= Apart;
    }

    private bool Counting(double[] y, HoldFamily truth, double rise) => Taus(Math.Max(60, 3 * _length / _n), _length / 2).All(tau =>
        Beats(y, truth, Curve(t => rise * (1 - Math.Exp(-t / tau)) / (1 - Math.Exp(-_length / tau)))));

    private static int Parameters(HoldFamily family) => family switch { HoldFamily.Flat => 2, HoldFamily.Line => 3, HoldFamily.Source or HoldFamily.Outgassing => 4, _ => 5 };

    private double Criterion(double meanSquare, int k) => _n * Math.Log(_variance + meanSquare) + 2 * k + 2.0 * k * (k + 1) / (_n - k - 1);

    private double Misfit(double[] y, HoldFamily family, double longest)
    {
        var ones = Curve(_ => 1);
        return family switch
        {
            HoldFamily.Flat => Residual(y, ones),
            HoldFamily.Line => Residual(y, ones, _t),
            HoldFamily.Source => Taus(10, longest).Min(tau => Residual(y, ones, Curve(t => Math.Exp(-t / tau)))),
            HoldFamily.Outgassing => Taus(10, longest).Min(tau => Math.Min(Residual(y, ones, Curve(t => Math.Log(1 + t / tau))), Residual(y, ones, Curve(t => Math.Sqrt(1 + t / tau))))),
            _ => Taus(10, longest).Min(tau => Residual(y, ones, _t, Curve(t => Math.Exp(-t / tau)))),
        };
    }

    private static IEnumerable<double> Taus(double from, double to)
    {
        for (var tau = from; tau < to; tau *= GridRatio)
            yield return tau;
        yield return Math.Max(from, to);
    }

    // Mean square distance from the span of the others: modified Gram–Schmidt, done twice.
    private static double Residual(double[] y, params ReadOnlySpan<double[]> others)
    {
        var basis = new List<double[]>();
        foreach (var other in others)
        {
            var rest = Off(other, basis);
            var length = Math.Sqrt(rest.Sum(v => v * v));
            if (length > 1e-12)
                basis.Add([.. rest.Select(v => v / length)]);
        }

        return Off(y, basis).Average(v => v * v);
    }

    private static double[] Off(double[] y, List<double[]> basis)
    {
        var rest = (double[])y.Clone();
        for (var pass = 0; pass < 2; pass++)
        {
            foreach (var b in basis)
            {
                var dot = 0.0;
                for (var i = 0; i < rest.Length; i++)
                    dot += rest[i] * b[i];
                for (var i = 0; i < rest.Length; i++)
                    rest[i] -= dot * b[i];
            }
        }

        return rest;
    }
}
