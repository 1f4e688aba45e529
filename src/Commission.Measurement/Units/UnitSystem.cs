using System.Text;
using Commission.Measurement.Quantities;

namespace Commission.Measurement.Units;

/// <summary>Which unit and how many decimals a page prints for each kind of number: a preset, and what a job overrides.</summary>
public sealed class UnitSystem
{
    private static readonly Dictionary<DisplayKind, DisplayUnit> UsUnits = new()
    {
        [DisplayKind.Pressure] = Of("psig", Dimension.Pressure, 1),
        [DisplayKind.AbsolutePressure] = Of("psia", Dimension.Pressure, 1),
        [DisplayKind.Vacuum] = Of("micron", Dimension.VacuumLevel, 0),
        [DisplayKind.VacuumRise] = Of("micron/min", Dimension.PressureRate, 1),
        [DisplayKind.AtmosphericPressure] = Of("inHg", Dimension.AtmosphericPressure, 2),
        [DisplayKind.PressureDifference] = Of("psi", Dimension.PressureDifference, 1),
        [DisplayKind.StaticPressure] = Of("inwc", Dimension.PressureDifference, 2),
        [DisplayKind.Temperature] = Of("°F", Dimension.Temperature, 1),
        [DisplayKind.TemperatureDifference] = Of("°F", Dimension.TemperatureDifference, 1),
        [DisplayKind.Length] = Of("ft", Dimension.Length, 1),
        [DisplayKind.Elevation] = Of("ft", Dimension.Length, 0),
        [DisplayKind.TubeDiameter] = Of("in", Dimension.Length, 3),
        [DisplayKind.Mass] = new(Find("lb", Dimension.Mass), 1, Find("oz", Dimension.Mass)),
        [DisplayKind.MassPerLength] = Of("oz/ft", Dimension.MassPerLength, 2),
        [DisplayKind.Area] = Of("ft²", Dimension.Area, 0),
        [DisplayKind.Volume] = Of("ft³", Dimension.Volume, 2),
        [DisplayKind.Duration] = Of("min", Dimension.Duration, 0) with { Otherwise = Of("h", Dimension.Duration, 1), To = 120.5 * 60 },
        [DisplayKind.AirFlow] = Of("cfm", Dimension.VolumeFlow, 0),
        [DisplayKind.FlowPerCapacity] = Of("cfm/ton", Dimension.FlowPerPower, 0),
        [DisplayKind.MassFlow] = Of("lb/h", Dimension.MassFlow, 1),
        [DisplayKind.LeakRate] = Of("g/yr", Dimension.MassFlow, 1),
        [DisplayKind.Throughput] = Of("atm·cm³/s", Dimension.Throughput, 5),
        [DisplayKind.Velocity] = Of("fpm", Dimension.Velocity, 0),
        [DisplayKind.Power] = Of("W", Dimension.Power, 0),
        [DisplayKind.Capacity] = Of("Btu/h", Dimension.Power, 0),
        [DisplayKind.FanPower] = Of("W/cfm", Dimension.PowerPerFlow, 2),
        [DisplayKind.Torque] = Of("lbf·ft", Dimension.Torque, 1),
        [DisplayKind.Current] = Of("A", Dimension.ElectricCurrent, 1),
        [DisplayKind.Voltage] = Of("V", Dimension.Voltage, 0),
        [DisplayKind.Capacitance] = Of("µF", Dimension.Capacitance, 1),
        [DisplayKind.Resistance] = Of("MΩ", Dimension.Resistance, 1) with { Otherwise = Of("Ω", Dimension.Resistance, 2), From = 1000 },
        [DisplayKind.Frequency] = Of("Hz", Dimension.Frequency, 1),
        [DisplayKind.Percentage] = Of("%", Dimension.Ratio, 1),
        [DisplayKind.Number] = Of("1", Dimension.Ratio, 2),
        [DisplayKind.Density] = Of("lb/ft³", Dimension.Density, 2),
        [DisplayKind.Enthalpy] = Of("Btu/lb", Dimension.SpecificEnthalpy, 2),
        [DisplayKind.Concentration] = Of("ppm", Dimension.Ratio, 0),
        [DisplayKind.FlameSignal] = Of("µA", Dimension.ElectricCurrent, 1),
        [DisplayKind.WaterFlow] = Of("gpm", Dimension.VolumeFlow, 1),
        [DisplayKind.WaterVolume] = Of("gal", Dimension.Volume, 0),
    };

