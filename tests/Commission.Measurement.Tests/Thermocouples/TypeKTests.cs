using Commission.Measurement.Quantities;
using Commission.Measurement.Thermocouples;
using CsCheck;

namespace Commission.Measurement.Tests.Thermocouples;

public sealed class TypeKTests
{
    // Computed from the published coefficients by an independent program.
    [Theory]
    [InlineData(-40, "-1.5269")]
    [InlineData(-30, "-1.1561")]
    [InlineData(-20, "-0.7775")]
    [InlineData(-10, "-0.3919")]
    [InlineData(-1, "-0.0394")]
    [InlineData(1, "0.0395")]
    [InlineData(5, "0.1979")]
    [InlineData(10, "0.3969")]
    [InlineData(15, "0.5970")]
    [InlineData(20, "0.7981")]
    [InlineData(25, "1.0002")]
    [InlineData(30, "1.2033")]
    [InlineData(40, "1.6118")]
    [InlineData(50, "2.0231")]
    [InlineData(60, "2.4365")]
    [InlineData(80, "3.2666")]
    [InlineData(100, "4.0962")]
    [InlineData(120, "4.9199")]
    [InlineData(150, "6.1383")]
    [InlineData(200, "8.1385")]
    public void Emf_rows(double celsius, string millivolts) => Printed.Agrees(millivolts, TypeK.Emf(celsius));

    // NIST Monograph 175, from memory.
    [Theory]
    [InlineData(-200, "-5.891")]
    [InlineData(300, "12.209")]
    [InlineData(1000, "41.276")]
    public void Emf_of_the_printed_table(double celsius, string millivolts) => Printed.Agrees(millivolts, TypeK.Emf(celsius));

    [Theory]
    [InlineData(0, "39.450")]
    [InlineData(25, "40.518")]
    [InlineData(50, "41.246")]
    [InlineData(100, "41.369")]
    public void Seebeck_coefficients(double celsius, string microvolts)
    {
        // At 0 °C the two branches meet with slopes that differ in the fourth digit; the row is that of the lower one.
        var slope = celsius == 0 ? TypeK.Seebeck(-1e-9) : TypeK.Seebeck(celsius);
        Printed.Agrees(microvolts, 1000 * slope);
    }

    [Fact]
    public void The_branches_meet_at_zero() => Assert.Equal(0, TypeK.Emf(0), 1e-4);

    [Fact]
    public void The_inverse_returns() => Gen.Double[-249, 1371].Sample(t =>
        Assert.Equal(t, TypeK.TemperatureOf(TypeK.Emf(t))!.Value, 1e-8));

    [Fact]
    public void Outside_its_range_it_is_silent()
    {
        Assert.True(double.IsNaN(TypeK.Emf(1400)));
        Assert.True(double.IsNaN(TypeK.Seebeck(-300)));
        Assert.Null(TypeK.TemperatureOf(60));
        Assert.Null(TypeK.TemperatureOf(-7));
    }

    // Printed tolerance tables of IEC 60584-1 and ASTM E230.
    [Theory]
    [InlineData(ToleranceClass.Iec1, 100, 1.5)]
    [InlineData(ToleranceClass.Iec1, 500, 2.0)]
    [InlineData(ToleranceClass.Iec2, 100, 2.5)]
    [InlineData(ToleranceClass.Iec2, 400, 3.0)]
    [InlineData(ToleranceClass.Iec3, -100, 2.5)]
    [InlineData(ToleranceClass.Iec3, -200, 3.0)]
    [InlineData(ToleranceClass.AstmSpecial, 100, 1.1)]
    [InlineData(ToleranceClass.AstmSpecial, 500, 2.0)]
    [InlineData(ToleranceClass.AstmStandard, 100, 2.2)]
    [InlineData(ToleranceClass.AstmStandard, 1000, 7.5)]
    [InlineData(ToleranceClass.AstmStandard, -150, 3.0)]
    [InlineData(ToleranceClass.Iec1, 1001, null)]
    [InlineData(ToleranceClass.Iec2, -41, null)]
    [InlineData(ToleranceClass.AstmSpecial, -1, null)]
    public void Tolerances(ToleranceClass toleranceClass, double celsius, double? kelvins)
    {
        var tolerance = TypeKTolerance.At(toleranceClass, Temperature.FromCelsius(celsius))?.Kelvins;
        Assert.Equal(kelvins is null, tolerance is null);
        if (kelvins is { } k)
            Assert.Equal(k, tolerance!.Value, 1e-9);
    }
}
