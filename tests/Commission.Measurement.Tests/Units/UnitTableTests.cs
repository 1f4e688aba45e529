using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Messages;
using U = UnitsNet;
using UU = UnitsNet.Units;

namespace Commission.Measurement.Tests.Units;

public sealed class UnitTableTests
{
    // Where the independent library has the unit: 1 of it in SI. UnitsNet 5.75.1 keeps eight to nine digits of some factors, hence the relative tolerance.
    private static readonly Dictionary<(Dimension, string), Func<double>> Library = new()
    {
        [(Dimension.Pressure, "psig")] = () => new U.Pressure(1, UU.PressureUnit.PoundForcePerSquareInch).Pascals,
        [(Dimension.Pressure, "psia")] = () => new U.Pressure(1, UU.PressureUnit.PoundForcePerSquareInch).Pascals,
        [(Dimension.Pressure, "kPag")] = () => new U.Pressure(1, UU.PressureUnit.Kilopascal).Pascals,
        [(Dimension.Pressure, "kPaa")] = () => new U.Pressure(1, UU.PressureUnit.Kilopascal).Pascals,
        [(Dimension.Pressure, "kPa vac")] = () => new U.Pressure(1, UU.PressureUnit.Kilopascal).Pascals,
        [(Dimension.Pressure, "bar(g)")] = () => new U.Pressure(1, UU.PressureUnit.Bar).Pascals,
        [(Dimension.Pressure, "bar(a)")] = () => new U.Pressure(1, UU.PressureUnit.Bar).Pascals,
        [(Dimension.Pressure, "MPa(g)")] = () => new U.Pressure(1, UU.PressureUnit.Megapascal).Pascals,
        [(Dimension.Pressure, "MPa(a)")] = () => new U.Pressure(1, UU.PressureUnit.Megapascal).Pascals,
        [(Dimension.Pressure, "mbar(g)")] = () => new U.Pressure(1, UU.PressureUnit.Millibar).Pascals,
        [(Dimension.Pressure, "mbar(a)")] = () => new U.Pressure(1, UU.PressureUnit.Millibar).Pascals,
        [(Dimension.Pressure, "hPa(a)")] = () => new U.Pressure(1, UU.PressureUnit.Hectopascal).Pascals,
        [(Dimension.Pressure, "Pa(g)")] = () => new U.Pressure(1, UU.PressureUnit.Pascal).Pascals,
        [(Dimension.Pressure, "Pa(a)")] = () => new U.Pressure(1, UU.PressureUnit.Pascal).Pascals,
        [(Dimension.Pressure, "micron")] = () => new U.Pressure(1e-3, UU.PressureUnit.MillimeterOfMercury).Pascals,
        [(Dimension.Pressure, "mmHg abs")] = () => new U.Pressure(1, UU.PressureUnit.MillimeterOfMercury).Pascals,
        [(Dimension.Pressure, "mmHg vac")] = () => new U.Pressure(1, UU.PressureUnit.MillimeterOfMercury).Pascals,
        [(Dimension.Pressure, "inHg abs")] = () => new U.Pressure(1, UU.PressureUnit.InchOfMercury).Pascals,
        [(Dimension.Pressure, "inHg vac")] = () => new U.Pressure(1, UU.PressureUnit.InchOfMercury).Pascals,
        [(Dimension.VacuumLevel, "Pa")] = () => new U.Pressure(1, UU.PressureUnit.Pascal).Pascals,
        [(Dimension.VacuumLevel, "mbar")] = () => new U.Pressure(1, UU.PressureUnit.Millibar).Pascals,
        [(Dimension.VacuumLevel, "hPa")] = () => new U.Pressure(1, UU.PressureUnit.Hectopascal).Pascals,
        [(Dimension.AtmosphericPressure, "inHg")] = () => new U.Pressure(1, UU.PressureUnit.InchOfMercury).Pascals,
        [(Dimension.AtmosphericPressure, "hPa")] = () => new U.Pressure(1, UU.PressureUnit.Hectopascal).Pascals,
        [(Dimension.AtmosphericPressure, "mbar")] = () => new U.Pressure(1, UU.PressureUnit.Millibar).Pascals,
        [(Dimension.AtmosphericPressure, "kPa")] = () => new U.Pressure(1, UU.PressureUnit.Kilopascal).Pascals,
        [(Dimension.AtmosphericPressure, "bar")] = () => new U.Pressure(1, UU.PressureUnit.Bar).Pascals,
        [(Dimension.AtmosphericPressure, "Pa")] = () => new U.Pressure(1, UU.PressureUnit.Pascal).Pascals,
        [(Dimension.AtmosphericPressure, "mmHg")] = () => new U.Pressure(1, UU.PressureUnit.MillimeterOfMercury).Pascals,
        [(Dimension.AtmosphericPressure, "atm")] = () => new U.Pressure(1, UU.PressureUnit.Atmosphere).Pascals,
        [(Dimension.PressureDifference, "psi")] = () => new U.Pressure(1, UU.PressureUnit.PoundForcePerSquareInch).Pascals,
        [(Dimension.PressureDifference, "kPa")] = () => new U.Pressure(1, UU.PressureUnit.Kilopascal).Pascals,
        [(Dimension.PressureDifference, "bar")] = () => new U.Pressure(1, UU.PressureUnit.Bar).Pascals,
        [(Dimension.PressureDifference, "Pa")] = () => new U.Pressure(1, UU.PressureUnit.Pascal).Pascals,
        [(Dimension.PressureDifference, "mbar")] = () => new U.Pressure(1, UU.PressureUnit.Millibar).Pascals,
        [(Dimension.PressureDifference, "hPa")] = () => new U.Pressure(1, UU.PressureUnit.Hectopascal).Pascals,
        [(Dimension.PressureDifference, "MPa")] = () => new U.Pressure(1, UU.PressureUnit.Megapascal).Pascals,
        [(Dimension.PressureDifference, "micron")] = () => new U.Pressure(1e-3, UU.PressureUnit.MillimeterOfMercury).Pascals,
        [(Dimension.PressureDifference, "mmHg")] = () => new U.Pressure(1, UU.PressureUnit.MillimeterOfMercury).Pascals,
        [(Dimension.PressureDifference, "inHg")] = () => new U.Pressure(1, UU.PressureUnit.InchOfMercury).Pascals,
        [(Dimension.TemperatureDifference, "°F")] = () => new U.TemperatureDelta(1, UU.TemperatureDeltaUnit.DegreeFahrenheit).Kelvins,
        [(Dimension.TemperatureDifference, "K")] = () => new U.TemperatureDelta(1, UU.TemperatureDeltaUnit.Kelvin).Kelvins,
        [(Dimension.TemperatureDifference, "°C")] = () => new U.TemperatureDelta(1, UU.TemperatureDeltaUnit.DegreeCelsius).Kelvins,
        [(Dimension.Temperature, "°F")] = () => new U.Temperature(1, UU.TemperatureUnit.DegreeFahrenheit).Kelvins,
        [(Dimension.Temperature, "°C")] = () => new U.Temperature(1, UU.TemperatureUnit.DegreeCelsius).Kelvins,
        [(Dimension.Temperature, "K")] = () => new U.Temperature(1, UU.TemperatureUnit.Kelvin).Kelvins,
        [(Dimension.Temperature, "°R")] = () => new U.Temperature(1, UU.TemperatureUnit.DegreeRankine).Kelvins,
        [(Dimension.Mass, "lb")] = () => new U.Mass(1, UU.MassUnit.Pound).Kilograms,
        [(Dimension.Mass, "oz")] = () => new U.Mass(1, UU.MassUnit.Ounce).Kilograms,
        [(Dimension.Mass, "kg")] = () => new U.Mass(1, UU.MassUnit.Kilogram).Kilograms,
        [(Dimension.Mass, "g")] = () => new U.Mass(1, UU.MassUnit.Gram).Kilograms,
        [(Dimension.Mass, "t")] = () => new U.Mass(1, UU.MassUnit.Tonne).Kilograms,
        [(Dimension.Length, "ft")] = () => new U.Length(1, UU.LengthUnit.Foot).Meters,
        [(Dimension.Length, "in")] = () => new U.Length(1, UU.LengthUnit.Inch).Meters,
        [(Dimension.Length, "m")] = () => new U.Length(1, UU.LengthUnit.Meter).Meters,
        [(Dimension.Length, "mm")] = () => new U.Length(1, UU.LengthUnit.Millimeter).Meters,
        [(Dimension.Length, "cm")] = () => new U.Length(1, UU.LengthUnit.Centimeter).Meters,
        [(Dimension.Area, "ft²")] = () => new U.Area(1, UU.AreaUnit.SquareFoot).SquareMeters,
        [(Dimension.Area, "m²")] = () => new U.Area(1, UU.AreaUnit.SquareMeter).SquareMeters,
        [(Dimension.Area, "in²")] = () => new U.Area(1, UU.AreaUnit.SquareInch).SquareMeters,
        [(Dimension.Area, "mm²")] = () => new U.Area(1, UU.AreaUnit.SquareMillimeter).SquareMeters,
        [(Dimension.Volume, "L")] = () => new U.Volume(1, UU.VolumeUnit.Liter).CubicMeters,
        [(Dimension.Volume, "ft³")] = () => new U.Volume(1, UU.VolumeUnit.CubicFoot).CubicMeters,
        [(Dimension.Volume, "m³")] = () => new U.Volume(1, UU.VolumeUnit.CubicMeter).CubicMeters,
        [(Dimension.Volume, "mL")] = () => new U.Volume(1, UU.VolumeUnit.Milliliter).CubicMeters,
        [(Dimension.Volume, "in³")] = () => new U.Volume(1, UU.VolumeUnit.CubicInch).CubicMeters,
        [(Dimension.Volume, "gal")] = () => new U.Volume(1, UU.VolumeUnit.UsGallon).CubicMeters,
        [(Dimension.Volume, "fl oz")] = () => new U.Volume(1, UU.VolumeUnit.UsOunce).CubicMeters,
        [(Dimension.Duration, "min")] = () => new U.Duration(1, UU.DurationUnit.Minute).Seconds,
        [(Dimension.Duration, "h")] = () => new U.Duration(1, UU.DurationUnit.Hour).Seconds,
        [(Dimension.Duration, "s")] = () => new U.Duration(1, UU.DurationUnit.Second).Seconds,
        [(Dimension.Duration, "d")] = () => new U.Duration(1, UU.DurationUnit.Day).Seconds,
        [(Dimension.VolumeFlow, "cfm")] = () => new U.VolumeFlow(1, UU.VolumeFlowUnit.CubicFootPerMinute).CubicMetersPerSecond,
        [(Dimension.VolumeFlow, "gpm")] = () => new U.VolumeFlow(1, UU.VolumeFlowUnit.UsGallonPerMinute).CubicMetersPerSecond,
        [(Dimension.VolumeFlow, "cfh")] = () => new U.VolumeFlow(1, UU.VolumeFlowUnit.CubicFootPerHour).CubicMetersPerSecond,
        [(Dimension.VolumeFlow, "m³/h")] = () => new U.VolumeFlow(1, UU.VolumeFlowUnit.CubicMeterPerHour).CubicMetersPerSecond,
        [(Dimension.VolumeFlow, "L/s")] = () => new U.VolumeFlow(1, UU.VolumeFlowUnit.LiterPerSecond).CubicMetersPerSecond,
        [(Dimension.VolumeFlow, "L/min")] = () => new U.VolumeFlow(1, UU.VolumeFlowUnit.LiterPerMinute).CubicMetersPerSecond,
        [(Dimension.VolumeFlow, "m³/s")] = () => new U.VolumeFlow(1, UU.VolumeFlowUnit.CubicMeterPerSecond).CubicMetersPerSecond,
        [(Dimension.MassFlow, "kg/h")] = () => new U.MassFlow(1, UU.MassFlowUnit.KilogramPerHour).KilogramsPerSecond,
        [(Dimension.MassFlow, "kg/s")] = () => new U.MassFlow(1, UU.MassFlowUnit.KilogramPerSecond).KilogramsPerSecond,
        [(Dimension.MassFlow, "g/s")] = () => new U.MassFlow(1, UU.MassFlowUnit.GramPerSecond).KilogramsPerSecond,
        [(Dimension.Velocity, "fpm")] = () => new U.Speed(1, UU.SpeedUnit.FootPerMinute).MetersPerSecond,
        [(Dimension.Velocity, "m/s")] = () => new U.Speed(1, UU.SpeedUnit.MeterPerSecond).MetersPerSecond,
        [(Dimension.Velocity, "ft/s")] = () => new U.Speed(1, UU.SpeedUnit.FootPerSecond).MetersPerSecond,
        [(Dimension.Power, "W")] = () => (double)new U.Power(1, UU.PowerUnit.Watt).Watts,
        [(Dimension.Power, "kW")] = () => (double)new U.Power(1, UU.PowerUnit.Kilowatt).Watts,
        [(Dimension.Power, "ton")] = () => (double)new U.Power(1, UU.PowerUnit.TonOfRefrigeration).Watts,
        [(Dimension.Power, "Btu/h")] = () => (double)new U.Power(1, UU.PowerUnit.BritishThermalUnitPerHour).Watts,
        [(Dimension.Power, "kBtu/h")] = () => (double)new U.Power(1, UU.PowerUnit.KilobritishThermalUnitPerHour).Watts,
        [(Dimension.Torque, "lbf·ft")] = () => new U.Torque(1, UU.TorqueUnit.PoundForceFoot).NewtonMeters,
        [(Dimension.Torque, "N·m")] = () => new U.Torque(1, UU.TorqueUnit.NewtonMeter).NewtonMeters,
        [(Dimension.Torque, "lbf·in")] = () => new U.Torque(1, UU.TorqueUnit.PoundForceInch).NewtonMeters,
        [(Dimension.Torque, "kgf·m")] = () => new U.Torque(1, UU.TorqueUnit.KilogramForceMeter).NewtonMeters,
        [(Dimension.ElectricCurrent, "A")] = () => new U.ElectricCurrent(1, UU.ElectricCurrentUnit.Ampere).Amperes,
        [(Dimension.ElectricCurrent, "mA")] = () => new U.ElectricCurrent(1, UU.ElectricCurrentUnit.Milliampere).Amperes,
        [(Dimension.ElectricCurrent, "µA")] = () => new U.ElectricCurrent(1, UU.ElectricCurrentUnit.Microampere).Amperes,
        [(Dimension.Voltage, "V")] = () => new U.ElectricPotential(1, UU.ElectricPotentialUnit.Volt).Volts,
        [(Dimension.Voltage, "mV")] = () => new U.ElectricPotential(1, UU.ElectricPotentialUnit.Millivolt).Volts,
        [(Dimension.Voltage, "kV")] = () => new U.ElectricPotential(1, UU.ElectricPotentialUnit.Kilovolt).Volts,
        [(Dimension.Capacitance, "µF")] = () => new U.ElectricCapacitance(1, UU.ElectricCapacitanceUnit.Microfarad).Farads,
        [(Dimension.Resistance, "Ω")] = () => new U.ElectricResistance(1, UU.ElectricResistanceUnit.Ohm).Ohms,
        [(Dimension.Resistance, "kΩ")] = () => new U.ElectricResistance(1, UU.ElectricResistanceUnit.Kiloohm).Ohms,
        [(Dimension.Resistance, "MΩ")] = () => new U.ElectricResistance(1, UU.ElectricResistanceUnit.Megaohm).Ohms,
        [(Dimension.Resistance, "GΩ")] = () => new U.ElectricResistance(1, UU.ElectricResistanceUnit.Gigaohm).Ohms,
        [(Dimension.Frequency, "Hz")] = () => new U.Frequency(1, UU.FrequencyUnit.Hertz).Hertz,
        [(Dimension.Frequency, "rpm")] = () => new U.RotationalSpeed(1, UU.RotationalSpeedUnit.RevolutionPerMinute).RevolutionsPerSecond,
        [(Dimension.Ratio, "ppm")] = () => new U.Ratio(1, UU.RatioUnit.PartPerMillion).DecimalFractions,
        [(Dimension.Ratio, "%")] = () => new U.Ratio(1, UU.RatioUnit.Percent).DecimalFractions,
        [(Dimension.Ratio, "1")] = () => new U.Ratio(1, UU.RatioUnit.DecimalFraction).DecimalFractions,
        [(Dimension.MassPerLength, "g/m")] = () => new U.LinearDensity(1, UU.LinearDensityUnit.GramPerMeter).KilogramsPerMeter,
        [(Dimension.MassPerLength, "kg/m")] = () => new U.LinearDensity(1, UU.LinearDensityUnit.KilogramPerMeter).KilogramsPerMeter,
        [(Dimension.MassPerLength, "lb/ft")] = () => new U.LinearDensity(1, UU.LinearDensityUnit.PoundPerFoot).KilogramsPerMeter,
        [(Dimension.Density, "kg/m³")] = () => new U.Density(1, UU.DensityUnit.KilogramPerCubicMeter).KilogramsPerCubicMeter,
        [(Dimension.Density, "g/m³")] = () => new U.Density(1, UU.DensityUnit.GramPerCubicMeter).KilogramsPerCubicMeter,
        [(Dimension.Density, "lb/ft³")] = () => new U.Density(1, UU.DensityUnit.PoundPerCubicFoot).KilogramsPerCubicMeter,
        [(Dimension.SpecificEnthalpy, "Btu/lb")] = () => new U.SpecificEnergy(1, UU.SpecificEnergyUnit.BtuPerPound).JoulesPerKilogram,
        [(Dimension.SpecificEnthalpy, "kJ/kg")] = () => new U.SpecificEnergy(1, UU.SpecificEnergyUnit.KilojoulePerKilogram).JoulesPerKilogram,
        [(Dimension.SpecificEnthalpy, "J/kg")] = () => new U.SpecificEnergy(1, UU.SpecificEnergyUnit.JoulePerKilogram).JoulesPerKilogram,
        [(Dimension.PressureRate, "Pa/min")] = () => new U.PressureChangeRate(1, UU.PressureChangeRateUnit.PascalPerMinute).PascalsPerSecond,
        [(Dimension.PressureRate, "Pa/s")] = () => new U.PressureChangeRate(1, UU.PressureChangeRateUnit.PascalPerSecond).PascalsPerSecond,
    };

