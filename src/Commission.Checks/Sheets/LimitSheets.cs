using System.Collections.Immutable;
using System.Globalization;
using Commission.Checks.Limits;
using Commission.Measurement.Decisions;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records;

namespace Commission.Checks.Sheets;

/// <summary>What the limit packs say: their list, and one with every figure, its source and its mark.</summary>
public static class LimitSheets
{
    /// <summary>Names of the packs.</summary>
    public static IReadOnlyCollection<string> Names => LimitLibrary.EmbeddedNames;

    /// <summary>Every pack with its title.</summary>
    /// <param name="language">The language of the sheet.</param>
    public static Sheet All(Language language)
    {
        string Text(Message message) => RecordWords.Text(message, language);
        return new Sheet(
            Text(SheetsMessages.LimitPacks),
            [
                new SheetPart(
                    "",
                    [Text(SheetsMessages.ColumnPack), Text(SheetsMessages.ColumnTitle), Text(SheetsMessages.ColumnLimits)],
                    [.. LimitLibrary.EmbeddedNames.Select(name => LimitLibrary.Embedded.Find(name)!).Select(p => ImmutableArray.Create(p.Name, Text(p.Title), p.Limits.Count.ToString(CultureInfo.InvariantCulture)))]),
            ]);
    }

    /// <summary>One pack.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="units">Units of its figures.</param>
    /// <param name="language">The language of the sheet.</param>
    /// <returns>The sheet; null when there is no such pack.</returns>
    public static Sheet? One(string name, UnitSystem units, Language language)
    {
        if (LimitLibrary.Embedded.Find(name) is not { } pack)
            return null;
        string Text(Message message) => RecordWords.Text(message, language);
        var clauses = pack.Clauses.Select(c => ImmutableArray.Create(c.Clause, Text(c.Says), Text(RecordWords.Mark(c.Mark)))).ToImmutableArray();
        return new Sheet(
            Text(SheetsMessages.PackTitle(new(pack.Name), pack.Title)),
            [
                SheetPart.Lines(Text(SheetsMessages.Follows), [Text(SheetsMessages.PackEdition(pack.PublishedBy, pack.Edition)), .. pack.About is { } about ? [Text(about)] : Array.Empty<string>()]),
                .. clauses.IsEmpty ? Array.Empty<SheetPart>() : [new SheetPart(Text(SheetsMessages.Clauses), [Text(SheetsMessages.ColumnClause), Text(SheetsMessages.ColumnSays), Text(SheetsMessages.ColumnMark)], clauses)],
                new SheetPart(
                    Text(SheetsMessages.Limits),
                    [Text(SheetsMessages.ColumnLimit), Text(SheetsMessages.ColumnFigure), Text(SheetsMessages.ColumnWhen), Text(SheetsMessages.ColumnRule), Text(SheetsMessages.ColumnSource)],
                    [.. Rows(pack, units, language)]),
                SheetPart.Lines(Text(SheetsMessages.Required), pack.Required.Select(r => Text(Required(r)))),
            ]);
    }

    internal static IEnumerable<ImmutableArray<string>> Rows(LimitPack pack, UnitSystem units, Language language) => pack.Limits
        .OrderBy(pair => pair.Key, StringComparer.Ordinal)
        .SelectMany(pair => pair.Value.Select(entry => Row(pack, pair.Key, entry, units, language)));

    private static Message Required(RequiredProfile profile)
    {
        var because = profile.Because;
        var checks = new ListValue([.. profile.Checks.Select(c => SheetsMessages.RequiredOneOf(new([.. c.OneOf.Select(id => new NameValue(id))], ListJoin.Or)))], ListJoin.Comma);
        return profile.Photos.Count == 0
            ? SheetsMessages.RequiredChecks(because, checks)
            : SheetsMessages.RequiredChecksAndPhotos(because, checks, new([.. profile.Photos.Select(p => new TextValue(MemberWords.Of(p.ToString())))], ListJoin.Comma));
    }

    private static ImmutableArray<string> Row(LimitPack pack, string id, LimitEntry entry, UnitSystem units, Language language)
    {
        var limit = new Limit
        {
            Definition = LimitDefinitions.Get(id),
            Shape = entry.Shape,
            Tier = LimitTier.Pack,
            Pack = pack.Name,
            Basis = entry.Basis,
            Source = entry.SourceText(Text),
            Mark = entry.Mark,
            Rule = entry.Rule,
            At = entry.At,
            Lower = entry.Lower,
            Upper = entry.Upper,
            Target = entry.Target,
            Statement = entry.Statement,
            With = entry.With,
        };
        string Text(Message message) => RecordWords.Text(message, language);
        var when = entry.When.All.Select(c => c.Words.IsEmpty ? c.Subject.Key : Text(SheetsMessages.Condition(new(c.Subject.Key), new([.. c.Words.Select(w => new TextValue(w))], ListJoin.Comma))));
        return
        [
            id, Text(LimitText.Of(limit, units)), string.Join("; ", when), Text(SheetsMessages.Rule(entry.Rule == DecisionRule.Simple ? SheetsMessages.RuleRule.Simple : SheetsMessages.RuleRule.Guarded)),
            Text(entry.Note is { } note ? SheetsMessages.SourceMarkAndNote(new(limit.Source), RecordWords.Mark(entry.Mark), note) : SheetsMessages.SourceAndMark(new(limit.Source), RecordWords.Mark(entry.Mark))),
        ];
    }
}
