using Commission.Fluids.Data;
using Commission.Fluids.Helmholtz;

namespace Commission.Fluids.Mixtures;

/// <summary>
/// The multi-fluid Helmholtz model of Kunz and Wagner 2012 (eqs. 7–17): αr = Σ x_i αr_i(δ, τ) + Σ Σ x_i x_j F_ij αr_ij(δ, τ) with the
/// reducing functions T_r(x), v_r(x). A pure fluid is the model with one component.
/// </summary>
internal sealed class MixtureModel
{
    public MixtureModel(EquationOfState[] components, BinaryPair[] pairs, double[] composition)
    {
        Components = components;
        Pairs = pairs;
        Composition = composition;
        var mask = 0;
        for (var i = 0; i < components.Length; i++)
        {
            mask |= components[i].Residual.DecayMask;
            GasConstant += composition[i] * components[i].GasConstant;
            MolarMass += composition[i] * components[i].MolarMass;
            MeanCriticalTemperature += composition[i] * components[i].CriticalTemperature;
        }
        CrossTemperature = new double[pairs.Length];
        CrossVolume = new double[pairs.Length];
        for (var k = 0; k < pairs.Length; k++)
        {
            var pair = pairs[k];
            EquationOfState a = components[pair.A], b = components[pair.B];
            CrossTemperature[k] = 2 * pair.BetaT * pair.GammaT * Math.Sqrt(a.ReducingTemperature * b.ReducingTemperature);
            var sum = Math.Cbrt(1 / a.ReducingDensity) + Math.Cbrt(1 / b.ReducingDensity);
            CrossVolume[k] = 2 * pair.BetaV * pair.GammaV * 0.125 * sum * sum * sum;
            if (pair.Departure is not null)
                mask |= pair.Departure.DecayMask;
        }
        DecayMask = mask;
        ReducingState reducing = new(components.Length);
        reducing.Set(composition, [.. components.Select(c => c.ReducingTemperature)], pairs, CrossTemperature, temperature: true);
        ReducingTemperature = reducing.Value;
    }

    public EquationOfState[] Components { get; }

    public BinaryPair[] Pairs { get; }

    /// <summary>Mole fractions of the blend as designated.</summary>
    public double[] Composition { get; }

    /// <summary>
    /// J/(mol K). The equations carry gas constants between 8.31434 and 8.314472; a blend uses the mean of its components' own
    /// constants, weighted by the mole fractions of the blend as designated and the same in both phases: each pure limit is then
    /// exactly its own equation, and one constant in both phases keeps equilibrium consistent.
    /// </summary>
    public double GasConstant { get; }

    /// <summary>kg/mol of the blend as designated.</summary>
    public double MolarMass { get; }

    /// <summary>Reducing temperature of the blend as designated, K.</summary>
    public double ReducingTemperature { get; }

    /// <summary>Critical temperatures of the components, weighted by mole fraction, K: a scale, not the blend's own critical temperature.</summary>
    public double MeanCriticalTemperature { get; }

    public int DecayMask { get; }

    /// <summary>2 βT γT √(Ta Tb) of each pair.</summary>
    public double[] CrossTemperature { get; }

    /// <summary>2 βv γv (va^⅓ + vb^⅓)³/8 of each pair.</summary>
    public double[] CrossVolume { get; }

    /// <summary>Loads the equations and pairs of the components and turns mass fractions into mole fractions.</summary>
    public static MixtureModel Load(string[] components, double[] massFractions)
    {
        var equations = new EquationOfState[components.Length];
        var x = new double[components.Length];
        var sum = 0.0;
        for (var i = 0; i < equations.Length; i++)
        {
            equations[i] = FluidFile.Load(components[i]);
            x[i] = massFractions[i] / equations[i].MolarMass;
            sum += x[i];
        }
        for (var i = 0; i < x.Length; i++)
            x[i] /= sum;
        return new MixtureModel(equations, equations.Length == 1 ? [] : MixtureFiles.Load(components), x);
    }
}

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
        var value = 0.0;
        Array.Clear(_second);
        for (var i = 0; i < count; i++)
        {
            value += x[i] * x[i] * pure[i];
            _first[i] = 2 * x[i] * pure[i];
            _second[i * count + i] = 2 * pure[i];
        }
        for (var k = 0; k < pairs.Length; k++)
        {
            var pair = pairs[k];
            int i = pair.A, j = pair.B;
            var beta = temperature ? pair.BetaT : pair.BetaV;
            double b = beta * beta, c = cross[k], xi = x[i], xj = x[j];
            var d = 1 / (b * xi + xj);
            double n = xi * xj * (xi + xj), ni = xj * (2 * xi + xj), nj = xi * (xi + 2 * xj);
            value += c * n * d;
            _first[i] += c * d * (ni - n * b * d);
            _first[j] += c * d * (nj - n * d);
            _second[i * count + i] += c * d * (2 * xj - 2 * d * b * (ni - n * b * d));
            _second[j * count + j] += c * d * (2 * xi - 2 * d * (nj - n * d));
            var mixed = c * d * (2 * (xi + xj) - d * (ni + nj * b) + 2 * n * b * d * d);
            _second[i * count + j] += mixed;
            _second[j * count + i] += mixed;
        }
        Value = value;

        double sum = 0, all = 0;
        for (var i = 0; i < count; i++)
        {
            sum += x[i] * _first[i];
            var row = 0.0;
            for (var m = 0; m < count; m++)
                row += x[m] * _second[i * count + m];
            _row[i] = row;
            all += x[i] * row;
        }
        for (var i = 0; i < count; i++)
            G[i] = _first[i] - sum;
        for (var i = 0; i < count; i++)
        {
            for (var j = 0; j < count; j++)
                H[i * count + j] = _second[i * count + j] - _row[i] - _row[j] + all - G[j];
        }
    }
}
