using Commission.Source;
using Commission.Source.Yaml;

namespace Commission.Checks.Limits;

/// <summary>A mapping of a pack, read key by key; what nobody asked for is reported when it is closed.</summary>
internal sealed class StrictMapping
{
    private readonly SourceMapping _mapping;
    private readonly ProblemList _problems;
    private readonly List<string> _asked = [];

    private StrictMapping(SourceMapping mapping, string what, ProblemList problems)
    {
        _mapping = mapping;
        What = what;
        _problems = problems;
    }

    /// <summary>What it is, with its article: <c>a limit</c>.</summary>
    public string What { get; }

    /// <summary>Where it begins.</summary>
    public SourceLocation Location => _mapping.Location;

    /// <summary>Opens a node that has to be a mapping.</summary>
    /// <param name="node">The node.</param>
    /// <param name="what">What it is, with its article.</param>
    /// <param name="problems">Where faults go.</param>
    /// <returns>The mapping; null, and a problem, when it is something else.</returns>
    public static StrictMapping? Open(SourceNode node, string what, ProblemList problems)
    {
        if (node is SourceMapping mapping)
            return new StrictMapping(mapping, what, problems);
        problems.Add(node.Location, $"Here stands {Kind(node)}.", $"{Capital(what)} is a list of keys and values.", "Write each key on its own line, followed by a colon and its value.", "wrong-type", node.Length);
        return null;
    }

    /// <summary>What a node is, in words.</summary>
    /// <returns>A phrase.</returns>
    public static string Kind(SourceNode node) => node switch
    {
        SourceMapping => "a list of keys and values",
        SourceSequence => "a list",
        SourceScalar { IsEmpty: true } => "nothing",
        SourceScalar scalar => $"\"{scalar.Text}\"",
        _ => "something else",
    };

    /// <summary>The value of a key, if it is there.</summary>
    /// <returns>The value.</returns>
    public SourceNode? Take(string key)
    {
        _asked.Add(key);
        return _mapping.Find(key)?.Value;
    }

    /// <summary>The value of a key that has to be there.</summary>
    /// <returns>The value; null, and a problem, when it is missing.</returns>
    public SourceNode? Require(string key)
    {
        var node = Take(key);
        if (node is null)
            _problems.Add(Location, $"{Capital(What)} has no \"{key}\".", "", $"Add \"{key}:\" and its value.", "missing-key");
        return node;
    }

    /// <summary>The text of a key, if it is there.</summary>
    /// <returns>The scalar; null when it is missing, or, with a problem, empty or no text.</returns>
    public SourceScalar? Text(string key) => Take(key) is { } node ? AsText(key, node) : null;

    /// <summary>The text of a key that has to be there.</summary>
    /// <returns>The scalar; null, and a problem, when it is missing, empty or no text.</returns>
    public SourceScalar? RequireText(string key) => Require(key) is { } node ? AsText(key, node) : null;

    /// <summary>The word of a key, out of some.</summary>
    /// <param name="key">The key.</param>
    /// <param name="words">The words it may be.</param>
    /// <returns>The word; null when the key is missing, or, with a problem, when it is another word.</returns>
    public string? Word(string key, IReadOnlyList<string> words) => Text(key) is { } scalar ? OneOf(scalar, key, words, _problems) : null;

    /// <summary>The items of a key's list, if it is there.</summary>
    /// <returns>The items; none, with a problem, when it is no list.</returns>
    public IReadOnlyList<SourceNode> Items(string key) => Take(key) is { } node ? AsItems(key, node, _problems) : [];

    /// <summary>Reports every key nobody asked for.</summary>
    public void Close()
    {
        foreach (var entry in _mapping.Entries)
        {
            if (_asked.Contains(entry.Key.Text, StringComparer.Ordinal))
                continue;
            var near = NearestName.Of(entry.Key.Text, _asked);
            _problems.Add(
                entry.Key.Location,
                $"\"{entry.Key.Text}\" is not a key of {What}.",
                "",
                near is null ? $"The keys are {string.Join(", ", _asked.Distinct(StringComparer.Ordinal))}." : $"Did you mean \"{near}\"?",
                "unknown-key",
                entry.Key.Length);
        }
    }

    /// <summary>The items of a list.</summary>
    /// <param name="key">Its key, for the message.</param>
    /// <param name="node">The node.</param>
    /// <param name="problems">Where faults go.</param>
    /// <returns>The items; none, with a problem, when it is no list.</returns>
    public static IReadOnlyList<SourceNode> AsItems(string key, SourceNode node, ProblemList problems)
    {
        if (node is SourceSequence sequence)
            return sequence.Items;
        problems.Add(node.Location, $"\"{key}\" holds {Kind(node)}.", "A list was expected.", "Write [first, second], or each on its own line after a dash.", "wrong-type", node.Length);
        return [];
    }

    /// <summary>A word out of some.</summary>
    /// <param name="scalar">The word.</param>
    /// <param name="what">What it is, for the message.</param>
    /// <param name="words">The words it may be.</param>
    /// <param name="problems">Where faults go.</param>
    /// <returns>The word; null, and a problem, when it is another.</returns>
    public static string? OneOf(SourceScalar scalar, string what, IReadOnlyList<string> words, ProblemList problems)
    {
        if (words.Contains(scalar.Text, StringComparer.Ordinal))
            return scalar.Text;
        var near = NearestName.Of(scalar.Text, words);
        problems.Add(
            scalar.Location,
            $"\"{scalar.Text}\" is not a word for \"{what}\".",
            "",
            near is null ? $"The words are {string.Join(", ", words)}." : $"Did you mean \"{near}\"?",
            "unknown-word",
            scalar.Length);
        return null;
    }

    private SourceScalar? AsText(string key, SourceNode node)
    {
        if (node is SourceScalar { IsEmpty: false } scalar && scalar.Text.Trim().Length > 0)
            return scalar;
        _problems.Add(node.Location, $"\"{key}\" holds {Kind(node)}.", "A value on the same line was expected.", "", "wrong-type", node.Length);
        return null;
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}

/// <summary>Names of enumeration members as they are written in YAML.</summary>
internal static class MemberWords
{
    /// <summary>The words of a member: <c>TemperatureDifference</c> is written <c>temperature difference</c>.</summary>
    /// <param name="member">Name of the member.</param>
    /// <returns>Its words.</returns>
    public static string Of(string member) =>
        string.Concat(member.Select((c, at) => char.IsUpper(c) && at > 0 ? $" {char.ToLowerInvariant(c)}" : char.ToLowerInvariant(c).ToString()));
}
