using Commission.Messages;
using Commission.Source;
using Commission.Source.Yaml;

namespace Commission.Checks.Limits;

/// <summary>A mapping of a pack, read key by key; what nobody asked for is reported when it is closed.</summary>
internal sealed class StrictMapping
{
    private readonly SourceMapping _mapping;
    private readonly ProblemList _problems;
    private readonly List<string> _asked = [];

    private StrictMapping(SourceMapping mapping, PackPart what, ProblemList problems)
    {
        _mapping = mapping;
        What = what;
        _problems = problems;
    }

    /// <summary>What it is.</summary>
    public PackPart What { get; }

    /// <summary>Where it begins.</summary>
    public SourceLocation Location => _mapping.Location;

    /// <summary>Opens a node that has to be a mapping.</summary>
    /// <param name="node">The node.</param>
    /// <param name="what">What it is.</param>
    /// <param name="problems">Where faults go.</param>
    /// <returns>The mapping; null, and a problem, when it is something else.</returns>
    public static StrictMapping? Open(SourceNode node, PackPart what, ProblemList problems)
    {
        if (node is SourceMapping mapping)
            return new StrictMapping(mapping, what, problems);
        problems.Add(node.Location, LimitsMessages.HereStands(Kind(node)), LimitsMessages.MappingExpected(what.First), LimitsMessages.MappingNext, "wrong-type", node.Length);
        return null;
    }

    /// <summary>What a node is, in words.</summary>
    /// <returns>A phrase with its article.</returns>
    public static Message Kind(SourceNode node) => node switch
    {
        SourceMapping => LimitsMessages.NodeMapping,
        SourceSequence => LimitsMessages.NodeList,
        SourceScalar { IsEmpty: true } => LimitsMessages.NodeEmpty,
        SourceScalar scalar => LimitsMessages.NodeText(new(scalar.Text)),
        _ => LimitsMessages.NodeOther,
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
            _problems.Add(Location, LimitsMessages.KeyMissing(What.First, new NameValue(key)), null, LimitsMessages.KeyMissingNext(new NameValue(key)), "missing-key");
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
                LimitsMessages.KeyUnknown(new(entry.Key.Text), What.Inside),
                null,
                near is null ? LimitsMessages.KeysAre(Names(_asked.Distinct(StringComparer.Ordinal))) : LimitsMessages.DidYouMean(new NameValue(near)),
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
        problems.Add(node.Location, LimitsMessages.KeyHolds(new NameValue(key), Kind(node)), LimitsMessages.ListExpected, LimitsMessages.ListNext, "wrong-type", node.Length);
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
            LimitsMessages.WordUnknown(new(scalar.Text), new NameValue(what)),
            null,
            near is null ? LimitsMessages.WordsAre(Names(words)) : LimitsMessages.DidYouMean(new NameValue(near)),
            "unknown-word",
            scalar.Length);
        return null;
    }

    private SourceScalar? AsText(string key, SourceNode node)
    {
        if (node is SourceScalar { IsEmpty: false } scalar && scalar.Text.Trim().Length > 0)
            return scalar;
        _problems.Add(node.Location, LimitsMessages.KeyHolds(new NameValue(key), Kind(node)), LimitsMessages.ValueExpected, null, "wrong-type", node.Length);
        return null;
    }

    /// <summary>Keys or words in a row.</summary>
    /// <param name="names">The keys or words.</param>
    public static ListValue Names(IEnumerable<string> names) => new([.. names.Select(name => new NameValue(name))], ListJoin.Comma);
}

/// <summary>What a mapping is, for the messages about it.</summary>
/// <param name="Inside">Inside a sentence, with its article: <c>a limit</c>.</param>
/// <param name="First">At the beginning of a sentence.</param>
internal sealed record PackPart(Message Inside, Message First)
{
    /// <summary>A whole pack.</summary>
    public static PackPart Pack { get; } = Of(LimitsMessages.PartPart.Pack, LimitsMessages.PartFirstPart.Pack);

    /// <summary>A clause of the document a pack follows.</summary>
    public static PackPart Clause { get; } = Of(LimitsMessages.PartPart.Clause, LimitsMessages.PartFirstPart.Clause);

    /// <summary>What the limits of a pack share.</summary>
    public static PackPart Defaults { get; } = Of(LimitsMessages.PartPart.Defaults, LimitsMessages.PartFirstPart.Defaults);

    /// <summary>A limit.</summary>
    public static PackPart Limit { get; } = Of(LimitsMessages.PartPart.Limit, LimitsMessages.PartFirstPart.Limit);

    /// <summary>A limit with cases.</summary>
    public static PackPart Cases { get; } = Of(LimitsMessages.PartPart.Cases, LimitsMessages.PartFirstPart.Cases);

    /// <summary>The further quantities of a limit.</summary>
    public static PackPart Companions { get; } = Of(LimitsMessages.PartPart.Companions, LimitsMessages.PartFirstPart.Companions);

    /// <summary>What a record has to show in a situation.</summary>
    public static PackPart Profile { get; } = Of(LimitsMessages.PartPart.Profile, LimitsMessages.PartFirstPart.Profile);

    /// <summary>Checks of which one is enough.</summary>
    public static PackPart Checks { get; } = Of(LimitsMessages.PartPart.Checks, LimitsMessages.PartFirstPart.Checks);

    /// <summary>When a case applies.</summary>
    public static PackPart Conditions { get; } = Of(LimitsMessages.PartPart.Conditions, LimitsMessages.PartFirstPart.Conditions);

    /// <summary>What a limit means.</summary>
    public static PackPart Definition { get; } = Of(LimitsMessages.PartPart.Definition, LimitsMessages.PartFirstPart.Definition);

    /// <summary>A further quantity in a definition.</summary>
    public static PackPart Companion { get; } = Of(LimitsMessages.PartPart.Companion, LimitsMessages.PartFirstPart.Companion);

    /// <summary>The bounds of one condition.</summary>
    /// <param name="key">What it asks about.</param>
    public static PackPart ConditionOn(string key) => new(LimitsMessages.PartConditionOn(new NameValue(key)), LimitsMessages.PartConditionOnFirst(new NameValue(key)));

    /// <summary>A part of a table inside this program, whose faults only its makers see.</summary>
    /// <param name="name">What it is, with its article.</param>
    public static PackPart OfProgram(string name) => new(LimitsMessages.PartOfProgram(new NameValue(name)), LimitsMessages.PartOfProgram(new NameValue(name)));

    private static PackPart Of(LimitsMessages.PartPart inside, LimitsMessages.PartFirstPart first) => new(LimitsMessages.Part(inside), LimitsMessages.PartFirst(first));
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
