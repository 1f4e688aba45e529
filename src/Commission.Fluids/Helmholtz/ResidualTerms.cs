namespace Commission.Fluids.Helmholtz;

/// <summary>
/// All terms of one kind of a residual Helmholtz energy. The part that depends on temperature is prepared once a temperature into
/// a work array (layout: one run of <see cref="Count"/> numbers per quantity), so that a density iteration pays only for δ.
/// </summary>
internal abstract class ResidualTerms
{
    /// <summary>Number of terms.</summary>
    public abstract int Count { get; }

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
