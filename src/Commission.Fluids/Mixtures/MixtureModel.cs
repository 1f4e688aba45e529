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
        int mask = 0;
        for (int i = 0; i < components.Length; i++)
        {
            mask |= components[i].Residual.DecayMask;
            GasConstant += composition[i] * components[i].GasConstant;
            MolarMass += composition[i] * components[i].MolarMass;
        }
        CrossTemperature = new double[pairs.Length];
        CrossVolume = new double[pairs.Length];
        for (int k = 0; k < pairs.Length; k++)
        {
            BinaryPair pair = pairs[k];
            EquationOfState a = components[pair.A], b = components[pair.B];
            CrossTemperature[k] = 2 * pair.BetaT * pair.GammaT * Math.Sqrt(a.ReducingTemperature * b.ReducingTemperature);
            double sum = Math.Cbrt(1 / a.ReducingDensity) + Math.Cbrt(1 / b.ReducingDensity);
            CrossVolume[k] = 2 * pair.BetaV * pair.GammaV * 0.125 * sum * sum * sum;
            if (pair.Departure is not null)
                mask |= pair.Departure.DecayMask;
        }
        DecayMask = mask;
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

    public int DecayMask { get; }

    /// <summary>2 βT γT √(Ta Tb) of each pair.</summary>
    public double[] CrossTemperature { get; }

    /// <summary>2 βv γv (va^⅓ + vb^⅓)³/8 of each pair.</summary>
    public double[] CrossVolume { get; }

    /// <summary>Loads the equations and pairs of the components and turns mass fractions into mole fractions.</summary>
    public static MixtureModel Load(string[] components, double[] massFractions) => Load(components, massFractions, byMass: true);

    /// <summary>Loads the equations and pairs of the components with mole fractions.</summary>
    public static MixtureModel LoadMolar(string[] components, double[] moleFractions) => Load(components, moleFractions, byMass: false);

    private static MixtureModel Load(string[] components, double[] fractions, bool byMass)
    {
        EquationOfState[] equations = new EquationOfState[components.Length];
        double[] x = new double[components.Length];
        double sum = 0;
        for (int i = 0; i < equations.Length; i++)
        {
            equations[i] = FluidFile.Load(components[i]);
            x[i] = byMass ? fractions[i] / equations[i].MolarMass : fractions[i];
            sum += x[i];
        }
        for (int i = 0; i < x.Length; i++)
            x[i] /= sum;
        return new MixtureModel(equations, equations.Length == 1 ? [] : MixtureFiles.Load(components), x);
    }
}
