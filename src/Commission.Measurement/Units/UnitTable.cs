using Commission.Measurement.Quantities;

namespace Commission.Measurement.Units;

/// <summary>Every unit a job file may use, one line each: canonical symbol, SI units in one of it, other spellings. A unit is added here and nowhere else.</summary>
/// <remarks>Spelling is compared after folding: µ and μ become u, ² ³ become 2 3, spaces, dots, hyphens, asterisks and ° go. Factors: NIST SP 811 (2008) appendix B, from memory.</remarks>
public static class UnitTable
{
    private const double Psi = ConversionFactors.Psi;
    private const double Micron = ConversionFactors.Micron;
    private const double InHg = ConversionFactors.InchOfMercury;
    private const double InWc = ConversionFactors.InchOfWater;
    private const double Cfm = ConversionFactors.CubicFoot / 60.0;
    private const double LbfFt = ConversionFactors.PoundForce * ConversionFactors.Foot;
    private const double Pound = ConversionFactors.Pound;
    private const double Foot = ConversionFactors.Foot;
    private const double Inch = ConversionFactors.Inch;
    private const double Btu = ConversionFactors.Btu;
    private const double Ton = ConversionFactors.TonOfRefrigeration;
    private const double Year = ConversionFactors.Year;
    private const double Degree = ConversionFactors.FahrenheitDegree;

    // The units of vacuum gauges, one row each: a level, absolute without saying so, and the difference of two levels.
    private static readonly (Unit Level, Unit Difference)[] VacuumUnits =
    [
        OfVacuum("micron", ConversionFactors.Micron, "microns", "um Hg", "um", "umHg(a)", "micron Hg", "microns Hg", "micron abs"),
        OfVacuum("mTorr", ConversionFactors.Torr / 1000, "millitorr", "mTorr abs"),
        OfVacuum("Torr", ConversionFactors.Torr, "torr abs"),
    ];

