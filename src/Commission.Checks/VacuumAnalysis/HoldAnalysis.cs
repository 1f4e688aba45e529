using System.Collections.Immutable;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Messages;

namespace Commission.Checks.VacuumAnalysis;

/// <summary>
/// Tells what an isolated vacuum does: holds, rises steadily, rises towards a plateau, or both, or that the data do not tell.
/// Readings are averaged into blocks long enough to be nearly independent; five curves are compared by AICc on the blocks;
/// a conclusion stands only when every other explanation that would count is excluded, and a bound only on a curve that follows the readings.
/// </summary>
/// <remarks>
/// Sources: AICc, Hurvich and Tsai, Biometrika 76 (1989) 297 (from memory); profile intervals, Bates and Watts, Nonlinear
/// Regression Analysis (1988) ch. 6 (from memory); block length (1+ρ)/(1−ρ), the rise that counts (5 resolutions and 10 % of
/// the allowed rise) and ΔAICc ≥ 6 are our defaults, tried by simulation in the tests.
/// </remarks>
internal static class HoldAnalysis
{
    private const int MostBlocks = 200;
    private const int MostPreliminaryBlocks = 1500;
    private const int EnoughBlocks = 60;
    private const double Negligible = 1.0 / 30;
    private const double MostDoubt = 2;
    private const int FewestBlocks = 4;
    private const double MostOfStep = 0.75;
    private const double MostWithin = 0.95;
    private const double GridRatio = 1.12;
    private const double LongestTau = 20;
    private const double Coverage = 2;
    private const double RoomTemperature = ConversionFactors.CelsiusZero + 20;

    /// <summary>Analyses a hold.</summary>
    /// <param name="series">The log.</param>
    /// <param name="isolation">Moment of isolation, s.</param>
    /// <param name="end">End of the hold, s.</param>
    /// <param name="gauge">The gauge.</param>
    /// <param name="options">Allowed rise and time to skip.</param>
    /// <returns>The result; "cannot tell" with its reason when the data do not suffice. Never throws for what a log holds.</returns>
    public static HoldResult Analyze(VacuumSeries series, double isolation, double end, GaugeCharacter gauge, HoldOptions options)
    {
        ArgumentNullException.ThrowIfNull(series);
        ArgumentNullException.ThrowIfNull(gauge);
        ArgumentNullException.ThrowIfNull(options);
        var skip = options.SkipSeconds ?? Math.Clamp((end - isolation) / 10, 30, 60);
        var rows = HoldScreening.Of(series, isolation, end, skip, gauge.Resolution, 0.1 * Allowed(end - isolation));
        var length = rows.Rows.To is { } last ? last - isolation : 0;
        var allowed = Allowed(length);
        var counting = Math.Max(5 * rows.ResolutionAtStart, 0.1 * allowed);
        var nothing = new HoldResult
        {
            Conclusion = HoldConclusion.CannotTell,
            Reason = rows.EndsOverRange ? CannotTellReason.OverRange : CannotTellReason.NoRows,
            Isolation = isolation,
            Length = length,
            CountingRise = counting,
            Rows = rows.Rows,
            Resolution = rows.ResolutionAtStart,
            Fall = rows.Fall,
        };
        if (rows.Times.Length < 3)
            return nothing;
        double Allowed(double seconds) => Math.Max(options.AllowedRise ?? 0, 0) * (options.AllowedAfter is { } after and > 0 ? Longer(seconds / after) : 1);

        var (correlation, blockRows) = ChooseBlocks(rows, counting);
        var blocks = HoldBlocks.Average(rows.Times, rows.Pressures, blockRows, rows.Interval);
        if (options.Warming is { } warming)
            blocks = blocks.Less(time => 1 - (RoomTemperature / (RoomTemperature + warming(rows.Times[0] + time))));
        var evidence = new HoldEvidence(blocks, rows.Resolution, correlation, nothing.Length, skip, rows.Interval);
        var decision = HoldDecision.Of(evidence, rows, gauge, counting);
        return Describe(nothing, evidence, decision, gauge, options, rows, skip);
    }

