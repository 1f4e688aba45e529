namespace Commission.Fluids.Helmholtz;

/// <summary>The three shapes of an auxiliary saturation equation.</summary>
internal enum AncillaryForm
{
    /// <summary>y = yr exp((Tr/T) Σ n θ^t).</summary>
    ExponentialOfReduced,

    /// <summary>y = yr exp(Σ n θ^t).</summary>
    Exponential,

    /// <summary>y = yr (1 + Σ n θ^t).</summary>
    Linear,
}
