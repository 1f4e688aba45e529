using Commission.Measurement.Quantities;
using MathNet.Numerics.Distributions;

namespace Commission.Checks.VacuumAnalysis;

/// <summary>How long a hold would have to last to tell what this one did not, if it went on as it began.</summary>
internal static class HoldPlanning
{
    private const double Longest = ConversionFactors.Day;
    private const double Growth = 1.1;
    private const int DesignPoints = 120;
    private const double FewestBlocks = 20;

    // Half of what counts, so that the next hold tells with some certainty.
    private const double Share = 0.5;

    // A difference of AICc of 6 with nineteen chances in twenty: 6 + 2 + 2·1.645·√λ, solved for λ.
    private const double Noncentrality = 24;

    internal static double? TimeToTell(CannotTellReason reason, HoldEvidence evidence, double counting, double skip) => reason switch
    {
        CannotTellReason.TooFewBlocks => AtMostADay(skip + FewestBlocks * evidence.BlockSeconds, evidence.Length),
        CannotTellReason.ScatterHidesRise => Search(evidence, skip, (design, variance) => LineTells(design, variance, counting)),
        CannotTellReason.LineOrSource => LineOrSource(evidence, skip),
        CannotTellReason.SourceWithOrWithoutLine or CannotTellReason.LineWithOrWithoutSource => Later(
            Search(evidence, skip, (design, variance) => BothTell(design, variance, evidence, counting)),
            2 * UpperTau(evidence)),
        _ => null,
    };

    private static double? Later(double? need, double twoTau) =>
        need is { } hold && double.IsFinite(twoTau) ? AtMostADay(Math.Max(hold, twoTau), 0) : need;

    // Upper bound of the time constant of a source, whether or not a line lies beneath it.
    private static double UpperTau(HoldEvidence evidence)
    {
        if (!evidence.CanFitSource)
            return double.PositiveInfinity;
        var noise = evidence.Noise(evidence.FreeSource);
        var fitter = evidence.Fitter;
        return HoldProfile.Tau(
            fitter, evidence.Beyond, at => fitter.Source(at), evidence.FreeSource, noise.Factor * noise.Factor * noise.Variance).High;
    }

    private readonly record struct Design(double[] Times, double Span, double Blocks)
    {
        /// <summary>A design point stands for this many blocks.</summary>
        internal double Weight => Blocks / Times.Length;
    }

    private static double? LineOrSource(HoldEvidence evidence, double skip)
    {
        // Two time constants at the upper bound of τ.
        var tau = UpperTau(evidence);
        if (double.IsFinite(tau))
            return AtMostADay(2 * tau, evidence.Length);

        // No upper bound: how long until a straight line and a source of half the hold part company.
        var slope = evidence.Line.Slope;
        return slope <= 0 ? null : Search(evidence, skip, (design, variance) => LinePartsFromSource(design, variance, slope));
    }

    private static double? Search(HoldEvidence evidence, double skip, Func<Design, double, bool> tells)
    {
        // The scatter of the richest curve that could be fitted: what a line leaves over is not all scatter.
        var noise = evidence.Noise(evidence.CanFitSource && double.IsFinite(evidence.Noise(evidence.Both).Variance) ? evidence.Both : evidence.Line);
        if (!double.IsFinite(noise.Variance))
            return null;
        for (var hold = Math.Max(evidence.Length * Growth, skip + 8 * evidence.BlockSeconds); hold <= Longest; hold *= Growth)
        {
            var span = hold - skip;
            var points = (int)Math.Clamp(span / evidence.BlockSeconds, 8, DesignPoints);
            var times = new double[points];
            for (var i = 0; i < points; i++)
                times[i] = span * (i + 0.5) / points;
            if (tells(new Design(times, span, span / evidence.BlockSeconds), noise.Variance))
                return hold;
        }

        return null;
    }

    private static bool LineTells(Design design, double variance, double counting)
    {
        var stt = design.Blocks * design.Span * design.Span / 12;
        return 2.33 * Math.Sqrt(variance / stt) * design.Span <= Share * counting;
    }