    // Metric crews read bar, mm and °C; a difference of temperature is in kelvin.
    private static readonly Dictionary<DisplayKind, DisplayUnit> SiUnits = new(UsUnits)
    {
        [DisplayKind.Pressure] = Of("bar(g)", Dimension.Pressure, 2),
        [DisplayKind.AbsolutePressure] = Of("bar(a)", Dimension.Pressure, 2),
        [DisplayKind.Vacuum] = Of("Pa", Dimension.VacuumLevel, 0),
        [DisplayKind.VacuumRise] = Of("Pa/min", Dimension.PressureRate, 2),
        [DisplayKind.AtmosphericPressure] = Of("hPa", Dimension.AtmosphericPressure, 1),
        [DisplayKind.PressureDifference] = Of("kPa", Dimension.PressureDifference, 1),
        [DisplayKind.StaticPressure] = Of("Pa", Dimension.PressureDifference, 0),
        [DisplayKind.Temperature] = Of("°C", Dimension.Temperature, 1),
        [DisplayKind.TemperatureDifference] = Of("K", Dimension.TemperatureDifference, 1),
        [DisplayKind.Length] = Of("m", Dimension.Length, 1),
        [DisplayKind.Elevation] = Of("m", Dimension.Length, 0),
        [DisplayKind.TubeDiameter] = Of("mm", Dimension.Length, 2),
        [DisplayKind.Mass] = Of("kg", Dimension.Mass, 3) with { Otherwise = Of("g", Dimension.Mass, 0), From = 0.0995 },
        [DisplayKind.MassPerLength] = Of("g/m", Dimension.MassPerLength, 1),
        [DisplayKind.Area] = Of("m²", Dimension.Area, 1),
        [DisplayKind.Volume] = Of("L", Dimension.Volume, 1),
        [DisplayKind.AirFlow] = Of("m³/h", Dimension.VolumeFlow, 0),
        [DisplayKind.FlowPerCapacity] = Of("m³/h/kW", Dimension.FlowPerPower, 0),
        [DisplayKind.MassFlow] = Of("kg/h", Dimension.MassFlow, 1),
        [DisplayKind.Throughput] = Of("mbar·L/s", Dimension.Throughput, 5),
        [DisplayKind.Velocity] = Of("m/s", Dimension.Velocity, 1),
        [DisplayKind.Capacity] = Of("kW", Dimension.Power, 2),
        [DisplayKind.FanPower] = Of("W/(m³/h)", Dimension.PowerPerFlow, 3),
        [DisplayKind.Torque] = Of("N·m", Dimension.Torque, 1),
        [DisplayKind.Density] = Of("kg/m³", Dimension.Density, 2),
        [DisplayKind.Enthalpy] = Of("kJ/kg", Dimension.SpecificEnthalpy, 2),
        [DisplayKind.WaterFlow] = Of("L/min", Dimension.VolumeFlow, 1),
        [DisplayKind.WaterVolume] = Of("L", Dimension.Volume, 0),
    };

    private readonly Dictionary<DisplayKind, DisplayUnit> _units;

    private UnitSystem(string preset, Dictionary<DisplayKind, DisplayUnit> units)
    {
        Preset = preset;
        _units = units;
    }