    private static HoldResult Describe(
        HoldResult nothing, HoldEvidence evidence, HoldDecision decision, GaugeCharacter gauge, HoldOptions options, HoldScreening rows, double skip)
    {
        var preferred = evidence.Fit(decision.Preferred);
        var withSource = decision.Preferred is HoldModel.Source or HoldModel.Outgassing or HoldModel.LineAndSource && evidence.CanFitSource;
        // Two or three independent readings leave next to nothing for the scatter.
        var isBounded = evidence.Blocks.Count >= FewestBlocks && decision is { Wander: null, Reason: not (CannotTellReason.NoCurveFits or CannotTellReason.SpeedsUp or CannotTellReason.Falling or CannotTellReason.TooFewBlocks) };
        var parameters = isBounded ? HoldParameters.Of(evidence, decision.Preferred, gauge, options.TemperatureDrift) : default;

        // A steady part that may be as large as several times all that rose, either way, has no size.
        if (decision.Conclusion == HoldConclusion.CannotTell && parameters.Slope is { } loose && loose.High - loose.Low > MostDoubt * Math.Abs(preferred.At(evidence.Blocks.Span) - preferred.At(0)) / evidence.Blocks.Span)
            parameters = parameters with { Slope = null, SlopeWithCauses = null };
        // What warms or settles may be all of it.
        if (decision.Conclusion is HoldConclusion.SteadyRise or HoldConclusion.SteadyRiseAndSource && !(parameters.Slope?.Low > 0))
            decision = decision with { Conclusion = HoldConclusion.CannotTell, Reason = decision.Conclusion is HoldConclusion.SteadyRise ? CannotTellReason.LineOrSource : CannotTellReason.SourceWithOrWithoutLine };
        var held = decision.Conclusion == HoldConclusion.Held;
        if (held && parameters.Slope is { } wide && MostByReadings(evidence, gauge, options.TemperatureDrift) is var most && wide.High > most)
        {
            var bounded = wide with { Low = Math.Max(wide.Low, -most), High = most };
            parameters = parameters with { Slope = bounded, SlopeWithCauses = WithinReadings(bounded) };
        }

        var slope = Counted(parameters.Slope, nothing, rows.Drop, evidence.SettlesDown(decision.Preferred) ? evidence.SlopeBesideSource.High : 0);
        return nothing with
        {
            Conclusion = decision.Conclusion,
            Reason = decision.Reason,
            Preferred = decision.Preferred,
            Evidence = evidence.Table(),
            Slope = held ? slope : parameters.Slope,
            Wander = decision.Wander,
            SpedUpAfter = decision.SpedUpFrom - nothing.Isolation,
            Teeth = rows.Teeth,
            IsTemperatureKnown = options.Warming is not null,
            SlowsDown = decision.Preferred != HoldModel.Flat && evidence.Aicc(evidence.Line) - evidence.Aicc(evidence.Both) >= HoldEvidence.Richer,
            ExcludesOutgassing = evidence.ExcludesOutgassing(options.Pumped ?? nothing.Length),
            SlopeWithCauses = held && slope is null ? null : parameters.SlopeWithCauses,
            Plateau = parameters.Plateau,
            TimeConstant = parameters.TimeConstant,
            RiseSeen = decision.Preferred == HoldModel.Flat ? rows.RiseShown : preferred.At(evidence.Blocks.Span) - preferred.At(0),
            SpanSeen = evidence.Blocks.Span,
            FirstRise = decision is { Wander: null } ? rows.FirstRise(Math.Sqrt(evidence.MeanSquare(evidence.FreeLine))) : null,
            SourceRise = withSource ? evidence.SourceRise(preferred) : null,
            SourcesExcludedUpTo = decision.Conclusion == HoldConclusion.SteadyRise ? evidence.SourcesExcludedUpTo() : null,
            TimeToTell = decision.Reason is { } reason ? HoldPlanning.TimeToTell(reason, evidence, nothing.CountingRise, skip) : null,
            Correlation = evidence.Correlation,
            BlockRows = evidence.Blocks.Length,
            BlockSeconds = evidence.BlockSeconds,
            Blocks = evidence.Blocks.Count,
            Curves = HoldCurves.Of(evidence, rows.Times[0]),
            Points = HoldCurves.Points(evidence, preferred, rows.Times[0]),
        };
    }

    // A shorter hold may rise by less in proportion; in a longer one what hides a rise wanders off with the square root of time (common practice, no source).
    private static double Longer(double times) => times < 1 ? times : Math.Sqrt(times);

