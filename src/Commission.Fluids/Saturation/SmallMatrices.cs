namespace Commission.Fluids.Saturation;

/// <summary>Small dense linear systems by elimination with partial pivoting.</summary>
internal static class LinearSystem
{
    /// <summary>Solves in place: <paramref name="matrix"/> is n × n row by row, <paramref name="right"/> becomes the solution. False when singular.</summary>
    public static bool Solve(double[] matrix, double[] right, int n)
    {
        for (var c = 0; c < n; c++)
        {
            var pivot = c;
            var best = Math.Abs(matrix[c * n + c]);
            for (var r = c + 1; r < n; r++)
            {
                var candidate = Math.Abs(matrix[r * n + c]);
                if (candidate > best)
                {
                    best = candidate;
                    pivot = r;
                }
            }
            if (!(best > 0))
                return false;
            if (pivot != c)
            {
                for (var k = c; k < n; k++)
                    (matrix[c * n + k], matrix[pivot * n + k]) = (matrix[pivot * n + k], matrix[c * n + k]);
                (right[c], right[pivot]) = (right[pivot], right[c]);
            }
            var inverse = 1 / matrix[c * n + c];
            for (var r = c + 1; r < n; r++)
            {
                var factor = matrix[r * n + c] * inverse;
                if (factor == 0)
                    continue;
                for (var k = c; k < n; k++)
                    matrix[r * n + k] -= factor * matrix[c * n + k];
                right[r] -= factor * right[c];
            }
        }
        for (var r = n - 1; r >= 0; r--)
        {
            var sum = right[r];
            for (var k = r + 1; k < n; k++)
                sum -= matrix[r * n + k] * right[k];
            right[r] = sum / matrix[r * n + r];
        }
        return true;
    }
}

/// <summary>Eigenvalues of small symmetric matrices by Jacobi's rotations.</summary>
internal static class SymmetricEigen
{
    /// <summary>The smallest eigenvalue; its unit vector into <paramref name="vector"/>. The matrix is destroyed.</summary>
    public static double Smallest(double[] a, int n, double[] vector)
    {
        var v = new double[n * n];
        for (var i = 0; i < n; i++)
            v[i * n + i] = 1;
        for (var sweep = 0; sweep < 50; sweep++)
        {
            double off = 0, all = 0;
            for (var i = 0; i < n; i++)
            {
                for (var j = 0; j < n; j++)
                {
                    all += a[i * n + j] * a[i * n + j];
                    if (i != j)
                        off += a[i * n + j] * a[i * n + j];
                }
            }
            if (off <= 1e-32 * all)
                break;
            for (var p = 0; p < n; p++)
            {
                for (var q = p + 1; q < n; q++)
                    Rotate(a, v, n, p, q);
            }
        }
        var best = 0;
        for (var i = 1; i < n; i++)
        {
            if (a[i * n + i] < a[best * n + best])
                best = i;
        }
        for (var i = 0; i < n; i++)
            vector[i] = v[i * n + best];
        return a[best * n + best];
    }

    private static void Rotate(double[] a, double[] v, int n, int p, int q)
    {
        var apq = a[p * n + q];
        if (apq == 0)
            return;
        var theta = (a[q * n + q] - a[p * n + p]) / (2 * apq);
        var t = Math.CopySign(1, theta) / (Math.Abs(theta) + Math.Sqrt(theta * theta + 1));
        double c = 1 / Math.Sqrt(t * t + 1), s = t * c;
        for (var k = 0; k < n; k++)
        {
            double akp = a[k * n + p], akq = a[k * n + q];
            a[k * n + p] = c * akp - s * akq;
            a[k * n + q] = s * akp + c * akq;
        }
        for (var k = 0; k < n; k++)
        {
            double apk = a[p * n + k], aqk = a[q * n + k];
            a[p * n + k] = c * apk - s * aqk;
            a[q * n + k] = s * apk + c * aqk;
            double vkp = v[k * n + p], vkq = v[k * n + q];
            v[k * n + p] = c * vkp - s * vkq;
            v[k * n + q] = s * vkp + c * vkq;
        }
    }
}