    // Where it has not, or rounds (Torr, lb/h, hp): NIST SP 811 (2008) appendix B, from memory, or built by hand from its figures (lb 4.535924e-1 kg, ft 3.048e-1 m, Julian year of 365.25 days 3.15576e7 s, IAU).
    private static readonly Dictionary<(Dimension, string), (double Si, double Relative)> Tables = new()
    {
        [(Dimension.Pressure, "Torr")] = (1.333224e2, 4e-7),
        [(Dimension.Pressure, "mTorr")] = (1.333224e-1, 4e-7),
        [(Dimension.PressureDifference, "Torr")] = (1.333224e2, 4e-7),
        [(Dimension.PressureDifference, "mTorr")] = (1.333224e-1, 4e-7),
        [(Dimension.MassFlow, "lb/h")] = (1.259979e-4, 4e-7),
        [(Dimension.MassFlow, "lb/min")] = (7.559873e-3, 1e-7),
        [(Dimension.Power, "hp")] = (7.456999e2, 1e-7),
        [(Dimension.PressureDifference, "inwc")] = (2.490889e2, 1e-6),
        [(Dimension.PressureDifference, "mmH2O")] = (9.80665, 1e-9),
        [(Dimension.MassFlow, "g/yr")] = (1e-3 / 3.15576e7, 1e-9),
        [(Dimension.MassFlow, "oz/yr")] = (2.834952e-2 / 3.15576e7, 1e-6),
        [(Dimension.MassFlow, "lb/yr")] = (4.535924e-1 / 3.15576e7, 1e-6),
        [(Dimension.MassFlow, "kg/yr")] = (1 / 3.15576e7, 1e-9),
        [(Dimension.MassFlow, "oz/min")] = (2.834952e-2 / 60, 1e-6),
        [(Dimension.MassPerLength, "oz/ft")] = (2.834952e-2 / 3.048e-1, 1e-6),
        [(Dimension.Throughput, "mbar·L/s")] = (0.1, 1e-12),
        [(Dimension.Throughput, "Pa·m³/s")] = (1, 1e-12),
        [(Dimension.Throughput, "atm·cm³/s")] = (0.101325, 1e-12),
        [(Dimension.PressureRate, "micron/min")] = (1.333224e-1 / 60, 1e-6),
        [(Dimension.PressureRate, "micron/h")] = (1.333224e-1 / 3600, 1e-6),
        [(Dimension.PressureRate, "Pa/h")] = (1.0 / 3600, 1e-12),
        [(Dimension.PressureRate, "psi/h")] = (6.894757e3 / 3600, 1e-6),
        [(Dimension.PressureRate, "kPa/h")] = (1e3 / 3600, 1e-12),
        [(Dimension.PowerPerFlow, "W/cfm")] = (1 / 4.719474e-4, 1e-6),
        [(Dimension.PowerPerFlow, "W/(L/s)")] = (1e3, 1e-12),
        [(Dimension.PowerPerFlow, "W/(m³/h)")] = (3600, 1e-12),
        [(Dimension.FlowPerPower, "cfm/ton")] = (4.719474e-4 / 3.516853e3, 1e-6),
        [(Dimension.FlowPerPower, "L/s/kW")] = (1e-6, 1e-12),
        [(Dimension.FlowPerPower, "m³/h/kW")] = (1.0 / 3600 / 1000, 1e-12),
    };

