using Commission.Measurement.Uncertainty;

namespace Commission.Checks.EvacuationAnalysis;

/// <summary>
/// Parameters of a hold with their 95 % intervals. To the scatter come the errors that do not average out: the gauge's gain and
/// zero, and a drift of temperature over the hold, whose effect is found by fitting once more to drifted readings.
/// </summary>
internal readonly record struct HoldParameters(
    Interval? Slope, Uncertain? SlopeWithCauses, Interval? Plateau, Interval? TimeConstant)
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
        var causes = WithCauses(besides.Value, (besides.High - besides.Low) / 2 / noise.Factor, noise.Freedom, gain, drift);
        var slope = Widen(besides, noise, double.Hypot(gain, drift));
        if (preferred == HoldModel.LineAndSource)
        {
            var tau = Tau(evidence, evidence.FreeBoth, at => at.Both, noise);
            return new HoldParameters(slope, causes, Plateau: null, Widen(tau, noise, Math.Abs(tau.Value - shifted.Tau)));
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
            slope, causes, Widen(plateau, aloneNoise, level),
            Widen(time, aloneNoise, Math.Abs(time.Value - aloneShifted.Tau)));
    }

    private static Interval Tau(HoldEvidence evidence, HoldFit.Fit best, Func<HoldFit.AtTau, HoldFit.Fit> choose, HoldNoise noise) =>
        HoldProfile.Tau(evidence.Fitter, evidence.Beyond, choose, best, noise.Factor * noise.Factor * noise.Variance);

    private static Uncertain WithCauses(double slope, double scatter, double freedom, double gain, double drift) => Uncertain.From(
        slope,
        new RootCause("scatter of the hold", "residuals of the fitted curve", scatter, freedom),
        RootCause.FromHalfWidth("gain of the vacuum gauge", "its accuracy statement; it does not average out", gain),
        RootCause.FromHalfWidth("change of temperature over the hold", "not recorded, or its uncertainty", drift));

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
