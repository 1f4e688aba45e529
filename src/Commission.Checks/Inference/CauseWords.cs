using Commission.Messages;
using Commission.Source;
using Commission.Source.Yaml;

namespace Commission.Checks.Inference;

/// <summary>What a cause is called and what is to be done.</summary>
/// <param name="Name">The cause, as a noun with its article.</param>
/// <param name="Next">The next step; null for the sound circuit.</param>
/// <param name="Apart">How to tell it from others, as an order without a full stop; null for the sound circuit.</param>
internal sealed record CauseSayings(Message Name, Message? Next, Message? Apart)
{
    /// <summary>The same with a fixed orifice, where that is another; null where it is not.</summary>
    public CauseSayings? WithOrifice { get; init; }
}

/// <summary>
/// The messages of the table of causes: catalogue <c>causes</c>, named after the keys of the table. They are looked up while the table is read,
/// so that a key without its words is a fault of the table at its line, and not of the job that meets it first.
/// </summary>
/// <param name="problems">Where faults go.</param>
internal sealed class CauseWords(ProblemList problems)
{
    /// <summary>The catalogue.</summary>
    public const string Phase = "causes";

    private const string WithOrifice = "-with-orifice";

    private readonly Dictionary<string, Message> _found = new(StringComparer.Ordinal);

    /// <summary>Every message found, by its name.</summary>
    public IReadOnlyDictionary<string, Message> Found => _found;

    /// <summary>A key as messages are named.</summary>
    public static string Hyphens(string key) => key.Replace(' ', '-');

    /// <summary>The name of the message for what is looked at.</summary>
    /// <param name="what">What is looked at.</param>
    public static string NameOfSeen(string what) => $"seen-{Hyphens(what)}";

    /// <summary>The name of the message for what was seen.</summary>
    /// <param name="what">What was looked at.</param>
    /// <param name="word">What it showed.</param>
    public static string NameOfSeen(string what, string word) => $"{NameOfSeen(what)}-{Hyphens(word)}";

    /// <summary>The messages of a cause.</summary>
    /// <param name="key">Its key in the table.</param>
    /// <param name="isSound">Whether it is the sound circuit, which has a name and nothing else.</param>
    public CauseSayings Of(SourceScalar key, bool isSound)
    {
        var name = $"cause-{Hyphens(key.Text)}";
        var said = new CauseSayings(Require(name, key), isSound ? null : Require($"{name}-next", key), isSound ? null : Require($"{name}-apart", key));
        return Find(name + WithOrifice) is { } called
            ? said with { WithOrifice = new CauseSayings(called, Require($"{name}-next{WithOrifice}", key), Require($"{name}-apart{WithOrifice}", key)) }
            : said;
    }

    /// <summary>A message that has to be there.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="key">The key of the table that asks for it.</param>
    public Message Require(string name, SourceScalar key)
    {
        if (Find(name) is { } message)
            return message;
        problems.Add(key.Location, $"\"{key.Text}\" has no text \"{name}\".", "", $"Add {name} to {Language.English}/{Phase}.ftl.", "missing-text", key.Length);
        return Message.Plain(key.Text);
    }

    private Message? Find(string name)
    {
        if (!MessageCatalogue.BuiltIn.Has(Language.English, Phase, name))
            return null;
        return _found[name] = Message.Of(Phase, name, []);
    }
}