    /// <summary>Every unit, in the order of the table; the first of a dimension is the one offered first in advice.</summary>
    public static IReadOnlyList<Unit> All { get; } =
    [
        // Pressures say what they are counted from.
        Gauge("psig", Psi, "psi(g)", "psi g", "psi gauge", "lb/in2 g"),
        Absolute("psia", Psi, "psi(a)", "psi a", "psi abs", "psi absolute"),
        Gauge("kPag", 1e3, "kPa(g)", "kPa g", "kPa gauge"),
        Absolute("kPaa", 1e3, "kPa(a)", "kPa a", "kPa abs", "kPa absolute"),
        Gauge("bar(g)", 1e5, "barg", "bar g", "bar gauge"),
        Absolute("bar(a)", 1e5, "bara", "bar a", "bar abs", "bar absolute"),
        Gauge("MPa(g)", 1e6, "MPag", "MPa g", "MPa gauge"),
        Absolute("MPa(a)", 1e6, "MPaa", "MPa a", "MPa abs", "MPa absolute"),
        Gauge("mbar(g)", 100, "mbarg", "mbar gauge"),
        Absolute("mbar(a)", 100, "mbara", "mbar abs", "mbar absolute"),
        Absolute("hPa(a)", 100, "hPaa", "hPa abs", "hPa absolute"),
        Gauge("Pa(g)", 1, "Pag", "Pa gauge"),
        Absolute("Pa(a)", 1, "Paa", "Pa abs", "Pa absolute"),
        .. VacuumUnits.Select(u => u.Level),
        Absolute("mmHg abs", ConversionFactors.MillimeterOfMercury, "mmHg(a)", "mm Hg abs", "mmHga", "mmHg absolute"),
        Absolute("inHg abs", InHg, "inHg(a)", "in Hg abs", "inHga", "inHg absolute"),
        Below("inHg vac", InHg, "in Hg vac", "inHg vacuum", "inHg(v)", "inHgv", "inches of mercury vacuum", "\"Hg vac"),
        Below("kPa vac", 1e3, "kPa vacuum"),
        Below("mmHg vac", ConversionFactors.MillimeterOfMercury, "mmHg vacuum"),

        // In a vacuum field these are absolute: nothing else makes sense there.
        new("Pa", Dimension.VacuumLevel, 1, 0, PressureReference.Absolute, ["pascal", "pascals"]),
        new("mbar", Dimension.VacuumLevel, 100, 0, PressureReference.Absolute, ["millibar", "millibars"]),
        new("hPa", Dimension.VacuumLevel, 100, 0, PressureReference.Absolute, ["hectopascal"]),

        // So are these on a barometer.
        new("inHg", Dimension.AtmosphericPressure, InHg, 0, PressureReference.Absolute, ["in Hg", "inches of mercury", "\"Hg"]),
        new("hPa", Dimension.AtmosphericPressure, 100, 0, PressureReference.Absolute, ["hectopascal", "hectopascals"]),
        new("mbar", Dimension.AtmosphericPressure, 100, 0, PressureReference.Absolute, ["millibar", "millibars", "mb"]),
        new("kPa", Dimension.AtmosphericPressure, 1e3, 0, PressureReference.Absolute, ["kilopascal", "kilopascals"]),
        new("bar", Dimension.AtmosphericPressure, 1e5, 0, PressureReference.Absolute, ["bars"]),
        new("Pa", Dimension.AtmosphericPressure, 1, 0, PressureReference.Absolute, ["pascal", "pascals"]),
        new("mmHg", Dimension.AtmosphericPressure, ConversionFactors.MillimeterOfMercury, 0, PressureReference.Absolute, ["mm Hg"]),
        new("atm", Dimension.AtmosphericPressure, ConversionFactors.StandardAtmosphere, 0, PressureReference.Absolute, ["atmosphere", "atmospheres"]),

        Of(Dimension.PressureDifference, "psi", Psi, "psid", "psi diff", "lb/in2", "lbf/in2"),
        Of(Dimension.PressureDifference, "kPa", 1e3, "kilopascal", "kilopascals"),
        Of(Dimension.PressureDifference, "bar", 1e5, "bars"),
        Of(Dimension.PressureDifference, "Pa", 1, "pascal", "pascals"),
        Of(Dimension.PressureDifference, "mbar", 100, "millibar", "millibars"),
        Of(Dimension.PressureDifference, "hPa", 100, "hectopascal"),
        Of(Dimension.PressureDifference, "MPa", 1e6, "megapascal"),
        Of(Dimension.PressureDifference, "inwc", InWc, "in wc", "in w.c.", "iwc", "inH2O", "in H2O", "in wg", "inwg", "\"wc", "\"wg", "inches of water", "inches wc"),
        Of(Dimension.PressureDifference, "mmH2O", ConversionFactors.StandardGravity, "mm H2O", "mmwc", "mm wc"),
        .. VacuumUnits.Select(u => u.Difference),
        Of(Dimension.PressureDifference, "mmHg", ConversionFactors.MillimeterOfMercury, "mm Hg"),
        Of(Dimension.PressureDifference, "inHg", InHg, "in Hg"),

        new("°F", Dimension.Temperature, Degree, ConversionFactors.FahrenheitOffset, null, ["F", "degF", "deg F", "degrees F", "Fahrenheit", "degrees Fahrenheit", "℉"]),
        new("°C", Dimension.Temperature, 1, ConversionFactors.CelsiusZero, null, ["C", "degC", "deg C", "degrees C", "Celsius", "degrees Celsius", "℃"]),
        new("K", Dimension.Temperature, 1, 0, null, ["kelvin", "kelvins"]),
        new("°R", Dimension.Temperature, Degree, 0, null, ["R", "degR", "deg R", "Rankine"]),
        Of(Dimension.TemperatureDifference, "°F", Degree, "F", "degF", "deg F", "degrees F", "Fahrenheit", "degrees Fahrenheit", "℉", "R", "degR", "deg R", "Rankine", "F diff"),
        Of(Dimension.TemperatureDifference, "K", 1, "kelvin", "kelvins"),
        Of(Dimension.TemperatureDifference, "°C", 1, "C", "degC", "deg C", "degrees C", "Celsius", "degrees Celsius", "℃", "C diff"),

        Of(Dimension.Mass, "lb", Pound, "lbs", "lbm", "pound", "pounds", "#"),
        Of(Dimension.Mass, "oz", ConversionFactors.Ounce, "ozs", "ounce", "ounces"),
        Of(Dimension.Mass, "kg", 1, "kgs", "kilo", "kilos", "kilogram", "kilograms"),
        Of(Dimension.Mass, "g", 1e-3, "gram", "grams", "gm"),
        Of(Dimension.Mass, "t", 1e3, "tonne", "tonnes", "t CO2e", "t CO2"),

        Of(Dimension.Length, "ft", Foot, "foot", "feet", "'", "′"),
        Of(Dimension.Length, "in", Inch, "inch", "inches", "ins", "\"", "″", "''"),
        Of(Dimension.Length, "m", 1, "meter", "meters", "metre", "metres"),
        Of(Dimension.Length, "mm", 1e-3, "millimeter", "millimeters", "millimetre", "millimetres"),
        Of(Dimension.Length, "cm", 1e-2, "centimeter", "centimeters", "centimetre", "centimetres"),

        Of(Dimension.Area, "ft²", Foot * Foot, "ft2", "sq ft", "sqft", "ft^2", "square feet", "square foot"),
        Of(Dimension.Area, "m²", 1, "m2", "sq m", "sqm", "m^2", "square meters", "square metres"),
        Of(Dimension.Area, "in²", Inch * Inch, "in2", "sq in", "sqin", "in^2", "square inches"),
        Of(Dimension.Area, "mm²", 1e-6, "mm2", "sq mm", "mm^2"),

        Of(Dimension.Volume, "L", 1e-3, "l", "liter", "liters", "litre", "litres"),
        Of(Dimension.Volume, "ft³", ConversionFactors.CubicFoot, "ft3", "cu ft", "cuft", "ft^3", "cubic feet"),
        Of(Dimension.Volume, "m³", 1, "m3", "cu m", "m^3", "cubic meters", "cubic metres"),
        Of(Dimension.Volume, "mL", 1e-6, "ml", "cm3", "cm³", "cc"),
        Of(Dimension.Volume, "in³", Inch * Inch * Inch, "in3", "cu in", "in^3"),
        Of(Dimension.Volume, "gal", 231 * Inch * Inch * Inch, "gallon", "gallons", "US gal"),
        Of(Dimension.Volume, "fl oz", 231.0 / 128 * Inch * Inch * Inch, "fluid oz", "fluid ounce", "fluid ounces", "fl ozs"),

        Of(Dimension.Duration, "min", 60, "mins", "minute", "minutes"),
        Of(Dimension.Duration, "h", 3600, "hr", "hrs", "hour", "hours"),
        Of(Dimension.Duration, "s", 1, "sec", "secs", "second", "seconds"),
        Of(Dimension.Duration, "d", 86400, "day", "days"),

        Of(Dimension.VolumeFlow, "cfm", Cfm, "ft3/min", "ft³/min", "CFM", "scfm", "cu ft/min"),
        Of(Dimension.VolumeFlow, "m³/h", 1.0 / 3600, "m3/h", "m3/hr", "cmh"),
        Of(Dimension.VolumeFlow, "L/s", 1e-3, "l/s", "lps"),
        Of(Dimension.VolumeFlow, "m³/s", 1, "m3/s"),
        Of(Dimension.VolumeFlow, "L/min", 1e-3 / 60, "l/min", "lpm"),
        Of(Dimension.VolumeFlow, "gpm", 231 * Inch * Inch * Inch / 60, "gal/min", "US gpm", "gallons per minute"),
        Of(Dimension.VolumeFlow, "cfh", Cfm / 60, "scfh", "ft3/h", "ft3/hr"),

        Of(Dimension.MassFlow, "g/yr", 1e-3 / Year, "g/year", "g/y", "g/a", "grams/year", "grams per year", "g per year"),
        Of(Dimension.MassFlow, "oz/yr", ConversionFactors.Ounce / Year, "oz/year", "oz/y", "ounces per year"),
        Of(Dimension.MassFlow, "kg/h", 1.0 / 3600, "kg/hr"),
        Of(Dimension.MassFlow, "kg/s", 1),
        Of(Dimension.MassFlow, "g/s", 1e-3),
        Of(Dimension.MassFlow, "lb/h", Pound / 3600, "lb/hr", "lbs/h", "lbs/hr", "pph"),
        Of(Dimension.MassFlow, "lb/min", Pound / 60, "lbs/min"),
        Of(Dimension.MassFlow, "oz/min", ConversionFactors.Ounce / 60),
        Of(Dimension.MassFlow, "lb/yr", Pound / Year, "lb/year", "lbs/yr"),
        Of(Dimension.MassFlow, "kg/yr", 1 / Year, "kg/year"),

        Of(Dimension.Velocity, "fpm", Foot / 60, "ft/min", "feet per minute"),
        Of(Dimension.Velocity, "m/s", 1, "meters per second"),
        Of(Dimension.Velocity, "ft/s", Foot, "fps"),

        Of(Dimension.Power, "W", 1, "watt", "watts"),
        Of(Dimension.Power, "kW", 1e3, "kilowatt", "kilowatts"),
        Of(Dimension.Power, "ton", Ton, "tons", "TR", "ton refrigeration", "tons refrigeration", "RT"),
        Of(Dimension.Power, "Btu/h", Btu / 3600, "Btu/hr", "BTUH", "Btuh"),
        Of(Dimension.Power, "kBtu/h", 1000 * Btu / 3600, "kBtu/hr", "MBH", "kBtuh"),
        Of(Dimension.Power, "hp", ConversionFactors.Horsepower, "horsepower"),

        Of(Dimension.Torque, "lbf·ft", LbfFt, "lbf-ft", "ft-lb", "ft·lb", "lb-ft", "ft-lbf", "ft lbs", "lb ft", "foot-pounds", "foot pounds"),
        Of(Dimension.Torque, "N·m", 1, "Nm", "N-m", "newton meters", "newton metres"),
        Of(Dimension.Torque, "lbf·in", LbfFt / 12, "lbf-in", "in-lb", "in·lb", "lb-in", "in-lbf", "in lbs", "inch-pounds", "inch pounds"),
        Of(Dimension.Torque, "kgf·m", ConversionFactors.StandardGravity, "kgf-m", "kg-m", "kgfm"),

        Of(Dimension.ElectricCurrent, "A", 1, "amp", "amps", "ampere", "amperes"),
        Of(Dimension.ElectricCurrent, "mA", 1e-3, "milliamp", "milliamps"),
        Of(Dimension.ElectricCurrent, "µA", 1e-6, "uA", "microamp", "microamps"),
        Of(Dimension.Voltage, "V", 1, "volt", "volts", "VAC", "VDC", "V AC", "V DC"),
        Of(Dimension.Voltage, "mV", 1e-3, "millivolt", "millivolts"),
        Of(Dimension.Voltage, "kV", 1e3),
        Of(Dimension.Capacitance, "µF", 1e-6, "uF", "MFD", "mfd", "microfarad", "microfarads"),
        Of(Dimension.Resistance, "Ω", 1, "ohm", "ohms", "\u2126"),
        Of(Dimension.Resistance, "kΩ", 1e3, "kohm", "kohms", "k\u2126"),
        Of(Dimension.Resistance, "MΩ", 1e6, "Mohm", "Mohms", "megohm", "megohms", "M\u2126"),
        Of(Dimension.Resistance, "GΩ", 1e9, "Gohm", "Gohms", "gigohm", "G\u2126"),
        Of(Dimension.Frequency, "Hz", 1, "hertz", "cycles"),
        Of(Dimension.Frequency, "rpm", 1.0 / 60, "r/min", "rev/min"),

        Of(Dimension.Ratio, "%", 0.01, "percent", "pct", "per cent", "% RH", "percent RH"),
        Of(Dimension.Ratio, "1", 1),
        Of(Dimension.Ratio, "ppm", 1e-6, "parts per million"),

        Of(Dimension.MassPerLength, "oz/ft", ConversionFactors.Ounce / Foot, "oz per ft", "ounces per foot"),
        Of(Dimension.MassPerLength, "g/m", 1e-3, "g per m", "grams per meter", "grams per metre"),
        Of(Dimension.MassPerLength, "lb/ft", Pound / Foot),
        Of(Dimension.MassPerLength, "kg/m", 1),

        Of(Dimension.Density, "kg/m³", 1, "kg/m3"),
        Of(Dimension.Density, "g/m³", 1e-3, "g/m3"),
        Of(Dimension.Density, "lb/ft³", Pound / ConversionFactors.CubicFoot, "lb/ft3", "lbs/ft3", "lb/cu ft"),

        Of(Dimension.SpecificEnthalpy, "Btu/lb", Btu / Pound, "Btu/lbm"),
        Of(Dimension.SpecificEnthalpy, "kJ/kg", 1e3),
        Of(Dimension.SpecificEnthalpy, "J/kg", 1),

        Of(Dimension.Throughput, "mbar·L/s", 0.1, "mbar L/s", "mbar l/s"),
        Of(Dimension.Throughput, "Pa·m³/s", 1, "Pa m3/s"),
        Of(Dimension.Throughput, "atm·cm³/s", 0.101325, "atm cc/s", "atm·cc/s"),

        Of(Dimension.PressureRate, "micron/min", Micron / 60, "um/min", "microns/min", "um Hg/min"),
        Of(Dimension.PressureRate, "Pa/min", 1.0 / 60),
        Of(Dimension.PressureRate, "micron/h", Micron / 3600, "um/h", "microns/h", "micron/hr", "um/hr"),
        Of(Dimension.PressureRate, "Pa/s", 1),
        Of(Dimension.PressureRate, "Pa/h", 1.0 / 3600),
        Of(Dimension.PressureRate, "psi/h", Psi / 3600, "psi/hr"),
        Of(Dimension.PressureRate, "kPa/h", 1e3 / 3600, "kPa/hr"),

        Of(Dimension.PowerPerFlow, "W/cfm", 1 / Cfm, "watts/cfm", "W per cfm"),
        Of(Dimension.PowerPerFlow, "W/(L/s)", 1e3, "W/L/s", "W per L/s"),
        Of(Dimension.PowerPerFlow, "W/(m³/h)", 3600, "W/m3/h", "W/(m3/h)"),
        Of(Dimension.FlowPerPower, "cfm/ton", Cfm / Ton, "cfm per ton"),
        Of(Dimension.FlowPerPower, "L/s/kW", 1e-6, "(L/s)/kW", "L/s per kW"),
        Of(Dimension.FlowPerPower, "m³/h/kW", 1e-3 / 3600, "m3/h/kW", "(m3/h)/kW", "(m³/h)/kW"),
    ];

