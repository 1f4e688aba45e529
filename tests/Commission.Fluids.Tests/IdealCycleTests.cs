using Commission.Fluids.Saturation;
using Xunit;

namespace Commission.Fluids.Tests;

/// <summary>
/// The textbook's ideal vapour-compression cycle with R-134a between 0.14 and 0.8 MPa, 0.05 kg/s: 7.18 kW of cooling, 1.81 kW of work,
/// COP 3.97 (from memory of a thermodynamics textbook whose tables come from another equation, so the last digit may differ by one).
/// </summary>
public sealed class IdealCycleTests
{
    [Fact]
    public void R134a_between_140_and_800_kPa()
    {
        var fluid = Fluids.Get("R-134a");
        SaturationState evaporator = Fluids.Value(fluid.DewAtPressure(140e3)), condenser = Fluids.Value(fluid.BubbleAtPressure(800e3));
        var discharge = Fluids.Value(fluid.AtPressureEntropy(800e3, evaporator.VaporEntropy));
        var expanded = Fluids.Value(fluid.AtPressureEnthalpy(140e3, condenser.LiquidEnthalpy));
        double cooling = 0.05 * (evaporator.VaporEnthalpy - expanded.Enthalpy) / 1000, work = 0.05 * (discharge.Enthalpy - evaporator.VaporEnthalpy) / 1000;
        Assert.Equal(7.18, cooling, 0.015);
        Assert.Equal(1.81, work, 0.015);
        Assert.Equal(3.97, cooling / work, 0.015);
        Assert.Equal(Phase.Vapor, discharge.Phase);
        Assert.Equal(Phase.TwoPhase, expanded.Phase);
        Assert.InRange(expanded.VaporFraction, 0.3, 0.34);
    }
}
