using System.Collections.Concurrent;
using System.Collections.Immutable;
using Commission.Fluids.Helmholtz;
using Commission.Fluids.Mixtures;
using Commission.Fluids.Saturation;
using Commission.Messages;

namespace Commission.Fluids;

/// <summary>
/// The properties of one refrigerant from published equations of state; a blend by the multi-fluid Helmholtz model of its components.
/// SI doubles: K, Pa (absolute), kg/m³, J/kg. Thread-safe.
/// </summary>
public sealed partial class Refrigerant
{
    private static readonly ConcurrentDictionary<string, Lazy<Refrigerant>> Loaded = new(StringComparer.Ordinal);

    private readonly MixtureModel _model;
    private readonly Spare<FluidSolver> _solvers;

    private Refrigerant(RefrigerantInfo info, MixtureModel model)
    {
        Info = info;
        _model = model;
        SaturationStarts starts = new(model);
        _solvers = new Spare<FluidSolver>(() => new FluidSolver(model, starts));
    }

    /// <summary>Names, composition, safety, environment.</summary>
    public RefrigerantInfo Info { get; }

    /// <summary>True for a blend.</summary>
    public bool IsBlend => _model.Components.Length > 1;

    /// <summary>kg/mol.</summary>
    public double MolarMass => _model.MolarMass;

    /// <summary>
    /// J/(mol K): the equation's own constant; for a blend the mean of its components' constants weighted by mole fraction.
    /// </summary>
    public double GasConstant => _model.GasConstant;

    /// <summary>
    /// The lowest temperature asked of the equations, K: of a pure fluid its triple point or the lower limit of its equation. Of a blend
    /// the mean of its components' limits weighted by mole fraction, because a component that would be solid alone stays dissolved, but
    /// never below the limit of a component that makes up a fifth of the moles or more.
    /// </summary>
    public double LowestTemperature => Lowest.Kelvin;

    /// <summary><see cref="LowestTemperature"/> and the component whose equation ends there; null where it is the mean that decides.</summary>
    private (double Kelvin, string? Component) Lowest
    {
        get
        {
            double limit = 0, mean = 0;
            string? component = null;
            for (var i = 0; i < _model.Components.Length; i++)
            {
                var c = _model.Components[i];
                mean += _model.Composition[i] * c.LowestTemperature;
                if (_model.Composition[i] >= 0.2 && c.LowestTemperature > limit)
                    (limit, component) = (c.LowestTemperature, c.Designation);
            }
            return limit >= mean ? (limit, component) : (mean, null);
        }
    }

    /// <summary>The highest temperature of the equations, K: of a blend the lowest of its components' limits.</summary>
    public double HighestTemperature => _model.Components.Min(c => c.HighestTemperature);

    /// <summary>The highest pressure of the equations, Pa: of a blend the lowest of its components' limits.</summary>
    public double HighestPressure => _model.Components.Min(c => c.HighestPressure);

    /// <summary>Every paper an equation or a parameter was taken from, each once.</summary>
    public ImmutableArray<Paper> Papers =>
        [.. _model.Components.SelectMany(c => c.Papers).Concat(_model.Pairs.SelectMany(p => p.Papers)).DistinctBy(p => p.Key)];

    /// <summary>
    /// Pairs of components without published parameters and what stands in: "R-22 + R-124: Lorentz–Berthelot" (β = γ = 1 in the reduced
    /// form of Kunz and Wagner 2012, no departure function), or for a hydrocarbon or perfluorocarbon, where that rule fails, "R-134a +
    /// R-601a: parameters of R-134a + R-600a". Empty when every pair has its own.
    /// </summary>
    public ImmutableArray<string> EstimatedPairs =>
        [.. _model.Pairs.Where(p => p.Estimate is not null).Select(p => _model.Components[p.A].Designation + " + " + _model.Components[p.B].Designation + ": " + p.Estimate)];

    /// <summary>The rules by which <see cref="EstimatedPairs"/> were estimated, each once.</summary>
    public ImmutableArray<CombiningRule> CombiningRules => [.. _model.Pairs.Select(p => p.Rule).OfType<CombiningRule>().Distinct().Order()];

    /// <summary>What the estimated pairs may cost in saturation pressure, judged by listed sisters; null when every pair is published.</summary>
    public EstimateDeviation? EstimateDeviation => EstimateFile.Worst(_model);

