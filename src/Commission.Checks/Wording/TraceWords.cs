using Commission.Messages;

namespace Commission.Checks.Wording;

/// <summary>What stands in a column of the trace: a message, or a row of numbers, units and symbols that has no words (a citation in the column of sources).</summary>
internal readonly struct TraceWords
{
    private readonly Message? _message;
    private readonly string? _symbols;

    private TraceWords(Message? message, string? symbols)
    {
        _message = message;
        _symbols = symbols;
    }

    /// <summary>A message.</summary>
    public static implicit operator TraceWords(Message message) => new(message, null);

    /// <summary>A row without words.</summary>
    public static implicit operator TraceWords(string symbols) => new(null, symbols);

    /// <summary>The text of a formula, its values or its result: a row of symbols takes the decimal sign of the language.</summary>
    /// <param name="present">Makes the text.</param>
    public string Text(Presentation present) => _message is { } message ? present.Text(message) : present.Symbols(_symbols ?? "");

    /// <summary>The text of a source: a citation stands as it is.</summary>
    /// <param name="present">Makes the text.</param>
    public string Cited(Presentation present) => _message is { } message ? present.Text(message) : _symbols ?? "";
}
