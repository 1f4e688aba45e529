using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Messages;

namespace Commission.Measurement.Tests.Units;

/// <summary>What the rules of the job file promise. SI values worked out by hand from the definitions of the units.</summary>
public sealed class QuantityParserTests
{
    [Theory]
    [InlineData("118.4 psig", Dimension.Pressure, 816339.2635, "118.4 psig", 1)]
    [InlineData("118.4psig", Dimension.Pressure, 816339.2635, "118.4 psig", 1)]
    [InlineData("118.4 PSIG", Dimension.Pressure, 816339.2635, "118.4 psig", 1)]
    [InlineData("14.6959 psia", Dimension.Pressure, 101324.6637, "14.6959 psia", 4)]
    [InlineData("820 kPag", Dimension.Pressure, 820000, "820 kPag", 0)]
    [InlineData("820 kPa(g)", Dimension.Pressure, 820000, "820 kPag", 0)]
    [InlineData("8.2 bar(g)", Dimension.Pressure, 820000, "8.2 bar(g)", 1)]
    [InlineData("8.2 barg", Dimension.Pressure, 820000, "8.2 bar(g)", 1)]
    [InlineData("4.15 MPa(g)", Dimension.Pressure, 4150000, "4.15 MPa(g)", 2)]
    [InlineData("20 inHg vac", Dimension.Pressure, 67727.77, "20 inHg vac", 0)]
    [InlineData("25 mmHg abs", Dimension.Pressure, 3333.0597, "25 mmHg abs", 0)]
    [InlineData("500 micron", Dimension.VacuumLevel, 66.6611937, "500 micron", 0)]
    [InlineData("500 um Hg", Dimension.VacuumLevel, 66.6611937, "500 micron", 0)]
    [InlineData("500 \u00B5m Hg", Dimension.VacuumLevel, 66.6611937, "500 micron", 0)]
    [InlineData("500 \u03BCmHg", Dimension.VacuumLevel, 66.6611937, "500 micron", 0)]
    [InlineData("500 mTorr", Dimension.VacuumLevel, 66.6611842, "500 mTorr", 0)]
    [InlineData("5 Torr", Dimension.VacuumLevel, 666.611842, "5 Torr", 0)]
    [InlineData("270 Pa", Dimension.VacuumLevel, 270, "270 Pa", 0)]
    [InlineData("2.7 mbar", Dimension.VacuumLevel, 270, "2.7 mbar", 1)]
    [InlineData("2.7 mbar(a)", Dimension.VacuumLevel, 270, "2.7 mbar(a)", 1)]
    [InlineData("2.7 hPa(a)", Dimension.VacuumLevel, 270, "2.7 hPa(a)", 1)]
    [InlineData("24.64 inHg", Dimension.AtmosphericPressure, 83440.616, "24.64 inHg", 2)]
    [InlineData("834.4 hPa", Dimension.AtmosphericPressure, 83440, "834.4 hPa", 1)]
    [InlineData("2.5 psi", Dimension.PressureDifference, 17236.8932, "2.5 psi", 1)]
    [InlineData("0.52 inwc", Dimension.PressureDifference, 129.526233, "0.52 inwc", 2)]
    [InlineData(".52 in wc", Dimension.PressureDifference, 129.526233, "0.52 inwc", 2)]
    [InlineData("-0.21 in. w.c.", Dimension.PressureDifference, -52.30867, "−0.21 inwc", 2)]
    [InlineData("45.2 \u00B0F", Dimension.Temperature, 280.4833333, "45.2 \u00B0F", 1)]
    [InlineData("45.2F", Dimension.Temperature, 280.4833333, "45.2 \u00B0F", 1)]
    [InlineData("45.2 degF", Dimension.Temperature, 280.4833333, "45.2 \u00B0F", 1)]
    [InlineData("\u221240 \u00B0C", Dimension.Temperature, 233.15, "−40 \u00B0C", 0)]
    [InlineData("280.5 K", Dimension.Temperature, 280.5, "280.5 K", 1)]
    [InlineData("10 \u00B0F", Dimension.TemperatureDifference, 5.5555556, "10 \u00B0F", 0)]
    [InlineData("10 \u00B0C", Dimension.TemperatureDifference, 10, "10 \u00B0C", 0)]
    [InlineData("3/8 in", Dimension.Length, 0.009525, "3/8 in", 0)]
    [InlineData("3/8\"", Dimension.Length, 0.009525, "3/8 in", 0)]
    [InlineData("1 1/8 in", Dimension.Length, 0.028575, "1 1/8 in", 0)]
    [InlineData("1-1/8 in", Dimension.Length, 0.028575, "1 1/8 in", 0)]
    [InlineData("1\u215B in", Dimension.Length, 0.028575, "1 1/8 in", 0)]
    [InlineData("5 ft 3 in", Dimension.Length, 1.6002, "5 ft 3 in", 0)]
    [InlineData("5'3\"", Dimension.Length, 1.6002, "5 ft 3 in", 0)]
    [InlineData("5 ft 3 1/2 in", Dimension.Length, 1.6129, "5 ft 3 1/2 in", 0)]
    [InlineData("9.52 mm", Dimension.Length, 0.00952, "9.52 mm", 2)]
    [InlineData("11 lb 4 oz", Dimension.Mass, 5.1029142, "11 lb 4 oz", 0)]
    [InlineData("1 lb 0.3 oz", Dimension.Mass, 0.462097227, "1 lb 0.3 oz", 1)]
    [InlineData("-1 lb 8 oz", Dimension.Mass, -0.680388555, "−1 lb 8 oz", 0)]
    [InlineData("2.4 kg", Dimension.Mass, 2.4, "2.4 kg", 1)]
    [InlineData("1.56 t CO2e", Dimension.Mass, 1560, "1.56 t", 2)]
    [InlineData("1 h 20 min", Dimension.Duration, 4800, "1 h 20 min", 0)]
    [InlineData("1h20min", Dimension.Duration, 4800, "1 h 20 min", 0)]
    [InlineData("1 hour 20 minutes 5 s", Dimension.Duration, 4805, "1 h 20 min 5 s", 0)]
    [InlineData("12 min", Dimension.Duration, 720, "12 min", 0)]
    [InlineData("35 kBtu/h", Dimension.Power, 10257.4873, "35 kBtu/h", 0)]
    [InlineData("3 ton", Dimension.Power, 10550.558526, "3 ton", 0)]
    [InlineData("1 1/2 tons", Dimension.Power, 5275.279263, "1 1/2 ton", 0)]
    [InlineData("20 lbf·ft", Dimension.Torque, 27.11635897, "20 lbf·ft", 0)]
    [InlineData("20 lbf-ft", Dimension.Torque, 27.11635897, "20 lbf·ft", 0)]
    [InlineData("20 ft·lb", Dimension.Torque, 27.11635897, "20 lbf·ft", 0)]
    [InlineData("6 cfm", Dimension.VolumeFlow, 0.00283168466, "6 cfm", 0)]
    [InlineData("0.60 oz/ft", Dimension.MassPerLength, 0.0558061479, "0.60 oz/ft", 2)]
    [InlineData("24 g/m", Dimension.MassPerLength, 0.024, "24 g/m", 0)]
    [InlineData("0.45 W/cfm", Dimension.PowerPerFlow, 953.4960002, "0.45 W/cfm", 2)]
    [InlineData("400 cfm/ton", Dimension.FlowPerPower, 5.367838e-5, "400 cfm/ton", 0)]
    [InlineData("5 g/yr", Dimension.MassFlow, 1.584404391e-10, "5 g/yr", 0)]
    [InlineData("45 uF", Dimension.Capacitance, 45e-6, "45 \u00B5F", 0)]
    [InlineData("460 ft2", Dimension.Area, 42.735398, "460 ft²", 0)]
    [InlineData("460 sq ft", Dimension.Area, 42.735398, "460 ft²", 0)]
    [InlineData("50 %", Dimension.Ratio, 0.5, "50 %", 0)]
    [InlineData("50%", Dimension.Ratio, 0.5, "50 %", 0)]
    [InlineData("20 Mohm", Dimension.Resistance, 20e6, "20 MΩ", 0)]
    [InlineData("12 micron/min", Dimension.PressureRate, 0.0266644775, "12 micron/min", 0)]
    [InlineData("1e3 Pa", Dimension.VacuumLevel, 1000, "1e3 Pa", 0)]
    [InlineData("1\u202F250\u00A0cfm", Dimension.VolumeFlow, double.NaN, "", 0)]
    public void Reads_what_people_write(string text, Dimension dimension, double si, string canonical, int decimals)
    {
        var result = QuantityParser.Parse(text, dimension);
        if (double.IsNaN(si))
        {
            Assert.Equal("\"1 250\" looks like one number with a space in it. Write 1250, without the space.", Assert.IsType<ParseFault>(result.Fault).Text(Language.English));
            return;
        }

        Assert.True(result.Ok, result.Fault?.Text(Language.English));
        Assert.Equal(canonical, result.Value.Canonical);
        Assert.Equal(decimals, result.Value.Decimals);
        Assert.Equal(si, result.Value.Si, Math.Abs(si) * 1e-7);
    }

