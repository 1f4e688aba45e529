using Commission.Measurement.Quantities;

namespace Commission.Jobs.Binding;

/// <summary>Which quantities a field may hold whose kind follows from another key: an instrument's from its kind.</summary>
/// <param name="Values">Kinds of value, the usual one first.</param>
/// <param name="Differences">Kinds of step or deviation, the usual one first.</param>
internal sealed record AnyDimensions(IReadOnlyList<Dimension> Values, IReadOnlyList<Dimension> Differences)
{
    private static readonly Dimension[] Everything =
    [
        Dimension.Pressure, Dimension.VacuumLevel, Dimension.PressureDifference, Dimension.Temperature, Dimension.Mass, Dimension.Length, Dimension.Duration,
        Dimension.VolumeFlow, Dimension.MassFlow, Dimension.Velocity, Dimension.Power, Dimension.Torque, Dimension.ElectricCurrent, Dimension.Voltage,
        Dimension.Capacitance, Dimension.Resistance, Dimension.Frequency, Dimension.Ratio,
    ];

    /// <summary>Nothing is known about the kind.</summary>
    public static AnyDimensions Unknown { get; } = new(Everything, Everything);

    public static AnyDimensions ForInstrument(string? kind) => kind switch
    {
        "pressure gauge" => new([Dimension.Pressure], [Dimension.PressureDifference]),
        "vacuum gauge" => new([Dimension.VacuumLevel], [Dimension.PressureDifference]),
        "barometer" => new([Dimension.AtmosphericPressure], [Dimension.PressureDifference]),
        "pipe clamp" or "thermometer" => new([Dimension.Temperature], [Dimension.TemperatureDifference]),
        "psychrometer" => new([Dimension.Temperature, Dimension.Ratio], [Dimension.TemperatureDifference, Dimension.Ratio]),
        "hygrometer" => Same(Dimension.Ratio),
        "scale" => Same(Dimension.Mass),
        "clamp meter" => Same(Dimension.ElectricCurrent, Dimension.Voltage, Dimension.Resistance, Dimension.Capacitance, Dimension.Power, Dimension.Frequency),
        "multimeter" => Same(Dimension.Voltage, Dimension.ElectricCurrent, Dimension.Resistance, Dimension.Capacitance, Dimension.Frequency),
        "capacitance meter" => Same(Dimension.Capacitance),
        "insulation tester" => Same(Dimension.Resistance, Dimension.Voltage),
        "phase rotation meter" => Same(Dimension.Voltage, Dimension.Frequency),
        "manometer" => Same(Dimension.PressureDifference),
        "anemometer" => Same(Dimension.Velocity, Dimension.VolumeFlow),
        "flow hood" => Same(Dimension.VolumeFlow),
        "torque wrench" => Same(Dimension.Torque),
        "leak detector" => Same(Dimension.MassFlow),
        "stopwatch" => Same(Dimension.Duration),
        _ => Unknown,
    };

    public static AnyDimensions ForSafetyDevice(string? kind) => kind switch
    {
        "high-pressure switch" or "low-pressure switch" or "relief valve" => new([Dimension.Pressure], [Dimension.PressureDifference]),
        "oil pressure switch" => Same(Dimension.PressureDifference),
        "freeze protection" or "discharge thermostat" => new([Dimension.Temperature, Dimension.Pressure], [Dimension.TemperatureDifference, Dimension.PressureDifference]),
        _ => Unknown,
    };

    public static AnyDimensions ForChart(string? quantity) => quantity switch
    {
        "superheat" or "subcooling" or "temperature split" => Same(Dimension.TemperatureDifference),
        "discharge line" or "vapor line" or "liquid line" or "outdoor dry bulb" or "outdoor wet bulb" or "return dry bulb" or "return wet bulb" or "box temperature"
            => new([Dimension.Temperature], [Dimension.TemperatureDifference]),
        _ => new([Dimension.Pressure], [Dimension.PressureDifference]),
    };

    private static AnyDimensions Same(params Dimension[] dimensions) => new(dimensions, dimensions);
}
