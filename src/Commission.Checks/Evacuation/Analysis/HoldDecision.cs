namespace Commission.Checks.EvacuationAnalysis;

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
            return CannotTell(CannotTellReason.LineOrSource, preferred);
        var rise = evidence.SourceRise(evidence.Fit(preferred));
        if (evidence.Aicc(evidence.Both) is null
            || evidence.SlopeBesideSource.High * evidence.Length > Math.Max(counting, Minor * rise))
            return CannotTell(SlowOr(evidence, CannotTellReason.SourceWithOrWithoutLine), preferred);
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
