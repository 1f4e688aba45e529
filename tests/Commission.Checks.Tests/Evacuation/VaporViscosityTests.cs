using Commission.Checks.Circuit;
using Commission.Checks.Evacuation;
using Commission.Checks.Formulas;
using Commission.Checks.Kernel;
using Commission.Checks.VacuumAnalysis;
using Commission.Fluids;
using Xunit;

namespace Commission.Checks.Tests.Evacuation;

/// <summary>Blends by the rule of Herning and Zipperer against handbook figures of their vapour at 20 to 25 °C: R-410A 13.3, R-407C 12.3, R-404A 12.0 µPa·s (from memory, about 5 %).</summary>
public sealed class VaporViscosityTests
{
    [Theory]
    [InlineData("R-410A", 13.3)]
    [InlineData("R-407C", 12.3)]
    [InlineData("R-404A", 12.0)]
    [InlineData("R-134a", 11.7)]
    public void Within_7_percent_of_the_handbook(string designation, double microPascalSeconds) =>
        Assert.Equal(microPascalSeconds * 1e-6, VaporViscosity.Of(RefrigerantCatalogue.Find(designation)!)!.Value, 0.07 * microPascalSeconds * 1e-6);

    [Fact]
    public void An_equal_mass_blend_by_hand()
    {
        // R-410A is 50/50 by mass of R-32 (52.02 g/mol, 12.5) and R-125 (120.02 g/mol, 13.0): weights 1/√52.02 = 0.1386 and 1/√120.02 = 0.0913,
        // (0.1386·12.5 + 0.0913·13.0)/(0.1386 + 0.0913) = 12.70.
        Assert.Equal(12.70e-6, VaporViscosity.Of(RefrigerantCatalogue.Find("R-410A")!)!.Value, 0.005e-6);
    }

    [Fact]
    public void A_component_without_a_figure_is_not_guessed() => Assert.Null(VaporViscosity.Of(RefrigerantCatalogue.Find("R-12")!));
}
