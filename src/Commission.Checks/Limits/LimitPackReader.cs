using System.Collections.Immutable;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Decisions;
using Commission.Messages;
using Commission.Source;
using Commission.Source.Yaml;
using DecisionRule = Commission.Measurement.Decisions.DecisionRule;

namespace Commission.Checks.Limits;

/// <summary>Reads a pack: one of this program, of a maker, or of a job.</summary>
internal static class LimitPackReader
{
    /// <summary>Reads a pack from its text.</summary>
    /// <param name="text">The text of the file.</param>
    /// <param name="problems">Where faults go, each at its line and column.</param>
    /// <param name="words">What a text of the pack becomes; null for a pack of a user, which has its own sentences.</param>
    /// <returns>The pack; null when anything in it was wrong.</returns>
    public static LimitPack? Read(SourceText text, ProblemList problems, Func<string, Message>? words = null)
    {
        words ??= LimitNotes.AsWritten;
        var before = problems.Count;
        if (YamlReader.Read(text, problems) is not { } root || problems.Count > before)
            return null;
        if (StrictMapping.Open(root, PackPart.Pack, problems) is not { } mapping)
            return null;
        var name = mapping.RequireText("pack");
        var title = mapping.RequireText("title");
        var publishedBy = mapping.RequireText("published by");
        var edition = mapping.RequireText("edition");
        var about = mapping.Text("about");
        var buildsOn = mapping.Items("builds on").Select(item => ReadReference(item, problems)).OfType<PackReference>().ToImmutableArray();
        var clauses = mapping.Items("clauses").Select(item => ReadClause(item, words, problems)).OfType<PackClause>().ToImmutableArray();
        var defaults = ReadDefaults(mapping.Take("defaults"), problems);
        var limits = ReadLimits(mapping.Take("limits"), defaults, words, problems);
        var required = mapping.Items("required").Select(item => ProfileReader.Read(item, words, problems)).OfType<RequiredProfile>().ToImmutableArray();
        mapping.Close();
        if (name is not null && !IsName(name.Text))
            problems.Add(name.Location, LimitsMessages.NameBad(new(name.Text)), LimitsMessages.NameExpected, LimitsMessages.NameNext, "bad-name", name.Length);
        if (problems.Count > before || name is null || title is null || publishedBy is null || edition is null)
            return null;
        return new LimitPack(name.Text, words(title.Text), words(publishedBy.Text), words(edition.Text), buildsOn, limits, required) { About = about is null ? null : words(about.Text), Clauses = clauses };
    }

    private static PackReference? ReadReference(SourceNode node, ProblemList problems)
    {
        if (node is SourceScalar { IsEmpty: false } scalar)
            return new PackReference(scalar.Text, scalar.Location);
        problems.Add(node.Location, LimitsMessages.KeyHolds(new NameValue("builds on"), StrictMapping.Kind(node)), LimitsMessages.PackNameExpected, null, "wrong-type", node.Length);
        return null;
    }

    private static PackClause? ReadClause(SourceNode node, Func<string, Message> words, ProblemList problems)
    {
        if (StrictMapping.Open(node, PackPart.Clause, problems) is not { } mapping)
            return null;
        var before = problems.Count;
        var clause = mapping.RequireText("clause");
        var says = mapping.RequireText("says");
        var mark = mapping.RequireText("mark") is { } word ? StrictMapping.OneOf(word, "mark", PackClause.Marks, problems) : null;
        mapping.Close();
        return problems.Count > before || clause is null || says is null || mark is null ? null : new PackClause(clause.Text, words(says.Text), mark);
    }

    private static PackDefaults ReadDefaults(SourceNode? node, ProblemList problems)
    {
        if (node is null || StrictMapping.Open(node, PackPart.Defaults, problems) is not { } mapping)
            return new PackDefaults(null, null, null);
        var defaults = PackDefaults.Read(mapping);
        mapping.Close();
        return defaults;
    }

    private static Dictionary<string, IReadOnlyList<LimitEntry>> ReadLimits(SourceNode? node, PackDefaults defaults, Func<string, Message> words, ProblemList problems)
    {
        var limits = new Dictionary<string, IReadOnlyList<LimitEntry>>(StringComparer.Ordinal);
        if (node is SourceMapping mapping)
        {
            foreach (var entry in mapping.Entries)
            {
                if (LimitDefinitions.Find(entry.Key.Text) is { } definition)
                {
                    limits[definition.Id] = new EntryReader(definition, defaults, words, problems).Read(entry.Value);
                    continue;
                }

                var near = NearestName.Of(entry.Key.Text, LimitDefinitions.All.Select(known => known.Id));
                problems.Add(
                    entry.Key.Location,
                    LimitsMessages.LimitUnknown(new(entry.Key.Text)),
                    null,
                    near is null ? LimitsMessages.LimitUnknownNext : LimitsMessages.DidYouMean(new NameValue(near)),
                    "unknown-limit",
                    entry.Key.Length);
            }
        }
        else if (node is not null and not SourceScalar { IsEmpty: true })
        {
            problems.Add(node.Location, LimitsMessages.KeyHolds(new NameValue("limits"), StrictMapping.Kind(node)), LimitsMessages.LimitsExpected, null, "wrong-type", node.Length);
        }

        return limits;
    }

