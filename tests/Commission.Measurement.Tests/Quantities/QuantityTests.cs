using Commission.Measurement.Quantities;

namespace Commission.Measurement.Tests.Quantities;

public sealed class QuantityTests
{
    [Fact]
    public void Every_quantity_is_a_small_value_that_knows_its_dimension()
    {
        Assert.Equal(22, QuantityTypes().Length);
        foreach (var type in QuantityTypes())
        {
            Assert.Equal(type.Name, type.GetProperty("Dimension")!.GetValue(null)!.ToString());
            Assert.Equal(0.0, type.GetProperty("Si")!.GetValue(Activator.CreateInstance(type)));
            var two = type.GetMethod("FromSi")!.Invoke(null, [2.5])!;
            Assert.Equal(2.5, type.GetProperty("Si")!.GetValue(two));
            Assert.True(two.Equals(type.GetMethod("FromSi")!.Invoke(null, [2.5])));
            Assert.False(two.Equals(type.GetMethod("FromSi")!.Invoke(null, [2.25])));
        }
    }

    [Fact]
    public void Quantities_have_the_order_of_their_numbers() =>
        Assert.Equal([1.0, 2, 3], new[] { Mass.FromSi(3), Mass.FromSi(1), Mass.FromSi(2) }.Order().Select(m => m.Si));

    // NIST SP 811, B.8, from memory: 32 °F is 0 °C is 273.15 K; 5/9 K for each degree. A difference of 18 °F is 10 K, by hand.
    [Fact]
    public void Temperatures_and_their_differences()
    {
        Assert.Equal(32, Temperature.FromSi(273.15).Fahrenheit, 1e-10);
        Assert.Equal(0, Temperature.FromSi(273.15).Celsius);
        Assert.Equal(-40, Temperature.FromSi(233.15).Celsius, 1e-10);
        Assert.Equal(-40, Temperature.FromSi(233.15).Fahrenheit, 1e-10);
        Assert.Equal(10, TemperatureDifference.FromFahrenheitDegrees(18).Si, 1e-12);
        Assert.Equal(1.5, Duration.FromSi(90).Minutes);
        Assert.Equal(42, Length.FromMeters(42).Meters);
    }

    [Fact]
    public void A_stated_pressure_knows_what_it_is_counted_from()
    {
        var atmosphere = Pressure.FromPascals(100_000);
        Assert.Equal(150_000, new StatedPressure(50_000, PressureReference.Gauge).ToAbsolute(atmosphere).Si);
        Assert.Equal(50_000, new StatedPressure(50_000, PressureReference.Absolute).ToAbsolute(atmosphere).Si);
        Assert.Equal(50_000, new StatedPressure(50_000, PressureReference.BelowAtmosphere).ToAbsolute(atmosphere).Si);
        Assert.Equal(-50_000, new StatedPressure(50_000, PressureReference.BelowAtmosphere).ToGauge(atmosphere).Si);

        // 10 inHg vac under a standard atmosphere is 67.5 kPa, 15 is 50.5 kPa (levels of 40 CFR 82.156, table 1).
        var sea = Pressure.FromPascals(ConversionFactors.StandardAtmosphere);
        Printed.Agrees("67.5", new StatedPressure(10 * ConversionFactors.InchOfMercury, PressureReference.BelowAtmosphere).ToAbsolute(sea).Si / 1000);
        Printed.Agrees("50.5", new StatedPressure(15 * ConversionFactors.InchOfMercury, PressureReference.BelowAtmosphere).ToAbsolute(sea).Si / 1000);
    }

    private static Type[] QuantityTypes() => [.. typeof(Pressure).Assembly.GetExportedTypes()
        .Where(t => t.IsValueType && t.GetInterfaces().Any(i => i.IsGenericType && i.GetGenericTypeDefinition() == typeof(IQuantity<>)))];
}
