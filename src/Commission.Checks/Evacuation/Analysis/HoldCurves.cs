using System.Collections.Immutable;

namespace Commission.Checks.EvacuationAnalysis;

/// <summary>What a figure of a hold draws.</summary>
internal static class HoldCurves
{
    private const int MostPoints = 200;

    internal static ImmutableArray<HoldCurve> Of(HoldEvidence evidence, double origin)
    {
        var curves = ImmutableArray.CreateBuilder<HoldCurve>();
        foreach (var model in (ReadOnlySpan<HoldModel>)[HoldModel.Flat, HoldModel.Line, HoldModel.Source, HoldModel.LineAndSource])
        {
            var fit = evidence.Fit(model);
            var noise = evidence.Noise(fit);
            if ((model == HoldModel.Flat || evidence.Aicc(fit) is not null) && double.IsFinite(noise.Variance))
                curves.Add(Curve(evidence, fit, noise, origin));
        }

        return curves.ToImmutable();
    }

    internal static ImmutableArray<HoldPoint> Points(HoldEvidence evidence, HoldFit.Fit preferred, double origin)
    {
        var blocks = evidence.Blocks;
        var group = (blocks.Count + MostPoints - 1) / MostPoints;
        var points = ImmutableArray.CreateBuilder<HoldPoint>();
        for (var i = 0; i < blocks.Count; i += group)
        {
            var (t, p, r, n) = (0.0, 0.0, 0.0, 0);
            for (var j = i; j < Math.Min(i + group, blocks.Count); j++, n++)
            {
                t += blocks.Time[j];
                p += blocks.Value[j];
                r += blocks.Value[j] - preferred.At(blocks.Time[j]);
            }

            points.Add(new HoldPoint(origin + t / n, p / n, r / n));
        }

        return points.ToImmutable();
    }

    private static HoldCurve Curve(HoldEvidence evidence, HoldFit.Fit fit, HoldNoise noise, double origin)
    {
        var straight = fit.Step == 0;
        var count = straight ? 50 : MostPoints;
        var band = new HoldBand(evidence.Blocks, fit);
        var times = new double[count];
        var values = new double[count];
        var low = new double[count];
        var high = new double[count];
        for (var i = 0; i < count; i++)
        {
            var t = evidence.Blocks.Span * i / (count - 1);
            times[i] = origin + t;
            values[i] = fit.At(t);
            var reach = noise.Factor * Math.Sqrt(noise.Variance * band.Leverage(t));
            low[i] = values[i] - reach;
            high[i] = values[i] + reach;
        }

        return new HoldCurve(fit.Model, [.. times], [.. values], [.. low], [.. high]);
    }
}
