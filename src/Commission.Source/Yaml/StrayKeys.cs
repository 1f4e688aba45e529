using Commission.Messages;

namespace Commission.Source.Yaml;

// In braces a comma ends a value: {name: Tarn flats, unit 14} has a second key "unit 14" without a colon.
internal sealed class StrayKeys(SourceText text, ProblemList problems)
{
    private readonly List<SourceScalar> _strays = [];

    public SourceEntry? Previous { get; set; }

    public bool Take(SourceScalar key, SourceNode value)
    {
        if (key.IsQuoted || value is not SourceScalar { Text: "", IsQuoted: false } || HasColon(key))
            return false;
        _strays.Add(key);
        return true;
    }

    public void Flush()
    {
        if (_strays.Count == 0)
            return;
        var first = _strays[0];
        var words = string.Join(", ", _strays.Select(stray => stray.Text));
        if (Previous is { Value: SourceScalar { IsQuoted: false, Text.Length: > 0 } value } entry)
        {
            problems.Add(IsDecimalComma(value, first)
                ? new Problem(value.Location, YamlMessages.DecimalComma(new($"{value.Text},{first.Text}")), null,
                    YamlMessages.DecimalCommaNext(new(entry.Key.Text), new($"{value.Text}.{first.Text}")))
                {
                    Code = "decimal-comma",
                    Length = value.Length + 1 + first.Length,
                }
                : new Problem(first.Location, YamlMessages.StrayWords(new(words), new(value.Text)), null,
                    YamlMessages.StrayWordsNext(new(entry.Key.Text), new($"{value.Text}, {words}")))
                {
                    Code = "stray-comma",
                    Length = first.Length,
                });
        }
        else
        {
            problems.Add(first.Location, YamlMessages.NoColonInBraces(new(words)), YamlMessages.InBraces,
                YamlMessages.NoColonInBracesNext(new(first.Text)), "stray-comma", first.Length);
        }

        _strays.Clear();
    }

    private bool HasColon(SourceScalar key)
    {
        var line = text.Lines[key.Location.Line - 1];
        var after = key.Location.Column - 1 + key.Length;
        while (after < line.Length && line[after] == ' ')
            after++;
        return after < line.Length && line[after] == ':';
    }

    private static bool IsDecimalComma(SourceScalar value, SourceScalar stray) =>
        value.Text.Length > 0 && stray.Text.Length > 0 && char.IsAsciiDigit(value.Text[^1]) && char.IsAsciiDigit(stray.Text[0])
        && stray.Location.Line == value.Location.Line && stray.Location.Column == value.Location.Column + value.Length + 1;
}
