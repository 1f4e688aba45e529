using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Factorization;

namespace Commission.Measurement.Regression;

/// <summary>A factor F of the covariance of fitted parameters, F·Fᵀ = s²(JᵀJ)⁻¹, so that each column of F is one independent cause.</summary>
internal static class CovarianceFactor
{
    // Columns closer to dependent than this have lost every digit.
    private const double LeastPivot = 1e-12;

    /// <summary>From the rows of the Jacobian and s; nothing when the parameters cannot be told apart.</summary>
    public static Matrix<double>? Of(double[][] jacobian, double standardDeviation) => Decompose(jacobian) is { } found
        ? found.Qr.R.Inverse().MapIndexed((row, _, value) => standardDeviation * value / found.Lengths[row])
        : null;

    /// <summary>The least-squares solution of J·step = residuals; nothing when the parameters cannot be told apart.</summary>
    public static double[]? Solve(double[][] jacobian, double[] residuals) => Decompose(jacobian) is { } found
        ? [.. found.Qr.Solve(Vector<double>.Build.Dense(residuals)).PointwiseDivide(found.Lengths)]
        : null;

    // Parameters of very different size would spoil the decomposition: every column to length one first.
    private static (QR<double> Qr, Vector<double> Lengths)? Decompose(double[][] jacobian)
    {
        var j = Matrix<double>.Build.DenseOfRowArrays(jacobian);
        var lengths = j.ColumnNorms(2);
        if (lengths.Any(l => !double.IsFinite(l) || l == 0))
            return null;
        var qr = j.MapIndexed((_, column, value) => value / lengths[column]).QR(QRMethod.Thin);
        return qr.R.Diagonal().AbsoluteMinimum() < LeastPivot ? null : (qr, lengths);
    }
}
