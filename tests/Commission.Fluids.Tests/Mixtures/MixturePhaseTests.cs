using System.Globalization;
using System.Text.Json;
using Commission.Fluids.Data;
using Commission.Fluids.Mixtures;
using Xunit;

namespace Commission.Fluids.Tests.Mixtures;

/// <summary>Composition derivatives against central differences, and thermodynamic identities of mixtures.</summary>
public sealed class MixturePhaseTests
{
    public static TheoryData<string> Blends => ["R-410A", "R-404A", "R-407C", "R-454B", "R-455A", "R-448A", "R-438A", "R-441A", "R-470A", "R-515B", "R-514A", "R-473A"];

    [Theory]
    [MemberData(nameof(Blends))]
    public void Fugacities_are_derivatives_of_the_Helmholtz_energy(string designation)
    {
        var model = Fluids.Model(designation);
        foreach ((var t, var share) in new[] { (260.0, 2.6), (330.0, 0.05) })
        {
            double[] n = [.. model.Composition];
            var rho = share * Reducing(model);
            var phase = Evaluate(model, n, rho, t);
            for (var i = 0; i < n.Length; i++)
            {
                // ln f_i = ln(ρ_i R T) + ∂(n αr)/∂n_i at constant T, V.
                var h = 1e-5 * n[i];
                var slope = (TotalResidual(model, n, i, h, rho, t) - TotalResidual(model, n, i, -h, rho, t)) / (2 * h);
                var expected = Math.Log(n[i] * rho * model.GasConstant * t) + slope;
                Near(expected, phase.LnFugacity[i], 1e-7, designation, i);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Blends))]
    public void The_Jacobian_is_that_of_the_fugacities_and_of_the_pressure(string designation)
    {
        var model = Fluids.Model(designation);
        foreach ((var t, var share) in new[] { (260.0, 2.6), (330.0, 0.05) })
        {
            double[] n = [.. model.Composition];
            var rho = share * Reducing(model);
            var phase = Evaluate(model, n, rho, t);
            double[] jacobian = [.. phase.Jacobian], byAmount = [.. phase.PressureByAmount], byT = [.. phase.LnFugacityByTemperature];
            double unit = rho * model.GasConstant * t, pByT = phase.PressureByTemperature;
            for (var j = 0; j < n.Length; j++)
            {
                var h = 1e-5 * n[j];
                (var up, var pUp) = Shifted(model, n, j, h, rho, t);
                (var down, var pDown) = Shifted(model, n, j, -h, rho, t);
                for (var i = 0; i < n.Length; i++)
                    Near((up[i] - down[i]) / (2 * h), jacobian[i * n.Length + j], 1e-6 * (1 + Math.Abs(jacobian[j * n.Length + j])), designation, i);
                Near((pUp - pDown) / (2 * h) / unit, byAmount[j], 1e-6 * (1 + Math.Abs(byAmount[j])), designation, j);
            }
            var dT = 1e-4 * t;
            MixturePhase warm = Evaluate(model, n, rho, t + dT), cold = Evaluate(model, n, rho, t - dT);
            for (var i = 0; i < n.Length; i++)
                Near((warm.LnFugacity[i] - cold.LnFugacity[i]) * t / (2 * dT), byT[i], 1e-5 * (1 + Math.Abs(byT[i])), designation, i);
            Near((warm.Pressure - cold.Pressure) * t / (2 * dT) / unit, pByT, 1e-5 * (1 + Math.Abs(pByT)), designation, 0);
        }
    }

    [Theory]
    [MemberData(nameof(Blends))]
    public void Gibbs_and_Duhem_hold_and_the_Jacobian_is_symmetric(string designation)
    {
        var model = Fluids.Model(designation);
        var n = model.Components.Length;
        var phase = Evaluate(model, model.Composition, 2.5 * Reducing(model), 255);
        for (var j = 0; j < n; j++)
        {
            // V dp = Σ n_i R T d ln f_i at constant T.
            var sum = 0.0;
            for (var i = 0; i < n; i++)
            {
                sum += phase.X[i] * phase.Jacobian[i * n + j];
                Near(phase.Jacobian[i * n + j], phase.Jacobian[j * n + i], 1e-11 * (1 + Math.Abs(phase.Jacobian[i * n + j])), designation, i);
            }
            Near(sum, phase.PressureByAmount[j], 1e-10 * (1 + Math.Abs(sum)), designation, j);
        }
    }

    [Theory]
    [InlineData("R-32")]
    [InlineData("R-125")]
    [InlineData("R-1234yf")]
    public void A_mixture_of_one_component_with_traces_is_that_component(string designation)
    {
        var other = designation == "R-32" ? "R-125" : "R-32";
        var pair = Fluids.Molar([designation, other], [1 - 1e-14, 1e-14]);
        var phase = Evaluate(pair, pair.Composition, 12000, 280);
        var pure = Fluids.Molar([designation], [1]);
        var alone = Evaluate(pure, [1], 12000, 280);
        Assert.Equal(alone.Pressure, phase.Pressure, 1e-9 * Math.Abs(alone.Pressure) + 1e-3);
        Assert.Equal(alone.LnFugacity[0], phase.LnFugacity[0], 1e-9);
    }

