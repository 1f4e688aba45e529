using Commission.Fluids.Mixtures;
using Commission.Fluids.Saturation;
using Xunit;

namespace Commission.Fluids.Tests;

/// <summary>Check values that the papers print for their own equations, to the printed digits (half a unit of the last place).</summary>
public sealed class PublishedPointTests
{
    [Theory]
    [InlineData(-100, 3.81, 0.005)]
    [InlineData(-50, 110.14, 0.005)]
    [InlineData(0, 813.10, 0.005)]
    [InlineData(50, 3141.2, 0.05)]
    public void R32_TillnerRoth_Yokozeki_1997_table_12_vapor_pressure(double celsius, double kilopascals, double half) =>
        Assert.Equal(kilopascals, Sat("R-32", celsius + 273.15).Pressure / 1000, half);

    [Fact]
    public void R32_TillnerRoth_Yokozeki_1997_table_12_at_0_C()
    {
        var s = Sat("R-32", 273.15);
        Assert.Equal(1055.3, s.LiquidDensity, 0.05);
        Assert.Equal(22.091, s.VaporDensity, 0.0005);
        Assert.Equal(200.00, s.LiquidEnthalpy / 1000, 0.005);
        Assert.Equal(515.30, s.VaporEnthalpy / 1000, 0.005);
    }

    [Theory]
    [InlineData(169.85, 0.00039)]
    [InlineData(200, 0.00631)]
    [InlineData(250, 0.11561)]
    public void R134a_TillnerRoth_Baehr_1994_table_8_vapor_pressure(double kelvin, double megapascals) =>
        Assert.Equal(megapascals, Sat("R-134a", kelvin).Pressure / 1e6, 0.000005);

    [Fact]
    public void R134a_TillnerRoth_Baehr_1994_table_8_densities_at_250_K_and_temperature_at_100_kPa()
    {
        var s = Sat("R-134a", 250);
        Assert.Equal(1367.9, s.LiquidDensity, 0.05);
        Assert.Equal(5.9546, s.VaporDensity, 0.00005);
        Assert.Equal(246.79, Fluids.Value(Fluids.Get("R-134a").BubbleAtPressure(1e5)).Temperature, 0.005);
    }

    [Theory]
    [InlineData(273.15, Phase.Liquid, 1283.58841, 665.354)]
    [InlineData(323.15, Phase.Vapor, 36.58815, 173.921)]
    public void R22_Wagner_Marx_Pruss_1993_table_11_is_met_by_the_equation_of_Kamei_1995(double kelvin, Phase phase, double density, double sound)
    {
        // Another equation of the same fluid: Kamei, Beyerlein and Jacobsen 1995 state 0.1 % in density and 0.3 % to 1 % in sound speed.
        var s = Fluids.Value(Fluids.Get("R-22").At(kelvin, 1e6, phase));
        Assert.Equal(density, s.Density, 1e-3 * density);
        Assert.Equal(sound, s.SpeedOfSound!.Value, 5e-3 * sound);
    }

    [Theory]
    [InlineData(200, 14, 2.3795138)]
    [InlineData(300, 12, 19.053797)]
    [InlineData(300, 0.4, 0.84694991)]
    [InlineData(400, 5, 6.6462840)]
    [InlineData(369.9, 5, 4.2519399)]
    public void R290_Lemmon_McLinden_Wagner_2009_table_5_pressure(double kelvin, double molesPerLitre, double megapascals)
    {
        var half = megapascals > 10 ? 5e-7 : megapascals > 1 ? 5e-8 : 5e-9;
        Assert.Equal(megapascals, Molar("R-290", kelvin, molesPerLitre * 1000).Pressure / 1e6, half);
    }

    [Theory]
    [InlineData(-50, 0.070569, 5e-7)]
    [InlineData(50, 1.7133, 5e-5)]
    public void R290_Lemmon_McLinden_Wagner_2009_vapor_pressure(double celsius, double megapascals, double half) =>
        Assert.Equal(megapascals, Sat("R-290", celsius + 273.15).Pressure / 1e6, half);