    /// <summary>The units of vacuum gauges, in the order of the table.</summary>
    public static IReadOnlyList<Unit> Vacuum { get; } = [.. All.Where(u => u.IsVacuum)];

    // Inch, pound, °F, ton and horsepower, and what is made of them; micron and Torr are read all over the world.
    private static readonly HashSet<string> Customary = new(StringComparer.Ordinal)
    {
        "psig", "psia", "psi", "psi/h", "inHg", "inHg abs", "inHg vac", "inwc", "°F", "°R", "lb", "oz", "ft", "in", "ft²", "in²", "ft³", "in³", "fl oz",
        "cfm", "cfh", "oz/yr", "lb/h", "lb/min", "oz/min", "lb/yr", "fpm", "ft/s", "ton", "Btu/h", "kBtu/h", "hp", "lbf·ft", "lbf·in",
        "oz/ft", "lb/ft", "lb/ft³", "Btu/lb", "W/cfm", "cfm/ton",
    };

    private static readonly Dictionary<Dimension, Unit[]> ByDimension =
        All.GroupBy(u => u.Dimension).ToDictionary(g => g.Key, g => g.ToArray());

    private static readonly Dictionary<(Dimension Dimension, string Key), (Unit Unit, string Spelling)> ByKey = Index(UnitSpelling.Fold);

