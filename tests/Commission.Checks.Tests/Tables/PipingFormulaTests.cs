using Commission.Checks.Tables;
using Xunit;

namespace Commission.Checks.Tests.Tables;

public sealed class PipingFormulaTests
{
    [Fact]
    public void Velocity_of_500_pounds_an_hour_in_seven_eighths_tube()
    {
        // 2.1 lb/ft³, bore 0.785 in: 1180.7 fpm [computed].
        var flow = 500 * 0.45359237 / 3600;
        var density = 2.1 * 0.45359237 / 0.028316846592;
        Assert.Equal(1180.7, LineVelocity.Of(flow, density, 0.785 * 0.0254) / (0.3048 / 60), 0.05);
    }

    // Loss for each 10 ft of rise at 110 °F as a piping manual prints it [published]; saturated-liquid densities at 110 °F from handbook
    // tables [from memory].
    [Theory]
    [InlineData("R-22", 69.6, 4.8)]
    [InlineData("R-134a", 70.7, 4.9)]
    [InlineData("R-404A", 58.9, 4.1)]
    public void Head_of_liquid_by_the_density_of_the_refrigerant(string refrigerant, double poundsPerCubicFoot, double psiForTenFeet)
    {
        var density = poundsPerCubicFoot * 0.45359237 / 0.028316846592;
        var psi = LiquidHead.Loss(density, 10 * 0.3048) / 6894.757293168;
        Assert.True(Math.Abs(psi - psiForTenFeet) < 0.05, $"{refrigerant}: {psi}");
    }

    [Fact]
    public void A_drop_gains_what_a_rise_costs() => Assert.Equal(-LiquidHead.Loss(1100, 4), LiquidHead.Loss(1100, -4), 9);
}