    /// <summary>psig, micron, °F, lb and oz, ft, cfm, Btu/h.</summary>
    public static UnitSystem Us { get; } = new("us", UsUnits);

    /// <summary>bar(g), Pa, °C, kg, m, m³/h, kW.</summary>
    public static UnitSystem Si { get; } = new("si", SiUnits);

    /// <summary>The keys that may be overridden, as a job file writes them: <c>vacuum</c>, <c>static pressure</c>, <c>tube diameter</c>.</summary>
    public static IReadOnlyList<string> Keys { get; } = [.. Enum.GetValues<DisplayKind>().Select(KeyOf)];

    /// <summary>The units that the SI preset prints, without what jobs override.</summary>
    internal static IEnumerable<Unit> SiPresetUnits => SiUnits.Values.Select(u => u.Unit);

    /// <summary>Name of the preset: <c>us</c> or <c>si</c>.</summary>
    public string Preset { get; }

    /// <summary>How a kind of number is printed.</summary>
    /// <param name="kind">The kind.</param>
    public DisplayUnit this[DisplayKind kind] => _units[kind];

    /// <summary>The preset of a name; nothing when there is none.</summary>
    /// <param name="name"><c>us</c> or <c>si</c>, in any case.</param>
    public static UnitSystem? Find(string name) => name.Trim().ToUpperInvariant() switch
    {
        "US" => Us,
        "SI" => Si,
        _ => null,
    };

    /// <summary>How a kind is written as a key.</summary>
    /// <param name="kind">The kind.</param>
    public static string KeyOf(DisplayKind kind)
    {
        var name = kind.ToString();
        var key = new StringBuilder(name.Length + 4);
        foreach (var c in name)
        {
            if (char.IsAsciiLetterUpper(c) && key.Length > 0)
                key.Append(' ');
            key.Append(char.ToLowerInvariant(c));
        }

        return key.ToString();
    }

    /// <summary>The same with one kind in another unit; its decimals keep about the fineness of the preset.</summary>
    /// <param name="key">Key of the kind, one of <see cref="Keys"/>.</param>
    /// <param name="unit">The unit as written.</param>
    public ParseResult<UnitSystem> With(string key, string unit)
    {
        var kinds = Enum.GetValues<DisplayKind>().Where(k => string.Equals(KeyOf(k), key.Trim(), StringComparison.OrdinalIgnoreCase)).ToArray();
        if (kinds is not [var kind])
            return FaultText.UnknownDisplayKey(key, Keys);
        var now = _units[kind];
        var dimension = kind == DisplayKind.Vacuum ? Dimension.VacuumLevel : now.Unit.Dimension;
        if (UnitTable.Find(unit, dimension) is not { } other || other.Reference != now.Unit.Reference)
            return FaultText.NotADisplayUnit(unit, key, [.. UnitTable.For(dimension).Where(u => u.Reference == now.Unit.Reference)]);
        return new UnitSystem(Preset, new Dictionary<DisplayKind, DisplayUnit>(_units) { [kind] = new(other, DecimalsLike(now, other)) });
    }

    private static int DecimalsLike(DisplayUnit now, Unit other)
    {
        // Twice as coarse is still as good; ten times is not.
        const double Tolerated = 2;
        var step = Math.Pow(10, -now.Decimals) * (now.Smaller ?? now.Unit).Factor * Tolerated;
        var decimals = 0;
        while (decimals < 9 && Math.Pow(10, -decimals) * other.Factor > step)
            decimals++;
        return decimals;
    }

    private static DisplayUnit Of(string symbol, Dimension dimension, int decimals) => new(Find(symbol, dimension), decimals);

    private static Unit Find(string symbol, Dimension dimension) =>
        UnitTable.Find(symbol, dimension) ?? throw new InvalidOperationException($"{symbol} is missing from the unit table.");
}

