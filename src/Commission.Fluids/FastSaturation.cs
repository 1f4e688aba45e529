using Commission.Fluids.Saturation;

namespace Commission.Fluids;

/// <summary>
/// Saturation curves as Chebyshev expansions of ln p in 1/T and of 1/T in ln p, made once from the full equations, for a program that asks
/// thousands of times. Inside its range it agrees with the full solution within 1e-7 of the pressure and allocates nothing; outside, and
/// where an expansion could not be made, it asks the full solution, so that the answer is always the same. Thread-safe.
/// </summary>
public sealed class FastSaturation
{
    private const double Tolerance = 2e-9;

    private readonly Refrigerant _refrigerant;
    private readonly ChebyshevSeries? _bubble;
    private readonly ChebyshevSeries? _dew;
    private readonly ChebyshevSeries? _bubbleInverse;
    private readonly ChebyshevSeries? _dewInverse;

    internal FastSaturation(Refrigerant refrigerant)
    {
        _refrigerant = refrigerant;
        if (!refrigerant.CriticalPoint.Ok)
            return;
        var critical = refrigerant.CriticalPoint.Value.Temperature;
        var high = (refrigerant.IsBlend ? 0.97 : 0.98) * critical;
        // A curve may end early on the cold side, where the liquid of a few blends would split in two: then start warmer.
        for (double floor = critical < 240 ? 0 : 200; floor < Math.Min(260, high); floor += 15)
        {
            var low = Math.Max(refrigerant.LowestTemperature * 1.0001, floor);
            _bubble = Curve(low, high, refrigerant.BubbleAtTemperature);
            _dew = !refrigerant.IsBlend || _bubble is null ? _bubble : Curve(low, high, refrigerant.DewAtTemperature);
            if (_dew is not null)
                break;
        }
        _bubbleInverse = Inverse(_bubble);
        _dewInverse = refrigerant.IsBlend ? Inverse(_dew) : _bubbleInverse;
    }

    /// <summary>The temperatures between which the expansions answer, K; empty (0, 0) where none could be made.</summary>
    public (double Low, double High) Range => _bubble is null || _dew is null ? (0, 0) : (1 / _bubble.High, 1 / _bubble.Low);

    /// <summary>Bubble pressure, Pa absolute.</summary>
    /// <param name="kelvin">K.</param>
    public FluidResult<double> BubblePressure(double kelvin) =>
        _bubble is not null && 1 / kelvin is double x && x >= _bubble.Low && x <= _bubble.High
            ? FluidResult<double>.Of(Math.Exp(_bubble.At(x)))
            : Pressure(_refrigerant.BubbleAtTemperature(kelvin));

    /// <summary>Dew pressure, Pa absolute.</summary>
    /// <param name="kelvin">K.</param>
    public FluidResult<double> DewPressure(double kelvin) =>
        _dew is not null && 1 / kelvin is double x && x >= _dew.Low && x <= _dew.High
            ? FluidResult<double>.Of(Math.Exp(_dew.At(x)))
            : Pressure(_refrigerant.DewAtTemperature(kelvin));

    /// <summary>Bubble temperature, K.</summary>
    /// <param name="pascals">Pa absolute.</param>
    public FluidResult<double> BubbleTemperature(double pascals) =>
        _bubbleInverse is not null && Math.Log(pascals) is double x && x >= _bubbleInverse.Low && x <= _bubbleInverse.High
            ? FluidResult<double>.Of(1 / _bubbleInverse.At(x))
            : Temperature(_refrigerant.BubbleAtPressure(pascals));

    /// <summary>Dew temperature, K.</summary>
    /// <param name="pascals">Pa absolute.</param>
    public FluidResult<double> DewTemperature(double pascals) =>
        _dewInverse is not null && Math.Log(pascals) is double x && x >= _dewInverse.Low && x <= _dewInverse.High
            ? FluidResult<double>.Of(1 / _dewInverse.At(x))
            : Temperature(_refrigerant.DewAtPressure(pascals));

    private static ChebyshevSeries? Curve(double low, double high, Func<double, FluidResult<SaturationState>> solve) =>
        ChebyshevSeries.Fit(
            x =>
            {
                var state = solve(1 / x);
                return state.Ok ? Math.Log(state.Value.Pressure) : double.NaN;
            },
            1 / high,
            1 / low,
            Tolerance);

    /// <summary>Inverts a curve by Newton's method on the expansion itself, whose error is far below the tolerance of the pair.</summary>
    private static ChebyshevSeries? Inverse(ChebyshevSeries? curve)
    {
        if (curve is null)
            return null;
        double lnLow = curve.At(curve.High), lnHigh = curve.At(curve.Low);
        double Solve(double ln)
        {
            double low = curve.Low, high = curve.High;
            var x = low + (high - low) * (lnHigh - ln) / (lnHigh - lnLow);
            for (var i = 0; i < 60; i++)
            {
                var error = curve.At(x) - ln;
                if (error > 0)
                    low = x;
                else
                    high = x;
                var h = 1e-6 * x;
                var slope = (curve.At(Math.Min(x + h, curve.High)) - curve.At(Math.Max(x - h, curve.Low))) / (Math.Min(x + h, curve.High) - Math.Max(x - h, curve.Low));
                var next = x - error / slope;
                if (!(next >= low && next <= high))
                    next = 0.5 * (low + high);
                if (Math.Abs(next - x) < 1e-15 * x)
                    return next;
                x = next;
            }
            return x;
        }
        // 1/T is near 3e-3: a relative 1e-11 of it is 1e-10 in ln p or less.
        return ChebyshevSeries.Fit(Solve, lnLow, lnHigh, 2e-13);
    }

    private static FluidResult<double> Pressure(FluidResult<SaturationState> state) =>
        state.Ok ? FluidResult<double>.Of(state.Value.Pressure) : FluidResult<double>.None(state.Reason);

    private static FluidResult<double> Temperature(FluidResult<SaturationState> state) =>
        state.Ok ? FluidResult<double>.Of(state.Value.Temperature) : FluidResult<double>.None(state.Reason);
}
