namespace Commission.Fluids.Saturation;

/// <summary>Small dense linear systems by elimination with partial pivoting.</summary>
internal static class LinearSystem
{
    /// <summary>Solves in place: <paramref name="matrix"/> is n × n row by row, <paramref name="right"/> becomes the solution. False when singular.</summary>
    public static bool Solve(double[] matrix, double[] right, int n)
    {
        for (int c = 0; c < n; c++)
        {
            int pivot = c;
            double best = Math.Abs(matrix[c * n + c]);
            for (int r = c + 1; r < n; r++)
            {
                double candidate = Math.Abs(matrix[r * n + c]);
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
                for (int k = c; k < n; k++)
                    (matrix[c * n + k], matrix[pivot * n + k]) = (matrix[pivot * n + k], matrix[c * n + k]);
                (right[c], right[pivot]) = (right[pivot], right[c]);
            }
            double inverse = 1 / matrix[c * n + c];
            for (int r = c + 1; r < n; r++)
            {
                double factor = matrix[r * n + c] * inverse;
                if (factor == 0)
                    continue;
                for (int k = c; k < n; k++)
                    matrix[r * n + k] -= factor * matrix[c * n + k];
                right[r] -= factor * right[c];
            }
        }
        for (int r = n - 1; r >= 0; r--)
        {
            double sum = right[r];
            for (int k = r + 1; k < n; k++)
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
        double[] v = new double[n * n];
        for (int i = 0; i < n; i++)
            v[i * n + i] = 1;
        for (int sweep = 0; sweep < 50; sweep++)
        {
            double off = 0, all = 0;
            for (int i = 0; i < n; i++)
            {
                for (int j = 0; j < n; j++)
                {
                    all += a[i * n + j] * a[i * n + j];
                    if (i != j)
                        off += a[i * n + j] * a[i * n + j];
                }
            }
            if (off <= 1e-32 * all)
                break;
            for (int p = 0; p < n; p++)
            {
                for (int q = p + 1; q < n; q++)
                    Rotate(a, v, n, p, q);
            }
        }
        int best = 0;
        for (int i = 1; i < n; i++)
        {
            if (a[i * n + i] < a[best * n + best])
                best = i;
        }
        for (int i = 0; i < n; i++)
            vector[i] = v[i * n + best];
        return a[best * n + best];
    }

    private static void Rotate(double[] a, double[] v, int n, int p, int q)
    {
        double apq = a[p * n + q];
        if (apq == 0)
            return;
        double theta = (a[q * n + q] - a[p * n + p]) / (2 * apq);
        double t = Math.CopySign(1, theta) / (Math.Abs(theta) + Math.Sqrt(theta * theta + 1));
        double c = 1 / Math.Sqrt(t * t + 1), s = t * c;
        for (int k = 0; k < n; k++)
        {
            double akp = a[k * n + p], akq = a[k * n + q];
            a[k * n + p] = c * akp - s * akq;
            a[k * n + q] = s * akp + c * akq;
        }
        for (int k = 0; k < n; k++)
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
