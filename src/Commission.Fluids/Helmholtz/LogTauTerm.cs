namespace Commission.Fluids.Helmholtz;

/// <summary>a ln τ.</summary>
internal sealed class LogTauTerm(double a) : IdealTerms
{
    public override void Add(double tau, ref IdealDerivatives sum)
    {
        sum.A += a * Math.Log(tau);
        sum.T += a;
        sum.TT -= a;
    }
}