    // What fell by so much may have gone on falling behind a rise. What is less than counts may be hidden by a gauge that warms or a room that cools, whatever the scatter says.
    private static Interval? Counted(Interval? slope, HoldResult hold, double drop, double beside) => slope is not { } s || hold.Length <= 0 ? slope
        : s.High < 0 ? null
        : s with { High = Math.Max(Math.Max(s.High, beside), hold.CountingRise / hold.Length) + (2 * drop / hold.Length) };

    // Few readings leave their scatter without a bound, but not the rise: from the lowest to the highest of them, with the gauge's gain, a step of its display and what a change of temperature hides, Pa/s.
    private static double MostByReadings(HoldEvidence evidence, GaugeCharacter gauge, double drift)
    {
        var blocks = evidence.Blocks;
        var (low, high) = (blocks.Value.Min(), blocks.Value.Max());
        return (((high - low) * (1 + gauge.GainHalfWidth)) + evidence.Step + (high * drift / RoomTemperature)) / (blocks.Time[^1] - blocks.Time[0]);
    }

    private static Uncertain WithinReadings(in Interval slope) => Uncertain.From(
        slope.Value, new RootCause(VacuumHoldMessages.CauseRoom, VacuumHoldMessages.CauseRoomSource, Math.Max(slope.High - slope.Value, slope.Value - slope.Low) / Coverage, double.PositiveInfinity));

    /// <summary>ρ from the residuals of the richest curve, and the rows a block needs.</summary>
    private static (double Correlation, int Rows) ChooseBlocks(HoldScreening rows, double counting)
    {
        var n = rows.Times.Length;
        var residuals = RichestResiduals(rows);
        var rho = HoldCorrelation.Lag1(residuals, rows.Times, rows.Interval, parameters: 4);
        var length = HoldCorrelation.BlockLength(rho);

        // What lies within a step of the display is the display's own staircase, and its steps are counted below.
        var within = 0;
        for (var i = 0; i < n; i++)
            within += Math.Abs(residuals[i]) <= MostOfStep * rows.StepAt(rows.Pressures[i]) ? 1 : 0;
        if (within >= MostWithin * n)
            (rho, length) = (0, 1);

        // Fast noise (digit steps, say) on top of slow wander hides the wander from lag 1: look again between means of 4, 8,
        // 16 … rows, and believe them where neighbours agree clearly more than a first-order process of this ρ would.
        for (var m = 4; n / m >= 32 && within < MostWithin * n; m *= 2)
        {
            var (means, times) = Means(residuals, rows.Times, m);
            var between = HoldCorrelation.Lag1(means, times, m * rows.Interval, parameters: 4);
            var expected = HoldCorrelation.BetweenBlocks(-Math.Log(Math.Max(rho, 1e-9)) * m);
            if (between - expected < 2.5 / Math.Sqrt(means.Length))
                continue;
            var memory = m / HoldCorrelation.InverseBetweenBlocks(Math.Min(between, 0.98));
            rho = Math.Exp(-1 / memory);
            length = 2 * memory;
        }

        // Wander far below what counts (or the misfit of curves that are never exact) must not leave a long log without blocks.
        var most = Math.Max(1, n / EnoughBlocks);
        if (length > most && RootMeanSquare(Means(residuals, rows.Times, most).Means) < Negligible * counting)
            length = most;

        if (rows.Resolution > 0)
            length = Math.Max(length, n / Math.Max(rows.StepsTaken, 1));
        length = Math.Max(length, (double)n / MostBlocks);
        return (rho, Math.Clamp((int)Math.Ceiling(length - 1e-9), 1, n));
    }

    private static double[] RichestResiduals(HoldScreening rows)
    {
        var n = rows.Times.Length;
        var thin = HoldBlocks.Average(rows.Times, rows.Pressures, Math.Max(1, n / MostPreliminaryBlocks), rows.Interval);
        var fit = new HoldFit(thin);
        var span = thin.Span;
        var richest = fit.FreeLine;
        if (thin.Count > 6)
        {
            var scan = fit.Scan(Math.Max(span / thin.Count, span / 100), span, 1.3);
            if (scan.Length > 0)
                richest = fit.Best(scan, at => at.Both);
        }

        var residuals = new double[n];
        for (var i = 0; i < n; i++)
            residuals[i] = rows.Pressures[i] - richest.At(rows.Times[i] - rows.Times[0]);
        return residuals;
    }

    private static double RootMeanSquare(double[] values) => Math.Sqrt(values.Sum(v => v * v) / values.Length);

