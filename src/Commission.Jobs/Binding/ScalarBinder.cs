using System.Text.Json;
using Commission.Jobs.Model;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Source.Yaml;

namespace Commission.Jobs.Binding;

/// <summary>Chooses, by the type of a property, how its scalar is read.</summary>
internal static class ScalarBinder
{
    private static readonly Dictionary<Type, Func<BindingContext, SourceScalar, JsonElement, (string Key, Type Owner), object?>> ByType = new()
    {
        [typeof(Given<string>)] = (context, scalar, field, place) => WordBinder.Text(context, scalar, field, place.Key, place.Owner),
        [typeof(Given<bool>)] = (context, scalar, _, _) => WordBinder.YesNo(context, scalar),
        [typeof(Given<int>)] = (context, scalar, _, place) => WordBinder.Whole(context, scalar, place.Key),
        [typeof(Given<double>)] = (context, scalar, _, _) => WordBinder.Number(context, scalar),
        [typeof(Given<DateOnly>)] = (context, scalar, _, _) => DateAndTime.Date(context, scalar),
        [typeof(Given<JobTime>)] = (context, scalar, _, _) => DateAndTime.Time(context, scalar),
        [typeof(Given<CalendarPeriod>)] = (context, scalar, _, _) => DateAndTime.Period(context, scalar),
        [typeof(Given<AccuracyStatement>)] = (context, scalar, _, place) => QuantityBinder.Accuracy(context, scalar, place.Key),
        [typeof(Given<QuantityValue>)] = (context, scalar, field, _) => QuantityBinder.Any(context, scalar, field),
        [typeof(Given<StatedPressure>)] = (context, scalar, field, _) => QuantityBinder.Pressure(context, scalar, field),
        [typeof(Given<Model.QuantityRange<Voltage>>)] = (context, scalar, field, _) => QuantityBinder.Range<Voltage>(context, scalar, field),
        [typeof(Given<Model.QuantityRange<Temperature>>)] = (context, scalar, field, _) => QuantityBinder.Range<Temperature>(context, scalar, field),
    };

    static ScalarBinder()
    {
        Add<Pressure>();
        Add<PressureDifference>();
        Add<Temperature>();
        Add<TemperatureDifference>();
        Add<Mass>();
        Add<Length>();
        Add<Area>();
        Add<Volume>();
        Add<Duration>();
        Add<VolumeFlow>();
        Add<MassFlow>();
        Add<Velocity>();
        Add<Power>();
        Add<Torque>();
        Add<ElectricCurrent>();
        Add<Voltage>();
        Add<Capacitance>();
        Add<Resistance>();
        Add<Frequency>();
        Add<Ratio>();
        Add<MassPerLength>();
        Add<PowerPerFlow>();
    }

    /// <summary>Whether a property of this type holds a single value.</summary>
    public static bool Knows(Type type) => ByType.ContainsKey(type) || EnumOf(type) is not null;

    public static object? Bind(BindingContext context, Type type, SourceScalar scalar, JsonElement field, string key, Type owner)
    {
        if (ByType.TryGetValue(type, out var read)) return read(context, scalar, field, (key, owner));
        var words = EnumOf(type) ?? throw new InvalidOperationException($"No way to read a {type}.");
        var (member, word) = WordBinder.Word(field, scalar.Text);
        context.Canonical[scalar] = word;
        return Activator.CreateInstance(type, Enum.Parse(words, member), scalar.Location, word);
    }

    private static Type? EnumOf(Type type) =>
        type.IsGenericType && type.GetGenericTypeDefinition() == typeof(Given<>) && type.GetGenericArguments()[0] is { IsEnum: true } words ? words : null;

    private static void Add<T>()
        where T : struct, IQuantity<T> =>
        ByType[typeof(Given<T>)] = (context, scalar, field, _) => QuantityBinder.Quantity<T>(context, scalar, field);
}
