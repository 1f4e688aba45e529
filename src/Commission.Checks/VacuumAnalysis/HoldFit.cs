using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Messages;

namespace Commission.Checks.VacuumAnalysis;

/// <summary>The curves a hold is compared with.</summary>
internal enum HoldModel
{
    /// <summary>p = p0.</summary>
    Flat,

    /// <summary>p = p0 + a·t: a steady inflow.</summary>
    Line,

    /// <summary>p = p∞ − (p∞ − p0)·e^(−t/τ): a source that runs towards an equilibrium.</summary>
    Source,

    /// <summary>The sum of a steady inflow and a source.</summary>
    LineAndSource,

    /// <summary>p = p0 + b·ln(1 + t/s) or p0 + b·(√(1 + t/s) − 1): gas given off ever more slowly, by the walls or through them, towards no level.</summary>
    Outgassing,
}

/// <summary>How what slows down approaches its end, as a function of x = t/τ that falls from its value at zero; a rise is minus this.</summary>
internal enum HoldShape
{
    /// <summary>e^(−x): one source that runs towards an equilibrium.</summary>
    Exponential,

    /// <summary>−ln(1 + x): the rate falls as 1/t, as it does from the walls of a metal system (O'Hanlon, A User's Guide to Vacuum Technology, chapter 4, from memory).</summary>
    Logarithm,

    /// <summary>−√(1 + x): the rate falls as 1/√t, as it does by diffusion out of a thick body (the same, from memory).</summary>
    Root,
}

/// <summary>The shapes and their derivatives.</summary>
internal static class HoldShapes
{
    /// <summary>The shape at x = t/τ.</summary>
    public static double At(this HoldShape shape, double x) => shape switch
    {
        HoldShape.Exponential => Math.Exp(-x),
        HoldShape.Logarithm => -Math.Log(1 + x),
        _ => -Math.Sqrt(1 + x),
    };

    /// <summary>Its derivative to x.</summary>
    public static double Slope(this HoldShape shape, double x) => shape switch
    {
        HoldShape.Exponential => -Math.Exp(-x),
        HoldShape.Logarithm => -1 / (1 + x),
        _ => -0.5 / Math.Sqrt(1 + x),
    };

    /// <summary>Its mean from x − h to x + h.</summary>
    public static double Mean(this HoldShape shape, double x, double h)
    {
        if (shape != HoldShape.Exponential)
        {
            // Simpson's rule: the block begins at or after the valve was closed.
            h = Math.Min(h, x);
            return (At(shape, x - h) + (4 * At(shape, x)) + At(shape, x + h)) / 6;
        }

        // e^(−x)·sinh(h)/h.
        var h2 = h * h;
        return Math.Exp(-x) * (h < 1 ? 1 + (h2 / 6 * (1 + (h2 / 20 * (1 + (h2 / 42))))) : Math.Sinh(h) / h);
    }
}

