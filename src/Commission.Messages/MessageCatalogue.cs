using System.Collections.Concurrent;
using System.Text;
using Commission.Messages.Fluent;

namespace Commission.Messages;

/// <summary>
/// The texts of one phase in one language. Where each begins is found when the file is read, what it says when it is asked for: a record
/// uses a small part of what the program could say.
/// </summary>
internal sealed class CatalogueFile
{
    private readonly string _name;
    private readonly string _text;
    private readonly Dictionary<string, Range> _places = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, FluentEntry> _entries = new(StringComparer.Ordinal);

    public CatalogueFile(string name, string text)
    {
        _name = name;
        _text = text;
        for (var at = 0; at < text.Length;)
        {
            var next = NextLine(at);
            if (!IsName(at))
            {
                at = next;
                continue;
            }

            var id = text[at..(text.IndexOfAny([' ', '=', '\n'], at) is >= 0 and var end ? end : text.Length)];
            var from = at;
            // It goes on until another one or a comment begins.
            while (next < text.Length && !IsName(next) && text[next] != '#')
                next = NextLine(next);
            _places.Add(id, from..next);
            at = next;
        }
    }

    public FluentEntry? Message(string name) => Entry(name);

    public FluentEntry? Term(string name) => Entry("-" + name);

    private FluentEntry? Entry(string id) => _places.ContainsKey(id)
        ? _entries.GetOrAdd(id, static (key, file) => FluentParser.Parse(file._name, file._text[file._places[key]]).Entries[0], this)
        : null;

    private bool IsName(int at) => char.IsAsciiLetter(_text[at]) || _text[at] == '-';

    private int NextLine(int at) => _text.IndexOf('\n', at) is >= 0 and var end ? end + 1 : _text.Length;
}

/// <summary>
/// The sentences of the program: one file a phase and language, read when a message of it is first asked for. A file <c>terms</c> holds the
/// terms that all files of its language share.
/// </summary>
public sealed class MessageCatalogue
{
    private const string Terms = "terms";

    private readonly Func<string, string?> _read;
    private readonly ConcurrentDictionary<(string Language, string Phase), CatalogueFile?> _files = new();

    /// <summary>A catalogue whose files come from somewhere.</summary>
    /// <param name="read">The text of a file by its name, <c>en/evacuation.ftl</c>; null when there is none.</param>
    public MessageCatalogue(Func<string, string?> read) => _read = read;

    /// <summary>The sentences built into the program.</summary>
    public static MessageCatalogue BuiltIn { get; } = new(Embedded);

    /// <summary>The languages that the built-in sentences are written in.</summary>
    public static IReadOnlyList<Language> Languages { get; } = [.. Language.All.Where(l => typeof(MessageCatalogue).Assembly.GetManifestResourceInfo($"{l.Code}/common.ftl") is not null)];

    /// <summary>One of <see cref="Languages"/> by its code; null when nothing is written in it.</summary>
    /// <param name="code">Two letters.</param>
    public static Language? FindLanguage(string code) => Languages.FirstOrDefault(l => l.Code == code);

    /// <summary>The names of the built-in files: <c>en/evacuation.ftl</c>.</summary>
    public static IEnumerable<string> BuiltInFiles => typeof(MessageCatalogue).Assembly.GetManifestResourceNames().Where(n => n.EndsWith(".ftl", StringComparison.Ordinal)).Order(StringComparer.Ordinal);

    /// <summary>The text of a built-in file; null when there is none.</summary>
    /// <param name="name">Its name.</param>
    public static string? Embedded(string name)
    {
        using var stream = typeof(MessageCatalogue).Assembly.GetManifestResourceStream(name);
        if (stream is null)
            return null;
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd();
    }

    /// <summary>Whether a file has a message, for whoever names messages after keys of a table.</summary>
    /// <param name="language">The language.</param>
    /// <param name="phase">The catalogue file.</param>
    /// <param name="name">The name of the message.</param>
    public bool Has(Language language, string phase, string name) => Find(language, phase, name) is not null;

    internal FluentEntry? Find(Language language, string phase, string name) => File(language, phase)?.Message(name);

    internal FluentEntry? Term(Language language, string phase, string name) => File(language, phase)?.Term(name) ?? File(language, Terms)?.Term(name);

    private CatalogueFile? File(Language language, string phase) => _files.GetOrAdd((language.Code, phase), static (key, read) =>
    {
        var name = $"{key.Language}/{key.Phase}.ftl";
        return read(name) is { } text ? new CatalogueFile(name, text) : null;
    }, _read);
}