    [Theory]
    [InlineData(216.592, 0.51796, 5e-6)]
    [InlineData(240, 1.2825, 5e-5)]
    [InlineData(260, 2.4188, 5e-5)]
    [InlineData(280, 4.1607, 5e-5)]
    public void R744_Span_Wagner_1996_table_34_vapor_pressure(double kelvin, double megapascals, double half) =>
        Assert.Equal(megapascals, Sat("R-744", kelvin).Pressure / 1e6, half);

    [Theory]
    [InlineData(280, 11, 28.95760, 101.930, 139.307, 738.905)]
    public void R1234yf_Lemmon_Akasaka_2022_table_7_with_heat_capacities(double kelvin, double molesPerLitre, double megapascals, double cv, double cp, double sound)
    {
        var phase = Molar("R-1234yf", kelvin, molesPerLitre * 1000);
        var c = CaloricProperties.Of(phase);
        Assert.Equal(megapascals, phase.Pressure / 1e6, 5e-6);
        Assert.Equal(cv, c.Cv, 5e-4);
        Assert.Equal(cp, c.Cp, 5e-4);
        Assert.Equal(sound, c.SpeedOfSound, 5e-4);
    }

    [Theory]
    [InlineData(280, 0.1, 0.2185345, 5e-8)]
    [InlineData(340, 8, 2.309798, 5e-7)]
    [InlineData(340, 1, 1.855076, 5e-7)]
    [InlineData(368, 4.2, 3.394716, 5e-7)]
    public void R1234yf_Lemmon_Akasaka_2022_table_7_pressure(double kelvin, double molesPerLitre, double megapascals, double half) =>
        Assert.Equal(megapascals, Molar("R-1234yf", kelvin, molesPerLitre * 1000).Pressure / 1e6, half);

    [Theory]
    [InlineData("R-32", "R-1234yf", 445, 4149, -0.47311064743911)]
    [InlineData("R-32", "R-1234ze(E)", 451, 4242, -0.48576186760231)]
    [InlineData("R-125", "R-1234yf", 445, 3513, -0.46576307479447)]
    [InlineData("R-1234yf", "R-152a", 469, 3930, -0.48967548916638)]
    [InlineData("R-1234ze(E)", "R-227ea", 470, 3023, -0.45378834770736)]
    public void Bell_2023_table_XIII_residual_Helmholtz_energy(string first, string second, double kelvin, double molesPerCubicMeter, double residual) =>
        Assert.Equal(residual, Pair(first, second, 0.4, kelvin, molesPerCubicMeter).Total.A, 5e-14);

    [Fact]
    public void Bell_2022_table_XI_residual_Helmholtz_energy_of_R134a_and_R1234ze() =>
        Assert.Equal(-0.46245130334193, Pair("R-134a", "R-1234ze(E)", 0.4, 472, 3639).Total.A, 5e-14);

    private static SaturationState Sat(string designation, double kelvin) => Fluids.Value(Fluids.Get(designation).BubbleAtTemperature(kelvin));

    private static MixturePhase Molar(string designation, double kelvin, double molesPerCubicMeter)
    {
        MixturePhase phase = new(Fluids.Model(designation));
        phase.SetComposition([1]);
        phase.SetTemperature(kelvin);
        phase.Evaluate(molesPerCubicMeter);
        return phase;
    }

    private static MixturePhase Pair(string first, string second, double firstFraction, double kelvin, double molesPerCubicMeter)
    {
        var model = Fluids.Molar([first, second], [firstFraction, 1 - firstFraction]);
        MixturePhase phase = new(model);
        phase.SetComposition(model.Composition);
        phase.SetTemperature(kelvin);
        phase.Evaluate(molesPerCubicMeter);
        return phase;
    }
}
