namespace Commission.Fluids.Helmholtz;

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