    public static TheoryData<Dimension, string> EveryUnit()
    {
        var data = new TheoryData<Dimension, string>();
        foreach (var unit in UnitTable.All)
            data.Add(unit.Dimension, unit.Symbol);
        return data;
    }

    [Theory]
    [MemberData(nameof(EveryUnit))]
    public void Every_unit_agrees_with_a_source_outside(Dimension dimension, string symbol)
    {
        var unit = UnitTable.All.Single(u => u.Dimension == dimension && u.Symbol == symbol);
        if (Tables.TryGetValue((dimension, symbol), out var table))
        {
            Assert.Equal(table.Si, unit.ToSi(1), table.Si * table.Relative);
            return;
        }

        Assert.True(Library.TryGetValue((dimension, symbol), out var library), $"{symbol} is checked against nothing.");
        var expected = library();
        Assert.Equal(expected, unit.ToSi(1), expected * 5e-8);
    }

    [Theory]
    [MemberData(nameof(EveryUnit))]
    public void Every_spelling_finds_its_unit_and_the_number_survives(Dimension dimension, string symbol)
    {
        var unit = UnitTable.All.Single(u => u.Dimension == dimension && u.Symbol == symbol);
        foreach (var spelling in unit.Aliases.Prepend(symbol))
            Assert.Same(unit, UnitTable.Find(spelling, dimension));
        Assert.Equal(123.4, unit.FromSi(unit.ToSi(123.4)), 1e-10);
        var text = QuantityParser.Spell("123.4", unit);
        if (symbol == "1" || unit.Reference == PressureReference.BelowAtmosphere || dimension == Dimension.Temperature)
            return;
        var read = QuantityParser.Parse(text, dimension);
        Assert.True(read.Ok, read.Fault?.Text(Language.English));
        Assert.Same(unit, read.Value.Unit);
        Assert.Equal(text, read.Value.Canonical);
    }

