using Commission.Fluids.Helmholtz;
using Xunit;

namespace Commission.Fluids.Tests.Helmholtz;

/// <summary>Powers of τ put together from shared ones against the power function of the runtime.</summary>
public sealed class TemperaturePowersTests
{
    [Theory]
    [InlineData(0.6)]
    [InlineData(1)]
    [InlineData(1.37)]
    [InlineData(3.2)]
    public void Every_exponent_is_that_power(double tau)
    {
        // Quarters at both ends of their range and beyond, exponents of equations in two and three decimals, some of them twice.
        double[] t = [0, 0.25, 0.5, 0.75, 1, -0.25, -1, -8, -8.25, 7.75, 8, 18, 50, 55.75, 56, 0.669, 2.38, 0.669, 1.05, 2.38, 3.5, 3.5, 0.125];
        var values = new double[t.Length];
        new TemperaturePowers(t).Fill(tau, Math.Log(tau), values);
        for (var k = 0; k < t.Length; k++)
            Assert.Equal(Math.Pow(tau, t[k]), values[k], 2e-14 * Math.Pow(tau, t[k]));
    }
}
