using Commission.Checks.Formulas;
using Commission.Fluids;
using Xunit;

namespace Commission.Checks.Tests.Formulas;

/// <summary>Trade tables of AHRI Guideline K-2004 by density at 25 °C, and filling ratios of ADR packing instruction P200 (both from memory).</summary>
public sealed class CylinderFillTests
{
    [Theory]
    [InlineData("R-290", 39.5)]
    [InlineData("R-1270", 40.6)]
    [InlineData("R-600a", 44.2)]
    [InlineData("R-32", 77.1)]
    [InlineData("R-454B", 79.1)]
    [InlineData("R-410A", 84.9)]
    [InlineData("R-22", 95.5)]
    public void Four_fifths_of_the_volume_as_a_share_of_the_water_by_mass(string refrigerant, double perCent) =>
        Assert.Equal(perCent, 80 * CylinderFill.SpecificGravity(Refrigerant.Load(refrigerant))!.Value, 0.06);

    // The table of P200 prints two digits and rounds either way.
    [Theory]
    [InlineData("R-290", 0.425)] // 0.42 and 0.43 are both to be found
    [InlineData("R-600a", 0.49)]
    [InlineData("R-600", 0.52)]
    [InlineData("R-32", 0.78)]
    [InlineData("R-22", 1.03)]
    [InlineData("R-134a", 1.05)]
    [InlineData("R-404A", 0.82)]
    [InlineData("R-407C", 0.95)]
    public void The_filling_ratio_for_transport_follows_from_the_liquid(string refrigerant, double ratio) =>
        Assert.Equal(ratio, CylinderFill.FillingRatio(Refrigerant.Load(refrigerant), 0.95)!.Value, 0.012);

    [Fact]
    public void Above_its_critical_temperature_nothing_is_liquid()
    {
        Assert.NotNull(CylinderFill.SpecificGravity(Refrigerant.Load("R-744")));
        Assert.Null(CylinderFill.FillingRatio(Refrigerant.Load("R-744"), 0.95));
    }
}
