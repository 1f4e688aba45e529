namespace Commission.Checks.Evacuation.Analysis;

/// <summary>
/// Parameters of a hold with their 95 % intervals. To the scatter come the errors that do not average out: the gauge's gain and
/// zero, and a drift of temperature over the hold, whose effect is found by fitting once more to drifted readings.
/// </summary>
internal readonly record struct HoldParameters(
    Interval? Slope, double? SlopeUncertainty, double? SlopeFreedom, Interval? Plateau, Interval? TimeConstant)
{
    private const double RoomTemperature = 293.15;

    internal static HoldParameters Of(HoldEvidence evidence, HoldModel preferred, GaugeCharacter gauge, double temperatureDrift)
    {
        var drifted = new HoldFit(evidence.Blocks.Drifted(temperatureDrift / RoomTemperature));
        return preferred is HoldModel.Source or HoldModel.LineAndSource && evidence.CanFitSource
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
        var bounded = double.Hypot(gauge.GainHalfWidth * line.Slope, line.Slope - drifted.FreeLine.Slope);
        var slope = Widen(new Interval(line.Slope, line.Slope - reach, line.Slope + reach), noise, bounded);
        return new HoldParameters(slope, Standard(reach / noise.Factor, bounded), noise.Freedom, Plateau: null, TimeConstant: null);
    }

    private static HoldParameters WithSource(HoldEvidence evidence, HoldModel preferred, GaugeCharacter gauge, HoldFit drifted)
    {
        var noise = evidence.Noise(evidence.FreeBoth);
        if (!double.IsFinite(noise.Variance))
            return default;
        var besides = evidence.SlopeBesideSource;
        var shifted = drifted.Best(drifted.Near(evidence.FreeBoth.Tau), at => at.Both);
        var bounded = double.Hypot(gauge.GainHalfWidth * besides.Value, besides.Value - shifted.Slope);
        var u = Standard((besides.High - besides.Low) / 2 / noise.Factor, bounded);
        var slope = Widen(besides, noise, bounded);
        if (preferred == HoldModel.LineAndSource)
        {
            var tau = Tau(evidence, evidence.FreeBoth, at => at.Both, noise);
            return new HoldParameters(slope, u, noise.Freedom, Plateau: null, Widen(tau, noise, Math.Abs(tau.Value - shifted.Tau)));
        }

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
            slope, u, noise.Freedom, Widen(plateau, aloneNoise, level),
            Widen(time, aloneNoise, Math.Abs(time.Value - aloneShifted.Tau)));
    }

    private static Interval Tau(HoldEvidence evidence, HoldFit.Fit best, Func<HoldFit.AtTau, HoldFit.Fit> choose, HoldNoise noise) =>
        HoldProfile.Tau(evidence.Fitter, evidence.Beyond, choose, best, noise.Factor * noise.Factor * noise.Variance);

    private static double Standard(double scatter, double bounded) => Math.Sqrt(scatter * scatter + bounded * bounded / 3);

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
