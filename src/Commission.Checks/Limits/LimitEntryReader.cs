using System.Collections.Immutable;
using System.Globalization;
using Commission.Measurement.Decisions;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Source;
using Commission.Source.Yaml;

namespace Commission.Checks.Limits;

/// <summary>Reads the cases of one limit.</summary>
internal sealed class EntryReader(LimitDefinition definition, PackDefaults defaults, Func<string, Message> words, ProblemList problems)
{
    private static readonly LimitForm[] Forms =
    [
        new("at least", LimitShape.AtLeast),
        new("at most", LimitShape.AtMost),
        new("within", LimitShape.Within),
        new("target", LimitShape.Target),
        new("tolerance", LimitShape.Tolerance),
        new("statement", LimitShape.Statement),
    ];

    /// <summary>Reads a limit: one case, or several under <c>cases</c>.</summary>
    /// <param name="node">The value of the limit's id.</param>
    /// <returns>The cases that could be read, in the order written.</returns>
    public IReadOnlyList<LimitEntry> Read(SourceNode node)
    {
        if (node is not SourceMapping mapping || mapping.Find("cases") is null)
            return ReadCase(node) is { } single ? [single] : [];
        if (StrictMapping.Open(node, PackPart.Cases, problems) is not { } limit)
            return [];
        var cases = new List<LimitEntry>();
        foreach (var item in limit.Items("cases"))
        {
            if (cases.Count > 0 && cases[^1].When.All.Length == 0)
                problems.Add(item.Location, LimitsMessages.CaseUnreachable, LimitsMessages.CaseUnreachableExpected, LimitsMessages.CaseUnreachableNext, "unreachable-case", item.Length);
            if (ReadCase(item) is { } entry)
                cases.Add(entry);
        }

        limit.Close();
        return cases;
    }

    private LimitEntry? ReadCase(SourceNode node)
    {
        if (StrictMapping.Open(node, PackPart.Limit, problems) is not { } mapping)
            return null;
        var before = problems.Count;
        var when = ConditionsReader.Read(mapping.Take("when"), problems);
        var own = PackDefaults.Read(mapping);
        var source = mapping.RequireText("source");
        var note = mapping.Text("note");
        var with = ReadCompanions(mapping);
        var given = new List<LimitForm>();
        foreach (var form in Forms)
        {
            if (mapping.Text(form.Key) is { } text)
                given.Add(form with { Text = text });
        }

        mapping.Close();

        // A misspelt form was already reported; that the figure is missing would say it twice.
        if (given.Count == 0 && problems.Count > before)
            return null;
        if ((own.Basis ?? defaults.Basis) is null)
            Missing(mapping, "basis", LimitsMessages.NoBasis(Id));
        if ((own.Mark ?? defaults.Mark) is null)
            Missing(mapping, "mark", LimitsMessages.NoMark(Id));
        if (ShapeOf(mapping, given) is not { } shape)
            return null;
        var worded = source is null ? null : LimitNotes.SourceOf(words(source.Text));
        var entry = new LimitEntry(
            shape, when, own.Rule ?? defaults.Rule ?? definition.Rule, own.Basis ?? defaults.Basis ?? "", worded is null ? source?.Text ?? "" : "", own.Mark ?? defaults.Mark ?? "", mapping.Location)
        {
            SourceInWords = worded,
            With = with,
            Note = note is null ? null : words(note.Text),
        };
        var whole = WithFigures(entry, given);
        return problems.Count == before ? whole : null;
    }

    private LimitShape? ShapeOf(StrictMapping mapping, List<LimitForm> given)
    {
        var advice = LimitsMessages.WriteOneOf(new([.. Forms.Where(form => Allows(form.Shape)).Select(form => LimitsMessages.Quoted(new NameValue(form.Key)))], ListJoin.Or));
        var isTargetWithTolerance = given.Count == 2 && given.Exists(form => form.Shape == LimitShape.Target) && given.Exists(form => form.Shape == LimitShape.Tolerance);
        if (given.Count == 0)
        {
            problems.Add(mapping.Location, LimitsMessages.FormMissing(Id), null, advice, "missing-key");
            return null;
        }

        if (given.Count > 1 && !isTargetWithTolerance)
        {
            problems.Add(mapping.Location, LimitsMessages.FormsMany(Id, new([.. given.Select(form => LimitsMessages.Quoted(new NameValue(form.Key)))])), LimitsMessages.FormsExpected, advice, "two-forms");
            return null;
        }

        var shape = isTargetWithTolerance ? LimitShape.Target : given[0].Shape;
        if (Allows(shape))
            return shape;
        problems.Add(given[0].Text!.Location, LimitsMessages.FormWrong(Id, new NameValue(given[0].Key)), LimitsMessages.FormMeans(definition.Means), advice, "wrong-form", given[0].Text!.Length);
        return null;
    }