    // A phone begins words with a capital.
    private static readonly Dictionary<(Dimension Dimension, string Key), (Unit Unit, string Spelling)> ByCaselessKey = Index(UnitSpelling.FoldCase);

    /// <summary>The units that may stand beside a number of this dimension, in the order in which they are offered.</summary>
    /// <param name="dimension">What the number is of.</param>
    public static IEnumerable<Unit> For(Dimension dimension) => dimension switch
    {
        Dimension.VacuumLevel => [.. Vacuum, .. ByDimension[dimension], .. Absolutes.Where(u => !u.IsVacuum)],
        Dimension.AtmosphericPressure => [.. ByDimension[dimension], .. Absolutes],
        _ => ByDimension[dimension],
    };

    /// <summary>The units to offer a file: all of them, or under SI those without inch and pound, the usual one first.</summary>
    /// <param name="dimension">What the number is of.</param>
    /// <param name="si">Whether the file is in SI.</param>
    public static IEnumerable<Unit> OfferedFor(Dimension dimension, bool si)
    {
        if (!si)
            return For(dimension);
        var metric = For(dimension).Where(u => !u.IsCustomary).ToArray();
        return metric.OrderBy(u => UnitSystem.SiPresetUnits.Contains(u) ? 0 : 1);
    }

    internal static bool IsCustomary(string symbol) => Customary.Contains(symbol);