    // Directive 2014/68/EU article 2 point 7: a pressure is one relative to the atmosphere, that is gauge pressure.
    [Theory]
    [InlineData("28 bar", "28 bar(g)", 28e5, PressureReference.Gauge)]
    [InlineData("2.8 MPa ± 0.1", "2.8 ± 0.1 MPa(g)", 2.8e6, PressureReference.Gauge)]
    [InlineData("28 ± 1 bar", "28 ± 1 bar(g)", 28e5, PressureReference.Gauge)]
    [InlineData("29 bar(a)", "29 bar(a)", 29e5, PressureReference.Absolute)]
    public void A_pressure_of_a_plate_is_gauge(string text, string canonical, double si, PressureReference reference)
    {
        var read = QuantityParser.ParseGauge(text).Value!;
        Assert.Equal((canonical, reference), (read.Canonical, read.Reference));
        Assert.Equal(si, read.Si, 1e-3);
    }

    [Theory]
    [InlineData("28")]
    [InlineData("28 kg")]
    [InlineData("20 inHg")]
    [InlineData("bar")]
    public void What_is_no_pressure_of_a_plate_is_told_as_a_pressure(string text) =>
        Assert.Equal(QuantityParser.Parse(text, Dimension.Pressure).Fault, QuantityParser.ParseGauge(text).Fault);

