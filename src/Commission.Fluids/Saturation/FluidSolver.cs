using Commission.Fluids.Mixtures;

namespace Commission.Fluids.Saturation;

/// <summary>The work space of one calculation on one refrigerant: saturation and single phases. Not thread-safe; rented from <see cref="Refrigerant"/>.</summary>
internal sealed partial class FluidSolver
{
    private readonly MixtureModel _model;
    private readonly PureSaturation? _pure;
    private readonly BlendSaturation? _blend;
    private readonly MixturePhase _liquid;
    private readonly MixturePhase _vapor;

    public FluidSolver(MixtureModel model)
    {
        _model = model;
        if (model.Components.Length == 1)
        {
            _pure = new PureSaturation(model.Components[0]);
            _liquid = new MixturePhase(model);
            _vapor = new MixturePhase(model);
            _liquid.SetComposition(model.Composition);
            _vapor.SetComposition(model.Composition);
        }
        else
        {
            _blend = new BlendSaturation(model);
            _liquid = _blend.Liquid;
            _vapor = _blend.Vapor;
        }
    }

    public double Temperature => _pure?.Temperature ?? _blend!.Temperature;

    public double Pressure => _pure?.Pressure ?? _blend!.Pressure;

    /// <summary>True when a search failed because the liquid of designated composition would split in two liquids.</summary>
    public bool LiquidSplits => _blend?.LiquidSplits ?? false;

    public double Slope => _pure?.Slope ?? _blend!.Slope;

    public bool SaturationAtTemperature(SaturationCurve curve, double temperature)
    {
        if (_pure is not null)
            return _pure.AtTemperature(temperature);
        SetFixed(curve);
        return _blend!.AtTemperature(curve, temperature);
    }

    public bool SaturationAtPressure(SaturationCurve curve, double pressure)
    {
        if (_pure is not null)
            return _pure.AtPressure(pressure);
        SetFixed(curve);
        return _blend!.AtPressure(curve, pressure);
    }

    /// <summary>The last saturation solution with enthalpy and entropy on the equations' own zero.</summary>
    public SaturationState State(SaturationCurve curve)
    {
        if (_pure is not null)
        {
            _liquid.SetTemperature(_pure.Temperature);
            _liquid.Evaluate(_pure.Liquid);
            _vapor.SetTemperature(_pure.Temperature);
            _vapor.Evaluate(_pure.Vapor);
        }
        CaloricProperties liquid = CaloricProperties.Of(_liquid), vapor = CaloricProperties.Of(_vapor);
        double liquidMass = MolarMass(_liquid), vaporMass = MolarMass(_vapor);
        return new SaturationState(
            Temperature,
            Pressure,
            _liquid.Density * liquidMass,
            _vapor.Density * vaporMass,
            liquid.Enthalpy / liquidMass,
            vapor.Enthalpy / vaporMass,
            liquid.Entropy / liquidMass,
            vapor.Entropy / vaporMass,
            Slope);
    }

    /// <summary>Compositions of liquid and vapour and the liquid's molar density of the last saturation solution.</summary>
    public (double[] Liquid, double[] Vapor, double LiquidDensity) Phases() => (_liquid.X.ToArray(), _vapor.X.ToArray(), _liquid.Density);

    private void SetFixed(SaturationCurve curve) =>
        (curve == SaturationCurve.Bubble ? _liquid : _vapor).SetComposition(_model.Composition);

    private double MolarMass(MixturePhase phase)
    {
        double sum = 0;
        for (int i = 0; i < _model.Components.Length; i++)
            sum += phase.X[i] * _model.Components[i].MolarMass;
        return sum;
    }
}