    [Fact]
    public void A_spelling_means_one_unit_in_a_field()
    {
        foreach (var dimension in Enum.GetValues<Dimension>())
        {
            var spellings = UnitTable.All.Where(u => u.Dimension == dimension)
                .SelectMany(u => u.Aliases.Prepend(u.Symbol).Select(s => (Key: UnitSpelling.Fold(s), Unit: u)))
                .GroupBy(p => p.Key)
                .Where(g => g.Select(p => p.Unit).Distinct().Count() > 1)
                .Select(g => g.Key);
            Assert.Empty(spellings);
        }
    }

    [Fact]
    public void Every_spelling_is_listed_once()
    {
        foreach (var unit in UnitTable.All)
            Assert.Equal(unit.Aliases.Count, unit.Aliases.Distinct(StringComparer.Ordinal).Count());
    }

    [Theory]
    [InlineData("Mbar", Dimension.PressureDifference)]
    [InlineData("Mv", Dimension.Voltage)]
    [InlineData("mohm", Dimension.Resistance)]
    [InlineData("mΩ", Dimension.Resistance)]
    [InlineData("Mm", Dimension.Length)]
    public void A_capital_never_turns_milli_into_mega(string spelling, Dimension dimension) => Assert.Null(UnitTable.Find(spelling, dimension));

