using System.Reflection;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;

namespace Commission.Measurement.Tests.Quantities;

public sealed class QuantityTests
{
    // Names of factories and the unit of the table they mean; the table itself is checked against sources outside.
    private static readonly Dictionary<string, (Dimension Dimension, string Symbol)> Units = new()
    {
        ["Pressure.Pascals"] = (Dimension.Pressure, "Pa(a)"),
        ["Pressure.Kilopascals"] = (Dimension.Pressure, "kPaa"),
        ["Pressure.Megapascals"] = (Dimension.Pressure, "MPa(a)"),
        ["Pressure.Bar"] = (Dimension.Pressure, "bar(a)"),
        ["Pressure.Millibar"] = (Dimension.Pressure, "mbar(a)"),
        ["Pressure.Psia"] = (Dimension.Pressure, "psia"),
        ["Pressure.Microns"] = (Dimension.Pressure, "micron"),
        ["Pressure.Torr"] = (Dimension.Pressure, "Torr"),
        ["Pressure.InchesOfMercury"] = (Dimension.Pressure, "inHg abs"),
        ["PressureDifference.Pascals"] = (Dimension.PressureDifference, "Pa"),
        ["PressureDifference.Kilopascals"] = (Dimension.PressureDifference, "kPa"),
        ["PressureDifference.Bar"] = (Dimension.PressureDifference, "bar"),
        ["PressureDifference.Psi"] = (Dimension.PressureDifference, "psi"),
        ["PressureDifference.InchesOfWater"] = (Dimension.PressureDifference, "inwc"),
        ["PressureDifference.Microns"] = (Dimension.PressureDifference, "micron"),
        ["Temperature.Kelvins"] = (Dimension.Temperature, "K"),
        ["Temperature.Celsius"] = (Dimension.Temperature, "°C"),
        ["Temperature.Fahrenheit"] = (Dimension.Temperature, "°F"),
        ["TemperatureDifference.Kelvins"] = (Dimension.TemperatureDifference, "K"),
        ["TemperatureDifference.FahrenheitDegrees"] = (Dimension.TemperatureDifference, "°F"),
        ["Mass.Kilograms"] = (Dimension.Mass, "kg"),
        ["Mass.Grams"] = (Dimension.Mass, "g"),
        ["Mass.Pounds"] = (Dimension.Mass, "lb"),
        ["Mass.Ounces"] = (Dimension.Mass, "oz"),
        ["Length.Meters"] = (Dimension.Length, "m"),
        ["Length.Millimeters"] = (Dimension.Length, "mm"),
        ["Length.Feet"] = (Dimension.Length, "ft"),
        ["Length.Inches"] = (Dimension.Length, "in"),
        ["Area.SquareMeters"] = (Dimension.Area, "m²"),
        ["Area.SquareFeet"] = (Dimension.Area, "ft²"),
        ["Area.SquareInches"] = (Dimension.Area, "in²"),
        ["Volume.CubicMeters"] = (Dimension.Volume, "m³"),
        ["Volume.Liters"] = (Dimension.Volume, "L"),
        ["Volume.CubicFeet"] = (Dimension.Volume, "ft³"),
        ["Duration.Seconds"] = (Dimension.Duration, "s"),
        ["Duration.Minutes"] = (Dimension.Duration, "min"),
        ["Duration.Hours"] = (Dimension.Duration, "h"),
        ["Duration.Days"] = (Dimension.Duration, "d"),
        ["VolumeFlow.CubicMetersPerSecond"] = (Dimension.VolumeFlow, "m³/s"),
        ["VolumeFlow.CubicMetersPerHour"] = (Dimension.VolumeFlow, "m³/h"),
        ["VolumeFlow.LitersPerSecond"] = (Dimension.VolumeFlow, "L/s"),
        ["VolumeFlow.CubicFeetPerMinute"] = (Dimension.VolumeFlow, "cfm"),
        ["MassFlow.KilogramsPerSecond"] = (Dimension.MassFlow, "kg/s"),
        ["MassFlow.KilogramsPerHour"] = (Dimension.MassFlow, "kg/h"),
        ["MassFlow.PoundsPerHour"] = (Dimension.MassFlow, "lb/h"),
        ["MassFlow.PoundsPerMinute"] = (Dimension.MassFlow, "lb/min"),
        ["MassFlow.GramsPerYear"] = (Dimension.MassFlow, "g/yr"),
        ["Velocity.MetersPerSecond"] = (Dimension.Velocity, "m/s"),
        ["Velocity.FeetPerMinute"] = (Dimension.Velocity, "fpm"),
        ["Power.Watts"] = (Dimension.Power, "W"),
        ["Power.Kilowatts"] = (Dimension.Power, "kW"),
        ["Power.BtuPerHour"] = (Dimension.Power, "Btu/h"),
        ["Power.TonsOfRefrigeration"] = (Dimension.Power, "ton"),
        ["Torque.NewtonMeters"] = (Dimension.Torque, "N·m"),
        ["Torque.PoundForceFeet"] = (Dimension.Torque, "lbf·ft"),
        ["Torque.PoundForceInches"] = (Dimension.Torque, "lbf·in"),
        ["ElectricCurrent.Amperes"] = (Dimension.ElectricCurrent, "A"),
        ["ElectricCurrent.Milliamperes"] = (Dimension.ElectricCurrent, "mA"),
        ["Voltage.Volts"] = (Dimension.Voltage, "V"),
        ["Voltage.Millivolts"] = (Dimension.Voltage, "mV"),
        ["Capacitance.Microfarads"] = (Dimension.Capacitance, "µF"),
        ["Resistance.Ohms"] = (Dimension.Resistance, "Ω"),
        ["Resistance.Megohms"] = (Dimension.Resistance, "MΩ"),
        ["Frequency.Hertz"] = (Dimension.Frequency, "Hz"),
        ["Frequency.RevolutionsPerMinute"] = (Dimension.Frequency, "rpm"),
        ["Ratio.Fraction"] = (Dimension.Ratio, "1"),
        ["Ratio.Percent"] = (Dimension.Ratio, "%"),
        ["MassPerLength.KilogramsPerMeter"] = (Dimension.MassPerLength, "kg/m"),
        ["MassPerLength.GramsPerMeter"] = (Dimension.MassPerLength, "g/m"),
        ["MassPerLength.OuncesPerFoot"] = (Dimension.MassPerLength, "oz/ft"),
        ["Density.KilogramsPerCubicMeter"] = (Dimension.Density, "kg/m³"),
        ["Density.GramsPerCubicMeter"] = (Dimension.Density, "g/m³"),
        ["Density.PoundsPerCubicFoot"] = (Dimension.Density, "lb/ft³"),
        ["SpecificEnthalpy.JoulesPerKilogram"] = (Dimension.SpecificEnthalpy, "J/kg"),
        ["SpecificEnthalpy.KilojoulesPerKilogram"] = (Dimension.SpecificEnthalpy, "kJ/kg"),
        ["SpecificEnthalpy.BtuPerPound"] = (Dimension.SpecificEnthalpy, "Btu/lb"),
        ["Throughput.PascalCubicMetersPerSecond"] = (Dimension.Throughput, "Pa·m³/s"),
        ["Throughput.MillibarLitersPerSecond"] = (Dimension.Throughput, "mbar·L/s"),
        ["PressureRate.PascalsPerSecond"] = (Dimension.PressureRate, "Pa/s"),
        ["PressureRate.PascalsPerMinute"] = (Dimension.PressureRate, "Pa/min"),
        ["PressureRate.MicronsPerMinute"] = (Dimension.PressureRate, "micron/min"),
        ["PowerPerFlow.WattsPerCfm"] = (Dimension.PowerPerFlow, "W/cfm"),
        ["FlowPerPower.CfmPerTon"] = (Dimension.FlowPerPower, "cfm/ton"),
    };