    /// <summary>A refrigerant with its equations, read once and then shared, with its expansions.</summary>
    /// <param name="designation">A designation or alias that <see cref="RefrigerantCatalogue.Find"/> knows.</param>
    /// <exception cref="ArgumentException">The name is unknown or the refrigerant is not computable: ask the catalogue first.</exception>
    public static Refrigerant Load(string designation)
    {
        var info = RefrigerantCatalogue.Find(designation)
            ?? throw new ArgumentException($"'{designation}' is not a refrigerant of the catalogue.", nameof(designation));
        if (info.LacksEquationOf is not null)
            throw new ArgumentException($"{info.Designation}: {info.LacksEquationOf}", nameof(designation));
        return Loaded.GetOrAdd(info.Designation, static (_, found) => new Lazy<Refrigerant>(() => Read(found)), info).Value;
    }

    /// <summary>Reads the equations anew.</summary>
    internal static Refrigerant Read(RefrigerantInfo info)
    {
        var components = new string[info.Composition.Length];
        var shares = new double[components.Length];
        for (var i = 0; i < components.Length; i++)
        {
            components[i] = info.Composition[i].Designation;
            shares[i] = info.Composition[i].MassFraction;
        }
        return new Refrigerant(info, MixtureModel.Load(components, shares));
    }

    /// <summary>The bubble point (pure fluid: saturation) at a temperature.</summary>
    /// <param name="kelvin">K.</param>
    public FluidResult<SaturationState> BubbleAtTemperature(double kelvin) => AtTemperature(SaturationCurve.Bubble, kelvin);

    /// <summary>The dew point (pure fluid: saturation) at a temperature.</summary>
    /// <param name="kelvin">K.</param>
    public FluidResult<SaturationState> DewAtTemperature(double kelvin) => AtTemperature(SaturationCurve.Dew, kelvin);

    /// <summary>The bubble point (pure fluid: saturation) at a pressure.</summary>
    /// <param name="pascals">Pa absolute.</param>
    public FluidResult<SaturationState> BubbleAtPressure(double pascals) => AtPressure(SaturationCurve.Bubble, pascals);

    /// <summary>The dew point (pure fluid: saturation) at a pressure.</summary>
    /// <param name="pascals">Pa absolute.</param>
    public FluidResult<SaturationState> DewAtPressure(double pascals) => AtPressure(SaturationCurve.Dew, pascals);

    private FluidResult<SaturationState> AtTemperature(SaturationCurve curve, double kelvin)
    {
        if (Outside(kelvin, curve) is { } reason)
            return FluidResult<SaturationState>.None(reason);

        var solver = _solvers.Rent();
        try
        {
            return solver.SaturationAtTemperature(curve, kelvin)
                ? Answer(solver, curve)
                : FluidResult<SaturationState>.None(FluidsMessages.NoneAtTemperature(new(Info.Designation), Name(curve), FluidText.Celsius(kelvin), Why(solver, kelvin)));
        }
        finally
        {
            _solvers.Return(solver);
        }
    }

    private FluidResult<SaturationState> AtPressure(SaturationCurve curve, double pascals)
    {
        if (!(pascals > 0) || !double.IsFinite(pascals))
            return FluidResult<SaturationState>.None(FluidsMessages.NotAboveZero(new(Info.Designation), FluidText.Kilopascals(pascals)));
        if (!IsBlend && pascals >= TopPressure)
            return FluidResult<SaturationState>.None(FluidsMessages.TranscriticalPressure(new(Info.Designation), FluidText.Kilopascals(pascals), FluidText.Kilopascals(TopPressure)));
        var solver = _solvers.Rent();
        try
        {
            if (!solver.SaturationAtPressure(curve, pascals))
                return FluidResult<SaturationState>.None(FluidsMessages.NoneAtPressure(new(Info.Designation), Name(curve), FluidText.Kilopascals(pascals), WhyAtPressure(solver, pascals)));
            if (Outside(solver.Temperature) is not { } reason)
                return Answer(solver, curve);
            var critical = CriticalPoint;
            return FluidResult<SaturationState>.None(curve == SaturationCurve.Dew && IsBlend && critical.Ok && solver.Temperature >= critical.Value.Temperature
                ? FluidsMessages.AboveCritical(new(Info.Designation), Name(curve), FluidText.Kilopascals(pascals), FluidText.Celsius(critical.Value.Temperature))
                : FluidsMessages.OutsideEquations(Name(curve), FluidText.Kilopascals(pascals), reason));
        }
        finally
        {
            _solvers.Return(solver);
        }
    }

