using System.Collections.Immutable;

namespace Commission.Checks.EvacuationAnalysis;

/// <summary>
/// Tells what an isolated vacuum does: holds, rises steadily, rises towards a plateau, or both, or that the data do not tell.
/// Readings are averaged into blocks long enough to be nearly independent; four curves are compared by AICc on the blocks;
/// a conclusion stands only when every other explanation that would count is excluded.
/// </summary>
/// <remarks>
/// Sources: AICc, Hurvich and Tsai, Biometrika 76 (1989) 297 (from memory); profile intervals, Bates and Watts, Nonlinear
/// Regression Analysis (1988) ch. 6 (from memory); block length (1+ρ)/(1−ρ), the rise that counts (5 resolutions and 10 % of
/// the allowed rise) and ΔAICc ≥ 6 are our defaults, tried by simulation in the tests.
/// </remarks>
public static class HoldAnalysis
{
    private const int MostBlocks = 200;
    private const int MostPreliminaryBlocks = 1500;
    private const int EnoughBlocks = 60;
    private const double Negligible = 1.0 / 30;
    private const double GridRatio = 1.12;
    private const double LongestTau = 50;

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
        var rows = HoldScreening.Of(series, isolation, end, skip, gauge.Resolution);
        var counting = Math.Max(5 * rows.Resolution, 0.1 * Math.Max(options.AllowedRise ?? 0, 0));
        var nothing = new HoldResult
        {
            Conclusion = HoldConclusion.CannotTell,
            Reason = rows.EndsOverRange ? CannotTellReason.OverRange : CannotTellReason.NoRows,
            Isolation = isolation,
            Length = rows.Rows.To is { } last ? last - isolation : 0,
            CountingRise = counting,
            Rows = rows.Rows,
            Resolution = rows.Resolution,
        };
        if (rows.Times.Length < 3)
            return nothing;

        var (correlation, blockRows) = ChooseBlocks(rows, counting);
        var blocks = HoldBlocks.Average(rows.Times, rows.Pressures, blockRows, rows.Interval);
        var evidence = new HoldEvidence(blocks, rows.Resolution, correlation, nothing.Length, skip, rows.Interval);
        var decision = HoldDecision.Of(evidence, rows, gauge, counting);
        return Describe(nothing, evidence, decision, gauge, options, rows, skip);
    }

    private static HoldResult Describe(
        HoldResult nothing, HoldEvidence evidence, HoldDecision decision, GaugeCharacter gauge, HoldOptions options, HoldScreening rows, double skip)
    {
        var preferred = evidence.Fit(decision.Preferred);
        var withSource = decision.Preferred is HoldModel.Source or HoldModel.LineAndSource && evidence.CanFitSource;
        var parameters = HoldParameters.Of(evidence, decision.Preferred, gauge, options.TemperatureDrift);
        return nothing with
        {
            Conclusion = decision.Conclusion,
            Reason = decision.Reason,
            Preferred = decision.Preferred,
            Evidence = evidence.Table(),
            Slope = parameters.Slope,
            SlopeWithCauses = parameters.SlopeWithCauses,
            Plateau = parameters.Plateau,
            TimeConstant = parameters.TimeConstant,
            LineRise = parameters.Slope?.Value * evidence.Length,
            RiseSeen = preferred.At(evidence.Blocks.Span) - preferred.At(0),
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

    /// <summary>ρ from the residuals of the richest curve, and the rows a block needs.</summary>
    private static (double Correlation, int Rows) ChooseBlocks(HoldScreening rows, double counting)
    {
        var n = rows.Times.Length;
        var residuals = RichestResiduals(rows);
        var rho = HoldCorrelation.Lag1(residuals, rows.Times, rows.Interval, parameters: 4);
        var length = HoldCorrelation.BlockLength(rho);

        // Fast noise (digit steps, say) on top of slow wander hides the wander from lag 1: look again between means of 4, 8,
        // 16 … rows, and believe them where neighbours agree clearly more than a first-order process of this ρ would.
        for (var m = 4; n / m >= 32; m *= 2)
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
        var most = n / EnoughBlocks;
        if (length > most && most > 0 && RootMeanSquare(Means(residuals, rows.Times, most).Means) < Negligible * counting)
            length = most;

        var digitChanges = 0;
        for (var i = 1; i < n; i++)
            digitChanges += rows.Resolution > 0 && Digit(i) != Digit(i - 1) ? 1 : 0;
        if (rows.Resolution > 0)
            length = Math.Max(length, (double)n / Math.Max(digitChanges, 1));
        length = Math.Max(length, (double)n / MostBlocks);
        return (rho, Math.Clamp((int)Math.Ceiling(length - 1e-9), 1, n));

        double Digit(int i) => Math.Round(rows.Pressures[i] / rows.Resolution);
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
            var scan = fit.Scan(Math.Max(3 * span / thin.Count, span / 100), span, 1.3);
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
