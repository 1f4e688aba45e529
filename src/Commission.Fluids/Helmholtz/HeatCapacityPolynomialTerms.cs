namespace Commission.Fluids.Helmholtz;

/// <summary>
/// The part of α0 that belongs to cp0/R = Σ c T^t, integrated twice from T0: for t other than 0 and −1
/// −c T^t/(t(t+1)) − c T0^(t+1)/(T(t+1)) + c T0^t/t; for t = 0 c − cτ/τ0 + c ln(τ/τ0); for t = −1 cτ/Tr ln(τ0/τ) + c/Tr (τ − τ0).
/// </summary>
internal sealed class HeatCapacityPolynomialTerms(double[] c, double[] t, double referenceTemperature, double reducingTemperature) : IdealTerms
{
    public override void Add(double tau, ref IdealDerivatives sum)
    {
        double temperature = reducingTemperature / tau;
        double tau0 = reducingTemperature / referenceTemperature;
        for (int k = 0; k < c.Length; k++)
        {
            double tk = t[k], ck = c[k];
            if (tk == 0)
            {
                sum.A += ck - ck * tau / tau0 + ck * Math.Log(tau / tau0);
                sum.T += ck - ck * tau / tau0;
                sum.TT -= ck;
            }
            else if (tk == -1)
            {
                double log = Math.Log(tau0 / tau);
                sum.A += ck / reducingTemperature * (tau * log + tau - tau0);
                sum.T += ck / reducingTemperature * tau * log;
                sum.TT -= ck / reducingTemperature * tau;
            }
            else
            {
                double power = Math.Pow(temperature, tk);
                double linear = ck * Math.Pow(referenceTemperature, tk + 1) / (reducingTemperature * (tk + 1)) * tau;
                sum.A += -ck * power / (tk * (tk + 1)) - linear + ck * Math.Pow(referenceTemperature, tk) / tk;
                sum.T += ck * power / (tk + 1) - linear;
                sum.TT -= ck * power;
            }
        }
    }
}
