using System.Collections.Immutable;

namespace Commission.Checks.VacuumAnalysis;

/// <summary>The four curves fitted to the blocks of a hold, and what they weigh.</summary>
internal sealed class HoldEvidence
{
    /// <summary>A richer curve is taken only when its AICc is lower by this.</summary>
    internal const double Richer = 6;

    private readonly double _floor;
    private readonly double _inflation;
    private readonly double _loss;

    internal HoldEvidence(HoldBlocks blocks, double resolution, double correlation, double length, double skip, double interval)
    {
        Blocks = blocks;
        Correlation = correlation;
        Length = length;
        BlockSeconds = blocks.Length * interval;

        // A log without noise and without resolution must not divide by zero: a millionth of the pressure is below any gauge.
        var level = blocks.Value.Sum() / blocks.Count;
        _floor = Math.Max(resolution * resolution / 12, 1e-12 * level * level);
        _inflation = HoldCorrelation.Inflation(correlation, blocks.Length);
        _loss = HoldCorrelation.FreedomLoss(correlation, blocks.Length);
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

    internal double MeanSquare(in HoldFit.Fit fit) => Math.Max(fit.Rss / Blocks.Count, _floor);

    internal HoldNoise Noise(in HoldFit.Fit fit) =>
        HoldNoise.Of(fit.Rss, Blocks.Count, Terms(fit.Model), _floor, _inflation, _loss);

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

/// <summary>
/// The conclusion from the evidence. The preferred curve is the start; the conclusion stands only when each other explanation
/// whose own term would count is excluded. A term counts when its rise over the hold exceeds the counting rise.
/// </summary>
internal readonly record struct HoldDecision(HoldConclusion Conclusion, CannotTellReason? Reason, HoldModel Preferred)
{
    // A term of the other kind may hide beneath what was found if it is this much smaller.
    private const double Minor = 0.3;

    // Slowing down is suspected below the margin that would prove it.
    private const double Suspicion = 3.5;

    internal static HoldDecision Of(HoldEvidence evidence, HoldScreening rows, GaugeCharacter gauge, double counting)
    {
        var preferred = evidence.Preferred ?? HoldModel.Flat;
        if (rows.EndsOverRange && preferred is HoldModel.Flat)
            return CannotTell(CannotTellReason.OverRange, preferred);
        var hold = evidence.Length;
        var line = evidence.FreeLine;
        var noise = evidence.Noise(line);
        var reach = noise.Factor * Math.Sqrt(noise.Variance * line.SlopeVariance);
        if (line.Slope + reach < 0 && -line.Slope * hold > counting)
            return CannotTell(CannotTellReason.Falling, preferred);

        // What never moved by more than counts has not risen by more than counts, whatever the statistics.
        if (!rows.EndsOverRange && (Range(rows.Pressures) + rows.Resolution) * hold <= counting * evidence.Blocks.Span)
            return new HoldDecision(HoldConclusion.Held, Reason: null, preferred);
        if (evidence.Preferred is null)
            return CannotTell(CannotTellReason.TooFewBlocks, preferred);

        var lineCounts = false;
        var sourceCounts = false;
        if (preferred is HoldModel.Line or HoldModel.LineAndSource)
            lineCounts = evidence.Fit(preferred).Slope * hold > counting;
        if (preferred is HoldModel.Source or HoldModel.LineAndSource)
            sourceCounts = evidence.SourceRise(evidence.Fit(preferred)) > counting;

        var decision = (lineCounts, sourceCounts) switch
        {
            (false, false) => JudgeHeld(evidence, gauge, counting, preferred),
            (true, false) => JudgeLine(evidence, counting, preferred),
            (false, true) => JudgeSource(evidence, counting, preferred),
            (true, true) => JudgeBoth(evidence, preferred),
        };
        if (rows.EndsOverRange && decision.Conclusion is HoldConclusion.Held)
            return CannotTell(CannotTellReason.OverRange, preferred);
        return decision;
    }

    private static HoldDecision JudgeHeld(HoldEvidence evidence, GaugeCharacter gauge, double counting, HoldModel preferred)
    {
        var line = evidence.FreeLine;
        var noise = evidence.Noise(line);
        var oneSided = MathNet.Numerics.Distributions.StudentT.InvCDF(0, 1, noise.Freedom, 0.99);
        var most = (line.Slope + oneSided * Math.Sqrt(noise.Variance * line.SlopeVariance)) * evidence.Length;
        if (most * (1 + gauge.GainHalfWidth) > counting)
            return CannotTell(CannotTellReason.ScatterHidesRise, preferred);
        if (evidence.Aicc(evidence.Source) is not null && evidence.SourceRiseRange(besideLine: false).High > counting)
            return CannotTell(CannotTellReason.ScatterHidesRise, preferred);
        return new HoldDecision(HoldConclusion.Held, Reason: null, preferred);
    }

    private static HoldDecision JudgeLine(HoldEvidence evidence, double counting, HoldModel preferred)
    {
        if (evidence.Aicc(evidence.Line) is not { } line || evidence.Aicc(evidence.Source) is not { } source)
            return CannotTell(evidence.Blocks.Count > 5 ? CannotTellReason.LineOrSource : CannotTellReason.TooFewBlocks, preferred);

        // Sources that would have slowed down by now must fit worse, and no slower one may fit better.
        var undecided = preferred == HoldModel.Line
            ? source - line < HoldEvidence.Richer || line - evidence.Aicc(evidence.FreeSource) >= Suspicion
            : evidence.Aicc(evidence.FreeSource) - evidence.Aicc(evidence.Both) < HoldEvidence.Richer;
        if (undecided)
            return CannotTell(CannotTellReason.LineOrSource, preferred);
        var rise = evidence.Fit(preferred).Slope * evidence.Length;
        if (evidence.Aicc(evidence.Both) is null || evidence.SourceRiseRange(besideLine: true).High > Math.Max(counting, Minor * rise))
            return CannotTell(CannotTellReason.LineWithOrWithoutSource, preferred);
        return new HoldDecision(HoldConclusion.SteadyRise, Reason: null, preferred);
    }

    private static HoldDecision JudgeSource(HoldEvidence evidence, double counting, HoldModel preferred)
    {
        // The best source of all must have a τ within half the hold: else it is still on its straight part.
        if (preferred == HoldModel.Source
            ? evidence.FreeSource.Tau > evidence.LongestTau
            : evidence.Aicc(evidence.FreeSource) - evidence.Aicc(evidence.Both) < HoldEvidence.Richer)
        {
            return CannotTell(CannotTellReason.LineOrSource, preferred);
        }

        var rise = evidence.SourceRise(evidence.Fit(preferred));
        if (evidence.Aicc(evidence.Both) is null
            || evidence.SlopeBesideSource.High * evidence.Length > Math.Max(counting, Minor * rise))
        {
            return CannotTell(SlowOr(evidence, CannotTellReason.SourceWithOrWithoutLine), preferred);
        }

        return new HoldDecision(HoldConclusion.Source, Reason: null, preferred);
    }

    private static HoldDecision JudgeBoth(HoldEvidence evidence, HoldModel preferred)
    {
        if (evidence.Aicc(evidence.FreeSource) - evidence.Aicc(evidence.Both) < HoldEvidence.Richer)
            return CannotTell(SlowOr(evidence, CannotTellReason.SourceWithOrWithoutLine), preferred);

        // A best τ beyond half the hold means that the source is still on its straight part, like the line.
        if (evidence.SlowerBothFitsBetter)
            return CannotTell(CannotTellReason.LineOrSource, preferred);
        return new HoldDecision(HoldConclusion.SteadyRiseAndSource, Reason: null, preferred);
    }

    // Where a lone source slower than half the hold explains the readings too, the hold is simply too short for it.
    private static CannotTellReason SlowOr(HoldEvidence evidence, CannotTellReason other) =>
        evidence.FreeSource.Tau > evidence.LongestTau ? CannotTellReason.LineOrSource : other;

    private static HoldDecision CannotTell(CannotTellReason reason, HoldModel preferred) =>
        new(HoldConclusion.CannotTell, reason, preferred);

    private static double Range(double[] p)
    {
        var low = double.PositiveInfinity;
        var high = double.NegativeInfinity;
        foreach (var v in p)
        {
            low = Math.Min(low, v);
            high = Math.Max(high, v);
        }

        return high - low;
    }
}

/// <summary>An estimate with its 95 % interval, in the unit of the quantity. The interval need not be symmetrical.</summary>
/// <param name="Value">Best estimate.</param>
/// <param name="Low">Lower end; −∞ when the data set none.</param>
/// <param name="High">Upper end; +∞ when the data set none.</param>
internal readonly record struct Interval(double Value, double Low, double High);