    // psi and inHg have no gauge unit to offer in SI.
    [Theory]
    [InlineData("118.9 psi", Dimension.Pressure, "Write it in bar(g), bar(a), kPag, kPaa, MPa(g) or MPa(a).")]
    [InlineData("8 bar", Dimension.Pressure, "Write 8 bar(g) (what a service gauge shows) or bar(a).")]
    [InlineData("118", Dimension.Pressure, "Write 118 bar(g) or 118 bar(a).")]
    [InlineData("118.4 pisg", Dimension.Pressure, "Write it in bar(g), bar(a), kPag, kPaa, MPa(g) or MPa(a).")]
    [InlineData("5 psig", Dimension.PressureDifference, "Write it in kPa, Pa, bar, mbar, hPa or MPa.")]
    [InlineData("8 m", Dimension.Mass, "Write it in kg, g or t.")]
    [InlineData("heavy", Dimension.Temperature, "Write it like 7.3 °C.")]
    [InlineData("x", Dimension.VacuumLevel, "Write it like 64 Pa.")]
    public void Advice_for_a_file_in_SI(string text, Dimension dimension, string advice) =>
        Assert.Equal(advice, QuantityParser.Parse(text, dimension).Fault!.SiAdvice.Said());

    // NIST SP 811 appendix B lists these as units of the inch-pound system; the others of the table are metric, or of vacuum gauges.
    [Fact]
    public void A_unit_is_of_inch_and_pound_or_metric()
    {
        string[] metric = ["kPa", "bar", "mbar", "hPa", "Pa", "°C", "K", "kg", "g", "t", "m", "mm", "m³/h", "L/s", "kW", "W", "N·m", "micron", "Torr", "mTorr", "A", "V", "%", "min", "h"];
        string[] customary = ["psig", "psia", "psi", "inHg", "inwc", "°F", "lb", "oz", "ft", "in", "cfm", "fpm", "Btu/h", "ton", "lbf·ft", "oz/ft", "W/cfm"];
        Assert.All(UnitTable.All.Where(u => metric.Contains(u.Symbol)), u => Assert.False(u.IsCustomary, u.Symbol));
        Assert.All(customary, s => Assert.Contains(UnitTable.All, u => u.Symbol == s && u.IsCustomary));
        Assert.All(UnitTable.All.Where(u => u.Dimension != Dimension.Duration && !metric.Contains(u.Symbol) && u.Symbol.Split('/', ' ', '·').Intersect(["psi", "psig", "psia", "lb", "oz", "ft", "in", "inHg", "Btu", "cfm", "ton"]).Any()),
            u => Assert.True(u.IsCustomary, u.Symbol));
    }

