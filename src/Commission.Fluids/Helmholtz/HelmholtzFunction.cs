namespace Commission.Fluids.Helmholtz;

/// <summary>A residual Helmholtz energy (or a departure function): the sum of its kinds of terms.</summary>
internal sealed class HelmholtzFunction
{
    private readonly ResidualTerms[] _kinds;

    public HelmholtzFunction(ResidualTerms[] kinds)
    {
        _kinds = kinds;
        foreach (var kind in kinds)
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
        var at = 0;
        foreach (var kind in _kinds)
        {
            kind.Prepare(tau, lnTau, work.AsSpan(at, kind.WorkLength));
            at += kind.WorkLength;
        }
    }

    public void Evaluate(DensityTable table, double tau, double[] work, out ResidualDerivatives result)
    {
        result = default;
        var at = 0;
        foreach (var kind in _kinds)
        {
            kind.Add(table, tau, work.AsSpan(at, kind.WorkLength), ref result);
            at += kind.WorkLength;
        }
    }

    public void EvaluateVolume(DensityTable table, double tau, double[] work, out ResidualDerivatives result)
    {
        result = default;
        var at = 0;
        foreach (var kind in _kinds)
        {
            kind.AddVolume(table, tau, work.AsSpan(at, kind.WorkLength), ref result);
            at += kind.WorkLength;
        }
    }
}

/// <summary>
/// All terms of one kind of a residual Helmholtz energy. The part that depends on temperature is prepared once a temperature into
/// a work array (layout: one run of a number for each term per quantity), so that a density iteration pays only for δ.
/// </summary>
internal abstract class ResidualTerms
{
    /// <summary>Doubles of work space the kind needs.</summary>
    public abstract int WorkLength { get; }

    /// <summary>Bit l set for every exp(−δ^l) the kind reads from the table.</summary>
    public virtual int DecayMask => 0;

    /// <summary>Computes what depends on τ alone.</summary>
    public abstract void Prepare(double tau, double lnTau, Span<double> work);

    /// <summary>Adds the value and all first and second derivatives.</summary>
    public abstract void Add(DensityTable table, double tau, ReadOnlySpan<double> work, ref ResidualDerivatives sum);

    /// <summary>Adds the value and the density derivatives only (A, D, DD).</summary>
    public abstract void AddVolume(DensityTable table, double tau, ReadOnlySpan<double> work, ref ResidualDerivatives sum);
}

/// <summary>
/// A reduced Helmholtz energy and its derivatives in scaled form: <c>D</c> = δ ∂α/∂δ, <c>T</c> = τ ∂α/∂τ,
/// <c>DD</c> = δ² ∂²α/∂δ², <c>DT</c> = δτ ∂²α/∂δ∂τ, <c>TT</c> = τ² ∂²α/∂τ².
/// </summary>
internal struct ResidualDerivatives
{
    public double A;
    public double D;
    public double T;
    public double DD;
    public double DT;
    public double TT;

    public void AddScaled(in ResidualDerivatives other, double factor)
    {
        A += factor * other.A;
        D += factor * other.D;
        T += factor * other.T;
        DD += factor * other.DD;
        DT += factor * other.DT;
        TT += factor * other.TT;
    }
}

/// <summary>
/// Everything that depends on the reduced density alone and that many terms share: δ^d for d = 0…15 and exp(−δ^l) for l = 1…8.
/// In a mixture all components and departure functions see the same δ, so the table is filled once a state.
/// </summary>
internal sealed class DensityTable
{
    public const int Powers = 17;
    public const int Decays = 9;

    public readonly double[] Power = new double[Powers];
    public readonly double[] Decay = new double[Decays];

    public double Delta { get; private set; }

    /// <summary>Fills the table; <paramref name="decayMask"/> has bit l set for every l in use.</summary>
    public void Fill(double delta, int decayMask)
    {
        Delta = delta;
        var power = Power;
        power[0] = 1;
        for (var i = 1; i < power.Length; i++)
            power[i] = power[i - 1] * delta;
        var decay = Decay;
        decay[0] = 1;
        for (var l = 1; l < decay.Length; l++)
        {
            if ((decayMask & (1 << l)) != 0)
                decay[l] = Math.Exp(-power[l]);
        }
    }
}
