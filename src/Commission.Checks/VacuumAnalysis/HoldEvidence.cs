using System.Collections.Immutable;

namespace Commission.Checks.VacuumAnalysis;

/// <summary>The curves fitted to the blocks of a hold, and what they weigh.</summary>
internal sealed class HoldEvidence
{
    /// <summary>A richer curve is taken only when its AICc is lower by this.</summary>
    internal const double Richer = 6;

    // A source slower than so many holds is still on its straight part.
    private const double LongestShare = 1.25;

    // An inflow stands before the walls only where their law is all but impossible.
    private const double Excluded = 12;

    // A rate that falls with a power of a third of the time since the pump was started falls like 1/t with three times that time.
    private const double PumpedTimes = 3;

    private static readonly HoldShape[] SlowShapes = [HoldShape.Logarithm, HoldShape.Root];

    private readonly SlowFamily[] _slow;
    private readonly double _floor;
    private readonly double _inflation;
    private readonly double _loss;

    internal HoldEvidence(HoldBlocks blocks, double resolution, double correlation, double length, double skip, double interval)
    {
        Blocks = blocks;
        Step = resolution;
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

        // τ between a block and a little more than the hold: the shape is averaged over each block. What is faster than the time skipped after isolation is equalisation.
        ShortestTau = Math.Max(BlockSeconds, skip / 3);
        LongestTau = LongestShare * length;
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

        _slow = CanFitSource ? [.. SlowShapes.Select(shape => new SlowFamily(blocks, shape, ShortestTau, length))] : [];
        Outgassing = _slow.MinBy(f => f.Alone.Rss) is { } slowest ? slowest.Alone with { Model = HoldModel.Outgassing } : Line with { Model = HoldModel.Outgassing };
        SlopeBesideSource = FindSlopeBesideSource();
        Preferred = Prefer();
        Bend = BlockBend.Of(blocks);
    }

    internal HoldBlocks Blocks { get; }

    internal HoldFit Fitter { get; }

    /// <summary>Step of the display where it is coarsest, Pa.</summary>
    internal double Step { get; }

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

    /// <summary>Line and source within the longest τ, signs not forced.</summary>
    internal HoldFit.Fit FreeBoth { get; }

    /// <summary>Gas given off ever more slowly, by the law that fits better, without a line.</summary>
    internal HoldFit.Fit Outgassing { get; }

    /// <summary>The bend of the readings as a whole.</summary>
    internal BlockBend Bend { get; }

    /// <summary>True when line and source together fit best with a τ beyond the hold.</summary>
    internal bool SlowerBothFitsBetter => Beyond.Skip(Within.Length).Any(at => Fitter.Both(at).Rss < Both.Rss);

    internal HoldFit.Fit Fit(HoldModel model) => model switch
    {
        HoldModel.Flat => Flat,
        HoldModel.Line => Line,
        HoldModel.Source => Source,
        HoldModel.Outgassing => Outgassing,
        _ => Both,
    };

    /// <summary>Parameters of a curve without σ.</summary>
    internal static int Terms(HoldModel model) => model switch
    {
        HoldModel.Flat => 1,
        HoldModel.Line => 2,
        HoldModel.Source or HoldModel.Outgassing => 3,
        _ => 4,
    };

    /// <summary>AICc of a fit; null when n ≤ k + 1 or the hold allows no τ.</summary>
    internal double? Aicc(in HoldFit.Fit fit)
    {
        var terms = Terms(fit.Model);
        return terms > 2 && !CanFitSource ? null : Aicc(fit.Rss, terms);
    }

    internal double MeanSquare(in HoldFit.Fit fit) => Math.Max(fit.Rss / Blocks.Count, _floor);

    internal HoldNoise Noise(in HoldFit.Fit fit) =>
        HoldNoise.Of(fit.Rss, Blocks.Count, Terms(fit.Model), _floor, _inflation, _loss);

    /// <summary>Rise of a source over the used rows, Pa.</summary>
    internal double SourceRise(in HoldFit.Fit fit) => fit.Step * fit.Share(Blocks.Span);