    private static (double[] Means, double[] Times) Means(double[] values, double[] times, int length)
    {
        var count = values.Length / length;
        var means = new double[count];
        var at = new double[count];
        for (var b = 0; b < count; b++)
        {
            for (var i = b * length; i < (b + 1) * length; i++)
            {
                means[b] += values[i] / length;
                at[b] += times[i] / length;
            }
        }

        return (means, at);
    }

    /// <summary>Grid of τ for the search: its ratio and its end in lengths of the hold.</summary>
    internal static (double Ratio, double Longest) Grid => (GridRatio, LongestTau);
}

/// <summary>What the analysis of a hold needs besides log and gauge.</summary>
/// <param name="AllowedRise">Rise that the limit allows over the hold, Pa (decay limit less the level at isolation); null without a limit:
/// then only the gauge's resolution says from where on a rise counts.</param>
/// <param name="SkipSeconds">Time left out after isolation, s, while pressures even out; null for a tenth of the hold, 30 to 60 s.</param>
/// <param name="TemperatureDrift">Half-width of the change of the system's temperature over the hold, K, rectangular. It moves
/// the pressure of the gas inside in proportion and is part of the interval of the slope. Default 1 K (common practice, no source).</param>
internal sealed record HoldOptions(double? AllowedRise, double? SkipSeconds = null, double TemperatureDrift = 1)
{
    /// <summary>Time after which the allowed rise is judged, s: what counts follows the length of the hold; null when none is stated.</summary>
    public double? AllowedAfter { get; init; }

    /// <summary>By how much the system is warmer at a time on the clock of the log than at isolation, s → K: its part of the rise of a gas is taken off. Null when it is not known.</summary>
    public Func<double, double>? Warming { get; init; }

    /// <summary>Time for which the circuit was pumped before, s: outgassing slows down over so long; null when it is not known.</summary>
    public double? Pumped { get; init; }
}

/// <summary>What the analysis of a hold found. Pressures in Pa, times in s on the clock of the log, slopes in Pa/s.</summary>
internal sealed record HoldResult
{
    /// <summary>What the hold shows.</summary>
    public required HoldConclusion Conclusion { get; init; }

    /// <summary>Why it does not tell; null unless <see cref="HoldConclusion.CannotTell"/>.</summary>
    public CannotTellReason? Reason { get; init; }

    /// <summary>The curve that the evidence prefers, whether or not a conclusion stands on it; null without rows.</summary>
    public HoldModel? Preferred { get; init; }

    /// <summary>The evidence for each of the curves, in order of their number of parameters; empty without rows.</summary>
    public ImmutableArray<ModelEvidence> Evidence { get; init; } = [];

    /// <summary>Isolation, s.</summary>
    public required double Isolation { get; init; }

    /// <summary>From isolation to the last used row, s.</summary>
    public required double Length { get; init; }

    /// <summary>The steady part of the rise, Pa/s, with its 95 % interval including the gauge's gain; null when nothing could be fitted.
    /// It comes from the line, or from line and source together where a source is preferred, without forcing the sign.</summary>
    public Interval? Slope { get; init; }

    /// <summary>The same slope, Pa/s, with its causes (scatter with its degrees of freedom, gain, temperature) for what is computed from it;
    /// null with <see cref="Slope"/>.</summary>
    public Uncertain? SlopeWithCauses { get; init; }

    /// <summary>Plateau of the source, Pa, gain and zero included; null unless the preferred curve has a source and no line.</summary>
    public Interval? Plateau { get; init; }

    /// <summary>Time constant of the source, s; null unless the preferred curve has a source.</summary>
    public Interval? TimeConstant { get; init; }

    /// <summary>Rise due to the source over the used rows, Pa; null unless the preferred curve has a source.</summary>
    public double? SourceRise { get; init; }

    /// <summary>Rise over the used rows, Pa: of the preferred curve, and where that is flat the one the display shows; null without a fit.</summary>
    public double? RiseSeen { get; init; }

    /// <summary>From the first to the last used row, s.</summary>
    public double SpanSeen { get; init; }

    /// <summary>Rise from isolation to the first used row, Pa, while pressures evened out; null where it is no more than scatter and the display's steps.</summary>
    public double? FirstRise { get; init; }

    /// <summary>Whether the preferred curve is flat and the display rose all the same: then no curve says what was seen.</summary>
    public bool RisesWithoutCurve => Preferred == HoldModel.Flat && RiseSeen > 0;

