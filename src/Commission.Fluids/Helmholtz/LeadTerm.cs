namespace Commission.Fluids.Helmholtz;

/// <summary>ln δ + a1 + a2 τ; ln δ is added by <see cref="EquationOfState"/>. Also carries an offset of enthalpy and entropy, which has the same form.</summary>
internal sealed class LeadTerm(double a1, double a2) : IdealTerms
{
    public override void Add(double tau, ref IdealDerivatives sum)
    {
        sum.A += a1 + a2 * tau;
        sum.T += a2 * tau;
    }
}
