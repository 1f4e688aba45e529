using System.Globalization;
using System.Text.Json;
using Commission.Jobs.Problems;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Source;
using Commission.Source.Yaml;

namespace Commission.Jobs.Schema;

/// <summary>Sentences about values that have the wrong shape or are not among the allowed words.</summary>
internal static class UnfitText
{
    public static Problem Unfit(JobSchema schema, JsonElement field, JsonInstance.Place place)
    {
        // Only the file itself has no key, and that is a mapping before it is held against the schema.
        var name = new TextValue(place.NameOfKey!);
        var node = place.Value;
        return node switch
        {
            SourceScalar { IsEmpty: true } => Make(place, JobMessages.NoValue(name), Expected(schema, field), Example(schema, field, place) is { } example ? JobMessages.NoValueLike(example) : JobMessages.NoValueNext, "no-value"),
            SourceMapping => Make(place, JobMessages.HoldsKeys(name), Expected(schema, field), Like(schema, field, place), "wrong-type"),
            SourceSequence { Items.Count: 0 } when schema.TakesList(field) => Make(place, JobMessages.EmptyList(name), null, JobMessages.EmptyListNext, "empty-list"),
            SourceSequence => Make(place, JobMessages.IsList(name), Expected(schema, field), Like(schema, field, place), "wrong-type"),
            SourceScalar scalar => UnfitScalar(schema, field, place, scalar, name),
            _ => throw new InvalidOperationException(),
        };
    }

    /// <summary>A value as it is written in a job file.</summary>
    public static string Yaml(JsonElement value, bool si = false) => value.ValueKind switch
    {
        JsonValueKind.Object => "{" + string.Join(", ", value.EnumerateObject().Select(p => $"{p.Name}: {Yaml(p.Value, si)}")) + "}",
        JsonValueKind.Array => "[" + string.Join(", ", value.EnumerateArray().Select(v => Yaml(v, si))) + "]",
        JsonValueKind.String when si && SiExample.Of(value.GetString()!) is { } metric => metric,
        JsonValueKind.String when value.GetString() is { } text && (text.Contains(',', StringComparison.Ordinal) || IsTimeOfDay(text)) => $"\"{text}\"",
        _ => value.ToString(),
    };

    private static Problem UnfitScalar(JobSchema schema, JsonElement field, JsonInstance.Place place, SourceScalar scalar, TextValue name)
    {
        var written = ValueText.Short(scalar.Text);
        if (schema.ForScalar(field) is not { } end)
        {
            var list = schema.TakesList(field) && schema.ForMapping(field) is null;
            var expected = list ? JobMessages.Expected(JobMessages.ExpectedKind.List)
                : schema.ForMapping(field) is { } mapping && mapping.TryGetProperty("properties", out var properties)
                    ? JobMessages.TheseKeysExpected(ValueText.AnyOf([.. properties.EnumerateObject().Where(p => !p.Value.TryGetProperty("x-alias-of", out _)).Select(p => p.Name)]))
                    : JobMessages.Expected(JobMessages.ExpectedKind.Keys);
            return Make(place, JobMessages.ValueIs(name, written), expected, list ? JobMessages.ListNext : Like(schema, field, place), "wrong-type");
        }

        if (end.TryGetProperty("const", out var constant))
            return Make(place, JobMessages.ValueIs(name, written), JobMessages.VersionExpected(new(constant.ToString())), JobMessages.VersionNext(name, new(constant.ToString())), "version");
        if (end.TryGetProperty("enum", out var allowed))
            return NotAWord(end, allowed, place, scalar, name);
        if (JsonInstance.KindOf(scalar) is JsonValueKind.True or JsonValueKind.False)
            return Make(place, JobMessages.YesOrNo(written), Expected(schema, field), JobMessages.YesOrNoNext, "wrong-type");
        if (JobSchema.Text(end, "type") is "number" or "integer" && scalar.IsQuoted && double.TryParse(scalar.Text, NumberStyles.Float, CultureInfo.InvariantCulture, out _))
            return Make(place, JobMessages.ValueIsText(name, written), Expected(schema, field), JobMessages.ValueIsTextNext(new(scalar.Text)), "wrong-type");
        return Make(place, JobMessages.ValueIs(name, written), Expected(schema, field), Like(schema, field, place), "wrong-type");
    }

    private static Problem NotAWord(JsonElement end, JsonElement allowed, JsonInstance.Place place, SourceScalar scalar, TextValue name)
    {
        var written = ValueText.Short(scalar.Text);
        if (!end.TryGetProperty("x-words", out var words))
            return Make(place, JobMessages.ValueIs(name, written), null, JobMessages.WriteYesOrNo, "unknown-word");
        var all = allowed.EnumerateArray().Select(w => w.GetString()!).ToArray();
        var nearest = NearestName.Of(scalar.Text, all);
        var known = words.EnumerateObject().Select(p => p.Name).ToArray();

        var longer = nearest is null ? NearWords.WithAllOf(scalar.Text, known) : [nearest];

        // With a good guess a long list only hides it.
        return Make(place, JobMessages.UnknownWord(written, name), longer.Count == 0 || known.Length <= 8 ? JobMessages.WordsAre(ValueText.AnyOf(known)) : null,
            longer.Count == 0 ? null : ValueText.DidYouMean(longer), "unknown-word");
    }

    private static Message Expected(JobSchema schema, JsonElement field) =>
        schema.ForScalar(field) is { } end && JobSchema.Text(end, "x-kind") is null && !end.TryGetProperty("x-quantity", out _) && end.TryGetProperty("x-words", out var words)
            ? JobMessages.WordExpected(ValueText.AnyOf([.. words.EnumerateObject().Select(p => p.Name)]))
            : JobMessages.Expected(KindOf(schema, field));