    [Theory]
    [InlineData("118.9 psi", Dimension.Pressure, "\"118.9 psi\" does not say gauge or absolute. Write 118.9 psig (what a service gauge shows) or psia.", 0, 9)]
    [InlineData(" 820 kPa", Dimension.Pressure, "\"820 kPa\" does not say gauge or absolute. Write 820 kPag (what a service gauge shows) or kPaa.", 1, 7)]
    [InlineData("8 bar", Dimension.Pressure, "\"8 bar\" does not say gauge or absolute. Write 8 bar(g) (what a service gauge shows) or bar(a).", 0, 5)]
    [InlineData("20 inHg", Dimension.Pressure, "\"20 inHg\" does not say gauge or absolute. Write 20 inHg vac (the depth a compound gauge shows) or inHg abs.", 0, 7)]
    [InlineData("29.5 inHg vac", Dimension.VacuumLevel, "\"29.5 inHg vac\" is a depth below the atmosphere, and a compound gauge cannot show dryness. Expected here: a vacuum level. Write what a vacuum gauge reads, in micron, Torr, Pa or mbar.", 0, 13)]
    [InlineData("0.01 psi", Dimension.VacuumLevel, "\"0.01 psi\" does not say gauge or absolute. Write 0.01 psia if it is absolute, or the reading of a vacuum gauge in micron, Torr, Pa or mbar.", 0, 8)]
    [InlineData("-14.6 psig", Dimension.VacuumLevel, "\"-14.6 psig\" is counted from the atmosphere, which a gauge cannot resolve near vacuum. Expected here: a vacuum level. Write what a vacuum gauge reads, in micron, Torr, Pa or mbar.", 0, 10)]
    [InlineData("5 psig", Dimension.PressureDifference, "\"5 psig\" is a pressure against the atmosphere. Expected here: a pressure difference. Write 5 psi.", 0, 6)]
    [InlineData("5 psig", Dimension.AtmosphericPressure, "\"5 psig\" is counted from the atmosphere itself. Expected here: a barometer reading. Write what a barometer at the site reads, such as 24.64 inHg or 834 hPa.", 0, 6)]
    [InlineData("8 in", Dimension.Mass, "\"8 in\" is a length. Expected here: a mass. Write it in lb, oz, kg, g or t.", 0, 4)]
    [InlineData("460 ft2", Dimension.Length, "\"460 ft2\" is an area. Expected here: a length. Write it in ft, in, m, mm or cm.", 0, 7)]
    [InlineData("118.4 pisg", Dimension.Pressure, "\"pisg\" is not a unit known here. Expected here: a pressure. Did you mean 118.4 psig?", 6, 4)]
    [InlineData("480 micorn", Dimension.VacuumLevel, "\"micorn\" is not a unit known here. Expected here: a vacuum level. Did you mean 480 micron?", 4, 6)]
    [InlineData("20 xyzzy", Dimension.Torque, "\"xyzzy\" is not a unit known here. Expected here: a torque. Write it in lbf·ft, N·m, lbf·in or kgf·m.", 3, 5)]
    [InlineData("10 AWG", Dimension.Length, "\"AWG\" is not a unit known here. Expected here: a length. Write it in ft, in, m, mm or cm.", 3, 3)]
    [InlineData("14 MA", Dimension.ElectricCurrent, "\"MA\" is not a unit known here. Expected here: a current. Did you mean 14 mA?", 3, 2)]
    [InlineData("45.2", Dimension.Temperature, "\"45.2\" has no unit. Expected here: a temperature. Write 45.2 °F or 45.2 °C.", 0, 4)]
    [InlineData("118,9 psig", Dimension.Pressure, "\"118,9\" has a comma in the number. Write 118.9, with a point for the decimals.", 0, 5)]
    [InlineData("25,000 micron", Dimension.VacuumLevel, "\"25,000\" has a comma in the number. Write 25000, or 25.000 if the comma stands for a decimal point.", 0, 6)]
    [InlineData("1,234.5 psig", Dimension.Pressure, "\"1,234.5\" has a comma in the number. Write 1234.5, without the comma.", 0, 7)]
    [InlineData("1.234,5 psig", Dimension.Pressure, "\"1.234,5\" has a comma in the number. Write 1234.5, with a point for the decimals.", 0, 7)]
    [InlineData("ten psig", Dimension.Pressure, "\"ten psig\" has its number in words. Write the number in digits, such as 118.4 psig.", 0, 8)]
    [InlineData("forty-five F", Dimension.Temperature, "\"forty-five F\" has its number in words. Write the number in digits, such as 45.2 °F.", 0, 12)]
    [InlineData("psig", Dimension.Pressure, "\"psig\" is a unit without a number. Expected here: a pressure. Write it like 118.4 psig.", 0, 4)]
    [InlineData("about 45 F", Dimension.Temperature, "\"about 45 F\" is not one reading. Write the number itself; how sure it is goes behind it, such as +/- 1.0.", 0, 10)]
    [InlineData("cold", Dimension.Temperature, "\"cold\" does not begin with a number. Expected here: a temperature. Write it like 45.2 °F.", 0, 4)]
    [InlineData("NaN psig", Dimension.Pressure, "\"NaN psig\" does not begin with a number. Expected here: a pressure. Write it like 118.4 psig.", 0, 8)]
    [InlineData("", Dimension.Pressure, "Nothing is written. Expected here: a pressure. Write it like 118.4 psig.", 0, 0)]
    [InlineData("1e400 psig", Dimension.Pressure, "\"1e400\" is larger than any quantity. Check the exponent.", 0, 5)]
    [InlineData("-500 F", Dimension.Temperature, "\"-500 F\" is below absolute zero (−273.15 °C, −459.67 °F). Check the sign and the unit.", 0, 6)]
    [InlineData("-3 psia", Dimension.Pressure, "\"-3 psia\" is an absolute pressure below zero. Check the sign; a reading of a service gauge is gauge pressure.", 0, 7)]
    [InlineData("-20 psig", Dimension.Pressure, "\"-20 psig\" is lower than a perfect vacuum. Check the sign and the unit.", 0, 8)]
    [InlineData("35 inHg vac", Dimension.Pressure, "\"35 inHg vac\" is deeper than a perfect vacuum. Check the number and the unit.", 0, 11)]
    [InlineData("-20 inHg vac", Dimension.Pressure, "\"-20 inHg vac\" is a depth with a minus sign. Write the depth without the sign.", 0, 12)]
    [InlineData("-12 min", Dimension.Duration, "\"-12 min\" is a time span below zero. Write it without the minus sign.", 0, 7)]
    [InlineData("11 lb 18 oz", Dimension.Mass, "\"11 lb 18 oz\" has 18 oz, which is a whole lb or more. Carry it over to the lb.", 0, 11)]
    [InlineData("11.5 lb 4 oz", Dimension.Mass, "\"11.5 lb 4 oz\" has decimals before its last part. Only the last part may have decimals.", 0, 12)]
    [InlineData("4 oz 11 lb", Dimension.Mass, "\"4 oz 11 lb\" does not go from the larger to the smaller unit. Write it like 11 lb 4 oz.", 0, 10)]
    [InlineData("11 lb 4", Dimension.Mass, "\"11 lb 4\" has no unit behind 4. Write every part with its unit, such as 11 lb 4 oz.", 0, 7)]
    [InlineData("11 lb 4 psig", Dimension.Mass, "\"4 psig\" is a pressure. Expected here: a mass. Write it in lb, oz, kg, g or t.", 6, 6)]
    [InlineData("25 000 micron", Dimension.VacuumLevel, "\"25 000\" looks like one number with a space in it. Write 25000, without the space.", 0, 6)]
    [InlineData("208/230 V", Dimension.Voltage, "\"208/230 V\" is a range. One value is expected here. Write one value, such as 208 V or 230 V.", 0, 9)]
    [InlineData("65 to 105 °F", Dimension.Temperature, "\"65 to 105 °F\" is a range. One value is expected here. Write one value, such as 65 °F or 105 °F.", 0, 12)]
    [InlineData("9/8 in", Dimension.Length, "\"9/8\" is not a fraction of a tube or flare size. Write a decimal number, or a fraction such as 3/8 or 1 1/8.", 0, 3)]
    [InlineData(" ½ .5", Dimension.Pressure, "\"½ .5\" has two numbers before a unit. Write one number and its unit.", 1, 4)]
    [InlineData("-1 200.5 psig", Dimension.Pressure, "\"-1 200.5\" looks like one number with a space in it. Write -1200.5, without the space.", 0, 8)]
    [InlineData("5 1", Dimension.Ratio, "\"5 1\" has two numbers before a unit. Write one number and its unit.", 0, 3)]
    [InlineData("½1", Dimension.Ratio, "\"1\" is not a unit known here. Expected here: a percentage. Write it in % or ppm.", 1, 1)]
    [InlineData("236 V 240 V", Dimension.Voltage, "\"240 V\" is left over after the quantity. Expected here: a voltage. Write it like 236 V.", 6, 5)]
    [InlineData("45.2 F +/- 2 %", Dimension.Temperature, "\"2 %\" gives the uncertainty as a percentage. Write it in the unit of the reading, such as +/- 1 °F.", 11, 3)]
    [InlineData("45.2 F +/- 1 psi", Dimension.Temperature, "\"1 psi\" has a unit that does not fit 45.2 °F. Write it in the unit of the reading, such as +/- 1 °F.", 11, 5)]
    [InlineData("45.2 F +/- -1", Dimension.Temperature, "\"-1\" is an uncertainty below zero. Write it without the minus sign.", 11, 2)]
    [InlineData("45.2 F +/-", Dimension.Temperature, "Nothing stands behind the ± sign. Write it like 45.2 °F +/- 1.0.", 10, 1)]
    [InlineData("45.2 F +/- 1 (k=0)", Dimension.Temperature, "\"(k=0)\" is not a coverage factor. Write (k=1) or (k=2); without it k = 2 is taken.", 12, 5)]
    public void Says_what_to_write_instead(string text, Dimension dimension, string message, int offset, int length)
    {
        var fault = QuantityParser.Parse(text, dimension).Fault;
        Assert.NotNull(fault);
        Assert.Equal(message, fault.Text(Language.English));
        Assert.Equal((offset, length), (fault.Offset, fault.Length));
    }