    private bool Allows(LimitShape shape) =>
        definition.Shapes.Contains(shape)
        || (shape is LimitShape.AtLeast or LimitShape.AtMost && definition.Shapes.Contains(LimitShape.Within));

    private LimitEntry? WithFigures(LimitEntry entry, List<LimitForm> given)
    {
        var text = given[0].Text!;
        switch (entry.Shape)
        {
            case LimitShape.Statement:
                return entry with { Statement = words(text.Text) };
            case LimitShape.Within:
                return definition.Quantity is { } quantity && FigureReader.ReadRange(text, quantity, problems) is { } range
                    ? entry with { Lower = range.Lower, Upper = range.Upper }
                    : null;
            case LimitShape.AtLeast:
                return FigureReader.Read(text, definition, problems) is { } lower ? entry with { Lower = lower } : null;
            case LimitShape.AtMost:
                return FigureReader.Read(text, definition, problems) is { } upper ? entry with { Upper = upper } : null;
            case LimitShape.Tolerance:
                return HalfWidth(text) is { } half ? entry with { Lower = Minus(half), Upper = half } : null;
            default:
                return Target(entry, text, given.Count > 1 ? given[1].Text : null);
        }
    }

    private LimitEntry? Target(LimitEntry entry, SourceScalar text, SourceScalar? tolerance)
    {
        if (FigureReader.Read(text, definition, problems) is not { } target)
            return null;
        if (tolerance is null)
            return entry with { Target = target };
        if (HalfWidth(tolerance) is not { } half)
            return null;
        var decimals = Math.Max(target.Decimals, half.Decimals);
        return entry with
        {
            Target = target,
            Lower = new LimitFigure(target.Si - half.Si, "", target.Unit, decimals),
            Upper = new LimitFigure(target.Si + half.Si, "", target.Unit, decimals),
        };
    }

    private LimitFigure? HalfWidth(SourceScalar text)
    {
        if (definition.Quantity is not { } quantity)
        {
            problems.Add(text.Location, LimitsMessages.ToleranceNone(Id), null, null, "wrong-form", text.Length);
            return null;
        }

        if (FigureReader.Read(text, LimitFigures.DifferenceOf(quantity), problems) is not { } figure)
            return null;
        if (figure.Si > 0)
            return figure;
        problems.Add(text.Location, LimitsMessages.ToleranceZero(new(text.Text)), LimitsMessages.ToleranceExpected, null, "empty-range", text.Length);
        return null;
    }

    private static LimitFigure Minus(LimitFigure figure) => figure with { Si = -figure.Si, Text = "-" + figure.Text };

    private ImmutableSortedDictionary<string, LimitFigure> ReadCompanions(StrictMapping mapping)
    {
        var figures = ImmutableSortedDictionary.CreateBuilder<string, LimitFigure>(StringComparer.Ordinal);
        var node = mapping.Take("with");
        if (definition.Companions.Length == 0)
        {
            if (node is not null)
                problems.Add(node.Location, LimitsMessages.CompanionNone(Id), null, LimitsMessages.CompanionNoneNext, "unknown-key", node.Length);
            return figures.ToImmutable();
        }

        if (node is null)
        {
            problems.Add(mapping.Location, LimitsMessages.CompanionMissing(Id, new([.. definition.Companions.Select(c => LimitsMessages.Quoted(new NameValue(c.Name)))], ListJoin.Comma)), null, LimitsMessages.CompanionMissingNext(new NameValue($"with: {{{definition.Companions[0].Name}: …}}")), "missing-key");
            return figures.ToImmutable();
        }

        if (StrictMapping.Open(node, PackPart.Companions, problems) is not { } with)
            return figures.ToImmutable();
        foreach (var companion in definition.Companions)
        {
            if (with.RequireText(companion.Name) is { } text && FigureReader.Read(text, companion.Quantity, problems) is { } figure)
                figures[companion.Name] = figure;
        }

        with.Close();
        return figures.ToImmutable();
    }

    private NameValue Id => new(definition.Id);

    private void Missing(StrictMapping mapping, string key, Message found) =>
        problems.Add(mapping.Location, found, null, LimitsMessages.NoDefaultNext(new NameValue(key)), "missing-key");
}

/// <summary>Reads the numbers of a limit.</summary>
internal static class FigureReader
{
    private const int LongestSpan = 1200;