    // From the exact definitions (NIST SP 811, from memory) by an independent program: µm Hg, Pa, psia, inHg.
    [Theory]
    [InlineData(200, 26.664, 0.003867, 0.00787)]
    [InlineData(500, 66.661, 0.009668, 0.01969)]
    [InlineData(1000, 133.322, 0.019337, 0.03937)]
    [InlineData(1500, 199.984, 0.029005, 0.05906)]
    [InlineData(2000, 266.645, 0.038674, 0.07874)]
    [InlineData(5000, 666.612, 0.096684, 0.19685)]
    public void Microns(double microns, double pascals, double psia, double inHg)
    {
        var level = Pressure.FromMicrons(microns);
        Assert.Equal(pascals, level.Pascals, 0.0005);
        Assert.Equal(psia, level.Psia, 0.0000005);
        Assert.Equal(inHg, level.InchesOfMercury, 0.000005);
    }

    // A vacuum gauge reads absolute pressure; its tolerances and rises are differences in the same unit.
    [Fact]
    public void A_vacuum_unit_is_a_level_without_a_word_about_the_reference_and_a_difference()
    {
        Assert.Equal(["micron", "mTorr", "Torr"], UnitTable.Vacuum.Select(u => u.Symbol));
        Assert.Equal(UnitTable.Vacuum, UnitTable.For(Dimension.VacuumLevel).Take(UnitTable.Vacuum.Count));
        foreach (var unit in UnitTable.Vacuum)
        {
            Assert.Equal(PressureReference.Absolute, unit.Reference);
            Assert.Same(unit, UnitTable.Find(unit.Symbol, Dimension.VacuumLevel));
            Assert.Equal(unit.Factor, UnitTable.Find(unit.Symbol, Dimension.PressureDifference)!.Factor);
        }

        Assert.NotNull(UnitTable.Find("mTorr abs", Dimension.VacuumLevel));
        Assert.Null(UnitTable.Find("mTorr abs", Dimension.PressureDifference));
        Assert.Null(UnitTable.Find("umHg(a)", Dimension.PressureDifference));
    }
}
