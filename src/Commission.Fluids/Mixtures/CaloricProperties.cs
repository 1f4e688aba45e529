using Commission.Fluids.Helmholtz;

namespace Commission.Fluids.Mixtures;

/// <summary>Caloric properties of an evaluated phase, molar, on the equations' own zero of enthalpy and entropy.</summary>
internal readonly struct CaloricProperties
{
    private CaloricProperties(double enthalpy, double entropy, double cv, double cp, double speedOfSound)
    {
        Enthalpy = enthalpy;
        Entropy = entropy;
        Cv = cv;
        Cp = cp;
        SpeedOfSound = speedOfSound;
    }

    /// <summary>J/mol.</summary>
    public double Enthalpy { get; }

    /// <summary>J/(mol K).</summary>
    public double Entropy { get; }

    /// <summary>J/(mol K).</summary>
    public double Cv { get; }

    /// <summary>J/(mol K).</summary>
    public double Cp { get; }

    /// <summary>m/s.</summary>
    public double SpeedOfSound { get; }

    /// <summary>After <see cref="MixturePhase.Evaluate"/> (Kunz and Wagner 2012, table 5).</summary>
    public static CaloricProperties Of(MixturePhase phase)
    {
        MixtureModel model = phase.Model;
        double r = model.GasConstant, t = phase.Temperature;
        double a0 = 0, t0 = 0, tt0 = 0, mass = 0;
        for (int i = 0; i < model.Components.Length; i++)
        {
            EquationOfState eos = model.Components[i];
            double x = phase.X[i];
            IdealDerivatives ideal = eos.IdealAt(t);
            a0 += x * (ideal.A + Math.Log(x * phase.Density / eos.ReducingDensity));
            t0 += x * ideal.T;
            tt0 += x * ideal.TT;
            mass += x * eos.MolarMass;
        }
        ResidualDerivatives res = phase.Total;
        double stiffness = 1 + 2 * res.D + res.DD;
        double thermal = 1 + res.D - res.DT;
        double cv = -(tt0 + res.TT);
        return new CaloricProperties(
            r * t * (1 + t0 + res.T + res.D),
            r * (t0 + res.T - a0 - res.A),
            r * cv,
            r * (cv + thermal * thermal / stiffness),
            Math.Sqrt(r * t / mass * (stiffness + thermal * thermal / cv)));
    }
}
