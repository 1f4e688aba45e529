using Commission.Measurement.Atmosphere;
using Commission.Measurement.Quantities;

namespace Commission.Measurement.Tests.Atmosphere;

public sealed class StandardAtmosphereTests
{
    // Computed by an independent program from the formula as ASHRAE and ISO 2533 print it, with its rounded exponent 5.25588.
    [Theory]
    [InlineData(0, "101325.0", "14.6959", "29.921")]
    [InlineData(300, "97772.6", "14.1807", "28.872")]
    [InlineData(500, "95460.8", "13.8454", "28.190")]
    [InlineData(1000, "89874.6", "13.0352", "26.540")]
    [InlineData(1500, "84556.0", "12.2638", "24.969")]
    [InlineData(1609.344, "83427.6", "12.1001", "24.636")]
    [InlineData(2000, "79495.2", "11.5298", "23.475")]
    [InlineData(3000, "70108.5", "10.1684", "20.703")]
    [InlineData(5000, "54019.9", "7.8349", "15.952")]
    public void Printed_rows(double meters, string pascals, string psia, string inHg)
    {
        var pressure = StandardAtmosphere.At(Length.FromMeters(meters));
        Printed.Agrees(pascals, pressure.Pascals);
        Printed.Agrees(psia, pressure.Psia);
        Printed.Agrees(inHg, pressure.InchesOfMercury);
    }

    [Fact]
    public void Tropopause_and_above()
    {
        Printed.Agrees("22632.06", StandardAtmosphere.At(Length.FromMeters(11000)).Pascals);

        // U.S. Standard Atmosphere 1976 at 20 km geopotential, from memory: 5474.89 Pa.
        Printed.Agrees("5474.89", StandardAtmosphere.At(Length.FromMeters(20000)).Pascals);
    }

    [Fact]
    public void Outside_the_standard_it_says_so()
    {
        Assert.True(StandardAtmosphere.Covers(Length.FromFeet(5280)));
        Assert.False(StandardAtmosphere.Covers(Length.FromFeet(100000)));
        Assert.Throws<ArgumentOutOfRangeException>(() => StandardAtmosphere.At(Length.FromFeet(100000)));
    }
}
