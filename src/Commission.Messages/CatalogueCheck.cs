using Commission.Messages.Fluent;

namespace Commission.Messages;

/// <summary>
/// Compares the files of a phase in all languages. The English file decides: it declares the variables; every other language has the same
/// messages, no others, and uses the same variables in ways that fit their kind.
/// </summary>
public static class CatalogueCheck
{
    private const string Terms = "terms";

    /// <summary>Everything that does not fit, one sentence each with its place.</summary>
    /// <param name="files">Text of each file by its name: <c>en/evacuation.ftl</c>, <c>es/evacuation.ftl</c>.</param>
    public static IReadOnlyList<string> Faults(IReadOnlyDictionary<string, string> files)
    {
        var faults = new List<string>();
        var parsed = new Dictionary<string, FluentResource>(StringComparer.Ordinal);
        foreach (var (name, text) in files.OrderBy(f => f.Key, StringComparer.Ordinal))
        {
            try
            {
                parsed.Add(name, FluentParser.Parse(name, text));
            }
            catch (FluentException fault)
            {
                faults.Add(fault.Message);
            }
        }

        var english = parsed.Where(f => LanguageOf(f.Key) == Language.English).ToDictionary(f => PhaseOf(f.Key), f => f.Value, StringComparer.Ordinal);
        var languages = parsed.Keys.Select(LanguageOf).OfType<Language>().Distinct().ToList();
        foreach (var (name, resource) in parsed)
        {
            if (LanguageOf(name) is not { } language)
                faults.Add($"{name}: the folder is none of the languages {string.Join(", ", Language.All)}.");
            else if (english.TryGetValue(PhaseOf(name), out var source))
                Compare(source, resource, parsed.GetValueOrDefault($"{language}/{Terms}.ftl"), language, faults);
            else
                faults.Add($"{name}: there is no en/{PhaseOf(name)}.ftl.");
        }

        foreach (var language in languages)
            faults.AddRange(english.Keys.Where(p => !files.ContainsKey($"{language}/{p}.ftl")).Select(p => $"{language}/{p}.ftl is missing."));
        return faults;
    }

    private static void Compare(FluentResource english, FluentResource resource, FluentResource? terms, Language language, List<string> faults)
    {
        var signatures = new Dictionary<string, MessageSignature>(StringComparer.Ordinal);
        foreach (var entry in english.Entries.Where(e => !e.IsTerm))
        {
            try
            {
                signatures.Add(entry.Id, MessageSignature.Of(english.File, entry));
            }
            catch (FluentException fault) when (ReferenceEquals(english, resource))
            {
                faults.Add(fault.Message);
            }
            catch (FluentException)
            {
                // Told once, with the English file.
            }
        }

        var rules = new MessageRules(resource, terms, language.PluralKeys);
        faults.AddRange(rules.Faults(signatures).Select(f => f.Message));
        var there = resource.Entries.Where(e => !e.IsTerm).ToDictionary(e => e.Id, StringComparer.Ordinal);
        faults.AddRange(signatures.Keys.Where(id => !there.ContainsKey(id)).Select(id => $"{resource.File}: {id} is missing; its English text stands in {english.File}."));
        foreach (var entry in there.Values)
        {
            if (!signatures.TryGetValue(entry.Id, out var signature))
            {
                if (!ReferenceEquals(english, resource))
                    faults.Add($"{resource.File}:{entry.Line}:1: {entry.Id} is in no English file; nothing uses it.");
                continue;
            }

            var used = rules.VariablesOf(entry);
            faults.AddRange(signature.Variables.Where(v => !used.Contains(v.Name)).Select(v => $"{resource.File}:{entry.Line}:1: {entry.Id} leaves out ${v.Name}."));
        }
    }

    private static Language? LanguageOf(string file) => file.IndexOf('/', StringComparison.Ordinal) is > 0 and var slash ? Language.Find(file[..slash]) : null;

    private static string PhaseOf(string file) => Path.GetFileNameWithoutExtension(file);
}
