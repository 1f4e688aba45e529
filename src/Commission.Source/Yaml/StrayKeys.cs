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
                ? new Problem(value.Location, $"\"{value.Text},{first.Text}\" has a decimal comma, and in braces a comma ends the value.", "",
                    $"Write {entry.Key.Text}: {value.Text}.{first.Text} with a point.")
                {
                    Code = "decimal-comma",
                    Length = value.Length + 1 + first.Length,
                }
                : new Problem(first.Location, $"\"{words}\" stands alone: the comma before it ended \"{value.Text}\".", "",
                    $"If it belongs to the value, write {entry.Key.Text}: \"{value.Text}, {words}\".")
                {
                    Code = "stray-comma",
                    Length = first.Length,
                });
        }
        else
        {
            problems.Add(first.Location, $"\"{words}\" has no colon.", "In braces each entry is key: value.",
                $"Write {first.Text}: and its value.", "stray-comma", first.Length);
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