    // One in the coherent SI unit: nothing to convert.
    private static readonly HashSet<string> Coherent = ["Capacitance.Farads", "PowerPerFlow.JoulesPerCubicMeter", "FlowPerPower.CubicMetersPerJoule"];

    public static TheoryData<string, string> EveryFactory()
    {
        var data = new TheoryData<string, string>();
        foreach (var type in QuantityTypes())
        {
            foreach (var factory in type.GetMethods(BindingFlags.Public | BindingFlags.Static)
                .Where(m => m.Name.StartsWith("From", StringComparison.Ordinal) && m.Name != "FromSi" && m.GetParameters()[0].ParameterType == typeof(double)))
            {
                data.Add(type.Name, factory.Name[4..]);
            }
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(EveryFactory))]
    public void Every_factory_agrees_with_the_unit_table_and_returns(string type, string unit)
    {
        var quantity = QuantityTypes().Single(t => t.Name == type);
        var value = quantity.GetMethod("From" + unit)!.Invoke(null, [12.5])!;
        var si = (double)quantity.GetProperty("Si")!.GetValue(value)!;
        Assert.Equal(12.5, (double)quantity.GetProperty(unit)!.GetValue(value)!, 1e-10);
        if (Coherent.Contains($"{type}.{unit}"))
        {
            Assert.Equal(12.5, si);
            return;
        }

        var (dimension, symbol) = Units[$"{type}.{unit}"];
        var expected = UnitTable.Find(symbol, dimension)!.ToSi(12.5);
        Assert.Equal(expected, si, expected * 1e-13);
    }

