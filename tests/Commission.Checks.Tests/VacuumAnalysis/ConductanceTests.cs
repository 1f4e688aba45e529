using Commission.Checks.Formulas;
using Commission.Checks.VacuumAnalysis;
using Commission.Messages;
using Xunit;

namespace Commission.Checks.Tests.VacuumAnalysis;

/// <summary>Conductances against handbook examples and formulas.</summary>
public sealed class ConductanceTests
{
    private const double Micron = 101_325.0 / 760_000;
    private const double Litre = 1e-3;

    /// <summary>
    /// Service hoses with the all-range handbook formula (Knudsen, constants from memory), mean pressure as printed. Half a unit of the
    /// last printed digit.
    /// </summary>
    [Theory]
    [InlineData(4, 1.5, 1000, 0.2346, 0.2134)]
    [InlineData(4, 1.5, 1000 * Micron, 0.03491, 0.03440)]
    [InlineData(4, 1.5, 500 * Micron, 0.01956, 0.01940)]
    [InlineData(6, 1.5, 1000, 1.1805, 0.7869)]
    [InlineData(6, 1.5, 1000 * Micron, 0.16964, 0.15826)]
    [InlineData(6, 1.5, 500 * Micron, 0.09190, 0.08846)]
    [InlineData(9.5, 1.0, 500 * Micron, 0.81717, 0.60697)]
    [InlineData(10, 1.5, 500 * Micron, 0.66540, 0.51904)]
    public void Service_hose(double bore, double length, double meanPressure, double conductance, double effective)
    {
        const double FiveCfm = 2.3597;
        var c = Hose(bore, length).Conductance(ConductanceGas.Air20, meanPressure) / Litre;
        Assert.Equal(conductance, c, HalfDigit(conductance));
        Assert.Equal(effective, 1 / (1 / FiveCfm + 1 / c), HalfDigit(effective));
    }

    /// <summary>The same hoses with the system at the pressure and the mean taken along the hose.</summary>
    [Theory]
    [InlineData(4, 1.5, 500, 0.01187)]
    [InlineData(6, 1.5, 500, 0.05272)]
    [InlineData(9.5, 1.0, 500, 0.42381)]
    [InlineData(10, 1.5, 500, 0.34923)]
    [InlineData(4, 1.5, 1000, 0.01952)]
    [InlineData(6, 1.5, 1000, 0.09124)]
    [InlineData(9.5, 1.0, 1000, 0.72263)]
    [InlineData(10, 1.5, 1000, 0.60860)]
    public void Five_cfm_pump_through_a_hose(double bore, double length, double microns, double effective)
    {
        var model = new PullDownModel([Hose(bore, length)], PumpCurve.Rated(2.3597 * Litre));
        var at = model.At(microns * Micron);
        Assert.Equal(effective, at.Speed / Litre, HalfDigit(effective));
        Assert.Equal(1, at.Shares.Sum(s => s.Share), 1e-9);
        Assert.Equal(FlowElementKind.Hose, at.Limiting.Kind);
    }

    [Fact]
    public void Handbook_example_long_tube_with_two_bends()
    {
        // A pump maker's vacuum handbook, §7.3.2, as published: d 0.07 m, l 2.47 m, c̄ 471 m/s → C 0.017123 m³/s; S 2.9722e-2 → 1.0864e-2 m³/s.
        var gas = ConductanceGas.Air20 with { Molecular = Math.PI / 12 * 471 };
        var c = new FlowElement("tube".Plain(), FlowElementKind.Hose, 0.07, 2.47).MolecularConductance(gas);
        Assert.Equal(0.017123, c, 5e-7);
        Assert.Equal(1.0864e-2, 1 / (1 / 2.9722e-2 + 1 / c), 5e-7);
    }

    [Fact]
    public void Published_example_air_and_helium()
    {
        // d 5 cm, l 100 cm: 15.125 L/s of air, 40.7 of helium; an opening of 20 cm² 232 L/s (published, molecular flow,
        // with 11.6 L/s per cm²).
        var tube = new FlowElement("tube".Plain(), FlowElementKind.Hose, 0.05, 1);
        Assert.Equal(15.125, tube.MolecularConductance(ConductanceGas.Air20) / Litre, 5e-4);
        // Molecular conductance goes by the mean speed, and that by 1/√M.
        var helium = ConductanceGas.Air20 with { Molecular = ConductanceGas.Air20.Molecular * Math.Sqrt(28.965 / 4.0026) };
        Assert.Equal(40.7, tube.MolecularConductance(helium) / Litre, 0.1);
        Assert.Equal(232, 20e-4 * ConductanceGas.Air20.MeanSpeed / 4 / Litre, 1.0);
    }