    /// <summary>The solution, unless its liquid would rather be two.</summary>
    private FluidResult<SaturationState> Answer(FluidSolver solver, SaturationCurve curve) =>
        curve == SaturationCurve.Bubble && IsBlend && solver.Temperature < 0.72 * _model.ReducingTemperature && solver.Temperature < LiquidSplitTemperature(solver.Temperature)
            ? FluidResult<SaturationState>.None(FluidsMessages.NotAnswered(new(Info.Designation), Name(curve), FluidText.Celsius(solver.Temperature), SplitReason(solver.Temperature)))
            : FluidResult<SaturationState>.Of(State(solver, curve));

    private Message SplitReason(double kelvin) => LiquidSplitTemperature(kelvin) is > 0 and var limit ? FluidsMessages.SplitsBelow(FluidText.Celsius(limit)) : FluidsMessages.Splits;

    private SaturationState State(FluidSolver solver, SaturationCurve curve)
    {
        var raw = solver.State(curve);
        var offset = Offset;
        return raw with
        {
            LiquidEnthalpy = raw.LiquidEnthalpy + offset.Enthalpy,
            VaporEnthalpy = raw.VaporEnthalpy + offset.Enthalpy,
            LiquidEntropy = raw.LiquidEntropy + offset.Entropy,
            VaporEntropy = raw.VaporEntropy + offset.Entropy,
        };
    }

    private Message? Outside(double kelvin, SaturationCurve curve = SaturationCurve.Bubble)
    {
        if (!double.IsFinite(kelvin) || kelvin < LowestTemperature)
        {
            SymbolsValue asked = FluidText.Celsius(kelvin), limit = FluidText.Celsius(LowestTemperature);
            return !IsBlend ? FluidsMessages.BelowEquation(new(Info.Designation), asked, limit)
                : Lowest.Component is { } component ? FluidsMessages.BelowComponent(new(Info.Designation), asked, limit, new(component))
                : FluidsMessages.BelowBlend(new(Info.Designation), asked, limit);
        }

        var top = TopTemperature(kelvin);
        if (!(kelvin >= top))
            return null;
        return curve == SaturationCurve.Dew && IsBlend
            ? FluidsMessages.RetrogradeTemperature(new(Info.Designation), FluidText.Celsius(kelvin), FluidText.Celsius(top))
            : FluidsMessages.TranscriticalTemperature(new(Info.Designation), FluidText.Celsius(kelvin), FluidText.Celsius(top));
    }

    /// <summary>
    /// The critical temperature; of a blend it is worked out only when the temperature comes near the mean of its components', because
    /// that takes longer than the saturation point itself.
    /// </summary>
    private double TopTemperature(double kelvin)
    {
        if (!IsBlend)
            return _model.Components[0].CriticalTemperature;
        var mean = 0.0;
        for (var i = 0; i < _model.Components.Length; i++)
            mean += _model.Composition[i] * _model.Components[i].CriticalTemperature;
        return kelvin > 0.85 * mean && CriticalPoint is { Ok: true } c ? c.Value.Temperature : double.PositiveInfinity;
    }

    private Message Why(FluidSolver solver, double kelvin) =>
        solver.LiquidSplits ? SplitReason(kelvin)
        : CriticalPoint is { Ok: true } c && kelvin > 0.95 * c.Value.Temperature
        ? FluidsMessages.TooNearTemperature(FluidText.Celsius(c.Value.Temperature))
        : FluidsMessages.NoPair;

    private Message WhyAtPressure(FluidSolver solver, double pascals) =>
        CriticalPoint is { Ok: true } c && pascals > 0.95 * c.Value.Pressure
            ? FluidsMessages.TooNearPressure(FluidText.Kilopascals(c.Value.Pressure))
        : solver.LiquidSplits ? SplitReason(LowestTemperature)
        : FluidsMessages.PressureOutside(FluidText.Celsius(LowestTemperature));

    private static Message Name(SaturationCurve curve) => FluidsMessages.Curve(curve == SaturationCurve.Bubble ? FluidsMessages.CurveCurve.Bubble : FluidsMessages.CurveCurve.Dew);
}

/// <summary>Keeps one work space for the next calculation. Two at a time get one each, so that a result never depends on who else calculates.</summary>
/// <param name="make">Makes a work space when none is at hand.</param>
internal sealed class Spare<T>(Func<T> make)
    where T : class
{
    private T? _kept;

    public T Rent() => Interlocked.Exchange(ref _kept, null) ?? make();

    public void Return(T work) => Volatile.Write(ref _kept, work);
}
