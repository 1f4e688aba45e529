using System.Runtime.InteropServices;
using Commission.Fluids.Saturation;
using Commission.Messages;

namespace Commission.Fluids;

/// <content>Reference state of enthalpy and entropy, critical point.</content>
public sealed partial class Refrigerant
{
    private readonly Lock _once = new();
    private readonly Dictionary<int, double> _liquidSplits = [];
    private ReferenceOffset? _offset;
    private FluidResult<CriticalPoint>? _critical;
    private double _topPressure;
    private FastSaturation? _fast;

    /// <summary>Expansions of the saturation curves for whoever asks often: logs, drawn errors, pages that compute while somebody types.</summary>
    public FastSaturation Fast
    {
        get
        {
            if (_fast is { } made)
                return made;
            Interlocked.CompareExchange(ref _fast, new FastSaturation(this), null);
            return _fast;
        }
    }

    /// <summary>
    /// The zero of enthalpy and entropy in words. IIR: h = 200 kJ/kg and s = 1 kJ/(kg K) for saturated liquid (bubble point) at 0 °C where
    /// that state exists; otherwise the equation's own zero. Differences do not depend on it.
    /// </summary>
    public Message ReferenceState => Offset.IsIir ? FluidsMessages.IirReference : FluidsMessages.EquationReference;

    /// <summary>
    /// The critical point: of a pure fluid as published with its equation, of a blend computed from its model by the criteria of
    /// Heidemann and Khalil, AIChE J. 26 (1980) 769.
    /// </summary>
    public FluidResult<CriticalPoint> CriticalPoint
    {
        get
        {
            lock (_once)
            {
                return _critical ??= FindCriticalPoint();
            }
        }
    }

    /// <summary>
    /// Computed bubble and dew temperature at 101.325 kPa minus the listed ones of <see cref="RefrigerantInfo.ListedBoilingRange"/>, as an
    /// outside measure of the model's uncertainty.
    /// </summary>
    public FluidResult<BoilingRangeDifference> CompareWithListedBoilingRange()
    {
        if (Info.ListedBoilingRange is not { } listed)
            return FluidResult<BoilingRangeDifference>.None(FluidsMessages.NoListedRange(new(Info.Designation)));
        const double standardAtmosphere = 101_325;
        FluidResult<SaturationState> bubble = BubbleAtPressure(standardAtmosphere), dew = DewAtPressure(standardAtmosphere);
        if (!bubble.Ok || !dew.Ok)
            return FluidResult<BoilingRangeDifference>.None(bubble.Reason ?? dew.Reason!);
        return FluidResult<BoilingRangeDifference>.Of(new BoilingRangeDifference(bubble.Value.Temperature - listed.Bubble, dew.Value.Temperature - listed.Dew));
    }

    /// <summary>
    /// The pressure at which saturation of a pure fluid ends: the published critical pressure, or the equation's own pressure at the
    /// critical temperature and density where that is higher (older equations miss their critical point by up to 0.7 %).
    /// </summary>
    private double TopPressure
    {
        get
        {
            if (_topPressure == 0)
            {
                var c = _model.Components[0];
                var solver = _solvers.Rent();
                solver.Single.SetTemperature(c.CriticalTemperature);
                solver.Single.EvaluateVolume(c.CriticalDensity);
                _topPressure = Math.Max(c.CriticalPressure, solver.Single.Pressure);
                _solvers.Return(solver);
            }
            return _topPressure;
        }
    }

    /// <summary>
    /// The temperature below which the bubble liquid of a blend would split into two liquids, as far as it matters at a temperature, K; 0 where it does not.
    /// Tested at the lower end of its stretch of 20 K and followed upward from there, so that ordinary temperatures cost one test and the
    /// answer does not depend on what was asked before.
    /// </summary>
    internal double LiquidSplitTemperature(double kelvin)
    {
        const double stretch = 20;
        var cell = (int)(kelvin / stretch);
        lock (_once)
        {
            if (!_liquidSplits.TryGetValue(cell, out var limit))
            {
                limit = new LiquidSplit(_model).Limit(Math.Max(LowestTemperature, cell * stretch));
                _liquidSplits.Add(cell, limit);
            }
            return limit;
        }
    }

    internal ReferenceOffset Offset
    {
        get
        {
            lock (_once)
            {
                return _offset ??= FindOffset();
            }
        }
    }

    private ReferenceOffset FindOffset()
    {
        const double iceFreezing = 273.15;
        if (LowestTemperature < iceFreezing)
        {
            var solver = _solvers.Rent();
            var found = (IsBlend || iceFreezing < _model.Components[0].CriticalTemperature) && solver.SaturationAtTemperature(SaturationCurve.Bubble, iceFreezing);
            var offset = default(ReferenceOffset);
            if (found)
            {
                var state = solver.State(SaturationCurve.Bubble);
                offset = new ReferenceOffset(true, 200_000 - state.LiquidEnthalpy, 1000 - state.LiquidEntropy);
            }
            _solvers.Return(solver);
            return offset;
        }
        return default;
    }

    private FluidResult<CriticalPoint> FindCriticalPoint()
    {
        if (!IsBlend)
        {
            var c = _model.Components[0];
            return FluidResult<CriticalPoint>.Of(new CriticalPoint(c.CriticalTemperature, c.CriticalPressure, c.CriticalDensity * c.MolarMass));
        }
        return new BlendCriticalPoint(_model).Find() is { } found
            ? FluidResult<CriticalPoint>.Of(found)
            : FluidResult<CriticalPoint>.None(FluidsMessages.NoCriticalPoint(new(Info.Designation)));
    }
}

/// <summary>What is added to enthalpy (J/kg) and entropy (J/(kg K)) of the equations.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct ReferenceOffset(bool IsIir, double Enthalpy, double Entropy);

/// <summary>Computed minus listed temperatures at 101.325 kPa: what the model and the list (often older) differ by.</summary>
/// <param name="Bubble">K.</param>
/// <param name="Dew">K.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct BoilingRangeDifference(double Bubble, double Dew);
