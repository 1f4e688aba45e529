using System.Collections.Immutable;
using Commission.Messages.Fluent;

namespace Commission.Messages;

/// <summary>A value that a message fills in: what it is, not how it reads.</summary>
public abstract record MessageValue
{
    /// <summary>What kind of value it is.</summary>
    public abstract ValueKind Kind { get; }
}

/// <summary>A physical quantity as it is printed. What prints it knows the units.</summary>
/// <param name="Si">Value in the coherent SI unit of its dimension.</param>
/// <param name="Dimension">Name of the dimension, for example <c>vacuum level</c>.</param>
/// <param name="Unit">Symbol of the unit it is printed in; of a compound such as lb and oz the smaller.</param>
/// <param name="Value">Value in that unit, rounded as printed.</param>
/// <param name="Decimals">Digits behind the decimal sign.</param>
public sealed record QuantityValue(double Si, string Dimension, string Unit, double Value, int Decimals) : MessageValue
{
    /// <summary>The larger unit of a compound, of which whole ones are printed first; null for a single unit.</summary>
    public string? Larger { get; init; }

    /// <summary>Expanded uncertainty in <see cref="Unit"/>, rounded as printed; null when none is printed.</summary>
    public double? Expanded { get; init; }

    /// <inheritdoc/>
    public override ValueKind Kind => ValueKind.Quantity;
}

/// <summary>A span of time.</summary>
/// <param name="Seconds">Its length, s, not negative.</param>
public sealed record DurationValue(double Seconds) : MessageValue
{
    /// <inheritdoc/>
    public override ValueKind Kind => ValueKind.Duration;
}

/// <summary>A moment: a time of day, or a time since a start that the message names.</summary>
public sealed record TimeValue : MessageValue
{
    /// <summary>Time of day, to the second; null for a time since the start.</summary>
    public TimeOnly? OfDay { get; private init; }

    /// <summary>Time since the start, s; 0 for a time of day.</summary>
    public double Elapsed { get; private init; }

    /// <inheritdoc/>
    public override ValueKind Kind => ValueKind.Time;

    /// <summary>A time of day.</summary>
    /// <param name="time">The time.</param>
    public static TimeValue At(TimeOnly time) => new() { OfDay = time };

    /// <summary>A time since the start.</summary>
    /// <param name="seconds">The time, s.</param>
    public static TimeValue After(double seconds) => new() { Elapsed = seconds };
}

/// <summary>A day.</summary>
/// <param name="Day">The day.</param>
public sealed record DateValue(DateOnly Day) : MessageValue
{
    /// <inheritdoc/>
    public override ValueKind Kind => ValueKind.Date;
}

/// <summary>A number of things.</summary>
/// <param name="Count">How many.</param>
public sealed record CountValue(int Count) : MessageValue
{
    /// <inheritdoc/>
    public override ValueKind Kind => ValueKind.Count;
}

/// <summary>A pure number.</summary>
/// <param name="Number">The number; it is rounded half away from zero when printed.</param>
/// <param name="Decimals">Digits behind the decimal sign, 0 to 15.</param>
public sealed record NumberValue(double Number, int Decimals) : MessageValue
{
    /// <inheritdoc/>
    public override ValueKind Kind => ValueKind.Number;
}

/// <summary>Several values.</summary>
/// <param name="Items">The values in order.</param>
/// <param name="Join">How they are joined.</param>
public sealed record ListValue(ImmutableArray<MessageValue> Items, ListJoin Join = ListJoin.And) : MessageValue
{
    /// <summary>The values in order.</summary>
    public ImmutableArray<MessageValue> Items { get; init; } = Items.IsDefault ? [] : Items;

    /// <inheritdoc/>
    public override ValueKind Kind => ValueKind.List;

    /// <inheritdoc/>
    public bool Equals(ListValue? other) => other is not null && Join == other.Join && Items.AsSpan().SequenceEqual(other.Items.AsSpan());

    /// <inheritdoc/>
    public override int GetHashCode() => Items.Aggregate((int)Join, HashCode.Combine);
}

/// <summary>A name that no language changes.</summary>
/// <param name="Name">The name.</param>
public sealed record NameValue(string Name) : MessageValue
{
    /// <inheritdoc/>
    public override ValueKind Kind => ValueKind.Name;
}

/// <summary>Numbers, units and symbols in a row, such as the numbers put into a formula: no words, and each language puts its own decimal sign.</summary>
/// <param name="Invariant">The row with a point for decimals.</param>
public sealed record SymbolsValue(string Invariant) : MessageValue
{
    /// <inheritdoc/>
    public override ValueKind Kind => ValueKind.Symbols;
}

/// <summary>Text that the crew or a source wrote, in whatever language.</summary>
/// <param name="Text">The text.</param>
public sealed record TextValue(string Text) : MessageValue
{
    /// <inheritdoc/>
    public override ValueKind Kind => ValueKind.Text;
}

/// <summary>A word from the list that the message's comment declares; texts hang on it.</summary>
/// <param name="Option">The word.</param>
public sealed record ChoiceValue(string Option) : MessageValue
{
    /// <inheritdoc/>
    public override ValueKind Kind => ValueKind.Choice;
}

/// <summary>A value with its name in a message.</summary>
/// <param name="Name">The name, without the dollar sign.</param>
/// <param name="Value">The value.</param>
public readonly record struct NamedValue(string Name, MessageValue Value);

/// <summary>
/// A sentence as what it says and about what: the name of a message and its values. The text is made from it in a language. The factory methods
/// generated from the English catalogues make messages; their names and kinds of values always fit.
/// </summary>
public sealed record Message : MessageValue
{
    private Message(string phase, string name, ImmutableArray<NamedValue> values)
    {
        Phase = phase;
        Name = name;
        Values = values;
    }

    /// <summary>The phase, which is the catalogue file.</summary>
    public string Phase { get; }

    /// <summary>Its name in that file.</summary>
    public string Name { get; }

    /// <summary>Phase and name: <c>evacuation.hold-passed</c>.</summary>
    public string Id => $"{Phase}.{Name}";

    /// <summary>Its values in the order they are declared.</summary>
    public ImmutableArray<NamedValue> Values { get; }

    /// <inheritdoc/>
    public override ValueKind Kind => ValueKind.Message;

    /// <summary>A message of a catalogue. The generated factories call it; whoever reads a stored record may, too.</summary>
    /// <param name="phase">The catalogue file.</param>
    /// <param name="name">Its name there.</param>
    /// <param name="values">Its values.</param>
    public static Message Of(string phase, string name, ImmutableArray<NamedValue> values) => new(phase, name, values);

    /// <summary>The value of a name; null when it has none.</summary>
    /// <param name="name">The name, without the dollar sign.</param>
    public MessageValue? Find(string name)
    {
        foreach (var value in Values)
        {
            if (value.Name == name)
                return value.Value;
        }

        return null;
    }

    /// <inheritdoc/>
    public bool Equals(Message? other) =>
        other is not null && Phase == other.Phase && Name == other.Name && Values.AsSpan().SequenceEqual(other.Values.AsSpan());

    /// <inheritdoc/>
    public override int GetHashCode() => Values.Aggregate(HashCode.Combine(Phase, Name), static (hash, value) => HashCode.Combine(hash, value));
}