    [Fact]
    public void Every_quantity_is_a_small_value_that_knows_its_dimension()
    {
        Assert.Equal(27, QuantityTypes().Count());
        foreach (var type in QuantityTypes())
        {
            Assert.True(type.IsValueType);
            Assert.Equal(type.Name, type.GetProperty("Dimension")!.GetValue(null)!.ToString());
            Assert.Equal(0.0, type.GetProperty("Si")!.GetValue(Activator.CreateInstance(type)));
        }
    }

    [Fact]
    public void Differences_of_points_are_differences()
    {
        TemperatureDifference superheat = Temperature.FromFahrenheit(57.1) - Temperature.FromFahrenheit(44);
        Assert.Equal(13.1, superheat.FahrenheitDegrees, 1e-9);
        Assert.Equal(13.1 / 1.8, superheat.Kelvins, 1e-9);
        Assert.Equal(57.1, (Temperature.FromFahrenheit(44) + superheat).Fahrenheit, 1e-9);
        Assert.Equal(44, (Temperature.FromFahrenheit(57.1) - superheat).Fahrenheit, 1e-9);
        PressureDifference rise = Pressure.FromPsia(20) - Pressure.FromPsia(15);
        Assert.Equal(5, rise.Psi, 1e-12);
        Assert.Equal(20, (Pressure.FromPsia(15) + rise).Psia, 1e-12);
        Assert.Equal(15, (Pressure.FromPsia(20) - rise).Psia, 1e-12);

        // 356.6/133.05 psia: a compression ratio of 2.68, by hand.
        Printed.Agrees("2.68", Pressure.FromPsia(356.6) / Pressure.FromPsia(133.05));
    }

    [Fact]
    public void Quantities_of_a_kind_add_scale_and_compare()
    {
        var charge = Mass.FromPounds(6) + Mass.FromOunces(8);
        Assert.Equal(104, charge.Ounces, 1e-9);
        Assert.Equal(208, (charge * 2).Ounces, 1e-9);
        Assert.Equal(208, (2 * charge).Ounces, 1e-9);
        Assert.Equal(52, (charge / 2).Ounces, 1e-9);
        Assert.Equal(-104, (-charge).Ounces, 1e-9);
        Assert.Equal(96, (charge - Mass.FromOunces(8)).Ounces, 1e-9);
        Assert.Equal(6.5, charge / Mass.FromPounds(1), 1e-12);
        Assert.True(charge > Mass.FromPounds(6));
        Assert.True(charge >= Mass.FromPounds(6));
        Assert.True(Temperature.FromCelsius(0) < Temperature.FromFahrenheit(33));
        Assert.True(Temperature.FromCelsius(0) <= Temperature.FromFahrenheit(33));
        Assert.Equal(Mass.FromKilograms(1), Mass.FromKilograms(1));
        Assert.Equal(Mass.FromKilograms(double.NaN), Mass.FromKilograms(double.NaN));
        Assert.Equal([1.0, 2, 3], new[] { Mass.FromKilograms(3), Mass.FromKilograms(1), Mass.FromKilograms(2) }.Order().Select(m => m.Kilograms));
    }