    [Theory]
    [InlineData("45.2 °F +/- 1.0", Dimension.Temperature, 0.5555556, 2.0, "45.2 ± 1.0 °F")]
    [InlineData("45.2 F ± 1.0 F", Dimension.Temperature, 0.5555556, 2.0, "45.2 ± 1.0 °F")]
    [InlineData("45.2 ± 1.0 °F", Dimension.Temperature, 0.5555556, 2.0, "45.2 ± 1.0 °F")]
    [InlineData("45.2 °F +/- 0.5 K (k=1)", Dimension.Temperature, 0.5, 1.0, "45.2 °F ± 0.5 K (k = 1)")]
    [InlineData("300.0 psig +/- 0.6", Dimension.Pressure, 4136.8544, 2.0, "300.0 ± 0.6 psig")]
    [InlineData("300.0 psig +/- 0.6 psi", Dimension.Pressure, 4136.8544, 2.0, "300.0 psig ± 0.6 psi")]
    [InlineData("11 lb 4 oz +- 0.5", Dimension.Mass, 0.01417476, 2.0, "11 lb 4 oz ± 0.5 oz")]
    [InlineData("50 % +/- 3 (k = 1.65)", Dimension.Ratio, 0.03, 1.65, "50 ± 3 % (k = 1.65)")]
    public void Reads_the_uncertainty_behind_a_reading(string text, Dimension dimension, double halfWidth, double k, string canonical)
    {
        var quantity = QuantityParser.Parse(text, dimension).Value;
        Assert.NotNull(quantity?.Uncertainty);
        Assert.Equal(halfWidth, quantity.Uncertainty.HalfWidthSi, halfWidth * 1e-6);
        Assert.Equal(k, quantity.Uncertainty.CoverageFactor);
        Assert.Equal(halfWidth / k, quantity.Uncertainty.HalfWidthSi / quantity.Uncertainty.CoverageFactor, halfWidth * 1e-6);
        Assert.Equal(canonical, quantity.Canonical);
    }

