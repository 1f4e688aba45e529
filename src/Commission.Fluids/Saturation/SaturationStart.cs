using Commission.Fluids.Mixtures;

namespace Commission.Fluids.Saturation;

/// <summary>
/// A start for Newton's method on one saturation curve of one blend: its unknowns solved without any help at a few temperatures and interpolated by
/// a polynomial in 1/T or in ln p (barycentric form, Berrut and Trefethen 2004), in both of which they are nearly straight. Made once for a
/// blend, so that what is solved from it does not depend on what was solved before.
/// </summary>
internal sealed class SaturationStart
{
    private const int Count = 6;

    // Of the mean critical temperature: colder or closer to the critical point a polynomial of this degree is no help.
    private const double Coldest = 0.58;
    private const double Warmest = 0.93;

    private readonly double[] _inverseTemperature = new double[Count];
    private readonly double[] _lnPressure = new double[Count];
    private readonly double[] _temperatureWeights;
    private readonly double[] _pressureWeights;
    private readonly double[][] _unknowns = new double[Count][];

    private SaturationStart(BlendSaturation solver, SaturationCurve curve, double meanCriticalTemperature)
    {
        for (var k = 0; k < Count; k++)
        {
            // Chebyshev's points keep the polynomial from swinging at the ends.
            var place = 0.5 * (1 - Math.Cos(Math.PI * k / (Count - 1)));
            var temperature = meanCriticalTemperature * (Coldest + ((Warmest - Coldest) * place));
            IsWhole &= solver.AtTemperature(curve, temperature);
            _inverseTemperature[k] = 1 / temperature;
            _lnPressure[k] = Math.Log(solver.Pressure);
            _unknowns[k] = solver.Unknowns.ToArray();
        }

        _temperatureWeights = Weights(_inverseTemperature);
        _pressureWeights = Weights(_lnPressure);
    }

    private bool IsWhole { get; } = true;

    /// <summary>The start of a curve; null where the blend has no such point at one of the temperatures.</summary>
    public static SaturationStart? Of(MixtureModel model, SaturationCurve curve)
    {
        SaturationStart start = new(new BlendSaturation(model), curve, model.MeanCriticalTemperature);
        return start.IsWhole ? start : null;
    }

    /// <summary>Sets the unknowns at a temperature; false outside the range.</summary>
    public bool AtTemperature(double temperature, Span<double> unknowns) => Interpolate(1 / temperature, _inverseTemperature, _temperatureWeights, unknowns);

    /// <summary>Sets the unknowns at a pressure; false outside the range.</summary>
    public bool AtPressure(double pressure, Span<double> unknowns) => Interpolate(Math.Log(pressure), _lnPressure, _pressureWeights, unknowns);

    private bool Interpolate(double x, double[] nodes, double[] weights, Span<double> unknowns)
    {
        if (!(Math.Min(nodes[0], nodes[^1]) <= x && x <= Math.Max(nodes[0], nodes[^1])))
            return false;
        unknowns.Clear();
        var sum = 0.0;
        for (var k = 0; k < Count; k++)
        {
            var away = x - nodes[k];
            if (away == 0)
            {
                _unknowns[k].CopyTo(unknowns);
                return true;
            }

            var share = weights[k] / away;
            sum += share;
            for (var i = 0; i < unknowns.Length; i++)
                unknowns[i] += share * _unknowns[k][i];
        }

        for (var i = 0; i < unknowns.Length; i++)
            unknowns[i] /= sum;
        return true;
    }

    private static double[] Weights(double[] nodes)
    {
        var weights = new double[Count];
        for (var k = 0; k < Count; k++)
        {
            var product = 1.0;
            for (var j = 0; j < Count; j++)
                product *= j == k ? 1 : nodes[k] - nodes[j];
            weights[k] = 1 / product;
        }

        return weights;
    }
}

/// <summary>The starts of a blend, made when first asked for and shared by all that solve it.</summary>
/// <param name="model">The blend.</param>
internal sealed class SaturationStarts(MixtureModel model)
{
    private readonly Lazy<SaturationStart?> _bubble = new(() => SaturationStart.Of(model, SaturationCurve.Bubble));
    private readonly Lazy<SaturationStart?> _dew = new(() => SaturationStart.Of(model, SaturationCurve.Dew));

    /// <summary>The start of a curve; null where there is none.</summary>
    public SaturationStart? Of(SaturationCurve curve) => (curve == SaturationCurve.Bubble ? _bubble : _dew).Value;
}