    /// <summary>AICc of a curve with so many terms and this residual sum of squares; null when there are too few blocks.</summary>
    internal double? Aicc(double rss, int terms)
    {
        var (n, k) = (Blocks.Count, terms + 1);
        return n <= k + 1 ? null : n * Math.Log(Math.Max(rss / n, _floor)) + (2 * k) + (2.0 * k * (k + 1) / (n - k - 1));
    }

    /// <summary>What is left at the end of the rate at the beginning, by the curve that explains the readings best; null where it does not rise.</summary>
    internal double? RateLeft
    {
        get
        {
            HoldFit.Fit[] fits = CanFitSource ? [Line, FreeSource, Outgassing, FreeBoth] : [Line];
            var best = fits.MinBy(f => Aicc(f) ?? double.PositiveInfinity);
            return best.RateAt(0) is > 0 and var begins ? best.RateAt(Blocks.Span) / begins : null;
        }
    }

    /// <summary>Whether the readings settle downwards by the evidence: then what rises beneath is seen only beside that.</summary>
    internal bool SettlesDown(HoldModel preferred) => FreeBoth.Step < 0 && Aicc(FreeBoth) <= Aicc(Fit(preferred)) - Richer;

    /// <summary>Whether gas given off by walls that were pumped for so long, s, is excluded: its rate would have fallen over the hold, a straight line fits better by far, and no slowing down is suspected.</summary>
    internal bool ExcludesOutgassing(double pumped) =>
        _slow.Length > 0 && Aicc(Line) is { } line && _slow.All(f => Aicc(f.BestUpTo(PumpedTimes * pumped).Rss, 3) - line >= Excluded) && line - Aicc(Outgassing) < HoldDecision.Suspicion;

    internal ImmutableArray<ModelEvidence> Table()
    {
        HoldFit.Fit[] fits = [Flat, Line, Source, Outgassing, Both];
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
        if (Aicc(Outgassing) is { } slow && slow <= best - Richer && SourceRise(Outgassing) > 0)
            (model, best) = (HoldModel.Outgassing, slow);
        if (Aicc(Both) is { } both && both <= best - Richer && SlopeBesideExponential.Low > 0)
            model = HoldModel.LineAndSource;
        return model;
    }

    /// <summary>Slope with a source beside it, 95 % by the scatter alone, over every τ that is possible, sign not forced.</summary>
    internal Interval SlopeBesideSource { get; }

    // The same beside an exponential alone: whether there is a steady part at all.
    private Interval SlopeBesideExponential { get; set; }

    // Every law of slowing down that explains the readings nearly as well as the best has its say.
    private Interval FindSlopeBesideSource()
    {
        if (!CanFitSource)
            return new Interval(FreeLine.Slope, double.NegativeInfinity, double.PositiveInfinity);
        var slope = SlopeBesideExponential = SlopeBeside(Fitter, Within, FreeBoth);
        var least = Math.Min(FreeBoth.Rss, _slow.Min(f => f.Both.Rss));
        var allowed = Aicc(least, 4) + Richer;
        foreach (var family in _slow.Where(f => Aicc(f.Both.Rss, 4) <= allowed))
        {
            var other = SlopeBeside(family.Fitter, family.Scan, family.Both);
            slope = slope with { Low = Math.Min(slope.Low, other.Low), High = Math.Max(slope.High, other.High) };
        }

        return slope;
    }

    private Interval SlopeBeside(HoldFit fitter, HoldFit.AtTau[] scan, in HoldFit.Fit best)
    {
        var noise = Noise(best);
        return HoldProfile.Parameter(fitter, scan, at => at.Both, best, noise.Factor * noise.Factor * noise.Variance, f => (f.Slope, f.SlopeVariance));
    }

