namespace Commission.Fluids.Helmholtz;

/// <summary>
/// An auxiliary saturation equation of θ = 1 − T/Tr: y = yr exp((Tr/T) Σ n θ^t), y = yr exp(Σ n θ^t) or y = yr (1 + Σ n θ^t).
/// It starts an iteration and is never an answer.
/// </summary>
internal sealed class Ancillary(AncillaryForm form, double reducingTemperature, double reducingValue, double[] n, double[] t)
{
    /// <summary>The value at T; above 0.9999 of the reducing temperature, the value there.</summary>
    public double At(double temperature)
    {
        double top = 0.9999 * reducingTemperature;
        double used = temperature < top ? temperature : top;
        double lnTheta = Math.Log(1 - used / reducingTemperature);
        double sum = 0;
        for (int k = 0; k < n.Length; k++)
            sum += n[k] * Math.Exp(t[k] * lnTheta);
        return form switch
        {
            AncillaryForm.ExponentialOfReduced => reducingValue * Math.Exp(reducingTemperature / used * sum),
            AncillaryForm.Exponential => reducingValue * Math.Exp(sum),
            _ => reducingValue * (1 + sum),
        };
    }
}
