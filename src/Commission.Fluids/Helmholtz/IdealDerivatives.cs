namespace Commission.Fluids.Helmholtz;

/// <summary>The ideal-gas reduced Helmholtz energy without ln δ, and its derivatives: <c>T</c> = τ ∂α0/∂τ, <c>TT</c> = τ² ∂²α0/∂τ².</summary>
internal struct IdealDerivatives
{
    public double A;
    public double T;
    public double TT;
}
