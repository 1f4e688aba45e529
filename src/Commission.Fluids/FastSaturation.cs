using System.Runtime.InteropServices;
using Commission.Fluids.Saturation;

namespace Commission.Fluids;

/// <summary>
/// Saturation curves as Chebyshev expansions of ln p in 1/T and of 1/T in ln p, each made from the full equations when it is first asked
/// for (about as long as fifty full solutions), for whoever asks more often than that. Inside its range it agrees with the full solution
/// within 1e-7 of the pressure and allocates nothing; outside, and where an expansion could not be made, it asks the full solution, so
/// that the answer is always the same. Thread-safe.
/// </summary>
public sealed class FastSaturation
{
    private const double Tolerance = 2e-9;

    private readonly Refrigerant _refrigerant;
    private readonly Lazy<ChebyshevSeries?> _bubble;
    private readonly Lazy<ChebyshevSeries?> _dew;
    private readonly Lazy<ChebyshevSeries?> _bubbleInverse;
    private readonly Lazy<ChebyshevSeries?> _dewInverse;

    internal FastSaturation(Refrigerant refrigerant)
    {
        _refrigerant = refrigerant;
        _bubble = new(() => Curve(refrigerant.BubbleAtTemperature));
        _bubbleInverse = new(() => Inverse(_bubble.Value));
        _dew = refrigerant.IsBlend ? new(() => Curve(refrigerant.DewAtTemperature)) : _bubble;
        _dewInverse = refrigerant.IsBlend ? new(() => Inverse(_dew.Value)) : _bubbleInverse;
    }

    /// <summary>The temperatures between which the expansions of both curves answer, K; empty (0, 0) where one could not be made.</summary>
    public (double Low, double High) Range => (_bubble.Value, _dew.Value) is ({ } bubble, { } dew)
        ? (1 / Math.Min(bubble.High, dew.High), 1 / Math.Max(bubble.Low, dew.Low))
        : (0, 0);

    /// <summary>Bubble pressure, Pa absolute.</summary>
    /// <param name="kelvin">K.</param>
    public FluidResult<double> BubblePressure(double kelvin) =>
        _bubble.Value is { } curve && curve.Holds(1 / kelvin)
            ? FluidResult<double>.Of(Math.Exp(curve.At(1 / kelvin)))
            : Pressure(_refrigerant.BubbleAtTemperature(kelvin));

    /// <summary>Dew pressure, Pa absolute.</summary>
    /// <param name="kelvin">K.</param>
    public FluidResult<double> DewPressure(double kelvin) =>
        _dew.Value is { } curve && curve.Holds(1 / kelvin)
            ? FluidResult<double>.Of(Math.Exp(curve.At(1 / kelvin)))
            : Pressure(_refrigerant.DewAtTemperature(kelvin));

    /// <summary>Bubble temperature, K.</summary>
    /// <param name="pascals">Pa absolute.</param>
    public FluidResult<double> BubbleTemperature(double pascals) =>
        _bubbleInverse.Value is { } curve && Math.Log(pascals) is var x && curve.Holds(x)
            ? FluidResult<double>.Of(1 / curve.At(x))
            : Temperature(_refrigerant.BubbleAtPressure(pascals));

    /// <summary>Dew temperature, K.</summary>
    /// <param name="pascals">Pa absolute.</param>
    public FluidResult<double> DewTemperature(double pascals) =>
        _dewInverse.Value is { } curve && Math.Log(pascals) is var x && curve.Holds(x)
            ? FluidResult<double>.Of(1 / curve.At(x))
            : Temperature(_refrigerant.DewAtPressure(pascals));

    /// <summary>Bubble temperature with its slope.</summary>
    /// <param name="pascals">Pa absolute.</param>
    public FluidResult<SaturationPoint> BubblePoint(double pascals) =>
        _bubbleInverse.Value is { } curve && Math.Log(pascals) is var x && curve.Holds(x)
            ? FluidResult<SaturationPoint>.Of(Point(curve, x, pascals))
            : Point(_refrigerant.BubbleAtPressure(pascals));

    /// <summary>Dew temperature with its slope.</summary>
    /// <param name="pascals">Pa absolute.</param>
    public FluidResult<SaturationPoint> DewPoint(double pascals) =>
        _dewInverse.Value is { } curve && Math.Log(pascals) is var x && curve.Holds(x)
            ? FluidResult<SaturationPoint>.Of(Point(curve, x, pascals))
            : Point(_refrigerant.DewAtPressure(pascals));

    private static SaturationPoint Point(ChebyshevSeries inverse, double x, double pascals)
    {
        var kelvin = 1 / inverse.At(x, out var derivative);
        return new SaturationPoint(kelvin, -kelvin * kelvin * derivative / pascals);
    }

    private static FluidResult<SaturationPoint> Point(FluidResult<SaturationState> state) => state.Ok
        ? FluidResult<SaturationPoint>.Of(new SaturationPoint(state.Value.Temperature, state.Value.TemperatureSlope))
        : FluidResult<SaturationPoint>.None(state.Reason);

    /// <summary>A curve may end early on the cold side, where the liquid of a few blends would split in two: then it starts warmer.</summary>
    private ChebyshevSeries? Curve(Func<double, FluidResult<SaturationState>> solve)
    {
        if (!_refrigerant.CriticalPoint.Ok)
            return null;
        var critical = _refrigerant.CriticalPoint.Value.Temperature;
        var high = (_refrigerant.IsBlend ? 0.97 : 0.98) * critical;
        for (double floor = critical < 240 ? 0 : 200; floor < Math.Min(260, high); floor += 15)
        {
            var low = Math.Max(_refrigerant.LowestTemperature * 1.0001, floor);
            if (Curve(low, high, solve) is { } curve)
                return curve;
        }
        return null;
    }

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

/// <summary>A temperature on a saturation curve and how it moves with the pressure.</summary>
/// <param name="Temperature">K.</param>
/// <param name="TemperatureSlope">dT/dp along the curve, K/Pa.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct SaturationPoint(double Temperature, double TemperatureSlope);
