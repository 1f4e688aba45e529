using Commission.Checks.Formulas;
using Commission.Fluids;
using Xunit;

namespace Commission.Checks.Tests.Formulas;

public sealed class PipingFormulaTests
{
    // Loss for each 10 ft of rise at 110 °F as a piping manual prints it [published], to its last digit.
    [Theory]
    [InlineData("R-22", 4.8)]
    [InlineData("R-134a", 4.9)]
    [InlineData("R-404A", 4.1)]
    public void Head_of_liquid_that_a_manual_prints(string refrigerant, double psiForTenFeet) =>
        Assert.Equal(psiForTenFeet, 10 * PsiPerFoot(refrigerant), 0.051);

    // The same manual for 100 ft, with three digits: its densities are older by up to 0.4 %.
    [Theory]
    [InlineData("R-22", 48.4)]
    [InlineData("R-134a", 49.1)]
    [InlineData("R-404A", 40.8)]
    public void Head_of_liquid_over_a_hundred_feet(string refrigerant, double psi) =>
        Assert.Equal(psi, 100 * PsiPerFoot(refrigerant), 0.004 * psi);

    [Fact]
    public void The_manuals_407C_row_departs_from_the_equation_of_state()
    {
        // It prints 4.3 psi for 10 ft and 43.8 for 100 ft of R-407C among others; the equation of state gives 4.55. Not an oracle.
        Assert.Equal(4.55, 10 * PsiPerFoot("R-407C"), 0.005);
    }

    // The same from saturated-liquid densities of the equations of state by an independent program [computed].
    [Theory]
    [InlineData("R-22", 0.4828)]
    [InlineData("R-134a", 0.4909)]
    [InlineData("R-404A", 0.4094)]
    [InlineData("R-407C", 0.4554)]
    [InlineData("R-410A", 0.4136)]
    [InlineData("R-32", 0.3798)]
    [InlineData("R-454B", 0.3899)]
    [InlineData("R-290", 0.2001)]
    public void Head_of_liquid_by_the_density_of_the_refrigerant(string refrigerant, double psiPerFoot) =>
        Assert.Equal(psiPerFoot, PsiPerFoot(refrigerant), 0.00006);

    [Fact]
    public void The_manuals_404A_row_of_40_feet_is_a_misprint()
    {
        // It prints 14.1 °F between 3.3 and 5.6 °F; the head itself is near 16 psi.
        Assert.Equal(16.4, 40 * PsiPerFoot("R-404A"), 0.1);
    }

    [Fact]
    public void A_drop_gains_what_a_rise_costs() => Assert.Equal(-LiquidHead.Loss(1100, 4), LiquidHead.Loss(1100, -4), 9);

    private static double PsiPerFoot(string refrigerant)
    {
        var liquid = Refrigerant.Load(refrigerant).BubbleAtTemperature((110 + 459.67) / 1.8);
        Assert.True(liquid.Ok, liquid.Reason.Said());
        return LiquidHead.Loss(liquid.Value.LiquidDensity, 0.3048) / 6894.757293168;
    }
}
