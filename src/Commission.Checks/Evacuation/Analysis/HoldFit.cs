namespace Commission.Checks.EvacuationAnalysis;

/// <summary>
/// Weighted least squares of the four curves on blocks. For a given τ the curves are linear, so the only search is over τ.
/// p = P + a·t − c·e^(−t/τ), t from the first used row: P the plateau (or the level at t = 0 without a source), a the slope,
/// c = p∞ − p0. The exponential is averaged over each block.
/// </summary>
internal sealed class HoldFit
{
    private readonly HoldBlocks blocks;
    private readonly double total;
    private readonly double meanT;
    private readonly double meanY;
    private readonly double stt;
    private readonly double sty;
    private readonly double[] shape;

    internal HoldFit(HoldBlocks blocks)
    {
        this.blocks = blocks;
        shape = new double[blocks.Count];
        for (var i = 0; i < blocks.Count; i++)
        {
            total += blocks.Weight[i];
            meanT += blocks.Weight[i] * blocks.Time[i];
            meanY += blocks.Weight[i] * blocks.Value[i];
        }

        meanT /= total;
        meanY /= total;
        for (var i = 0; i < blocks.Count; i++)
        {
            var t = blocks.Time[i] - meanT;
            var y = blocks.Value[i] - meanY;
            stt += blocks.Weight[i] * t * t;
            sty += blocks.Weight[i] * t * y;
            Syy += blocks.Weight[i] * y * y;
        }
    }

    /// <summary>Parameters of a curve, residual sum of squares, and (XᵀX)⁻¹ on the diagonal.</summary>
    internal readonly record struct Fit(
        HoldModel Model, double Tau, double Plateau, double Slope, double Step, double Rss,
        double PlateauVariance, double SlopeVariance, double StepVariance)
    {
        internal double At(double t) => Plateau + Slope * t - (Step == 0 ? 0 : Step * Math.Exp(-t / Tau));
    }

    /// <summary>The two curves with a source at one τ, without constraints on the signs.</summary>
    internal readonly record struct AtTau(double Tau, Fit Source, Fit Both);

    /// <summary>Sum of squares about the mean: residual sum of squares of the flat curve.</summary>
    internal double Syy { get; }

    internal Fit Flat => new(HoldModel.Flat, 0, meanY, 0, 0, Syy, 1 / total, 0, 0);

    /// <summary>The line without a constraint on its slope.</summary>
    internal Fit FreeLine
    {
        get
        {
            var slope = sty / stt;
            return new Fit(
                HoldModel.Line, 0, meanY - slope * meanT, slope, 0, Math.Max(Syy - slope * sty, 0),
                1 / total + meanT * meanT / stt, 1 / stt, 0);
        }
    }

    /// <summary>The line with slope ≥ 0.</summary>
    internal Fit Line => sty >= 0 ? FreeLine : Flat with { Model = HoldModel.Line };

    internal AtTau Solve(double tau)
    {
        double meanE = 0;
        for (var i = 0; i < shape.Length; i++)
        {
            // Mean of e^(−t/τ) over the block: e^(−t/τ)·sinh(h)/h.
            var h = blocks.HalfWidth[i] / tau;
            var h2 = h * h;
            var spread = h < 1 ? 1 + h2 / 6 * (1 + h2 / 20 * (1 + h2 / 42)) : Math.Sinh(h) / h;
            shape[i] = Math.Exp(-blocks.Time[i] / tau) * spread;
            meanE += blocks.Weight[i] * shape[i];
        }

        meanE /= total;
        double see = 0;
        double ste = 0;
        double sey = 0;
        for (var i = 0; i < shape.Length; i++)
        {
            var e = shape[i] - meanE;
            var we = blocks.Weight[i] * e;
            see += we * e;
            ste += we * (blocks.Time[i] - meanT);
            sey += we * (blocks.Value[i] - meanY);
        }

        var step = -sey / see;
        var source = new Fit(
            HoldModel.Source, tau, meanY + step * meanE, 0, step, Math.Max(Syy - sey * sey / see, 0),
            1 / total + meanE * meanE / see, 0, 1 / see);

        // Of the exponential, only what a line does not explain (Gram–Schmidt: stable where τ is long).
        var along = ste / stt;
        var rest = Math.Max(see - along * ste, 1e-14 * see);
        var restY = sey - along * sty;
        var bothStep = -restY / rest;
        var slope = (sty + bothStep * ste) / stt;
        var slopeVariance = 1 / stt + along * along / rest;
        var lever = meanE - along * meanT;
        var both = new Fit(
            HoldModel.LineAndSource, tau, meanY - slope * meanT + bothStep * meanE, slope, bothStep,
            Math.Max(Syy - sty * sty / stt - restY * restY / rest, 0),
            1 / total + meanT * meanT / stt + lever * lever / rest, slopeVariance, 1 / rest);
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
