using System.Collections.Immutable;
using Commission.Source.Problems;
using Commission.Source.Yaml;

namespace Commission.Checks.Limits.Reading;

/// <summary>Reads <c>when</c>.</summary>
internal static class ConditionsReader
{
    /// <summary>Reads the conditions of a case or of a profile.</summary>
    /// <param name="node">The value of <c>when</c>; null when it is missing: then always.</param>
    /// <param name="problems">Where faults go.</param>
    /// <returns>The conditions that could be read.</returns>
    public static LimitConditions Read(SourceNode? node, ProblemList problems)
    {
        if (node is null) return LimitConditions.Always;
        if (StrictMapping.Open(node, "a condition", problems) is not { } mapping) return LimitConditions.Always;
        var conditions = ImmutableArray.CreateBuilder<LimitCondition>();
        foreach (var subject in LimitSubject.All)
        {
            if (mapping.Take(subject.Key) is not { } value) continue;
            if ((subject.Quantity is null ? ReadWords(subject, value, problems) : ReadBounds(subject, value, problems)) is { } condition)
                conditions.Add(condition);
        }

        mapping.Close();
        return new LimitConditions(conditions.ToImmutable());
    }

    private static LimitCondition? ReadWords(LimitSubject subject, SourceNode value, ProblemList problems)
    {
        IReadOnlyList<SourceNode> items = value is SourceScalar ? [value] : StrictMapping.AsItems(subject.Key, value, problems);
        var words = ImmutableArray.CreateBuilder<string>();
        foreach (var item in items)
        {
            if (item is not SourceScalar { IsEmpty: false } scalar)
            {
                problems.Add(item.Location, $"\"{subject.Key}\" holds {StrictMapping.Kind(item)}.", "A word was expected.", "", "wrong-type", item.Length);
                continue;
            }

            if (subject.Words.Length == 0 || StrictMapping.OneOf(scalar, subject.Key, subject.Words, problems) is not null)
                words.Add(LimitCondition.Fold(scalar.Text));
        }

        if (items.Count == 0 && value is SourceSequence)
            problems.Add(value.Location, $"\"{subject.Key}\" is an empty list.", "It would never apply.", "Name at least one word, or leave the key out.", "empty-list", value.Length);
        return new LimitCondition(subject) { Words = words.ToImmutable() };
    }

    private static LimitCondition? ReadBounds(LimitSubject subject, SourceNode value, ProblemList problems)
    {
        if (StrictMapping.Open(value, $"the condition on {subject.Key}", problems) is not { } mapping) return null;
        var atLeast = Bound("at least");
        var moreThan = Bound("more than");
        var atMost = Bound("at most");
        var lessThan = Bound("less than");
        mapping.Close();
        if (atLeast is null && moreThan is null && atMost is null && lessThan is null)
        {
            problems.Add(value.Location, $"The condition on {subject.Key} has no bound.", "", "Write {at least: …}, {more than: …}, {at most: …} or {less than: …}.", "missing-key", value.Length);
            return null;
        }

        if ((atLeast is not null && moreThan is not null) || (atMost is not null && lessThan is not null))
        {
            problems.Add(value.Location, $"The condition on {subject.Key} has two bounds on one side.", "", "Keep one of them.", "two-bounds", value.Length);
            return null;
        }

        var condition = new LimitCondition(subject)
        {
            Lower = atLeast is { } l ? (l, true) : moreThan is { } m ? (m, false) : null,
            Upper = atMost is { } u ? (u, true) : lessThan is { } s ? (s, false) : null,
        };
        if (condition is { Lower: { } low, Upper: { } high } && (low.Si > high.Si || (low.Si >= high.Si && !(low.Included && high.Included))))
        {
            problems.Add(value.Location, $"Nothing meets the condition on {subject.Key}.", "The lower bound has to be below the upper one.", "", "empty-range", value.Length);
            return null;
        }

        return condition;

        double? Bound(string key) =>
            mapping.Text(key) is { } scalar && subject.Quantity is { } quantity ? FigureReader.Read(scalar, quantity, problems)?.Si : null;
    }
}
