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
