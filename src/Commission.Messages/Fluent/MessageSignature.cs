namespace Commission.Messages.Fluent;

/// <summary>What kind of value a variable of a message stands for.</summary>
public enum ValueKind
{
    /// <summary>A physical quantity with its unit: <c>1000 micron</c>.</summary>
    Quantity,

    /// <summary>A span of time: <c>9.5 min</c>.</summary>
    Duration,

    /// <summary>A time of day, or a time since the start: <c>14:50</c>, <c>71 min</c>.</summary>
    Time,

    /// <summary>A day.</summary>
    Date,

    /// <summary>A number of things; plural forms may hang on it.</summary>
    Count,

    /// <summary>A pure number with its decimals; plural forms may hang on it.</summary>
    Number,

    /// <summary>Several values, joined as the language joins them.</summary>
    List,

    /// <summary>A name that no language changes: an instrument, a person, a refrigerant.</summary>
    Name,

    /// <summary>Text that the crew or a source wrote, in whatever language.</summary>
    Text,

    /// <summary>Numbers, units and symbols in a row, without words.</summary>
    Symbols,

    /// <summary>Another message.</summary>
    Message,

    /// <summary>A word from a list; the texts of a choice hang on it, and it is never printed itself.</summary>
    Choice,
}

/// <summary>A variable as the comment above its message declares it.</summary>
/// <param name="name">Its name.</param>
/// <param name="kind">What it stands for.</param>
/// <param name="options">The words of a choice; empty for any other kind.</param>
/// <param name="description">What it is, for whoever writes the text.</param>
public sealed class DeclaredVariable(string name, ValueKind kind, IReadOnlyList<string> options, string description)
{
    /// <summary>Its name, without the dollar sign.</summary>
    public string Name { get; } = name;

    /// <summary>What it stands for.</summary>
    public ValueKind Kind { get; } = kind;

    /// <summary>The words of a choice; empty for any other kind.</summary>
    public IReadOnlyList<string> Options { get; } = options;

    /// <summary>What it is, for whoever writes the text.</summary>
    public string Description { get; } = description;
}

/// <summary>
/// The variables of a message, read from the comment above it, one a line: <c># $level (quantity) - pressure at isolation</c>,
/// <c># $rig (choice: tested, untested) - whether the rig was watched alone</c>.
/// </summary>
/// <param name="variables">Its variables in order.</param>
/// <param name="description">What else the comment says.</param>
public sealed class MessageSignature(IReadOnlyList<DeclaredVariable> variables, string description)
{
    /// <summary>The words for the kinds, as comments write them.</summary>
    private static readonly string[] Words = ["quantity", "duration", "time", "date", "count", "number", "list", "name", "text", "symbols", "message", "choice"];

    /// <summary>Its variables in the order of the comment.</summary>
    public IReadOnlyList<DeclaredVariable> Variables { get; } = variables;

    /// <summary>What else the comment says.</summary>
    public string Description { get; } = description;

    /// <summary>Reads the comment of a message.</summary>
    /// <param name="file">The file, as it is to be shown in errors.</param>
    /// <param name="entry">The message.</param>
    /// <exception cref="FluentException">A line that begins with a dollar sign does not declare a variable.</exception>
    public static MessageSignature Of(string file, FluentEntry entry)
    {
        var variables = new List<DeclaredVariable>();
        var description = new List<string>();
        for (var i = 0; i < entry.Comment.Count; i++)
        {
            var text = entry.Comment[i];
            if (text.Length == 0 || text[0] != '$')
            {
                description.Add(text);
                continue;
            }

            var variable = Declared(text) ?? throw new FluentException(
                file, entry.Line - entry.Comment.Count + i, 3, "expected “$name (kind) - what it is” with one of the kinds " + string.Join(", ", Words) + "; a choice names its words: (choice: open, closed)");
            if (variables.Exists(v => v.Name == variable.Name))
                throw new FluentException(file, entry.Line - entry.Comment.Count + i, 3, "$" + variable.Name + " is declared twice");
            variables.Add(variable);
        }

        return new MessageSignature(variables, string.Join(" ", description).Trim());
    }

    /// <summary>The variable of a name; null when the message has none.</summary>
    /// <param name="name">The name, without the dollar sign.</param>
    public DeclaredVariable? Find(string name)
    {
        foreach (var variable in Variables)
        {
            if (variable.Name == name)
                return variable;
        }

        return null;
    }

    private static DeclaredVariable? Declared(string line)
    {
        var open = line.IndexOf(" (", StringComparison.Ordinal);
        var close = line.IndexOf(") - ", StringComparison.Ordinal);
        if (open < 2 || close < open)
            return null;
        var name = line.Substring(1, open - 1);
        var kind = line.Substring(open + 2, close - open - 2);
        var colon = kind.IndexOf(':');
        var word = colon < 0 ? kind : kind.Substring(0, colon);
        var options = colon < 0 ? [] : kind.Substring(colon + 1).Split([','], StringSplitOptions.RemoveEmptyEntries);
        for (var i = 0; i < options.Length; i++)
            options[i] = options[i].Trim();
        var number = Array.IndexOf(Words, word);
        return number < 0 || (ValueKind)number == ValueKind.Choice != options.Length >= 2 || Array.Exists(options, o => !IsName(o)) || !IsName(name)
            ? null
            : new DeclaredVariable(name, (ValueKind)number, options, line.Substring(close + 4).Trim());
    }

    private static bool IsName(string text)
    {
        for (var i = 0; i < text.Length; i++)
        {
            if (!(text[i] is >= 'a' and <= 'z' || (i > 0 && text[i] is '-' or >= '0' and <= '9')))
                return false;
        }

        return text.Length > 0;
    }
}