    [Theory]
    [InlineData("208 to 230 V", Dimension.Voltage, 208, 230, "208 to 230 V")]
    [InlineData("208/230 V", Dimension.Voltage, 208, 230, "208 to 230 V")]
    [InlineData("208-230 V", Dimension.Voltage, 208, 230, "208 to 230 V")]
    [InlineData("208 V – 230 V", Dimension.Voltage, 208, 230, "208 to 230 V")]
    [InlineData("1/2 to 1 V", Dimension.Voltage, 0.5, 1, "1/2 to 1 V")]
    [InlineData("65 to 105 °F", Dimension.Temperature, 291.4833333, 313.7055556, "65 to 105 °F")]
    [InlineData("65 °F to 105 °F", Dimension.Temperature, 291.4833333, 313.7055556, "65 to 105 °F")]
    [InlineData("-10 to 5 °C", Dimension.Temperature, 263.15, 278.15, "−10 to 5 °C")]
    [InlineData("18 °C to 100 °F", Dimension.Temperature, 291.15, 310.9277778, "18 °C to 100 °F")]
    [InlineData("34-42 N·m", Dimension.Torque, 34, 42, "34 to 42 N·m")]
    [InlineData("14–18 N-m", Dimension.Torque, 14, 18, "14 to 18 N·m")]
    [InlineData("1/4 to 1 1/8 in", Dimension.Length, 0.00635, 0.028575, "1/4 to 1 1/8 in")]
    [InlineData("9 - 12 °F", Dimension.TemperatureDifference, 5, 6.6666667, "9 to 12 °F")]
    public void Reads_ranges(string text, Dimension dimension, double lower, double upper, string canonical)
    {
        var result = QuantityParser.ParseRange(text, dimension);
        Assert.True(result.Ok, result.Fault?.Text(Language.English));
        Assert.Equal(lower, result.Value.Lower.Si, 1e-6);
        Assert.Equal(upper, result.Value.Upper.Si, 1e-6);
        Assert.Equal(canonical, result.Value.Canonical);
    }