/// <summary>
/// Parameters of a hold with their 95 % intervals. To the scatter come the errors that do not average out: the gauge's gain and
/// zero, and a drift of temperature over the hold, whose effect is found by fitting once more to drifted readings.
/// </summary>
internal readonly record struct HoldParameters(
    Interval? Slope, Uncertain? SlopeWithCauses, Interval? Plateau, Interval? TimeConstant)
{
    private const double RoomTemperature = ConversionFactors.CelsiusZero + 20;

    // How much of a gauge's accuracy may be a bend of its curve, which takes a part of a source's rise for slope or slope for source: common practice, no source;
    // tried against drawn gauges (tests/run-long coverage).
    private const double Bend = 0.5;

    internal static HoldParameters Of(HoldEvidence evidence, HoldModel preferred, GaugeCharacter gauge, double temperatureDrift)
    {
        var drifted = new HoldFit(evidence.Blocks.Drifted(temperatureDrift / RoomTemperature));
        return preferred is HoldModel.Source or HoldModel.Outgassing or HoldModel.LineAndSource && evidence.CanFitSource
            ? WithSource(evidence, preferred, gauge, drifted)
            : Alone(evidence, gauge, drifted);
    }

    private static HoldParameters Alone(HoldEvidence evidence, GaugeCharacter gauge, HoldFit drifted)
    {
        var line = evidence.FreeLine;
        var noise = evidence.Noise(line);
        if (!double.IsFinite(noise.Variance))
            return default;
        var reach = noise.Factor * Math.Sqrt(noise.Variance * line.SlopeVariance);
        var gain = gauge.GainHalfWidth * Math.Abs(line.Slope);
        var drift = Math.Abs(line.Slope - drifted.FreeLine.Slope);
        var slope = Widen(new Interval(line.Slope, line.Slope - reach, line.Slope + reach), noise, double.Hypot(gain, drift));
        return new HoldParameters(slope, WithCauses(line.Slope, reach / noise.Factor, noise.Freedom, gain, drift), Plateau: null, TimeConstant: null);
    }

    private static HoldParameters WithSource(HoldEvidence evidence, HoldModel preferred, GaugeCharacter gauge, HoldFit drifted)
    {
        var noise = evidence.Noise(evidence.FreeBoth);
        if (!double.IsFinite(noise.Variance))
            return default;
        var besides = evidence.SlopeBesideSource;
        var shifted = drifted.Best(drifted.Near(evidence.FreeBoth.Tau), at => at.Both);
        var gain = gauge.GainHalfWidth * Math.Abs(besides.Value);
        var drift = Math.Abs(besides.Value - shifted.Slope);
        var blocks = evidence.Blocks;
        var bend = Bend * gauge.GainHalfWidth * Math.Abs(blocks.Value[^1] - blocks.Value[0]) / (blocks.Time[^1] - blocks.Time[0]);
        var causes = WithCauses(besides.Value, (besides.High - besides.Low) / 2 / noise.Factor, noise.Freedom, gain, drift)
            + Uncertain.From(0, RootCause.FromHalfWidth(VacuumHoldMessages.CauseBend, VacuumHoldMessages.CauseBendSource, bend));
        var slope = Widen(besides, noise, double.Hypot(double.Hypot(gain, bend), drift));
        if (preferred == HoldModel.LineAndSource)
        {
            var tau = Tau(evidence, evidence.FreeBoth, at => at.Both, noise);
            return new HoldParameters(slope, causes, Plateau: null, NotNegative(Widen(tau, noise, Math.Abs(tau.Value - shifted.Tau))));
        }

        // What slows down without end runs towards no level and has no time constant.
        if (preferred == HoldModel.Outgassing)
            return new HoldParameters(slope, causes, Plateau: null, TimeConstant: null);
        var alone = evidence.FreeSource;
        var aloneNoise = evidence.Noise(alone);
        var aloneShifted = drifted.Best(drifted.Near(alone.Tau), at => at.Source);
        var plateau = HoldProfile.Parameter(
            evidence.Fitter, evidence.Beyond, at => at.Source, alone,
            aloneNoise.Factor * aloneNoise.Factor * aloneNoise.Variance, f => (f.Plateau, f.PlateauVariance));
        var level = double.Hypot(
            double.Hypot(gauge.GainHalfWidth * plateau.Value, gauge.ZeroHalfWidth), plateau.Value - aloneShifted.Plateau);
        var time = Tau(evidence, alone, at => at.Source, aloneNoise);
        return new HoldParameters(
            slope, causes, Widen(plateau, aloneNoise, level),
            NotNegative(Widen(time, aloneNoise, Math.Abs(time.Value - aloneShifted.Tau))));
    }

    private static Interval NotNegative(in Interval interval) => interval with { Low = Math.Max(interval.Low, 0) };

    private static Interval Tau(HoldEvidence evidence, HoldFit.Fit best, Func<HoldFit.AtTau, HoldFit.Fit> choose, HoldNoise noise) =>
        HoldProfile.Tau(evidence.Fitter, evidence.Beyond, choose, best, noise.Factor * noise.Factor * noise.Variance);

    private static Uncertain WithCauses(double slope, double scatter, double freedom, double gain, double drift) => Uncertain.From(
        slope,
        new RootCause(VacuumHoldMessages.CauseScatter, VacuumHoldMessages.CauseScatterSource, scatter, freedom),
        RootCause.FromHalfWidth(VacuumHoldMessages.CauseGain, VacuumHoldMessages.CauseGainSource, gain),
        RootCause.FromHalfWidth(VacuumHoldMessages.CauseDrift, VacuumHoldMessages.CauseDriftSource, drift));

    private static Interval Widen(in Interval interval, in HoldNoise noise, double bounded)
    {
        var factor = noise.Factor;
        var below = interval.Value - interval.Low;
        var above = interval.High - interval.Value;
        return new Interval(
            interval.Value,
            double.IsFinite(below) ? interval.Value - CoverageHalfWidth.Of(below / factor, noise.Freedom, bounded) : interval.Low,
            double.IsFinite(above) ? interval.Value + CoverageHalfWidth.Of(above / factor, noise.Freedom, bounded) : interval.High);
    }
}

