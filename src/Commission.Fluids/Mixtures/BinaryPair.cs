using Commission.Fluids.Helmholtz;

namespace Commission.Fluids.Mixtures;

/// <summary>
/// Two components of a mixture (indices <paramref name="A"/> &lt; <paramref name="B"/>): parameters of the reducing functions in the
/// form of Kunz and Wagner 2012, eqs. 16–17, and the departure function with its factor F.
/// </summary>
internal sealed record BinaryPair(int A, int B, double BetaT, double GammaT, double BetaV, double GammaV, double F, HelmholtzFunction? Departure, IReadOnlyList<Paper> Papers)
{
    /// <summary>How the parameters were estimated; null when they are published for this pair.</summary>
    public string? Estimate { get; init; }

    /// <summary>
    /// The Lorentz–Berthelot combining rule in the reduced form of Kunz and Wagner 2012: β = 1 and γ = 1, so that
    /// T_ab = √(T_a T_b) and v_ab = ((v_a^⅓ + v_b^⅓)/2)³.
    /// </summary>
    public static BinaryPair LorentzBerthelot(int a, int b) => new(a, b, 1, 1, 1, 1, 0, null, []) { Estimate = "Lorentz–Berthelot" };
}