    private static bool LinePartsFromSource(Design design, double variance, double slope)
    {
        var (see, sey, syy) = (0.0, 0.0, 0.0);
        var tau = design.Span / 2;
        var meanE = design.Times.Average(t => Math.Exp(-t / tau));
        var meanT = design.Times.Average();
        foreach (var t in design.Times)
        {
            var e = Math.Exp(-t / tau) - meanE;
            var y = slope * (t - meanT);
            see += e * e;
            sey += e * y;
            syy += y * y;
        }

        return (syy - sey * sey / see) * design.Weight / variance >= Noncentrality;
    }

    private static bool BothTell(Design design, double variance, HoldEvidence evidence, double counting)
    {
        var tau = Math.Min(evidence.CanFitSource ? evidence.FreeSource.Tau : design.Span / 2, design.Span / 2);
        var meanE = design.Times.Average(t => Math.Exp(-t / tau));
        var meanT = design.Times.Average();
        var (see, ste, stt) = (0.0, 0.0, 0.0);
        foreach (var t in design.Times)
        {
            var e = Math.Exp(-t / tau) - meanE;
            see += e * e;
            ste += e * (t - meanT);
            stt += (t - meanT) * (t - meanT);
        }

        var rest = (see - ste * ste / stt) * design.Weight;
        var slopeRest = (stt - ste * ste / see) * design.Weight;
        var share = 1 - Math.Exp(-design.Span / tau);
        return 2 * Math.Sqrt(variance / slopeRest) * design.Span <= Share * counting
            && 2 * Math.Sqrt(variance / rest) * share <= Share * counting;
    }

    private static double? AtMostADay(double hold, double soFar) =>
        Math.Max(hold, soFar * Growth) is var need && need <= Longest ? need : null;
}

/// <summary>
/// Half-width of the 95 % interval of a sum of a scattered part (t with ν degrees of freedom times u) and a bounded part
/// (rectangular ± a), found from the exact distribution of the sum. A gain error is bounded and does not average: adding it
/// as if it were normal would cover 100 % where it dominates.
/// </summary>
internal static class CoverageHalfWidth
{
    internal const double Probability = 0.95;

    /// <summary>Two-sided Student factor for 95 %.</summary>
    internal static double Student(double freedom) =>
        StudentT.InvCDF(0, 1, Math.Max(freedom, 1), (1 + Probability) / 2);

    internal static double Of(double u, double freedom, double a)
    {
        // Below two degrees of freedom the closed form has no moment to stand on.
        var nu = Math.Max(freedom, 1.5);
        var t = Student(nu) * u;
        if (a <= 1e-6 * t)
            return t;
        if (t <= 1e-6 * a)
            return Probability * a;
        var low = Math.Max(t, Probability * a) * 0.999;
        var high = t + a;
        for (var i = 0; i < 40; i++)
        {
            var h = (low + high) / 2;
            if (Inside(h, u, nu, a) < Probability)
                low = h;
            else
                high = h;
        }

        return (low + high) / 2;
    }

    // P(|u·T + a·R| ≤ h) with R uniform on ±1: the mean of the t distribution function over the width of R, in closed form.
    private static double Inside(double h, double u, double nu, double a) =>
        u / a * (Integral((h + a) / u, nu) - Integral((h - a) / u, nu)) - 1;

    // ∫F dx = x·F(x) + (ν + x²)/(ν − 1)·f(x).
    private static double Integral(double x, double nu) =>
        x * StudentT.CDF(0, 1, nu, x) + (nu + x * x) / (nu - 1) * StudentT.PDF(0, 1, nu, x);
}

/// <summary>Medians of long series from an evenly spaced sample: a log of a day must not be sorted to learn its usual step.</summary>
internal static class SampledMedian
{
    private const int Most = 4001;

    /// <summary>Median of at most 4,001 of the values; 0 without values.</summary>
    internal static double Of(ReadOnlySpan<double> values)
    {
        if (values.Length == 0)
            return 0;
        var stride = (values.Length + Most - 1) / Most;
        var sample = new double[(values.Length + stride - 1) / stride];
        for (var i = 0; i < sample.Length; i++)
            sample[i] = values[i * stride];
        Array.Sort(sample);
        return sample[sample.Length / 2];
    }

    /// <summary>Median of the differences between neighbours; 0 with fewer than two values.</summary>
    internal static double OfSteps(ReadOnlySpan<double> values)
    {
        var steps = new double[Math.Max(values.Length - 1, 0)];
        for (var i = 0; i < steps.Length; i++)
            steps[i] = values[i + 1] - values[i];
        return Of(steps);
    }
}