/// <summary>
/// Weighted least squares of the curves on blocks. For a given τ the curves are linear, so the only search is over τ.
/// p = P + a·t − c·f(t/τ), t from the first used row: P the plateau (or the level at t = 0 without a source), a the slope,
/// c = p∞ − p0 of an exponential. The shape f is averaged over each block.
/// </summary>
internal sealed class HoldFit
{
    private readonly HoldBlocks _blocks;
    private readonly HoldShape _kind;
    private readonly double _total;
    private readonly double _meanT;
    private readonly double _meanY;
    private readonly double _stt;
    private readonly double _sty;
    private readonly double[] _shape;

    internal HoldFit(HoldBlocks blocks, HoldShape kind = HoldShape.Exponential)
    {
        _blocks = blocks;
        _kind = kind;
        _shape = new double[blocks.Count];
        for (var i = 0; i < blocks.Count; i++)
        {
            _total += blocks.Weight[i];
            _meanT += blocks.Weight[i] * blocks.Time[i];
            _meanY += blocks.Weight[i] * blocks.Value[i];
        }

        _meanT /= _total;
        _meanY /= _total;
        for (var i = 0; i < blocks.Count; i++)
        {
            var t = blocks.Time[i] - _meanT;
            var y = blocks.Value[i] - _meanY;
            _stt += blocks.Weight[i] * t * t;
            _sty += blocks.Weight[i] * t * y;
            Syy += blocks.Weight[i] * y * y;
        }
    }

    /// <summary>Parameters of a curve, residual sum of squares, and (XᵀX)⁻¹ on the diagonal.</summary>
    internal readonly record struct Fit(
        HoldModel Model, double Tau, double Plateau, double Slope, double Step, double Rss,
        double PlateauVariance, double SlopeVariance, double StepVariance, HoldShape Shape = HoldShape.Exponential)
    {
        internal double At(double t) => Plateau + Slope * t - (Step == 0 ? 0 : Step * Shape.At(t / Tau));

        /// <summary>Its slope at a time.</summary>
        internal double RateAt(double t) => Slope - (Step == 0 ? 0 : Step * Shape.Slope(t / Tau) / Tau);

        /// <summary>Rise from the first used row by what slows down, for a step of one.</summary>
        internal double Share(double span) => Shape.At(0) - Shape.At(span / Tau);
    }

    /// <summary>The two curves with a source at one τ, without constraints on the signs.</summary>
    internal readonly record struct AtTau(double Tau, Fit Source, Fit Both);

    /// <summary>Sum of squares about the mean: residual sum of squares of the flat curve.</summary>
    internal double Syy { get; }

    internal Fit Flat => new(HoldModel.Flat, 0, _meanY, 0, 0, Syy, 1 / _total, 0, 0);

    /// <summary>The line without a constraint on its slope.</summary>
    internal Fit FreeLine
    {
        get
        {
            var slope = _sty / _stt;
            return new Fit(
                HoldModel.Line, 0, _meanY - slope * _meanT, slope, 0, Math.Max(Syy - slope * _sty, 0),
                1 / _total + _meanT * _meanT / _stt, 1 / _stt, 0);
        }
    }

    /// <summary>The line with slope ≥ 0.</summary>
    internal Fit Line => _sty >= 0 ? FreeLine : Flat with { Model = HoldModel.Line };

