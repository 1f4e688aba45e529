namespace Commission.Fluids.Saturation;

/// <summary>A Chebyshev expansion of a smooth function on an interval, evaluated by Clenshaw's recurrence.</summary>
internal sealed class ChebyshevSeries
{
    private readonly double[] _coefficients;
    private readonly double _scale;
    private readonly double _shift;

    private ChebyshevSeries(double low, double high, double[] coefficients)
    {
        Low = low;
        High = high;
        _coefficients = coefficients;
        _scale = 4 / (high - low);
        _shift = -2 * (high + low) / (high - low);
    }

    public double Low { get; }

    public double High { get; }

    /// <summary>Whether the expansion is of this x.</summary>
    public bool Holds(double x) => x >= Low && x <= High;

    /// <summary>Number of coefficients kept.</summary>
    public int Length => _coefficients.Length;

    /// <summary>
    /// Expands a function that may have no value (NaN) somewhere: then, or when the coefficients do not fall below
    /// <paramref name="tolerance"/> with 129 points, the result is null.
    /// </summary>
    public static ChebyshevSeries? Fit(Func<double, double> function, double low, double high, double tolerance)
    {
        for (var count = 33; count <= 129; count = 2 * count - 1)
        {
            var values = new double[count];
            for (var k = 0; k < count; k++)
            {
                var u = Math.Cos(Math.PI * k / (count - 1));
                values[k] = function(0.5 * (low + high) + 0.5 * (high - low) * u);
                if (double.IsNaN(values[k]))
                    return null;
            }
            var c = Coefficients(values);
            var tail = Math.Max(Math.Abs(c[^1]), Math.Max(Math.Abs(c[^2]), Math.Abs(c[^3])));
            if (tail > tolerance)
                continue;
            var keep = count;
            while (keep > 2 && Math.Abs(c[keep - 1]) < 0.1 * tolerance)
                keep--;
            return new ChebyshevSeries(low, high, c[..keep]);
        }
        return null;
    }

    public double At(double x)
    {
        var c = _coefficients;
        var y2 = _scale * x + _shift;
        double b1 = 0, b2 = 0;
        for (var k = c.Length - 1; k > 0; k--)
        {
            var b = c[k] + y2 * b1 - b2;
            b2 = b1;
            b1 = b;
        }
        return c[0] + 0.5 * y2 * b1 - b2;
    }

    /// <summary>The value and the derivative of the expansion at x.</summary>
    public double At(double x, out double derivative)
    {
        var c = _coefficients;
        var y2 = _scale * x + _shift;
        double b1 = 0, b2 = 0, d1 = 0, d2 = 0;
        for (var k = c.Length - 1; k > 0; k--)
        {
            // The recurrence itself and its derivative by y2.
            var d = b1 + y2 * d1 - d2;
            d2 = d1;
            d1 = d;
            var b = c[k] + y2 * b1 - b2;
            b2 = b1;
            b1 = b;
        }
        derivative = _scale * (0.5 * b1 + 0.5 * y2 * d1 - d2);
        return c[0] + 0.5 * y2 * b1 - b2;
    }

    /// <summary>Coefficients of the interpolant in the points cos(πk/n), by the cosine sums.</summary>
    private static double[] Coefficients(double[] values)
    {
        var n = values.Length - 1;
        var c = new double[n + 1];
        var cosine = new double[2 * n];
        for (var k = 0; k < cosine.Length; k++)
            cosine[k] = Math.Cos(Math.PI * k / n);
        for (var j = 0; j <= n; j++)
        {
            var sum = 0.5 * (values[0] + ((j & 1) == 0 ? values[n] : -values[n]));
            for (var k = 1; k < n; k++)
                sum += values[k] * cosine[j * k % (2 * n)];
            c[j] = 2 * sum / n;
        }
        c[0] *= 0.5;
        c[n] *= 0.5;
        return c;
    }
}
