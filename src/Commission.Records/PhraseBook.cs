using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Commission.Messages;

namespace Commission.Records;

/// <summary>A text of a record and what it is made of.</summary>
/// <param name="Text">The text as it stands in the record.</param>
/// <param name="Value">The message or value it was made from; null where only its decimal sign belongs to the language.</param>
public sealed record Phrase(string Text, [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] MessageValue? Value = null);

/// <summary>Writes the texts of a record in its language and keeps what each is made of.</summary>
/// <param name="language">The language.</param>
public sealed class PhraseBook(Language language)
{
    private readonly Dictionary<string, MessageValue?> _phrases = new(StringComparer.Ordinal);

    /// <summary>The language.</summary>
    public Language Language { get; } = language;

    /// <summary>The text of a message or of another value.</summary>
    /// <param name="value">The value.</param>
    public string Text(MessageValue value)
    {
        ArgumentNullException.ThrowIfNull(value);
        if (value is ListValue { Items: [var only] })
            return Text(only);
        var text = RecordWords.Text(value, Language);
        // What stands for itself in every language needs no entry, and the first that said a text keeps it.
        if (value is not (NameValue or TextValue) && text.Length > 0)
            _phrases.TryAdd(text, value is SymbolsValue ? null : value);
        return text;
    }

    /// <summary>Numbers, units and symbols with the decimal sign of the language.</summary>
    /// <param name="invariant">The row with a point for decimals; what the language wrote already stays.</param>
    public string Symbols(string invariant)
    {
        var text = Language.Number(invariant);
        if (Language.HasDecimals(text))
            _phrases.TryAdd(text, null);
        return text;
    }

    /// <summary>The entries in the order of their texts.</summary>
    public ImmutableArray<Phrase> Entries() => [.. _phrases.OrderBy(p => p.Key, StringComparer.Ordinal).Select(p => new Phrase(p.Key, p.Value))];
}
