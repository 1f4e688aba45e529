using System.Globalization;
using Commission.Fluids.Data;
using Commission.Fluids.Helmholtz;
using Xunit;

namespace Commission.Fluids.Tests.Helmholtz;

/// <summary>Analytic derivatives of every equation against central differences of its own value: an identity, no outside number.</summary>
public sealed class DerivativeTests
{
    [Theory]
    [MemberData(nameof(Pure))]
    public void Derivatives_are_those_of_the_function(string designation)
    {
        var eos = FluidFile.Load(designation);
        foreach ((var tau, var delta) in new[] { (1.3, 2.4), (1.05, 0.3), (0.8, 1.1), (1.6, 0.002) })
        {
            var r = At(eos, tau, delta);
            const double h = 1e-5;
            ResidualDerivatives d1 = At(eos, tau, delta * (1 - h)), d2 = At(eos, tau, delta * (1 + h)), t1 = At(eos, tau * (1 - h), delta), t2 = At(eos, tau * (1 + h), delta);
            var scale = Math.Abs(r.A) + Math.Abs(r.D) + Math.Abs(r.DD) + Math.Abs(r.T) + Math.Abs(r.TT);
            Near((d2.A - d1.A) / (2 * h), r.D, scale, designation + " D", tau, delta);
            Near((t2.A - t1.A) / (2 * h), r.T, scale, designation + " T", tau, delta);
            // δ ∂(δα_δ)/∂δ = δα_δ + δ²α_δδ, likewise in τ and mixed.
            Near((d2.D - d1.D) / (2 * h), r.D + r.DD, scale, designation + " DD", tau, delta);
            Near((t2.T - t1.T) / (2 * h), r.T + r.TT, scale, designation + " TT", tau, delta);
            Near((t2.D - t1.D) / (2 * h), r.DT, scale, designation + " DT", tau, delta);
            Near((d2.T - d1.T) / (2 * h), r.DT, scale, designation + " TD", tau, delta);
        }
    }

    [Theory]
    [MemberData(nameof(Pure))]
    public void The_volume_part_is_the_same_as_in_the_full_evaluation(string designation)
    {
        var eos = FluidFile.Load(designation);
        var work = new double[eos.Residual.WorkLength];
        DensityTable table = new();
        const double tau = 1.23;
        eos.Residual.Prepare(tau, Math.Log(tau), work);
        foreach (var delta in new[] { 0.01, 0.7, 1.0, 2.6 })
        {
            table.Fill(delta, eos.Residual.DecayMask);
            eos.Residual.Evaluate(table, tau, work, out var full);
            eos.Residual.EvaluateVolume(table, tau, work, out var part);
            Assert.Equal(full.A, part.A, 1e-13 * (1 + Math.Abs(full.A)));
            Assert.Equal(full.D, part.D, 1e-13 * (1 + Math.Abs(full.D)));
            Assert.Equal(full.DD, part.DD, 1e-12 * (1 + Math.Abs(full.DD)));
        }
    }

    [Theory]
    [MemberData(nameof(Pure))]
    public void Ideal_gas_derivatives_are_those_of_the_function(string designation)
    {
        var eos = FluidFile.Load(designation);
        foreach (var share in new[] { 0.7, 1.0, 1.2 })
        {
            var t = share * eos.ReducingTemperature;
            const double h = 1e-5;
            IdealDerivatives r = eos.IdealAt(t), a = eos.IdealAt(t / (1 - h)), b = eos.IdealAt(t / (1 + h));
            var scale = Math.Abs(r.A) + Math.Abs(r.T) + Math.Abs(r.TT);
            Near((b.A - a.A) / (2 * h), r.T, scale, designation + " T0", share, 0);
            Near((b.T - a.T) / (2 * h), r.T + r.TT, scale, designation + " TT0", share, 0);
            Assert.True(-r.TT >= 1.499, designation + ": an ideal-gas cv below 3/2 R");
        }
    }

    public static TheoryData<string> Pure => [.. RefrigerantCatalogue.All.Where(i => !i.IsBlend).Select(i => i.Designation)];

    private static ResidualDerivatives At(EquationOfState eos, double tau, double delta)
    {
        var work = new double[eos.Residual.WorkLength];
        DensityTable table = new();
        eos.Residual.Prepare(tau, Math.Log(tau), work);
        table.Fill(delta, eos.Residual.DecayMask);
        eos.Residual.Evaluate(table, tau, work, out var r);
        return r;
    }

    private static void Near(double numeric, double analytic, double scale, string what, double tau, double delta) =>
        Assert.True(Math.Abs(numeric - analytic) <= 2e-7 * (scale + Math.Abs(analytic)), string.Create(CultureInfo.InvariantCulture, $"{what} at τ {tau}, δ {delta}: {numeric} against {analytic}"));
}
