using Commission.Measurement.Quantities;

namespace Commission.Measurement.Units;

/// <summary>What a dimension is called in a sentence.</summary>
public static class DimensionName
{
    /// <summary>The name without an article: <c>pressure</c>, <c>temperature difference</c>.</summary>
    /// <param name="dimension">The dimension.</param>
    public static string Of(Dimension dimension) => dimension switch
    {
        Dimension.Pressure => "pressure",
        Dimension.VacuumLevel => "vacuum level",
        Dimension.AtmosphericPressure => "barometer reading",
        Dimension.PressureDifference => "pressure difference",
        Dimension.Temperature => "temperature",
        Dimension.TemperatureDifference => "temperature difference",
        Dimension.Mass => "mass",
        Dimension.Length => "length",
        Dimension.Area => "area",
        Dimension.Volume => "volume",
        Dimension.Duration => "time span",
        Dimension.VolumeFlow => "volume flow",
        Dimension.MassFlow => "mass flow or leak rate",
        Dimension.Velocity => "velocity",
        Dimension.Power => "power or capacity",
        Dimension.Torque => "torque",
        Dimension.ElectricCurrent => "current",
        Dimension.Voltage => "voltage",
        Dimension.Capacitance => "capacitance",
        Dimension.Resistance => "resistance",
        Dimension.Frequency => "frequency or speed",
        Dimension.Ratio => "percentage",
        Dimension.MassPerLength => "mass for each length",
        Dimension.Density => "density or concentration",
        Dimension.SpecificEnthalpy => "enthalpy",
        Dimension.Throughput => "gas flow",
        Dimension.PressureRate => "rate of pressure change",
        Dimension.PowerPerFlow => "power for each flow",
        _ => "flow for each capacity",
    };

    /// <summary>The name with its article: <c>a pressure</c>, <c>an area</c>.</summary>
    /// <param name="dimension">The dimension.</param>
    public static string WithArticle(Dimension dimension) => dimension switch
    {
        Dimension.Area or Dimension.SpecificEnthalpy => "an " + Of(dimension),
        _ => "a " + Of(dimension),
    };
}
