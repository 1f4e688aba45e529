using Xunit;

namespace Commission.Fluids.Tests;

/// <summary>Nitrogen of pressure tests: values an independent program computed from Span et al. 2000.</summary>
public sealed class NitrogenTests
{
    private const double Psi = 6894.757293168;
    private const double Atmosphere = 14.69595;

    // J/(mol K), the equation's own constant (Span et al. 2000).
    private const double GasConstant = 8.31451;

    // mol/m³, thin enough that the third virial coefficient (1.5e-9 m⁶/mol²) adds 0.02 %.
    private const double Dilute = 1;

    [Theory]
    [InlineData(150, 70, 90, 156.388)]
    [InlineData(300, 70, 50, 287.494)]
    [InlineData(450, 70, 90, 468.885)]
    [InlineData(450, 95, 65, 423.128)]
    [InlineData(600, 70, 100, 638.306)]
    public void Gauge_after_a_change_of_temperature_in_psig(double fill, double from, double to, double real) =>
        Assert.Equal(real, Warmed((fill + Atmosphere) * Psi, Kelvin(from), Kelvin(to)) / Psi - Atmosphere, 0.02);

    [Theory]
    [InlineData(10, 20, 30, 10.3857)]
    [InlineData(28, 20, 10, 26.9404)]
    [InlineData(42, 20, 15, 41.1901)]
    [InlineData(43, 15, 30, 45.5427)]
    public void Gauge_after_a_change_of_temperature_in_bar(double fill, double from, double to, double real) =>
        Assert.Equal(real, Warmed((fill + 1.01325) * 1e5, from + 273.15, to + 273.15) / 1e5 - 1.01325, 0.001);

    [Theory]
    [InlineData(20, 1.01325, 1.1648, 0.00005, 0.999757)]
    [InlineData(20, 10, 11.5184, 0.00005, 0.997815)]
    [InlineData(20, 42, 48.558, 0.0005, 0.994094)]
    [InlineData(0, 42, 52.544, 0.0005, 0.985944)]
    [InlineData(20, 100, 114.842, 0.0005, 1.000785)]
    public void Density_and_compressibility(double celsius, double bar, double density, double half, double z)
    {
        Assert.Equal(density, Fluids.Value(Nitrogen.Density(celsius + 273.15, bar * 1e5)), half);
        var actual = Fluids.Value(Nitrogen.Density(celsius + 273.15, bar * 1e5));
        Assert.Equal(z, bar * 1e5 * Nitrogen.MolarMass / (actual * GasConstant * (celsius + 273.15)), 5e-7);
    }

    [Fact]
    public void Vapor_pressure_at_100_K() =>
        Assert.Equal(778.275, Fluids.Value(Fluids.Get("R-728").BubbleAtTemperature(100)).Pressure / 1000, 0.0005);

    [Theory]
    [InlineData(150, 0.319)]
    [InlineData(450, 0.945)]
    [InlineData(600, 1.278)]
    public void Slope_in_psi_per_degree_Fahrenheit_at_70_F(double psig, double slope) =>
        Assert.Equal(slope, Slope(Kelvin(70), (psig + Atmosphere) * Psi) / 1.8 / Psi, 0.0005);

    [Fact]
    public void Slope_at_43_bar_gauge_and_20_C() =>
        Assert.Equal(0.0166, Slope(293.15, 44.01325e5) / 1e6, 0.00005);

    // Second virial coefficient from memory of the usual compilations: about −10.3 and −4.5 cm³/mol, good to half a unit of the last digit
    // or the 0.2 cm³/mol that compilations differ by.
    [Theory]
    [InlineData(273.15, -10.3)]
    [InlineData(300, -4.5)]
    public void Second_virial_coefficient(double kelvin, double cubicCentimeters) =>
        Assert.Equal(cubicCentimeters, ((Fluids.Value(Nitrogen.Pressure(kelvin, Dilute * Nitrogen.MolarMass)) / (Dilute * GasConstant * kelvin)) - 1) / Dilute * 1e6, 0.2);

    [Fact]
    public void Outside_the_equation_there_is_a_reason()
    {
        Assert.Contains("critical temperature", Nitrogen.Density(100, 1e5).Reason.Words(), StringComparison.Ordinal);
        Assert.Contains("2200 MPa", Nitrogen.Density(300, -5).Reason.Words(), StringComparison.Ordinal);
        Assert.Contains("critical temperature", Nitrogen.Pressure(126.192, 1).Reason.Words(), StringComparison.Ordinal);
        Assert.Contains("1000 kg", Nitrogen.Pressure(300, 1001).Reason.Words(), StringComparison.Ordinal);
        Assert.Equal(0, Fluids.Value(Nitrogen.Pressure(300, 0)));
    }

    // A tight vessel: the density stays.
    private static double Warmed(double pascals, double from, double to) => Fluids.Value(Nitrogen.Pressure(to, Fluids.Value(Nitrogen.Density(from, pascals))));

    private static double Slope(double kelvin, double pascals) => (Warmed(pascals, kelvin, kelvin + 0.01) - Warmed(pascals, kelvin, kelvin - 0.01)) / 0.02;

    private static double Kelvin(double fahrenheit) => (fahrenheit + 459.67) / 1.8;
}
