namespace Commission.Fluids.Helmholtz;

/// <summary>One kind of term of an ideal-gas Helmholtz energy.</summary>
internal abstract class IdealTerms
{
    /// <summary>Adds the value and derivatives at the reciprocal reduced temperature τ.</summary>
    public abstract void Add(double tau, ref IdealDerivatives sum);
}