    private static JobMessages.ExpectedKind KindOf(JobSchema schema, JsonElement field)
    {
        if (schema.ForScalar(field) is not { } end)
            return schema.ForMapping(field) is not null && !schema.TakesList(field) ? JobMessages.ExpectedKind.Keys : JobMessages.ExpectedKind.List;
        if (JobSchema.Text(end, "x-kind") is { } kind)
        {
            return kind switch
            {
                "date" => JobMessages.ExpectedKind.Date,
                "time" => JobMessages.ExpectedKind.Time,
                "zone" => JobMessages.ExpectedKind.Zone,
                "period" => JobMessages.ExpectedKind.Period,
                "accuracy" => JobMessages.ExpectedKind.Accuracy,
                "unit" => JobMessages.ExpectedKind.Unit,
                "refrigerant" => JobMessages.ExpectedKind.Refrigerant,
                "id" => JobMessages.ExpectedKind.Name,
                "photo" or "kit" => JobMessages.ExpectedKind.File,
                _ => JobMessages.ExpectedKind.Quantity,
            };
        }

        if (end.TryGetProperty("x-quantity", out _))
            return JobMessages.ExpectedKind.Quantity;
        if (end.TryGetProperty("enum", out _))
            return JobMessages.ExpectedKind.YesNo;
        return JobSchema.Text(end, "type") switch
        {
            "integer" => JobMessages.ExpectedKind.Whole,
            "number" => JobMessages.ExpectedKind.Number,
            _ => end.TryGetProperty("const", out _) ? JobMessages.ExpectedKind.Number : JobMessages.ExpectedKind.Text,
        };
    }

    private static Message? Like(JobSchema schema, JsonElement field, JsonInstance.Place place) => Example(schema, field, place) is { } example ? QuantityMessages.Like(example) : null;

    // With its key where it has one: so it stands in the file.
    private static NameValue? Example(JobSchema schema, JsonElement field, JsonInstance.Place place) =>
        Example(schema, field) is { } example ? new(place.Key is { } own ? $"{own.Text}: {example}" : example) : null;

    /// <summary>How a field may be written: its own example, or one made of the keys it needs; null when there is none.</summary>
    public static string? Example(JobSchema schema, JsonElement field)
    {
        if (field.TryGetProperty("examples", out var examples) && examples.GetArrayLength() > 0)
            return Yaml(examples[0], schema.IsSi);
        if (schema.ForMapping(field) is not { } mapping || !mapping.TryGetProperty("properties", out var properties))
            return null;
        var needed = mapping.TryGetProperty("required", out var required) ? required.EnumerateArray().Select(r => r.GetString()!).ToArray() : [];
        var shown = properties.EnumerateObject()
            .Where(p => needed.Length > 0 ? needed.Contains(p.Name) : p.Value.TryGetProperty("examples", out _))
            .Take(needed.Length > 0 ? 4 : 2)
            .Select(p => (p.Name, Example: p.Value.TryGetProperty("examples", out var own) ? Yaml(own[0], schema.IsSi) : "…"));
        var text = string.Join(", ", shown.Select(p => $"{p.Name}: {p.Example}"));
        return text.Length == 0 ? null : "{" + text + "}";
    }

    private static bool IsTimeOfDay(string text) => text.Length is 5 or 8 && text[2] == ':' && char.IsAsciiDigit(text[0]);

    private static Problem Make(JsonInstance.Place place, Message found, Message? expected, Message? advice, string code)
    {
        // An empty value has no place of its own that a person could see: the key has.
        var at = place.Value is SourceScalar { IsEmpty: true } && place.Key is { } key ? (SourceNode)key : place.Value;
        return new Problem(at.Location, found, expected, advice) { Code = code, Length = at.Length };
    }
}

/// <summary>Turns an example of the schema that is in inch and pound into one of a file in SI.</summary>
internal static class SiExample
{
    /// <summary>The same quantity in the unit that SI files use; null when the text is none, or is in SI already.</summary>
    public static string? Of(string text)
    {
        if (UnitTable.FindAny(text).FirstOrDefault() is { IsCustomary: true } alone)
            return UnitTable.OfferedFor(alone.Dimension, si: true).First(u => u.Reference == alone.Reference).Symbol;
        foreach (var dimension in Enum.GetValues<Dimension>())
        {
            if (QuantityParser.Parse(text, dimension) is { Ok: true, Value: var value } && value.Unit.IsCustomary)
                return Written(value, dimension);
            if (QuantityParser.ParseRange(text, dimension) is { Ok: true, Value: var range } && range.Lower.Unit.IsCustomary)
                return $"{Written(range.Lower, dimension)} to {Written(range.Upper, dimension)}";
        }

        return null;
    }

    private static string Written(ParsedQuantity value, Dimension dimension)
    {
        // A depth stays a depth: no other unit of pressure counts from the atmosphere downwards.
        var unit = UnitTable.OfferedFor(dimension, si: true).First(u => u.Reference == value.Unit.Reference);
        var number = unit.FromSi(value.Si);
        var decimals = Math.Clamp(2 - (int)Math.Floor(Math.Log10(Math.Max(Math.Abs(number), 1e-6))), 0, 6);
        var doubt = value.Uncertainty is { } stated ? string.Create(CultureInfo.InvariantCulture, $" +/- {Math.Round(stated.HalfWidthSi / unit.Factor, decimals)}") : "";
        return string.Create(CultureInfo.InvariantCulture, $"{Math.Round(number, decimals)} {unit.Symbol}{doubt}");
    }
}