/// <summary>How a kind of number is printed.</summary>
/// <param name="Unit">The unit; of a compound the larger.</param>
/// <param name="Decimals">Decimals when no uncertainty decides; of a compound those of the smaller unit.</param>
/// <param name="Smaller">The smaller unit of a compound such as lb and oz; nothing for a single unit.</param>
public sealed record DisplayUnit(Unit Unit, int Decimals, Unit? Smaller = null)
{
    /// <summary>The unit for numbers too small or too large for this one, as people write them; null where there is none.</summary>
    public DisplayUnit? Otherwise { get; init; }

    /// <summary>Least absolute value, SI, that is printed in this unit.</summary>
    public double From { get; init; }

    /// <summary>Absolute value, SI, from which on the other unit is used.</summary>
    public double To { get; init; } = double.PositiveInfinity;

    /// <summary>How a number of this size is printed.</summary>
    /// <param name="si">The number in SI.</param>
    public DisplayUnit At(double si) => Otherwise is { } other && (Math.Abs(si) < From || Math.Abs(si) >= To) ? other : this;
}

/// <summary>What a printed number stands for; decides its unit and decimals.</summary>
public enum DisplayKind
{
    /// <summary>A pressure above the atmosphere.</summary>
    Pressure,

    /// <summary>An absolute pressure.</summary>
    AbsolutePressure,

    /// <summary>A vacuum level.</summary>
    Vacuum,

    /// <summary>The rise of a vacuum.</summary>
    VacuumRise,

    /// <summary>A barometer reading.</summary>
    AtmosphericPressure,

    /// <summary>A difference of refrigerant pressures.</summary>
    PressureDifference,

    /// <summary>Static pressure of air.</summary>
    StaticPressure,

    /// <summary>A temperature.</summary>
    Temperature,

    /// <summary>A difference of temperatures.</summary>
    TemperatureDifference,

    /// <summary>A length of line, a height.</summary>
    Length,

    /// <summary>Elevation of a site.</summary>
    Elevation,

    /// <summary>The diameter of a tube.</summary>
    TubeDiameter,

    /// <summary>A mass of refrigerant.</summary>
    Mass,

    /// <summary>Charge for each length of line.</summary>
    MassPerLength,

    /// <summary>An area.</summary>
    Area,

    /// <summary>A volume of a room or a circuit.</summary>
    Volume,

    /// <summary>A span of time.</summary>
    Duration,

    /// <summary>Air flow.</summary>
    AirFlow,

    /// <summary>Air flow for each capacity.</summary>
    FlowPerCapacity,

    /// <summary>Mass flow of refrigerant.</summary>
    MassFlow,

    /// <summary>A leak rate by mass.</summary>
    LeakRate,

    /// <summary>A leak rate by pressure and volume.</summary>
    Throughput,

    /// <summary>Gas velocity.</summary>
    Velocity,

    /// <summary>Electrical power.</summary>
    Power,

    /// <summary>Heat rate.</summary>
    Capacity,

    /// <summary>Fan power for each air flow.</summary>
    FanPower,

    /// <summary>Torque.</summary>
    Torque,

    /// <summary>Electric current.</summary>
    Current,

    /// <summary>Voltage.</summary>
    Voltage,

    /// <summary>Capacitance.</summary>
    Capacitance,

    /// <summary>Insulation resistance.</summary>
    Resistance,

    /// <summary>Frequency.</summary>
    Frequency,

    /// <summary>A percentage.</summary>
    Percentage,

    /// <summary>A pure number.</summary>
    Number,

    /// <summary>Density.</summary>
    Density,

    /// <summary>Enthalpy of a unit of mass.</summary>
    Enthalpy,

    /// <summary>Concentration of a gas in another, by volume.</summary>
    Concentration,

    /// <summary>Flame rectification current of a burner.</summary>
    FlameSignal,

    /// <summary>Flow of water.</summary>
    WaterFlow,

    /// <summary>Volume of the water in a circuit.</summary>
    WaterVolume,
}
