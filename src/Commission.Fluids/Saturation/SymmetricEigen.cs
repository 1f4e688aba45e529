namespace Commission.Fluids.Saturation;

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