    internal AtTau Solve(double tau)
    {
        double meanE = 0;
        for (var i = 0; i < _shape.Length; i++)
        {
            _shape[i] = _kind.Mean(_blocks.Time[i] / tau, _blocks.HalfWidth[i] / tau);
            meanE += _blocks.Weight[i] * _shape[i];
        }

        meanE /= _total;
        double see = 0;
        double ste = 0;
        double sey = 0;
        for (var i = 0; i < _shape.Length; i++)
        {
            var e = _shape[i] - meanE;
            var we = _blocks.Weight[i] * e;
            see += we * e;
            ste += we * (_blocks.Time[i] - _meanT);
            sey += we * (_blocks.Value[i] - _meanY);
        }

        var step = -sey / see;
        var source = new Fit(
            HoldModel.Source, tau, _meanY + step * meanE, 0, step, Math.Max(Syy - sey * sey / see, 0),
            1 / _total + meanE * meanE / see, 0, 1 / see, _kind);

        // Of the exponential, only what a line does not explain (Gram–Schmidt: stable where τ is long).
        var along = ste / _stt;
        var rest = Math.Max(see - along * ste, 1e-14 * see);
        var restY = sey - along * _sty;
        var bothStep = -restY / rest;
        var slope = (_sty + bothStep * ste) / _stt;
        var slopeVariance = 1 / _stt + along * along / rest;
        var lever = meanE - along * _meanT;
        var both = new Fit(
            HoldModel.LineAndSource, tau, _meanY - slope * _meanT + bothStep * meanE, slope, bothStep,
            Math.Max(Syy - _sty * _sty / _stt - restY * restY / rest, 0),
            1 / _total + _meanT * _meanT / _stt + lever * lever / rest, slopeVariance, 1 / rest, _kind);
        return new AtTau(tau, source, both);
    }

    /// <summary>Source at one τ with p∞ ≥ p0.</summary>
    internal Fit Source(in AtTau at) => at.Source.Step >= 0 ? at.Source : Flat with { Model = HoldModel.Source, Tau = at.Tau };

    /// <summary>Both terms at one τ with slope ≥ 0 and p∞ ≥ p0.</summary>
    internal Fit Both(in AtTau at)
    {
        if (at.Both.Slope >= 0 && at.Both.Step >= 0)
            return at.Both;
        var line = Line;
        var source = Source(at);
        return (line.Rss <= source.Rss ? line : source) with { Model = HoldModel.LineAndSource, Tau = at.Tau };
    }

    /// <summary>Solutions over a logarithmic grid of τ.</summary>
    internal AtTau[] Scan(double from, double to, double ratio)
    {
        if (!(from > 0) || to <= from)
            return [];
        var steps = Math.Max(2, (int)Math.Ceiling(Math.Log(to / from) / Math.Log(ratio)));
        var scan = new AtTau[steps + 1];
        for (var i = 0; i <= steps; i++)
            scan[i] = Solve(from * Math.Pow(to / from, (double)i / steps));
        return scan;
    }

    /// <summary>Three solutions around a τ, to start a search from.</summary>
    internal AtTau[] Near(double tau) => Scan(tau / 1.5, tau * 1.5, 1.5);

    /// <summary>The best of a scan, refined by golden section between its neighbours.</summary>
    internal Fit Best(AtTau[] scan, Func<AtTau, Fit> choose)
    {
        var best = 0;
        for (var i = 1; i < scan.Length; i++)
        {
            if (choose(scan[i]).Rss < choose(scan[best]).Rss)
                best = i;
        }

        var low = Math.Log(scan[Math.Max(best - 1, 0)].Tau);
        var high = Math.Log(scan[Math.Min(best + 1, scan.Length - 1)].Tau);
        const double Golden = 0.6180339887498949;
        var left = high - Golden * (high - low);
        var right = low + Golden * (high - low);
        var atLeft = choose(Solve(Math.Exp(left)));
        var atRight = choose(Solve(Math.Exp(right)));
        while (high - low > 1e-6)
        {
            if (atLeft.Rss <= atRight.Rss)
            {
                (high, right, atRight) = (right, left, atLeft);
                left = high - Golden * (high - low);
                atLeft = choose(Solve(Math.Exp(left)));
            }
            else
            {
                (low, left, atLeft) = (left, right, atRight);
                right = low + Golden * (high - low);
                atRight = choose(Solve(Math.Exp(right)));
            }
        }

        var refined = atLeft.Rss <= atRight.Rss ? atLeft : atRight;
        var edge = choose(scan[best]);
        return refined.Rss <= edge.Rss ? refined : edge;
    }
}

