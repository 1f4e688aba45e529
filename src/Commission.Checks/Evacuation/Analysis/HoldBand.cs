using MathNet.Numerics.LinearAlgebra;

namespace Commission.Checks.EvacuationAnalysis;

/// <summary>Variance of a fitted curve's mean per unit of scatter: gᵀ(JᵀJ)⁻¹g with the derivatives of the curve to its free parameters.</summary>
internal sealed class HoldBand
{
    private readonly HoldFit.Fit fit;
    private readonly double span;
    private readonly Matrix<double> inverse;

    internal HoldBand(HoldBlocks blocks, HoldFit.Fit fit)
    {
        this.fit = fit;
        span = blocks.Span;
        var size = Derivatives(0).Length;
        var normal = Matrix<double>.Build.Dense(size, size);
        for (var i = 0; i < blocks.Count; i++)
        {
            var g = Derivatives(blocks.Time[i]);
            for (var r = 0; r < size; r++)
            {
                for (var c = 0; c < size; c++)
                    normal[r, c] += blocks.Weight[i] * g[r] * g[c];
            }
        }

        inverse = normal.PseudoInverse();
    }

    internal double Leverage(double t)
    {
        var g = Vector<double>.Build.Dense(Derivatives(t));
        return Math.Max(g * inverse * g, 0);
    }

    // Only terms that the constraints left in the curve have a derivative.
    private double[] Derivatives(double t)
    {
        var slope = fit.Model == HoldModel.Line || (fit.Model == HoldModel.LineAndSource && fit.Slope > 0);
        if (fit.Step == 0)
            return slope ? [1, t / span] : [1];
        var e = Math.Exp(-t / fit.Tau);
        var toTau = -fit.Step * e * t / fit.Tau;
        return slope ? [1, t / span, e, toTau] : [1, e, toTau];
    }
}
