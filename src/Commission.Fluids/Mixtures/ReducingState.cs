namespace Commission.Fluids.Mixtures;

/// <summary>
/// One reducing quantity Y(x) (temperature or molar volume) of a mixture and its composition derivatives (Kunz and Wagner 2012,
/// eqs. 16–17, all mole fractions taken as independent): Y = Σ x_i² Y_i + Σ c_ij x_i x_j (x_i + x_j)/(β² x_i + x_j).
/// <c>G</c>[i] = n ∂Y/∂n_i, <c>H</c>[i,j] = n ∂G_i/∂n_j, both at constant amounts of the others.
/// </summary>
internal sealed class ReducingState(int count)
{
    private readonly double[] _first = new double[count];
    private readonly double[] _second = new double[count * count];
    private readonly double[] _row = new double[count];

    public double Value { get; private set; }

    public double[] G { get; } = new double[count];

    public double[] H { get; } = new double[count * count];

    public void Set(ReadOnlySpan<double> x, double[] pure, BinaryPair[] pairs, double[] cross, bool temperature)
    {
        double value = 0;
        Array.Clear(_second);
        for (int i = 0; i < count; i++)
        {
            value += x[i] * x[i] * pure[i];
            _first[i] = 2 * x[i] * pure[i];
            _second[i * count + i] = 2 * pure[i];
        }
        for (int k = 0; k < pairs.Length; k++)
        {
            BinaryPair pair = pairs[k];
            int i = pair.A, j = pair.B;
            double beta = temperature ? pair.BetaT : pair.BetaV;
            double b = beta * beta, c = cross[k], xi = x[i], xj = x[j];
            double d = 1 / (b * xi + xj);
            double n = xi * xj * (xi + xj), ni = xj * (2 * xi + xj), nj = xi * (xi + 2 * xj);
            value += c * n * d;
            _first[i] += c * d * (ni - n * b * d);
            _first[j] += c * d * (nj - n * d);
            _second[i * count + i] += c * d * (2 * xj - 2 * d * b * (ni - n * b * d));
            _second[j * count + j] += c * d * (2 * xi - 2 * d * (nj - n * d));
            double mixed = c * d * (2 * (xi + xj) - d * (ni + nj * b) + 2 * n * b * d * d);
            _second[i * count + j] += mixed;
            _second[j * count + i] += mixed;
        }
        Value = value;

        double sum = 0, all = 0;
        for (int i = 0; i < count; i++)
        {
            sum += x[i] * _first[i];
            double row = 0;
            for (int m = 0; m < count; m++)
                row += x[m] * _second[i * count + m];
            _row[i] = row;
            all += x[i] * row;
        }
        for (int i = 0; i < count; i++)
            G[i] = _first[i] - sum;
        for (int i = 0; i < count; i++)
        {
            for (int j = 0; j < count; j++)
                H[i * count + j] = _second[i * count + j] - _row[i] - _row[j] + all - G[j];
        }
    }
}