    /// <summary>The unit of this spelling for a number of this dimension; nothing when it is not known or measures something else.</summary>
    /// <param name="spelling">Symbol or alias.</param>
    /// <param name="dimension">What the number is of.</param>
    public static Unit? Find(string spelling, Dimension dimension)
    {
        if (FindExactly(spelling, dimension) is { } unit)
            return unit;
        if (dimension is Dimension.VacuumLevel or Dimension.AtmosphericPressure
            && FindExactly(spelling, Dimension.Pressure) is { Reference: PressureReference.Absolute } absolute)
        {
            return absolute;
        }

        return null;
    }

    /// <summary>Every unit of this spelling, whatever it measures, in the order of the table.</summary>
    /// <param name="spelling">Symbol or alias.</param>
    public static IEnumerable<Unit> FindAny(string spelling) =>
        Enum.GetValues<Dimension>().Select(d => FindExactly(spelling, d)).OfType<Unit>();

    private static Unit? FindExactly(string spelling, Dimension dimension)
    {
        if (ByKey.TryGetValue((dimension, UnitSpelling.Fold(spelling)), out var exact))
            return exact.Unit;
        return ByCaselessKey.TryGetValue((dimension, UnitSpelling.FoldCase(spelling)), out var caseless)
            && UnitSpelling.PrefixAgrees(spelling, caseless.Spelling) ? caseless.Unit : null;
    }

