using System.Collections.Immutable;

namespace Commission.Checks.EvacuationAnalysis;

/// <summary>The four curves fitted to the blocks of a hold, and what they weigh.</summary>
internal sealed class HoldEvidence
{
    /// <summary>A richer curve is taken only when its AICc is lower by this.</summary>
    internal const double Richer = 6;

    private readonly double floor;
    private readonly double inflation;
    private readonly double loss;

    internal HoldEvidence(HoldBlocks blocks, double resolution, double correlation, double length, double skip, double interval)
    {
        Blocks = blocks;
        Correlation = correlation;
        Length = length;
        BlockSeconds = blocks.Length * interval;

        // A log without noise and without resolution must not divide by zero: a millionth of the pressure is below any gauge.
        var level = blocks.Value.Sum() / blocks.Count;
        floor = Math.Max(resolution * resolution / 12, 1e-12 * level * level);
        inflation = HoldCorrelation.Inflation(correlation, blocks.Length);
        loss = HoldCorrelation.FreedomLoss(correlation, blocks.Length);
        Fitter = new HoldFit(blocks);
        Flat = Fitter.Flat;
        FreeLine = Fitter.FreeLine;
        Line = Fitter.Line;

        // τ between three blocks and half the hold. What is faster than the time skipped after isolation is equalisation.
        ShortestTau = Math.Max(3 * BlockSeconds, skip / 2);
        LongestTau = length / 2;
        CanFitSource = blocks.Count > 5 && LongestTau > ShortestTau;
        if (CanFitSource)
        {
            var (ratio, longest) = HoldAnalysis.Grid;
            Within = Fitter.Scan(ShortestTau, LongestTau, ratio);
            Beyond = [.. Within, .. Fitter.Scan(LongestTau * ratio, longest * length, ratio)];
            FreeSource = Fitter.Best(Beyond, at => Fitter.Source(at));
            Source = FreeSource.Tau <= LongestTau ? FreeSource : Fitter.Best(Within, at => Fitter.Source(at));
            FreeBoth = Fitter.Best(Within, at => at.Both);
            Both = FreeBoth is { Slope: >= 0, Step: >= 0 } ? FreeBoth : Fitter.Best(Within, at => Fitter.Both(at));
        }
        else
        {
            Source = Line with { Model = HoldModel.Source };
            Both = Line with { Model = HoldModel.LineAndSource };
            FreeSource = Source;
            FreeBoth = Both;
        }

        SlopeBesideSource = FindSlopeBesideSource();
        Preferred = Prefer();
    }

    internal HoldBlocks Blocks { get; }

    internal HoldFit Fitter { get; }

    internal double Correlation { get; }

    internal double BlockSeconds { get; }

    /// <summary>From isolation to the last used row, s.</summary>
    internal double Length { get; }

    internal double ShortestTau { get; }

    internal double LongestTau { get; }

    /// <summary>False when the hold is too short for any τ, or the blocks too few.</summary>
    internal bool CanFitSource { get; }

    /// <summary>Solutions over the τ that a conclusion may use.</summary>
    internal HoldFit.AtTau[] Within { get; } = [];

    /// <summary>The same, on to τ far beyond the hold.</summary>
    internal HoldFit.AtTau[] Beyond { get; } = [];

    internal HoldFit.Fit Flat { get; }

    internal HoldFit.Fit FreeLine { get; }

    internal HoldFit.Fit Line { get; }

    internal HoldFit.Fit Source { get; }

    internal HoldFit.Fit Both { get; }

    /// <summary>The source with any τ.</summary>
    internal HoldFit.Fit FreeSource { get; }

    /// <summary>Line and source within half the hold, signs not forced.</summary>
    internal HoldFit.Fit FreeBoth { get; }

    /// <summary>True when line and source together fit best with a τ beyond half the hold.</summary>
    internal bool SlowerBothFitsBetter => Beyond.Skip(Within.Length).Any(at => Fitter.Both(at).Rss < Both.Rss);

    internal HoldFit.Fit Fit(HoldModel model) => model switch
    {
        HoldModel.Flat => Flat,
        HoldModel.Line => Line,
        HoldModel.Source => Source,
        _ => Both,
    };