    [Fact]
    public void Kinds_combine_as_the_trade_uses_them()
    {
        // 75 ft of line at 1.2 oz/ft is 90 oz (worked in a generic installation manual).
        Assert.Equal(90, (MassPerLength.FromOuncesPerFoot(1.2) * Length.FromFeet(75)).Ounces, 1e-9);
        Assert.Equal(1.2, (Mass.FromOunces(90) / Length.FromFeet(75)).OuncesPerFoot, 1e-9);

        // 5 L rising 500 micron in 600 s: 5.5551e-4 Pa·m³/s, computed by an independent program.
        Printed.Agrees("5.5551e-4", (PressureDifference.FromMicrons(500) / Duration.FromMinutes(10) * Volume.FromLiters(5)).PascalCubicMetersPerSecond);

        // 500 lb/h of 2.1 lb/ft³ in a tube of 0.785 in: 1180.7 fpm, computed by an independent program.
        var bore = Length.FromInches(0.785);
        var area = bore * bore * (Math.PI / 4);
        var flow = VolumeFlow.FromCubicMetersPerSecond(MassFlow.FromPoundsPerHour(500).Si / Density.FromPoundsPerCubicFoot(2.1).Si);
        Printed.Agrees("1180.7", (flow / area).FeetPerMinute);
        Assert.Equal(flow.Si, (area * (flow / area)).Si, 1e-15);
        Assert.Equal(500, (flow * Density.FromPoundsPerCubicFoot(2.1)).PoundsPerHour, 1e-9);

        // 1200 cfm for 3 ton is 400 cfm/ton; 480 W for 1200 cfm is 0.4 W/cfm.
        Assert.Equal(400, (VolumeFlow.FromCubicFeetPerMinute(1200) / Power.FromTonsOfRefrigeration(3)).CfmPerTon, 1e-9);
        Assert.Equal(0.4, (Power.FromWatts(480) / VolumeFlow.FromCubicFeetPerMinute(1200)).WattsPerCfm, 1e-12);

        // 50 m³ at 420 g/m³ is 21 kg; 0.05 kg/s through 143.6 kJ/kg is 7.18 kW.
        Assert.Equal(21, (Density.FromGramsPerCubicMeter(420) * Volume.FromCubicMeters(50)).Kilograms, 1e-12);
        Assert.Equal(7.18, (MassFlow.FromKilogramsPerSecond(0.05) * SpecificEnthalpy.FromKilojoulesPerKilogram(143.6)).Kilowatts, 1e-12);
        Assert.Equal(0.42, (Mass.FromKilograms(21) / Volume.FromCubicMeters(50)).KilogramsPerCubicMeter, 1e-12);
        Assert.Equal(2, (Mass.FromKilograms(120) / Duration.FromMinutes(1)).KilogramsPerSecond, 1e-12);
        Assert.Equal(6, (Length.FromMeters(2) * Length.FromMeters(3)).SquareMeters);
        Assert.Equal(24, (Area.FromSquareMeters(6) * Length.FromMeters(4)).CubicMeters);
        Assert.Equal(3, (Volume.FromCubicMeters(6) / Duration.FromSeconds(2)).CubicMetersPerSecond);
        Assert.Equal(6, (VolumeFlow.FromCubicMetersPerSecond(3) * Duration.FromSeconds(2)).CubicMeters);
        Assert.Equal(46, (Voltage.FromVolts(230) / ElectricCurrent.FromAmperes(5)).Ohms);
        Assert.Equal(1150, (Voltage.FromVolts(230) * ElectricCurrent.FromAmperes(5)).Watts);
        Assert.Equal(90, Duration.FromTimeSpan(TimeSpan.FromMinutes(1.5)).Seconds);
        Assert.Equal(501.67, Temperature.FromFahrenheit(42).Rankine, 1e-9);
    }

    [Fact]
    public void A_stated_pressure_knows_what_it_is_counted_from()
    {
        var atmosphere = Pressure.FromPascals(100_000);
        Assert.Equal(150_000, new StatedPressure(50_000, PressureReference.Gauge).ToAbsolute(atmosphere).Pascals);
        Assert.Equal(50_000, new StatedPressure(50_000, PressureReference.Absolute).ToAbsolute(atmosphere).Pascals);
        Assert.Equal(50_000, new StatedPressure(50_000, PressureReference.BelowAtmosphere).ToAbsolute(atmosphere).Pascals);
        Assert.Equal(-50_000, new StatedPressure(50_000, PressureReference.BelowAtmosphere).ToGauge(atmosphere).Pascals);

        // 10 inHg vac under a standard atmosphere is 67.5 kPa, 15 is 50.5 kPa (levels of 40 CFR 82.156, table 1).
        var sea = Pressure.FromPascals(101_325);
        Printed.Agrees("67.5", new StatedPressure(PressureInHg(10), PressureReference.BelowAtmosphere).ToAbsolute(sea).Kilopascals);
        Printed.Agrees("50.5", new StatedPressure(PressureInHg(15), PressureReference.BelowAtmosphere).ToAbsolute(sea).Kilopascals);
    }

    private static double PressureInHg(double depth) => Pressure.FromInchesOfMercury(depth).Pascals;

    private static IEnumerable<Type> QuantityTypes() => typeof(Pressure).Assembly.GetExportedTypes()
        .Where(t => t.IsValueType && t.GetInterfaces().Any(i => i.IsGenericType && i.GetGenericTypeDefinition() == typeof(IQuantity<>)))
        .OrderBy(t => t.Name, StringComparer.Ordinal);
}