/// <summary>
/// Profile intervals: every τ at which the residual sum of squares stays within t²·s² of the least is possible, and at each of
/// them a linear parameter may move as far as that budget allows. No linearisation in τ.
/// </summary>
internal static class HoldProfile
{
    private const int Points = 25;

    /// <summary>Range of τ within a budget, from a scan; ends are 0 or +∞ where the scan's end is still possible.</summary>
    internal static Interval Tau(HoldFit fit, HoldFit.AtTau[] scan, Func<HoldFit.AtTau, HoldFit.Fit> choose, HoldFit.Fit best, double budget)
    {
        var limit = best.Rss + budget;
        var low = 0.0;
        var high = double.PositiveInfinity;
        for (var i = scan.Length - 1; i >= 0; i--)
        {
            if (scan[i].Tau < best.Tau && choose(scan[i]).Rss > limit)
            {
                low = Cross(fit, choose, scan[i].Tau, i + 1 < scan.Length ? Math.Min(scan[i + 1].Tau, best.Tau) : best.Tau, limit);
                break;
            }
        }

        for (var i = 0; i < scan.Length; i++)
        {
            if (scan[i].Tau > best.Tau && choose(scan[i]).Rss > limit)
            {
                high = Cross(fit, choose, scan[i].Tau, i > 0 ? Math.Max(scan[i - 1].Tau, best.Tau) : best.Tau, limit);
                break;
            }
        }

        return new Interval(best.Tau, low, high);
    }

    /// <summary>Range of a linear parameter within a budget, over all τ of the scan that are possible.</summary>
    internal static Interval Parameter(
        HoldFit fit,
        HoldFit.AtTau[] scan,
        Func<HoldFit.AtTau, HoldFit.Fit> choose,
        HoldFit.Fit best,
        double budget,
        Func<HoldFit.Fit, (double Value, double Variance)> parameter)
    {
        var tau = Tau(fit, scan, choose, best, budget);
        var from = Math.Max(tau.Low, scan[0].Tau);
        var to = Math.Min(tau.High, scan[^1].Tau);
        var value = parameter(best).Value;
        var low = value;
        var high = value;
        for (var i = 0; i <= Points; i++)
        {
            var f = i == Points ? best : choose(fit.Solve(from * Math.Pow(to / from, (double)i / (Points - 1))));
            var room = best.Rss + budget - f.Rss;
            if (room < 0)
                continue;
            var (v, variance) = parameter(f);
            var reach = Math.Sqrt(room * variance);
            low = Math.Min(low, v - reach);
            high = Math.Max(high, v + reach);
        }

        return new Interval(value, low, high);
    }

    private static double Cross(HoldFit fit, Func<HoldFit.AtTau, HoldFit.Fit> choose, double outside, double inside, double limit)
    {
        for (var i = 0; i < 30 && Math.Abs(outside / inside - 1) > 1e-5; i++)
        {
            var middle = Math.Sqrt(outside * inside);
            if (choose(fit.Solve(middle)).Rss > limit)
                outside = middle;
            else
                inside = middle;
        }

        return inside;
    }
}

/// <summary>How well one curve explains a hold.</summary>
/// <param name="Model">The curve.</param>
/// <param name="Parameters">Number of parameters k, σ counted.</param>
/// <param name="RootMeanSquare">Root mean square of the residuals of the blocks, Pa, not below resolution/√12.</param>
/// <param name="Aicc">Akaike's criterion with the correction for few readings, n·ln σ² + 2k + 2k(k+1)/(n−k−1); null when n ≤ k + 1.</param>
/// <param name="Difference">AICc less the smallest of the four; null with <paramref name="Aicc"/>.</param>
internal sealed record ModelEvidence(HoldModel Model, int Parameters, double RootMeanSquare, double? Aicc, double? Difference);
