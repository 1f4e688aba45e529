using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;

namespace Commission.Jobs.Binding;

/// <summary>What a number without a unit means, as <c>units</c> at the top of the file says.</summary>
internal sealed class UnitDefaults
{
    private readonly string? _preset;
    private readonly Dictionary<string, string> _overrides = new(StringComparer.Ordinal);

    private UnitDefaults(string? preset) => _preset = preset;

    /// <summary>No defaults: every number needs its unit.</summary>
    public static UnitDefaults None { get; } = new(null);

    /// <summary>The file says <c>units</c>, but not in a way that was understood.</summary>
    public static UnitDefaults NotUnderstood { get; } = new(null) { Refused = true };

    public bool HasPreset => _preset is not null;

    /// <summary>Whether bare numbers are in SI, so that no advice speaks of inches and pounds.</summary>
    public bool IsSi => _preset == "si";

    /// <summary>The preset alone, before its exceptions are read.</summary>
    public static UnitDefaults OfPreset(string preset) => preset is "us" or "si" ? new(preset) : None;

    public bool Refused { get; private init; }

    public static UnitDefaults Of(UnitChoice? choice)
    {
        if (choice?.Preset is not { } preset)
            return None;
        var defaults = new UnitDefaults(preset.Value == UnitPreset.Us ? "us" : "si");
        foreach (var (group, unit) in Exceptions(choice))
        {
            if (unit is not null)
                defaults._overrides[group] = unit.Value;
        }

        return defaults;
    }

    /// <summary>What <c>units</c> names apart from the preset, by the key of <see cref="UnitSystem.Keys"/>.</summary>
    public static IEnumerable<(string Key, Given<string>? Unit)> Exceptions(UnitChoice choice) =>
    [
        ("pressure", choice.Pressure),
        ("vacuum", choice.Vacuum),
        ("atmospheric pressure", choice.AtmosphericPressure),
        ("pressure difference", choice.PressureDifference),
        ("static pressure", choice.StaticPressure),
        ("temperature", choice.Temperature),
        ("temperature difference", choice.TemperatureDifference),
        ("mass", choice.Mass),
        ("length", choice.Length),
        ("elevation", choice.Elevation),
        ("tube diameter", choice.TubeDiameter),
        ("air flow", choice.AirFlow),
        ("capacity", choice.Capacity),
    ];

    /// <summary>The unit of a bare number in a field of the schema; null when the file names no preset.</summary>
    public Unit? ForField(QuantityField field)
    {
        if (_preset is null)
            return null;
        var symbol = field.UnitOverride is { } group && _overrides.TryGetValue(group, out var chosen) ? chosen : _preset == "us" ? field.UsUnit : field.SiUnit;
        return symbol is null ? null : UnitTable.Find(symbol, field.Dimension);
    }

    /// <summary>The unit of a bare number in a chart or a log, where the kind of quantity follows from another key.</summary>
    public Unit? ForChart(Dimension dimension) => dimension switch
    {
        Dimension.Temperature => ForGroup("temperature", dimension),
        Dimension.TemperatureDifference => ForGroup("temperature difference", dimension),
        _ => ForGroup("pressure", dimension),
    };

    /// <summary>The unit of a bare number where the kind of quantity follows from another key; null for kinds that have no usual one.</summary>
    public Unit? ForInstrument(Dimension dimension) => dimension switch
    {
        // What a manometer shows; the differences that a gauge can tell have the gauge's own unit.
        Dimension.PressureDifference => ForGroup("static pressure", dimension),
        Dimension.Temperature => ForGroup("temperature", dimension),
        Dimension.Pressure => ForGroup("pressure", dimension),
        Dimension.VacuumLevel => ForGroup("vacuum", dimension),
        Dimension.AtmosphericPressure => ForGroup("atmospheric pressure", dimension),
        Dimension.Mass => ForGroup("mass", dimension),
        Dimension.VolumeFlow => ForGroup("air flow", dimension),
        Dimension.Torque => ForGroup("torque", dimension),
        Dimension.Capacitance => ForGroup("capacitance", dimension),
        Dimension.Ratio => ForGroup("percentage", dimension),
        _ => null,
    };

    /// <summary>The unit of a bare step or deviation of such a quantity: the same as its values have.</summary>
    public Unit? ForInstrumentStep(Dimension dimension, Dimension difference) =>
        ForInstrument(dimension) is { } unit ? UnitTable.For(difference).FirstOrDefault(u => u.Factor.Equals(unit.Factor)) : null;

    /// <summary>The unit of bare numbers of one group; null when the file names no preset.</summary>
    public Unit? ForGroup(string group, Dimension dimension)
    {
        if (_preset is null)
            return null;
        if (_overrides.TryGetValue(group, out var chosen))
            return UnitTable.Find(chosen, dimension);
        var system = _preset == "us" ? UnitSystem.Us : UnitSystem.Si;
        return system[Enum.GetValues<DisplayKind>().First(kind => UnitSystem.KeyOf(kind) == group)].Unit;
    }
}