    /// <summary>Parameters of a curve without σ.</summary>
    internal static int Terms(HoldModel model) => model switch
    {
        HoldModel.Flat => 1,
        HoldModel.Line => 2,
        HoldModel.Source => 3,
        _ => 4,
    };

    /// <summary>AICc of a fit; null when n ≤ k + 1 or the hold allows no τ.</summary>
    internal double? Aicc(in HoldFit.Fit fit)
    {
        var k = Terms(fit.Model) + 1;
        var n = Blocks.Count;
        if (n <= k + 1 || (k > 3 && !CanFitSource))
            return null;
        return n * Math.Log(MeanSquare(fit)) + 2 * k + 2.0 * k * (k + 1) / (n - k - 1);
    }

    internal double MeanSquare(in HoldFit.Fit fit) => Math.Max(fit.Rss / Blocks.Count, floor);

    internal HoldNoise Noise(in HoldFit.Fit fit) =>
        HoldNoise.Of(fit.Rss, Blocks.Count, Terms(fit.Model), floor, inflation, loss);

    /// <summary>Rise of a source over the used rows, Pa.</summary>
    internal double SourceRise(in HoldFit.Fit fit) => fit.Step * (1 - Math.Exp(-Blocks.Span / fit.Tau));

    internal ImmutableArray<ModelEvidence> Table()
    {
        HoldFit.Fit[] fits = [Flat, Line, Source, Both];
        var values = fits.Select(f => Aicc(f)).ToArray();
        var least = values.Min();
        return [.. fits.Zip(values, (f, a) => new ModelEvidence(f.Model, Terms(f.Model) + 1, Math.Sqrt(MeanSquare(f)), a, a - least))];
    }

    /// <summary>The simplest curve that no richer one beats by <see cref="Richer"/>; null when not even a line can be weighed.</summary>
    internal HoldModel? Preferred { get; }

    private HoldModel? Prefer()
    {
        if (Aicc(Flat) is not { } best || Aicc(Line) is not { } line)
            return null;
        var model = HoldModel.Flat;
        if (line <= best - Richer)
            (model, best) = (HoldModel.Line, line);
        if (Aicc(Source) is { } source && source <= best - Richer)
            (model, best) = (HoldModel.Source, source);
        if (Aicc(Both) is { } both && both <= best - Richer && SlopeBesideSource.Low > 0)
            model = HoldModel.LineAndSource;
        return model;
    }

    /// <summary>Slope with a source beside it, 95 % by the scatter alone, over every τ that is possible, sign not forced.</summary>
    internal Interval SlopeBesideSource { get; }

    private Interval FindSlopeBesideSource()
    {
        if (!CanFitSource)
            return new Interval(FreeLine.Slope, double.NegativeInfinity, double.PositiveInfinity);
        var noise = Noise(FreeBoth);
        return HoldProfile.Parameter(
            Fitter, Within, at => at.Both, FreeBoth, noise.Factor * noise.Factor * noise.Variance, f => (f.Slope, f.SlopeVariance));
    }

    /// <summary>Rise of a source beside a line (or alone), 95 % by the scatter alone, over every τ that is possible.</summary>
    internal Interval SourceRiseRange(bool besideLine)
    {
        HoldFit.Fit Choose(HoldFit.AtTau at) => besideLine ? at.Both : at.Source;
        var best = besideLine ? FreeBoth : Fitter.Best(Within, Choose);
        var noise = Noise(best);
        return HoldProfile.Parameter(
            Fitter, Within, Choose, best, noise.Factor * noise.Factor * noise.Variance, f =>
            {
                var share = 1 - Math.Exp(-Blocks.Span / f.Tau);
                return (f.Step * share, f.StepVariance * share * share);
            });
    }

    /// <summary>Largest τ up to which a source alone is excluded against the line, 95 %.</summary>
    internal double? SourcesExcludedUpTo()
    {
        if (!CanFitSource)
            return null;
        var noise = Noise(Line);
        var tau = HoldProfile.Tau(
            Fitter, Beyond, at => Fitter.Source(at), Line with { Tau = Beyond[^1].Tau }, noise.Factor * noise.Factor * noise.Variance);
        return tau.Low > 0 ? tau.Low : null;
    }
}
