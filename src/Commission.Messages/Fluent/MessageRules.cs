namespace Commission.Messages.Fluent;

/// <summary>
/// What must hold between the texts of a catalogue and the variables that the English comments declare: every variable that a text uses is
/// declared, a choice has its words for keys, plural forms hang on numbers and use the categories of the language, what is referred to exists.
/// </summary>
/// <param name="resource">The file whose texts are looked at, in any language.</param>
/// <param name="terms">The file of the terms that all files of its language share; null when there is none.</param>
/// <param name="pluralCategories">The plural categories of its language: <c>one</c>, <c>other</c>.</param>
public sealed class MessageRules(FluentResource resource, FluentResource? terms, IReadOnlyList<string> pluralCategories)
{
    private readonly List<FluentException> _faults = [];

    /// <summary>Looks at every text of the file.</summary>
    /// <param name="signatures">The variables of each message by its name, as the English file declares them.</param>
    /// <returns>Every fault, in the order of the file.</returns>
    public IReadOnlyList<FluentException> Faults(IReadOnlyDictionary<string, MessageSignature> signatures)
    {
        _faults.Clear();
        foreach (var entry in resource.Entries)
        {
            if (entry.IsTerm)
                Look(entry.Pattern, null, [entry], []);
            else if (signatures.TryGetValue(entry.Id, out var signature))
                Look(entry.Pattern, signature, [entry], []);
        }

        return _faults;
    }

    /// <summary>The names of all variables that a text uses, those of the messages put into it included.</summary>
    /// <param name="entry">The message.</param>
    public HashSet<string> VariablesOf(FluentEntry entry)
    {
        var used = new HashSet<string>();
        Look(entry.Pattern, null, [entry], used);
        return used;
    }

    // A term is handed its variables where it is used: they are words for its own choices, and nobody declares them.
    private void Look(FluentPattern pattern, MessageSignature? signature, List<FluentEntry> path, HashSet<string> used)
    {
        foreach (var element in pattern.Elements)
        {
            switch (element)
            {
                case FluentVariable variable:
                    used.Add(variable.Name);
                    if (signature is not null)
                        LookAt(variable, signature);
                    break;
                case FluentReference reference:
                    Follow(reference, signature, path, used);
                    break;
                case FluentSelect select:
                    used.Add(select.Selector);
                    if (signature is not null)
                        LookAt(select, signature);
                    foreach (var variant in select.Variants)
                        Look(variant.Pattern, signature, path, used);
                    break;
            }
        }
    }

    private void LookAt(FluentVariable variable, MessageSignature signature)
    {
        if (signature.Find(variable.Name) is not { } declared)
            Add(variable, Undeclared(variable.Name));
        else if (declared.Kind == ValueKind.Choice)
            Add(variable, "$" + variable.Name + " is a choice: texts hang on it, but it is not printed itself");
    }

    private void LookAt(FluentSelect select, MessageSignature signature)
    {
        var declared = signature.Find(select.Selector);
        if (declared?.Kind is not (ValueKind.Choice or ValueKind.Count or ValueKind.Number))
        {
            Add(select, declared is null ? Undeclared(select.Selector) : "texts can hang on a choice, a count or a number, and $" + select.Selector + " is neither");
            return;
        }

        var isChoice = declared.Kind == ValueKind.Choice;
        var allowed = isChoice ? declared.Options : pluralCategories;
        foreach (var variant in select.Variants)
        {
            if ((isChoice || variant.Number is null) && !Contains(allowed, variant.Key))
                _faults.Add(new FluentException(resource.File, variant.Line, variant.Column, "[" + variant.Key + "] is none of the words for $" + select.Selector + ": " + string.Join(", ", allowed)));
        }
    }

    private void Follow(FluentReference reference, MessageSignature? signature, List<FluentEntry> path, HashSet<string> used)
    {
        if (Find(reference) is not { } entry)
        {
            Add(reference, "there is no " + (reference.IsTerm ? "term -" : "message ") + reference.Id + " in this file" + (reference.IsTerm ? " or in the file of terms" : ""));
            return;
        }

        if (path.Contains(entry))
        {
            Add(reference, entry.Id + " contains itself");
            return;
        }

        path.Add(entry);
        if (reference.IsTerm)
        {
            var taken = new HashSet<string>();
            Look(entry.Pattern, null, path, taken);
            foreach (var argument in reference.Arguments)
            {
                if (!taken.Contains(argument.Key))
                    Add(reference, "-" + reference.Id + " takes no " + argument.Key);
            }
        }
        else
        {
            Look(entry.Pattern, signature, path, used);
        }

        path.RemoveAt(path.Count - 1);
    }

    private FluentEntry? Find(FluentReference reference)
    {
        foreach (var source in reference.IsTerm && terms is not null ? new[] { resource, terms } : [resource])
        {
            foreach (var entry in source.Entries)
            {
                if (entry.IsTerm == reference.IsTerm && entry.Id == reference.Id)
                    return entry;
            }
        }

        return null;
    }

    private void Add(FluentElement element, string fault) => _faults.Add(new FluentException(resource.File, element.Line, element.Column, fault));

    private static string Undeclared(string name) => "$" + name + " is not declared in the comment above the English message: # $" + name + " (kind) - what it is";

    private static bool Contains(IReadOnlyList<string> words, string word)
    {
        for (var i = 0; i < words.Count; i++)
        {
            if (words[i] == word)
                return true;
        }

        return false;
    }
}