    private static IEnumerable<Unit> Absolutes => ByDimension[Dimension.Pressure].Where(u => u.Reference == PressureReference.Absolute);

    private static Dictionary<(Dimension Dimension, string Key), (Unit Unit, string Spelling)> Index(Func<string, string> fold)
    {
        var index = new Dictionary<(Dimension, string), (Unit, string)>();
        foreach (var unit in All)
        {
            foreach (var spelling in unit.Aliases.Prepend(unit.Symbol))
                index.TryAdd((unit.Dimension, fold(spelling)), (unit, spelling));
        }

        return index;
    }

    private static Unit Of(Dimension dimension, string symbol, double factor, params string[] aliases) => new(symbol, dimension, factor, 0, null, aliases);

    // A level may be written with "abs" or "(a)"; a difference may not.
    private static (Unit Level, Unit Difference) OfVacuum(string symbol, double factor, params string[] aliases) => (
        new Unit(symbol, Dimension.Pressure, factor, 0, PressureReference.Absolute, aliases, isVacuum: true),
        Of(Dimension.PressureDifference, symbol, factor, [.. aliases.Where(a => !a.EndsWith("abs", StringComparison.Ordinal) && !a.EndsWith("(a)", StringComparison.Ordinal))]));

    private static Unit Gauge(string symbol, double factor, params string[] aliases) => new(symbol, Dimension.Pressure, factor, 0, PressureReference.Gauge, aliases);

    private static Unit Absolute(string symbol, double factor, params string[] aliases) => new(symbol, Dimension.Pressure, factor, 0, PressureReference.Absolute, aliases);

    private static Unit Below(string symbol, double factor, params string[] aliases) => new(symbol, Dimension.Pressure, factor, 0, PressureReference.BelowAtmosphere, aliases);
}