    private static bool IsName(string text) =>
        char.IsAsciiLetterLower(text[0]) && text.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '-');
}

/// <summary>What the limits of a pack share unless one says otherwise.</summary>
/// <param name="Rule">Decision rule; null when the pack gives none.</param>
/// <param name="Basis">Kind of document; null when the pack gives none.</param>
/// <param name="Mark">How sure; null when the pack gives none.</param>
internal sealed record PackDefaults(DecisionRule? Rule, string? Basis, string? Mark)
{
    /// <summary>Kinds of document a limit may rest on.</summary>
    public static readonly IReadOnlyList<string> Bases =
        ["regulation", "code", "standard", "guide specification", "handbook", "installation manual", "maker", "common practice"];

    /// <summary>How sure a figure may be.</summary>
    public static readonly IReadOnlyList<string> Marks = ["published", "from memory", "common practice"];

    /// <summary>Decision rules.</summary>
    public static readonly IReadOnlyList<string> Rules = ["simple", "guarded"];

    /// <summary>Reads the three keys of a mapping.</summary>
    /// <param name="mapping">The mapping; it stays open.</param>
    /// <returns>What it gives.</returns>
    public static PackDefaults Read(StrictMapping mapping) => new(
        mapping.Word("rule", Rules) switch { "guarded" => DecisionRule.Guarded, "simple" => DecisionRule.Simple, _ => null },
        mapping.Word("basis", Bases),
        mapping.Word("mark", Marks));
}

/// <summary>Reads what a record has to show.</summary>
internal static class ProfileReader
{
    // In the order of the members.
    private static readonly string[] Photos = [.. Enum.GetNames<PhotoSubject>().Select(MemberWords.Of)];

    /// <summary>Reads one profile.</summary>
    /// <param name="node">An item of <c>required</c>.</param>
    /// <param name="words">What a text becomes.</param>
    /// <param name="problems">Where faults go.</param>
    /// <returns>The profile; null, and a problem, when it cannot be read.</returns>
    public static RequiredProfile? Read(SourceNode node, Func<string, Message> words, ProblemList problems)
    {
        if (StrictMapping.Open(node, PackPart.Profile, problems) is not { } mapping)
            return null;
        var before = problems.Count;
        var when = ConditionsReader.Read(mapping.Take("when"), problems);
        var checks = mapping.Items("checks").Select(item => ReadChecks(item, words, problems)).OfType<RequiredChoice>().ToArray();
        var photos = new List<PhotoSubject>();
        foreach (var item in mapping.Items("photos"))
        {
            if (ReadPhoto(item, problems) is { } photo)
                photos.Add(photo);
        }

        var because = mapping.RequireText("because");
        mapping.Close();
        if (problems.Count > before || because is null)
            return null;
        if (checks.Length + photos.Count > 0)
            return new RequiredProfile(when, checks, photos, words(because.Text), mapping.Location);
        problems.Add(mapping.Location, LimitsMessages.ProfileEmpty, null, LimitsMessages.ProfileNext, "missing-key");
        return null;
    }

    private static RequiredChoice? ReadChecks(SourceNode node, Func<string, Message> words, ProblemList problems)
    {
        if (node is SourceScalar)
            return ReadCheck(node, problems) is { } id ? new RequiredChoice([id], null) : null;
        if (StrictMapping.Open(node, PackPart.Checks, problems) is not { } mapping)
            return null;
        var ids = mapping.Items("one of").Select(item => ReadCheck(item, problems)).OfType<string>().ToArray();
        var called = mapping.Text("called") is { } text ? words(text.Text) : null;
        mapping.Close();
        if (ids.Length > 1)
            return new RequiredChoice(ids, called);
        problems.Add(node.Location, LimitsMessages.ChecksFew, null, LimitsMessages.WriteOneOf(new([new NameValue("{one of: [first, second]}")])), "missing-key", node.Length);
        return null;
    }

    private static string? ReadCheck(SourceNode node, ProblemList problems)
    {
        if (node is SourceScalar scalar && IsCheckId(scalar.Text))
            return scalar.Text;
        problems.Add(node.Location, LimitsMessages.IdBad(StrictMapping.Kind(node)), null, LimitsMessages.IdNext, "bad-check-id", node.Length);
        return null;
    }