    [Theory]
    [InlineData("230 to 208 V", Dimension.Voltage, "\"230 to 208 V\" runs from the higher to the lower end. Write 208 V to 230 V.")]
    [InlineData("208 V", Dimension.Voltage, "\"208 V\" is not a range. A range is expected here: two values of one kind. Write both ends, such as 208 to 230 V.")]
    [InlineData("65 to 105", Dimension.Temperature, "\"105\" has no unit. Expected here: a temperature. Write 105 °F or 105 °C.")]
    public void Refuses_what_is_no_range(string text, Dimension dimension, string message) =>
        Assert.Equal(message, QuantityParser.ParseRange(text, dimension).Fault?.Text(Language.English));

    [Fact]
    public void A_bare_number_takes_the_unit_of_its_field()
    {
        var inches = UnitTable.Find("in", Dimension.Length);
        var quantity = QuantityParser.Parse("3/8", Dimension.Length, inches).Value;
        Assert.Equal(0.009525, quantity!.Si, 1e-12);
        Assert.Equal("3/8 in", quantity.Canonical);
        var celsius = QuantityParser.Parse("7", Dimension.Temperature, UnitTable.Find("C", Dimension.Temperature)).Value;
        Assert.Equal(280.15, celsius!.Si, 1e-9);
    }

    [Fact]
    public void The_written_digits_are_kept_as_resolution()
    {
        Assert.Equal(0.1 * 6894.757293, QuantityParser.Parse("118.0 psig", Dimension.Pressure).Value!.ResolutionSi!.Value, 1e-4);
        Assert.Equal(0.1 * 5 / 9, QuantityParser.Parse("45.0 °F", Dimension.Temperature).Value!.ResolutionSi!.Value, 1e-9);
        Assert.Equal(0.1 * 0.028349523125, QuantityParser.Parse("1 lb 0.3 oz", Dimension.Mass).Value!.ResolutionSi!.Value, 1e-9);
        Assert.Null(QuantityParser.Parse("3/8 in", Dimension.Length).Value!.ResolutionSi);
    }

    [Fact]
    public void A_stated_pressure_becomes_absolute_only_with_the_atmosphere()
    {
        var atmosphere = Pressure.FromPascals(83428);
        Assert.Equal(83428 + (100 * 6894.757293), QuantityParser.Parse("100 psig", Dimension.Pressure).Value!.ToStatedPressure().ToAbsolute(atmosphere).Pascals, 0.01);
        Assert.Equal(83428 - 33863.886, QuantityParser.Parse("10 inHg vac", Dimension.Pressure).Value!.ToStatedPressure().ToAbsolute(atmosphere).Pascals, 0.01);
        Assert.Equal(66.6612, QuantityParser.Parse("500 micron", Dimension.VacuumLevel).Value!.ToStatedPressure().ToAbsolute(atmosphere).Pascals, 1e-4);
    }
}
