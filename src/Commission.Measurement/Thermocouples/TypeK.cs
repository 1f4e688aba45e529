namespace Commission.Measurement.Thermocouples;

/// <summary>Type K thermocouple: the ITS-90 reference function of NIST Monograph 175 (also IEC 60584-1), reference junction at 0 °C.</summary>
/// <remarks>Coefficients: the NIST ITS-90 thermocouple database, as found alike in six public copies of the table. Temperatures in °C and voltages in mV, as the function is published.</remarks>
public static class TypeK
{
    /// <summary>Lowest temperature of the function, °C.</summary>
    public const double LowestCelsius = -270;

    /// <summary>Highest temperature of the function, °C.</summary>
    public const double HighestCelsius = 1372;

    // Below −250 °C the wire hardly reacts to temperature, and the inverse has no meaning in the field.
    private const double LowestInverse = -250;

    private static readonly double[] Below =
    [
        0, 0.394501280250E-1, 0.236223735980E-4, -0.328589067840E-6, -0.499048287770E-8, -0.675090591730E-10,
        -0.574103274280E-12, -0.310888728940E-14, -0.104516093650E-16, -0.198892668780E-19, -0.163226974860E-22,
    ];

    private static readonly double[] Above =
    [
        -0.176004136860E-1, 0.389212049750E-1, 0.185587700320E-4, -0.994575928740E-7, 0.318409457190E-9,
        -0.560728448890E-12, 0.560750590590E-15, -0.320207200030E-18, 0.971511471520E-22, -0.121047212750E-25,
    ];

    private static readonly double[] Exponential = [0.1185976, -0.1183432E-3, 126.9686];

    /// <summary>Voltage at a temperature, mV; NaN outside the range of the function.</summary>
    /// <param name="celsius">Temperature of the junction, °C.</param>
    public static double Emf(double celsius)
    {
        if (!(celsius is >= LowestCelsius and <= HighestCelsius))
            return double.NaN;
        if (celsius < 0)
            return Polynomial(Below, celsius);
        var distance = celsius - Exponential[2];
        return Polynomial(Above, celsius) + (Exponential[0] * Math.Exp(Exponential[1] * distance * distance));
    }

    /// <summary>Seebeck coefficient at a temperature, mV/K; NaN outside the range of the function.</summary>
    /// <param name="celsius">Temperature of the junction, °C.</param>
    public static double Seebeck(double celsius)
    {
        if (!(celsius is >= LowestCelsius and <= HighestCelsius))
            return double.NaN;
        if (celsius < 0)
            return Derivative(Below, celsius);
        var distance = celsius - Exponential[2];
        return Derivative(Above, celsius) + (2 * Exponential[0] * Exponential[1] * distance * Math.Exp(Exponential[1] * distance * distance));
    }

    /// <summary>Temperature at a voltage, °C, by root of the reference function, from −250 to 1372 °C; nothing outside.</summary>
    /// <param name="millivolts">Voltage against a reference junction at 0 °C.</param>
    public static double? TemperatureOf(double millivolts)
    {
        double low = LowestInverse, high = HighestCelsius;
        if (!(millivolts >= Emf(low) && millivolts <= Emf(high)))
            return null;

        // The function rises throughout. Newton, and bisection wherever Newton would leave the bracket.
        var t = Math.Clamp(millivolts * 25, low, high);
        for (var i = 0; i < 100; i++)
        {
            var excess = Emf(t) - millivolts;
            if (excess == 0)
                return t;
            if (excess > 0)
                high = t;
            else
                low = t;
            var next = t - (excess / Seebeck(t));
            if (!(next > low && next < high))
                next = (low + high) / 2;
            if (Math.Abs(next - t) <= 1e-12 * Math.Max(1, Math.Abs(t)))
                return next;
            t = next;
        }

        return t;
    }

    private static double Polynomial(double[] coefficients, double t)
    {
        var sum = 0.0;
        for (var i = coefficients.Length - 1; i >= 0; i--)
            sum = (sum * t) + coefficients[i];
        return sum;
    }

    private static double Derivative(double[] coefficients, double t)
    {
        var sum = 0.0;
        for (var i = coefficients.Length - 1; i >= 1; i--)
            sum = (sum * t) + (i * coefficients[i]);
        return sum;
    }
}