    private static bool IsCheckId(string text)
    {
        var dot = text.IndexOf('.', StringComparison.Ordinal);
        return dot > 0 && dot < text.Length - 1 && text.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c is '.' or '-');
    }

    private static PhotoSubject? ReadPhoto(SourceNode node, ProblemList problems)
    {
        if (node is SourceScalar { IsEmpty: false } scalar)
        {
            if (Array.IndexOf(Photos, scalar.Text) is >= 0 and var at)
                return (PhotoSubject)at;
            var near = NearestName.Of(scalar.Text, Photos);
            problems.Add(scalar.Location, LimitsMessages.PhotoUnknown(new(scalar.Text)), null, near is null ? LimitsMessages.PhotoUnknownNext : LimitsMessages.DidYouMean(new NameValue(near)), "unknown-word", scalar.Length);
            return null;
        }

        problems.Add(node.Location, LimitsMessages.KeyHolds(new NameValue("photos"), StrictMapping.Kind(node)), LimitsMessages.WordExpected, null, "wrong-type", node.Length);
        return null;
    }
}

/// <summary>Reads <c>when</c>.</summary>
internal static class ConditionsReader
{
    /// <summary>Reads the conditions of a case or of a profile.</summary>
    /// <param name="node">The value of <c>when</c>; null when it is missing: then always.</param>
    /// <param name="problems">Where faults go.</param>
    /// <returns>The conditions that could be read.</returns>
    public static LimitConditions Read(SourceNode? node, ProblemList problems)
    {
        if (node is null)
            return LimitConditions.Always;
        if (StrictMapping.Open(node, PackPart.Conditions, problems) is not { } mapping)
            return LimitConditions.Always;
        var conditions = ImmutableArray.CreateBuilder<LimitCondition>();
        foreach (var subject in LimitSubject.All)
        {
            if (mapping.Take(subject.Key) is not { } value)
                continue;
            if ((subject.Quantity is null ? ReadWords(subject, value, problems) : ReadBounds(subject, value, problems)) is { } condition)
                conditions.Add(condition);
        }

        mapping.Close();
        return new LimitConditions(conditions.ToImmutable());
    }

    private static LimitCondition? ReadWords(LimitSubject subject, SourceNode value, ProblemList problems)
    {
        var items = value is SourceScalar ? [value] : StrictMapping.AsItems(subject.Key, value, problems);
        var words = ImmutableArray.CreateBuilder<string>();
        foreach (var item in items)
        {
            if (item is not SourceScalar { IsEmpty: false } scalar)
            {
                problems.Add(item.Location, LimitsMessages.KeyHolds(new NameValue(subject.Key), StrictMapping.Kind(item)), LimitsMessages.WordExpected, null, "wrong-type", item.Length);
                continue;
            }

            if (subject.Words.Length == 0 || StrictMapping.OneOf(scalar, subject.Key, subject.Words, problems) is not null)
                words.Add(LimitCondition.Fold(scalar.Text));
        }

        if (items.Count == 0 && value is SourceSequence)
            problems.Add(value.Location, LimitsMessages.ConditionEmpty(new NameValue(subject.Key)), LimitsMessages.ConditionEmptyExpected, LimitsMessages.ConditionEmptyNext, "empty-list", value.Length);
        return new LimitCondition(subject) { Words = words.ToImmutable() };
    }

    private static LimitCondition? ReadBounds(LimitSubject subject, SourceNode value, ProblemList problems)
    {
        if (StrictMapping.Open(value, PackPart.ConditionOn(subject.Key), problems) is not { } mapping)
            return null;
        var atLeast = Bound("at least");
        var moreThan = Bound("more than");
        var atMost = Bound("at most");
        var lessThan = Bound("less than");
        mapping.Close();
        if (atLeast is null && moreThan is null && atMost is null && lessThan is null)
        {
            problems.Add(value.Location, LimitsMessages.ConditionUnbound(new NameValue(subject.Key)), null, LimitsMessages.WriteOneOf(new([new NameValue("{at least: …}"), new NameValue("{more than: …}"), new NameValue("{at most: …}"), new NameValue("{less than: …}")], ListJoin.Or)), "missing-key", value.Length);
            return null;
        }

        if ((atLeast is not null && moreThan is not null) || (atMost is not null && lessThan is not null))
        {
            problems.Add(value.Location, LimitsMessages.ConditionTwoBounds(new NameValue(subject.Key)), null, LimitsMessages.ConditionTwoBoundsNext, "two-bounds", value.Length);
            return null;
        }

        var condition = new LimitCondition(subject)
        {
            Lower = atLeast is { } l ? (l, true) : moreThan is { } m ? (m, false) : null,
            Upper = atMost is { } u ? (u, true) : lessThan is { } s ? (s, false) : null,
        };
        if (condition is { Lower: { } low, Upper: { } high } && (low.Si > high.Si || (low.Si >= high.Si && !(low.Included && high.Included))))
        {
            problems.Add(value.Location, LimitsMessages.ConditionNever(new NameValue(subject.Key)), LimitsMessages.ConditionNeverExpected, null, "empty-range", value.Length);
            return null;
        }

        return condition;

        double? Bound(string key) =>
            mapping.Text(key) is { } scalar && subject.Quantity is { } quantity ? FigureReader.Read(scalar, quantity, problems)?.Si : null;
    }
}