    /// <summary>A rise over the hold counts only above this, Pa: the larger of 5 resolutions and 10 % of what the allowed rise comes to over the hold.</summary>
    public required double CountingRise { get; init; }

    /// <summary>Sources with a time constant up to this, s, are excluded by a steady rise (95 %); slower ones would look the same.
    /// Null unless the conclusion is <see cref="HoldConclusion.SteadyRise"/>.</summary>
    public double? SourcesExcludedUpTo { get; init; }

    /// <summary>Length of a hold that would tell, s; null when the conclusion stands, or when no hold of a day would.</summary>
    public double? TimeToTell { get; init; }

    /// <summary>The largest fall within minutes that a closed circuit does not show; null where there is none.</summary>
    public PressureFall? Fall { get; init; }

    /// <summary>Falls within half a minute again and again, and what they took away together, Pa.</summary>
    public (int Count, double Taken) Teeth { get; init; }

    /// <summary>Whether the temperature of the circuit is known through the hold.</summary>
    public bool IsTemperatureKnown { get; init; }

    /// <summary>How long after isolation a rise began that was slow before, s; null where none did.</summary>
    public double? SpedUpAfter { get; init; }

    /// <summary>How far the pressure wandered before it came back to where it began, Pa; null where it did not.</summary>
    public double? Wander { get; init; }

    /// <summary>Whether the rise slows down by the evidence, be it by less than counts.</summary>
    public bool SlowsDown { get; init; }

    /// <summary>Whether gas given off by walls that were pumped for so long is excluded as the cause of a steady rise.</summary>
    public bool ExcludesOutgassing { get; init; }

    /// <summary>Rows used and left out.</summary>
    public required HoldRows Rows { get; init; }

    /// <summary>Resolution where the hold begins, Pa: stated, or the step the log really makes there.</summary>
    public required double Resolution { get; init; }

    /// <summary>Lag-1 correlation ρ of the residuals; null without a fit.</summary>
    public double? Correlation { get; init; }

    /// <summary>Rows averaged into one block.</summary>
    public int BlockRows { get; init; }

    /// <summary>Length of a block, s.</summary>
    public double BlockSeconds { get; init; }

    /// <summary>Number of blocks n, the independent readings of the criterion.</summary>
    public int Blocks { get; init; }

    /// <summary>Fitted curves for figures: the flat curve, and each curve that has evidence; at most 200 points each.</summary>
    public ImmutableArray<HoldCurve> Curves { get; init; } = [];

    /// <summary>Block means and their distance from the preferred curve, at most 200 points.</summary>
    public ImmutableArray<HoldPoint> Points { get; init; } = [];
}

/// <summary>What a hold shows.</summary>
internal enum HoldConclusion
{
    /// <summary>The data do not tell the explanations apart; <see cref="HoldResult.Reason"/> says which.</summary>
    CannotTell,

    /// <summary>No rise that counts.</summary>
    Held,

    /// <summary>A steady rise: no slowing down over the hold.</summary>
    SteadyRise,

    /// <summary>A rise that slows down towards a plateau.</summary>
    Source,

    /// <summary>A rise that slows down onto a steady rise.</summary>
    SteadyRiseAndSource,
}

/// <summary>Why a hold does not tell its cause.</summary>
internal enum CannotTellReason
{
    /// <summary>No usable rows after isolation.</summary>
    NoRows,

    /// <summary>Too few independent readings for the number of parameters: hold too short for how slowly the readings wander.</summary>
    TooFewBlocks,

    /// <summary>A rise that would count could hide in the scatter.</summary>
    ScatterHidesRise,

    /// <summary>The hold is shorter than two time constants, or the scatter too large, to tell a steady rise from a source.</summary>
    LineOrSource,

    /// <summary>A source is seen, and a steady rise beneath it can be neither shown nor excluded.</summary>
    SourceWithOrWithoutLine,

    /// <summary>A steady rise is seen, and a source on top of it can be neither shown nor excluded.</summary>
    LineWithOrWithoutSource,

    /// <summary>The pressure fell by more than the scatter: temperature, gauge or absorption, and a rise could hide behind it.</summary>
    Falling,

    /// <summary>The pressure left the range of the gauge before the end of the hold.</summary>
    OverRange,

    /// <summary>The rise speeds up: nothing that gives off gas and no hole does so by itself.</summary>
    SpeedsUp,

    /// <summary>None of the curves follows the readings.</summary>
    NoCurveFits,
}
