namespace Commission.Fluids.Helmholtz;

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
        double[] power = Power;
        power[0] = 1;
        for (int i = 1; i < power.Length; i++)
            power[i] = power[i - 1] * delta;
        double[] decay = Decay;
        decay[0] = 1;
        for (int l = 1; l < decay.Length; l++)
        {
            if ((decayMask & (1 << l)) != 0)
                decay[l] = Math.Exp(-power[l]);
        }
    }
}