    [Fact]
    public void The_order_of_the_components_does_not_matter()
    {
        var one = Fluids.Molar(["R-32", "R-1234yf", "R-744"], [0.3, 0.6, 0.1]);
        var two = Fluids.Molar(["R-744", "R-1234yf", "R-32"], [0.1, 0.6, 0.3]);
        MixturePhase a = Evaluate(one, one.Composition, 9000, 270), b = Evaluate(two, two.Composition, 9000, 270);
        Assert.Equal(a.Pressure, b.Pressure, 1e-10 * Math.Abs(a.Pressure));
        Assert.Equal(a.LnFugacity[0], b.LnFugacity[2], 1e-12);
        Assert.Equal(a.LnFugacity[2], b.LnFugacity[0], 1e-12);
    }

    [Fact]
    public void Pairs_published_as_xi_and_zeta_keep_the_reducing_functions_of_their_paper()
    {
        // Lemmon and Jacobsen 2004: T_r = Σ x_i T_i + x_1 x_2 ξ, 1/ρ_r = Σ x_i/ρ_i + x_1 x_2 ζ; R-32/125 ξ 28.95 K, ζ −6.008e-6 m³/mol.
        var model = Fluids.Molar(["R-32", "R-125"], [0.37, 0.63]);
        MixturePhase phase = new(model);
        phase.SetComposition(model.Composition);
        Assert.Equal((0.37 * 351.255) + (0.63 * 339.173) + (0.37 * 0.63 * 28.95), phase.ReducingTemperature, 1e-10);
        Assert.Equal((0.37 / 8150.0846) + (0.63 / 4779) - (0.37 * 0.63 * 6.008e-6), 1 / phase.ReducingDensity, 1e-15);
    }

    [Fact]
    public void A_pair_without_parameters_is_marked()
    {
        var rule = MixtureFiles.Load(["R-22", "R-124"])[0];
        Assert.Equal("Lorentz–Berthelot", rule.Estimate);
        Assert.Equal((1.0, 1.0, 1.0, 1.0, 0.0), (rule.BetaT, rule.GammaT, rule.BetaV, rule.GammaV, rule.F));
        Assert.Null(MixtureFiles.Load(["R-32", "R-125"])[0].Estimate);
    }

    [Theory]
    [InlineData("R-134a", "R-601a", "R-134a", "R-600a")]
    [InlineData("R-601a", "R-134a", "R-600a", "R-134a")]
    [InlineData("R-290", "R-218", "R-170", "R-218")]
    [InlineData("R-218", "R-290", "R-218", "R-170")]
    public void A_stand_in_has_the_parameters_of_its_relative_in_the_same_order(string a, string b, string likeA, string likeB)
    {
        BinaryPair pair = MixtureFiles.Load([a, b])[0], like = MixtureFiles.Load([likeA, likeB])[0];
        Assert.Equal((like.BetaT, like.GammaT, like.BetaV, like.GammaV), (pair.BetaT, pair.GammaT, pair.BetaV, pair.GammaV));
        Assert.Null(like.Estimate);
        Assert.NotNull(pair.Estimate);
    }

    [Fact]
    public void Every_stand_in_is_needed_and_has_its_relative()
    {
        using var file = EmbeddedData.Open("mixtures/stand-ins.json");
        foreach (var s in file.RootElement.GetProperty("stand-ins").EnumerateArray())
            Assert.StartsWith("parameters of", MixtureFiles.Load([s.GetProperty("a").GetString()!, s.GetProperty("b").GetString()!])[0].Estimate, StringComparison.Ordinal);
    }

    private static double Reducing(MixtureModel model)
    {
        MixturePhase phase = new(model);
        phase.SetComposition(model.Composition);
        return phase.ReducingDensity;
    }

    /// <summary>State of amounts n in the volume that holds one mole at the density.</summary>
    private static MixturePhase Evaluate(MixtureModel model, IReadOnlyList<double> amounts, double rho, double t)
    {
        var total = amounts.Sum();
        MixturePhase phase = new(model);
        phase.SetComposition([.. amounts.Select(a => a / total)]);
        phase.SetTemperature(t);
        phase.Evaluate(rho * total);
        phase.EvaluateFugacity();
        return phase;
    }

    private static double TotalResidual(MixtureModel model, double[] n, int i, double h, double rho, double t)
    {
        double[] m = [.. n];
        m[i] += h;
        return m.Sum() * Evaluate(model, m, rho, t).Total.A;
    }

    private static (double[] LnFugacity, double Pressure) Shifted(MixtureModel model, double[] n, int j, double h, double rho, double t)
    {
        double[] m = [.. n];
        m[j] += h;
        var phase = Evaluate(model, m, rho, t);
        return ([.. phase.LnFugacity], phase.Pressure);
    }

    private static void Near(double expected, double actual, double tolerance, string what, int index) =>
        Assert.True(Math.Abs(expected - actual) <= tolerance, string.Create(CultureInfo.InvariantCulture, $"{what} {index}: {actual} against {expected}"));
}
