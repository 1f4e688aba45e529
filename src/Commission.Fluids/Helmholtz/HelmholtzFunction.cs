namespace Commission.Fluids.Helmholtz;

/// <summary>A residual Helmholtz energy (or a departure function): the sum of its kinds of terms.</summary>
internal sealed class HelmholtzFunction
{
    private readonly ResidualTerms[] _kinds;

    public HelmholtzFunction(ResidualTerms[] kinds)
    {
        _kinds = kinds;
        foreach (ResidualTerms kind in kinds)
        {
            WorkLength += kind.WorkLength;
            DecayMask |= kind.DecayMask;
        }
    }

    /// <summary>Doubles of work space an isotherm needs.</summary>
    public int WorkLength { get; }

    /// <summary>Bit l set for every exp(−δ^l) in use.</summary>
    public int DecayMask { get; }

    public void Prepare(double tau, double lnTau, double[] work)
    {
        int at = 0;
        foreach (ResidualTerms kind in _kinds)
        {
            kind.Prepare(tau, lnTau, work.AsSpan(at, kind.WorkLength));
            at += kind.WorkLength;
        }
    }

    public void Evaluate(DensityTable table, double tau, double[] work, out ResidualDerivatives result)
    {
        result = default;
        int at = 0;
        foreach (ResidualTerms kind in _kinds)
        {
            kind.Add(table, tau, work.AsSpan(at, kind.WorkLength), ref result);
            at += kind.WorkLength;
        }
    }

    public void EvaluateVolume(DensityTable table, double tau, double[] work, out ResidualDerivatives result)
    {
        result = default;
        int at = 0;
        foreach (ResidualTerms kind in _kinds)
        {
            kind.AddVolume(table, tau, work.AsSpan(at, kind.WorkLength), ref result);
            at += kind.WorkLength;
        }
    }
}