    /// <summary>Rise of a source beside a line (or alone), 95 % by the scatter alone, over every τ that is possible.</summary>
    internal Interval SourceRiseRange(bool besideLine)
    {
        HoldFit.Fit Choose(HoldFit.AtTau at) => besideLine ? at.Both : at.Source;
        // Beside a line, one that is slower than half the hold is part of the line.
        var scan = besideLine && Array.FindAll(Within, at => at.Tau <= Length / 2) is { Length: > 2 } quick ? quick : Within;
        var best = Fitter.Best(scan, Choose);
        var noise = Noise(best);
        return HoldProfile.Parameter(
            Fitter, scan, Choose, best, noise.Factor * noise.Factor * noise.Variance, f =>
            {
                var share = f.Share(Blocks.Span);
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

/// <summary>One law of outgassing fitted to the blocks, alone and with a line.</summary>
internal sealed class SlowFamily
{
    // Coarse: the laws are broad in their time.
    private const double Ratio = 1.4;
    private const double Longest = 20;

    internal SlowFamily(HoldBlocks blocks, HoldShape shape, double shortest, double length)
    {
        Fitter = new HoldFit(blocks, shape);
        Scan = Fitter.Scan(shortest / 3, Longest * length, Ratio);
        Alone = Fitter.Best(Scan, at => Fitter.Source(at));
        Both = Fitter.Best(Scan, at => at.Both);
    }

    internal HoldFit Fitter { get; }

    internal HoldFit.AtTau[] Scan { get; }

    /// <summary>The law with a step that is not negative.</summary>
    internal HoldFit.Fit Alone { get; }

    /// <summary>The law beside a line, signs not forced.</summary>
    internal HoldFit.Fit Both { get; }

    /// <summary>The law alone with a time of at most so many seconds, as from walls that were pumped for that long.</summary>
    internal HoldFit.Fit BestUpTo(double seconds)
    {
        var scan = Array.FindAll(Scan, at => at.Tau <= seconds);
        return scan.Length == 0 ? Fitter.Source(Scan[0]) : Fitter.Source(scan.MinBy(at => Fitter.Source(at).Rss));
    }
}

/// <summary>What a free curve sees in the blocks: a parabola, which bends up where a rise speeds up, and a polynomial of the fifth degree, which fits whatever is smooth.</summary>
/// <param name="ParabolaRss">Residual sum of squares of the parabola, Pa².</param>
/// <param name="Sagitta">Height of the parabola over its chord, Pa: above zero where it speeds up.</param>
/// <param name="FreeRss">Residual sum of squares of the polynomial, Pa².</param>
internal readonly record struct BlockBend(double ParabolaRss, double Sagitta, double FreeRss)
{
    /// <summary>Terms of the parabola.</summary>
    internal const int ParabolaTerms = 3;

    /// <summary>Terms of the free curve.</summary>
    internal const int FreeTerms = 6;

    // Orthogonal polynomials on the blocks' own times, by Stieltjes' recurrence (Forsythe, J. SIAM 5 (1957) 74, from memory).
    internal static BlockBend Of(HoldBlocks blocks)
    {
        var n = blocks.Count;
        var x = new double[n];
        var left = new double[n];
        for (var i = 0; i < n; i++)
        {
            x[i] = (2 * blocks.Time[i] / blocks.Span) - 1;
            left[i] = blocks.Value[i];
        }

        var before = new double[n];
        var now = new double[n];
        Array.Fill(now, 1);
        var (rss, parabola, sagitta, norm) = (0.0, 0.0, 0.0, 1.0);
        for (var degree = 0; degree < Math.Min(FreeTerms, n); degree++)
        {
            var (self, with, tilt) = (0.0, 0.0, 0.0);
            for (var i = 0; i < n; i++)
            {
                var w = blocks.Weight[i] * now[i];
                self += w * now[i];
                with += w * left[i];
                tilt += w * now[i] * x[i];
            }

            if (!(self > 0))
                break;
            var share = with / self;
            rss = 0;
            for (var i = 0; i < n; i++)
            {
                left[i] -= share * now[i];
                rss += blocks.Weight[i] * left[i] * left[i];
            }

            // The recurrence keeps a leading coefficient of one, so that c is the share of x²; over a chord from −1 to 1 its height is c.
            if (degree == ParabolaTerms - 1)
                (parabola, sagitta) = (rss, share);
            var (a, b) = (tilt / self, degree == 0 ? 0 : self / norm);
            for (var i = 0; i < n; i++)
                (now[i], before[i]) = (((x[i] - a) * now[i]) - (b * before[i]), now[i]);
            norm = self;
        }

        return new BlockBend(parabola, sagitta, rss);
    }
}

/// <summary>
/// The conclusion from the evidence. The preferred curve is the start; the conclusion stands only when each other explanation
/// whose own term would count is excluded. A term counts when its rise over the hold exceeds the counting rise.
/// </summary>
internal readonly record struct HoldDecision(HoldConclusion Conclusion, CannotTellReason? Reason, HoldModel Preferred)
{
    /// <summary>How far the readings wandered before they came back, Pa; null where they did not.</summary>
    public double? Wander { get; init; }

    /// <summary>When a late rise began, s on the clock of the log; null where none did.</summary>
    public double? SpedUpFrom { get; init; }

    // A fall of less than this share of what counts hides nothing that does.
    private const double LeastDrop = 3;

    // A bend of less than this share of what counts is no speeding up.
    private const double LeastBend = 8;

    // What wanders further than this many rises that count is no hold to be judged by its ends.
    private const double MostWander = 2;

    // A term of the other kind may hide beneath what was found if it is this much smaller.
    private const double Minor = 0.3;
    private const double MinorLine = 0.1;

    // What is left of the rate of a source that lasts for twenty holds is 95 %; the readings add their scatter.
    private const double Steady = 0.9;

    // Slowing down is suspected below the margin that would prove it.
    internal const double Suspicion = 3.5;

    // A curve that misses the readings by less than this share of what counts may be wrong in its law and right in what it says.
    private const double Misfit = 0.1;

    internal static HoldDecision Of(HoldEvidence evidence, HoldScreening rows, GaugeCharacter gauge, double counting)
    {
        var preferred = evidence.Preferred ?? HoldModel.Flat;
        if (rows.Fall is not null || rows.Drop > Math.Max(counting / LeastDrop, 5 * rows.Resolution))
            return CannotTell(CannotTellReason.Falling, preferred);
        if (rows.EndsOverRange && preferred is HoldModel.Flat)
            return CannotTell(CannotTellReason.OverRange, preferred);
        var hold = evidence.Length;
        var line = evidence.FreeLine;
        var noise = evidence.Noise(line);
        var reach = noise.Factor * Math.Sqrt(noise.Variance * line.SlopeVariance);
        if (line.Slope + reach < 0 && -line.Slope * hold > counting)
            return CannotTell(CannotTellReason.Falling, preferred);

        // A leak that begins late has not risen by much yet, and a gauge that settles hides one.
        if (rows.Late is { } late && late.Rate * hold > counting)
            return CannotTell(CannotTellReason.SpeedsUp, preferred) with { SpedUpFrom = late.From };
        if (HidesRise(evidence, counting, preferred))
            return CannotTell(CannotTellReason.Falling, preferred);

        // What never moved by more than counts has not risen by more than counts, whatever the statistics.
        if (!rows.EndsOverRange && (Range(rows.Pressures) + rows.Resolution) * hold <= counting * evidence.Blocks.Span)
            return new HoldDecision(HoldConclusion.Held, Reason: null, preferred);
        if (rows is { EndsOverRange: false, NetChange: var net } && Math.Abs(net) <= counting / 2 && HasWandered(evidence, rows, counting, preferred))
            return new HoldDecision(HoldConclusion.Held, Reason: null, preferred) { Wander = Range(rows.Pressures) };
        if (evidence.Preferred is null)
            return CannotTell(CannotTellReason.TooFewBlocks, preferred);
        if (Shapeless(evidence, counting, preferred) is { } why)
            return CannotTell(why, preferred);

        var lineCounts = false;
        var sourceCounts = false;
        if (preferred is HoldModel.Line or HoldModel.LineAndSource)
            lineCounts = evidence.Fit(preferred).Slope * hold > counting;
        if (preferred is HoldModel.Source or HoldModel.Outgassing or HoldModel.LineAndSource)
            sourceCounts = evidence.SourceRise(evidence.Fit(preferred)) > counting;

        // A rise that keeps its pace as one does whose source lasts for many holds is a steady one, however finely its bend is seen.
        if (evidence.RateLeft is >= Steady and <= 1 / Steady && evidence.Line.Slope * hold > counting && evidence.Aicc(evidence.Source) is { } levels && levels - evidence.Aicc(evidence.Line) >= HoldEvidence.Richer)
            return new HoldDecision(HoldConclusion.SteadyRise, Reason: null, HoldModel.Line);

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

    // Up and down again, and no rise left: no curve of a rise has anything to say.
    private static bool HasWandered(HoldEvidence evidence, HoldScreening rows, double counting, HoldModel preferred) =>
        Range(rows.Pressures) <= MostWander * counting
        && (evidence.Preferred is null || preferred is HoldModel.Flat || Misses(evidence, counting, preferred));

    // A reading that settles downwards, with a rise beneath it that counts and does not show.
    private static bool HidesRise(HoldEvidence evidence, double counting, HoldModel preferred) =>
        evidence.FreeLine.Slope * evidence.Length <= counting && evidence.SettlesDown(preferred) && evidence.SlopeBesideSource is { Low: > 0, High: var most } && most * evidence.Length > counting;

    // A rise that speeds up, and one that no curve follows, have a reason that is in none of the curves: nothing is said of its size.
    private static CannotTellReason? Shapeless(HoldEvidence evidence, double counting, HoldModel preferred)
    {
        if (evidence.Aicc(evidence.Fit(preferred)) is not { } best)
            return null;
        if (evidence.Bend.Sagitta > counting / LeastBend && evidence.Aicc(evidence.Bend.ParabolaRss, BlockBend.ParabolaTerms) <= best - HoldEvidence.Richer)
            return CannotTellReason.SpeedsUp;
        return Misses(evidence, counting, preferred) ? CannotTellReason.NoCurveFits : null;
    }

    private static bool Misses(HoldEvidence evidence, double counting, HoldModel preferred)
    {
        var fit = evidence.Fit(preferred);
        var missed = Math.Sqrt(Math.Max(fit.Rss - evidence.Bend.FreeRss, 0) / evidence.Blocks.Count);
        return missed > Misfit * counting && evidence.Aicc(fit) is { } best && evidence.Aicc(evidence.Bend.FreeRss, BlockBend.FreeTerms) <= best - (2 * HoldEvidence.Richer);
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
        // The best source of all must have a τ within the hold: else it is still on its straight part. Gas given off by the walls slows down without end.
        if (preferred == HoldModel.Outgassing
            ? evidence.Aicc(evidence.Line) - evidence.Aicc(evidence.Outgassing) < HoldEvidence.Richer
            : preferred == HoldModel.Source
            ? evidence.FreeSource.Tau > evidence.LongestTau
            : evidence.Aicc(evidence.FreeSource) - evidence.Aicc(evidence.Both) < HoldEvidence.Richer)
        {
            return CannotTell(CannotTellReason.LineOrSource, preferred);
        }

        var rise = evidence.SourceRise(evidence.Fit(preferred));
        if (evidence.Aicc(evidence.Both) is null
            || evidence.SlopeBesideSource.High * evidence.Length > Math.Max(counting, MinorLine * rise))
        {
            return CannotTell(SlowOr(evidence, CannotTellReason.SourceWithOrWithoutLine), preferred);
        }

        return new HoldDecision(HoldConclusion.Source, Reason: null, preferred);
    }

    private static HoldDecision JudgeBoth(HoldEvidence evidence, HoldModel preferred)
    {
        if (evidence.Aicc(evidence.FreeSource) - evidence.Aicc(evidence.Both) < HoldEvidence.Richer)
            return CannotTell(SlowOr(evidence, CannotTellReason.SourceWithOrWithoutLine), preferred);

        // A best τ beyond the hold means that the source is still on its straight part, like the line.
        if (evidence.SlowerBothFitsBetter)
            return CannotTell(CannotTellReason.LineOrSource, preferred);
        return new HoldDecision(HoldConclusion.SteadyRiseAndSource, Reason: null, preferred);
    }

    // Where a lone source slower than the hold explains the readings too, the hold is simply too short for it.
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