    [Fact]
    public void Handbook_coefficients_follow_from_the_gas()
    {
        // Poiseuille: π/(128·η) with 18.2 µPa·s; kinetic theory: π·c̄/12 with c̄ = √(8RT/(πM)); Knudsen, Ann. Phys. 28 (1909) 75:
        // √(M/(RT))/η, and 1.24 of it; choked: √(γRT/M)·(2/(γ+1))^((γ+1)/(2(γ−1))) (from memory).
        var air = ConductanceGas.Air20;
        var thermal = 8.314462618 * 293.15 / 28.965e-3;
        var knudsen = 1 / Math.Sqrt(thermal) / 18.2e-6;
        Assert.Equal(Math.PI / (128 * 18.2e-6), air.Viscous, 1.5);
        Assert.Equal(Math.PI / 12 * Math.Sqrt(8 * thermal / Math.PI), air.Molecular, 0.4);
        Assert.Equal(knudsen, air.KnudsenNumerator, 3.0);
        Assert.Equal(1.24 * knudsen, air.KnudsenDenominator, 3.0);
        Assert.Equal(Math.Sqrt(1.4 * thermal) * Math.Pow(2 / 2.4, 3), air.CriticalSpeed, 1.5);
    }

    /// <summary>Clausing's factor at L/r of 1, 2, 10, 20 (from memory of the published tables), and its limits.</summary>
    [Theory]
    [InlineData(1, 0.6720, 0.0002)]
    [InlineData(2, 0.5142, 0.0002)]
    [InlineData(10, 0.1910, 0.0005)]
    [InlineData(20, 0.1094, 0.0005)]
    public void Clausing(double lengthOverRadius, double factor, double tolerance) =>
        Assert.Equal(factor, ClausingFactor.Of(lengthOverRadius / 2, 1), tolerance);

    [Fact]
    public void Clausing_limits()
    {
        Assert.Equal(1, ClausingFactor.Of(0, 0.004));
        Assert.Equal(1, ClausingFactor.Of(1e-6, 1), 1e-5);

        // 8r/(3L) for long tubes, and no jump where the closed form is left.
        Assert.Equal(8.0 / (3 * 5000), ClausingFactor.Of(2500, 1), 1e-7);
        Assert.Equal(1, ClausingFactor.Of(1000.001, 1) / ClausingFactor.Of(999.999, 1), 0.01);

        // Short tube by the rule C/(1 + 4d/3l) of the handbooks: within 12 % of Clausing everywhere (a known error of the rule).
        for (var l = 0.1; l < 100; l *= 1.3)
        {
            var rule = 4 / (3 * l) / (1 + 4 / (3 * l));
            Assert.InRange(ClausingFactor.Of(l, 1) / rule, 0.88, 1.12);
        }
    }

    [Fact]
    public void A_core_left_in_place_limits_a_wide_hose()
    {
        var hose = new FlowElement("3/4 in hose".Plain(), FlowElementKind.Hose, 0.019, 1.2);
        var core = new FlowElement("valve core".Plain(), FlowElementKind.Core, 0.0025, 0.012);
        var with = new PullDownModel([core, hose], PumpCurve.Rated(4 * Litre)).At(500 * Micron);
        var without = new PullDownModel([hose], PumpCurve.Rated(4 * Litre)).At(500 * Micron);
        Assert.Equal(FlowElementKind.Core, with.Limiting.Kind);
        Assert.True(without.Speed > 5 * with.Speed);
    }

    [Fact]
    public void A_short_opening_chokes()
    {
        // 200 m/s through the opening is the most, whatever the pump: 2 mm bore, 3.14 mm² → 0.628 L/s.
        var core = new FlowElement("core".Plain(), FlowElementKind.Core, 0.002, 0.001);
        var speed = new PullDownModel([core], PumpCurve.Rated(1)).At(50_000).Speed;
        Assert.Equal(Math.PI / 4 * 4e-6 * 200, speed, 1e-3 * speed);
    }

    private static FlowElement Hose(double millimetres, double length) => new("hose".Plain(), FlowElementKind.Hose, millimetres / 1000, length);

    // Half a unit in the fifth significant place, or the fourth decimal where only four are printed.
    private static double HalfDigit(double printed) => Math.Round(printed, 4) == printed ? 0.5e-4 : 0.5e-5;
}