    /// <summary>Reads one number of a limit.</summary>
    /// <param name="scalar">The number with its unit.</param>
    /// <param name="definition">What the limit is measured in.</param>
    /// <param name="problems">Where faults go.</param>
    /// <returns>The figure; null, and a problem, when it cannot be read.</returns>
    public static LimitFigure? Read(SourceScalar scalar, LimitDefinition definition, ProblemList problems)
    {
        if (definition.IsMonths)
            return ReadMonths(scalar, problems);
        if (definition.Quantity is { } quantity)
            return Read(scalar, quantity, problems);
        problems.Add(scalar.Location, LimitsMessages.NumberNone(new NameValue(definition.Id)), null, LimitsMessages.NumberNoneNext, "wrong-form", scalar.Length);
        return null;
    }

    /// <summary>Reads a quantity.</summary>
    /// <param name="scalar">The number with its unit.</param>
    /// <param name="quantity">What it has to measure.</param>
    /// <param name="problems">Where faults go.</param>
    /// <returns>The figure; null, and a problem, when it cannot be read.</returns>
    public static LimitFigure? Read(SourceScalar scalar, Dimension quantity, ProblemList problems)
    {
        var result = QuantityParser.Parse(scalar.Text, quantity, BareUnit(quantity));
        if (!result.Ok)
        {
            Report(scalar, result.Fault, problems);
            return null;
        }

        if (result.Value.Uncertainty is null)
            return Of(result.Value);
        problems.Add(scalar.Location, LimitsMessages.NumberUncertain(new(scalar.Text)), LimitsMessages.NumberUncertainExpected, LimitsMessages.NumberUncertainNext, "limit-with-uncertainty", scalar.Length);
        return null;
    }

    /// <summary>Reads both ends of a range.</summary>
    /// <param name="scalar">The range, such as <c>55 to 115 °F</c>.</param>
    /// <param name="quantity">What it has to measure.</param>
    /// <param name="problems">Where faults go.</param>
    /// <returns>Both figures; null, and a problem, when they cannot be read or nothing lies between them.</returns>
    public static (LimitFigure Lower, LimitFigure Upper)? ReadRange(SourceScalar scalar, Dimension quantity, ProblemList problems)
    {
        var result = QuantityParser.ParseRange(scalar.Text, quantity, BareUnit(quantity));
        if (!result.Ok)
        {
            Report(scalar, result.Fault, problems);
            return null;
        }

        var (lower, upper) = (Of(result.Value.Lower), Of(result.Value.Upper));
        if (lower.Si < upper.Si && lower.Reference == upper.Reference)
            return (lower, upper);
        problems.Add(scalar.Location, LimitsMessages.RangeEmpty(new(scalar.Text)), LimitsMessages.RangeExpected, null, "empty-range", scalar.Length);
        return null;
    }

    private static Unit? BareUnit(Dimension quantity) => quantity == Dimension.Ratio ? UnitTable.Find("1", Dimension.Ratio) : null;

    private static LimitFigure Of(ParsedQuantity quantity) => new(quantity.Si, quantity.Canonical, quantity.Unit, quantity.Decimals);

    private static LimitFigure? ReadMonths(SourceScalar scalar, ProblemList problems)
    {
        var parts = scalar.Text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (parts.Length == 2
            && int.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            && parts[1] is "month" or "months" or "year" or "years"
            && number is > 0 and <= LongestSpan)
        {
            var months = parts[1][0] == 'y' ? number * 12 : number;
            return new LimitFigure(months, $"{number} {parts[1]}", null, 0) { IsYears = parts[1][0] == 'y' };
        }

        problems.Add(scalar.Location, LimitsMessages.SpanBad(new(scalar.Text)), null, LimitsMessages.SpanNext, "not-a-period", scalar.Length);
        return null;
    }

    private static void Report(SourceScalar scalar, ParseFault fault, ProblemList problems)
    {
        var at = scalar.Location with { Column = scalar.Location.Column + (scalar.IsQuoted ? 1 : 0) + fault.Offset };
        problems.Add(at, fault.Found, fault.Expected, fault.Advice, "bad-quantity", Math.Max(1, fault.Length));
    }
}

/// <summary>A form of a limit, and what was written in it.</summary>
/// <param name="Key">Its key.</param>
/// <param name="Shape">Its form.</param>
internal sealed record LimitForm(string Key, LimitShape Shape)
{
    /// <summary>What was written; null in the list of forms.</summary>
    public SourceScalar? Text { get; init; }
}
