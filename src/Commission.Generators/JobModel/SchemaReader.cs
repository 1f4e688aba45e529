using System.Text.Json;

namespace Commission.Generators.JobModel;

/// <summary>Reads from the schema what becomes C#. What it does not understand is a fault of the schema, told by path.</summary>
internal sealed class SchemaReader
{
    private const string Reference = "#/$defs/";

    private readonly JsonElement _definitions;
    private readonly SchemaModel _model = new();

    private SchemaReader(JsonElement root) => _definitions = root.GetProperty("$defs");

    public static SchemaModel Read(string text)
    {
        using var document = JsonDocument.Parse(text);
        var reader = new SchemaReader(document.RootElement);
        reader.ReadPart("Job", document.RootElement);
        foreach (var definition in reader._definitions.EnumerateObject())
        {
            if (definition.Value.TryGetProperty("enum", out _))
                reader.ReadWords(definition.Name, definition.Value);
            else if (!IsExpanded(definition.Value))
                reader.ReadPart(definition.Name, definition.Value);
        }

        reader.ReadRangeRows(document.RootElement);
        reader.CheckWhole();
        return reader._model;
    }

    private void ReadPart(string name, JsonElement schema)
    {
        var part = new Part
        {
            Name = name,
            Description = Text(schema, "description"),
            Short = Text(schema, "x-short"),
            Phase = Text(schema, "x-phase"),
            MeasuredBy = Text(schema, "x-measured-by"),
            Generic = Text(schema, "x-generic"),
            IsNoted = IsTrue(schema, "x-noted"),
        };
        var required = schema.TryGetProperty("required", out var list) ? Strings(list) : [];
        foreach (var key in schema.GetProperty("properties").EnumerateObject())
        {
            if (Text(key.Value, "x-alias-of") is { Length: > 0 } canonical)
            {
                part.Aliases.Add(new(key.Name, canonical));
                continue;
            }

            var field = new Field
            {
                Key = key.Name,
                Member = Text(key.Value, "x-member") is { Length: > 0 } member ? member : KeyName.Of(key.Name),
                Description = Text(key.Value, "description"),
                IsRequired = required.Contains(key.Name),
                IsBeside = IsTrue(key.Value, "x-beside"),
                OpensLog = IsTrue(key.Value, "x-opens-log"),
            };
            if (key.Value.TryGetProperty("x-log", out var log))
            {
                field.LogQuantity = Text(log, "quantity");
                field.LogUnits = Text(log, "units");
                ReadWithin(field, log, $"{name}: {key.Name}");
            }

            ReadShape(field, key.Value, $"{name}: {key.Name}");
            part.Fields.Add(field);
        }

        var first = schema.TryGetProperty("x-order", out var order) ? Strings(order) : [];
        part.Order.AddRange(first.Select(key => part.Fields.FirstOrDefault(f => f.Key == key)).OfType<Field>());
        if (part.Order.Count != first.Length)
            _model.Faults.Add($"{name}: x-order names a key that is not there");
        part.Order.AddRange(part.Fields.Where(f => !first.Contains(f.Key)));
        _model.Parts.Add(part);
    }

    // Lists and single values, parts and their short forms are told apart by shape; both ends bind to one kind.
    private void ReadShape(Field field, JsonElement schema, string path)
    {
        if (Text(schema, "x-kind") is "chart" or "chart-axis")
        {
            field.Kind = Text(schema, "x-kind") == "chart" ? FieldKind.Chart : FieldKind.ChartAxis;
            field.IsList = true;
            field.RangeRow = Text(schema, "x-within");
        }
        else if (schema.TryGetProperty("if", out var condition))
        {
            var then = schema.GetProperty("then");
            if (Text(condition, "type") == "array")
            {
                field.IsList = true;
                ReadShape(field, schema.GetProperty("else"), path);
            }
            else if (Text(then, "$ref") is { Length: > 0 } part && !IsExpanded(Definition(part)))
            {
                ReadReference(field, part);
            }
            else
            {
                ReadShape(field, schema.GetProperty("else"), path);
            }
        }
        else if (Text(schema, "type") == "array")
        {
            field.IsList = true;
            ReadShape(field, schema.GetProperty("items"), path);
        }
        else if (Text(schema, "$ref") is { Length: > 0 } reference)
        {
            ReadReference(field, reference);
        }
        else
        {
            ReadScalar(field, schema, path);
        }
    }

    private void ReadReference(Field field, string reference)
    {
        field.Definition = reference.Substring(Reference.Length);
        field.Kind = Definition(reference).TryGetProperty("enum", out _) ? FieldKind.Word : FieldKind.Part;
    }

    private void ReadScalar(Field field, JsonElement schema, string path)
    {
        field.Quantity = Text(schema, "x-quantity");
        field.IsWater = Text(schema, "x-kind") == "water";
        field.IsGauge = IsTrue(schema, "x-gauge");
        if (field.IsGauge && field.Quantity != "Pressure")
            _model.Faults.Add($"{path}: x-gauge stands with a pressure only");
        field.TimeRole = Text(schema, "x-times");
        if (schema.TryGetProperty("x-default-unit", out var units))
        {
            field.UsUnit = Text(units, "us");
            field.SiUnit = Text(units, "si");
            field.UnitOverride = Text(units, "override");
        }

        if (KindOf(schema) is not { } kind)
        {
            _model.Faults.Add($"{path}: not a kind of value that can be read");
            return;
        }

        field.Kind = kind;
        ReadWithin(field, schema, path);
        var byRow = kind is FieldKind.Accuracy or FieldKind.AnyValue or FieldKind.AnyDifference;
        var byEnds = kind is FieldKind.Quantity or FieldKind.QuantityRange or FieldKind.Whole or FieldKind.Number && !schema.TryGetProperty("const", out _);
        if (byRow && field.RangeRow.Length == 0 || byEnds && field.Within is null)
            _model.Faults.Add($"{path}: no x-within");
        if (kind is FieldKind.Quantity or FieldKind.QuantityRange && (field.Quantity.Length == 0 || field.UsUnit.Length == 0 || field.SiUnit.Length == 0))
            _model.Faults.Add($"{path}: x-quantity and x-default-unit are needed");
    }

    private static FieldKind? KindOf(JsonElement schema)
    {
        switch (Text(schema, "x-kind"))
        {
            case "refrigerant":
                return FieldKind.Refrigerant;
            case "zone":
                return FieldKind.Zone;
            case "unit":
                return FieldKind.Unit;
            case "display-unit":
                return FieldKind.DisplayUnit;
            case "date":
                return FieldKind.Date;
            case "time":
                return FieldKind.Time;
            case "period":
                return FieldKind.Period;
            case "accuracy":
                return FieldKind.Accuracy;
            case "any-value":
                return FieldKind.AnyValue;
            case "any-difference":
                return FieldKind.AnyDifference;
            case "range":
                return FieldKind.QuantityRange;
            case "id":
                return FieldKind.Id;
            case "photo" or "kit":
                return FieldKind.Text;
            case "" or "water":
                break;
            default:
                return null;
        }

        if (schema.TryGetProperty("x-quantity", out _))
            return FieldKind.Quantity;
        if (schema.TryGetProperty("enum", out _))
            return FieldKind.YesNo;
        if (schema.TryGetProperty("const", out _))
            return FieldKind.Whole;
        if (schema.TryGetProperty("type", out var type) && type.ValueKind == JsonValueKind.String)
            return type.GetString() switch { "integer" => FieldKind.Whole, "number" => FieldKind.Number, "string" => FieldKind.Text, _ => null };
        return type.ValueKind == JsonValueKind.Array ? FieldKind.Text : null;
    }

    private void ReadWithin(Field field, JsonElement schema, string path)
    {
        if (!schema.TryGetProperty("x-within", out var within))
            return;
        if (within.ValueKind == JsonValueKind.String)
            field.RangeRow = within.GetString()!;
        else if (within.GetArrayLength() == 2)
            field.Within = [.. within.EnumerateArray().Select(e => e.ToString())];
        else
            _model.Faults.Add($"{path}: x-within has not two ends");
    }

    private void ReadWords(string name, JsonElement schema)
    {
        var list = new WordList { Name = name, Description = Text(schema, "description") };
        list.Words.AddRange(Pairs(schema, "x-words"));
        list.Aliases.AddRange(Pairs(schema, "x-aliases"));
        if (schema.TryGetProperty("x-measures", out var measures))
            list.Measures.AddRange(measures.EnumerateObject().Select(m => new KeyValuePair<string, string[]>(m.Name, Strings(m.Value))));
        var allowed = Strings(schema.GetProperty("enum"));
        var known = list.Words.Concat(list.Aliases).Select(w => w.Key).ToArray();
        if (allowed.Except(known).Concat(known.Except(allowed)).Any())
            _model.Faults.Add($"{name}: enum and x-words with x-aliases name other words");
        if (list.Aliases.Any(a => list.Words.All(w => w.Key != a.Value)))
            _model.Faults.Add($"{name}: an alias means no word");
        _model.WordLists.Add(list);
    }

    private void ReadRangeRows(JsonElement root)
    {
        if (!root.TryGetProperty("x-ranges", out var rows))
            return;
        foreach (var row in rows.EnumerateObject())
        {
            _model.RangeRows.Add(new(row.Name, [.. row.Value.EnumerateObject().Select(r => new KeyValuePair<string, string[]>(r.Name, Strings(r.Value)))]));
        }
    }

    private void CheckWhole()
    {
        foreach (var part in _model.Parts)
        {
            if (part.Short.Length > 0 && part.Fields.All(f => f.Key != part.Short))
                _model.Faults.Add($"{part.Name}: x-short names no key");
            if (part.MeasuredBy.Length > 0 && part.Fields.All(f => f.Key != part.MeasuredBy || f.Kind != FieldKind.Word))
                _model.Faults.Add($"{part.Name}: x-measured-by names no key with words");
            _model.Faults.AddRange(part.Aliases.Where(a => part.Fields.All(f => f.Key != a.Value)).Select(a => $"{part.Name}: {a.Key} is another name of nothing"));
            _model.Faults.AddRange(part.Fields.Where(f => f.Kind == FieldKind.Part && _model.Parts.All(p => p.Name != f.Definition)).Select(f => $"{part.Name}: {f.Key} refers to nothing"));
            _model.Faults.AddRange(part.Fields.Where(f => f.RangeRow.Length > 0 && _model.RangeRows.All(r => r.Key != f.RangeRow)).Select(f => $"{part.Name}: {f.Key} has a range that x-ranges does not name"));
            if (part.Phase.Length > 0 && part.Fields.All(f => f.TimeRole != "start"))
                _model.Faults.Add($"{part.Name}: a phase without a start");
        }
    }

    private JsonElement Definition(string reference) => _definitions.GetProperty(reference.AsSpan(Reference.Length));

    private static bool IsExpanded(JsonElement schema) => IsTrue(schema, "x-expanded");

    private static bool IsTrue(JsonElement schema, string keyword) => schema.TryGetProperty(keyword, out var value) && value.ValueKind == JsonValueKind.True;

    private static string Text(JsonElement schema, string keyword) =>
        schema.ValueKind == JsonValueKind.Object && schema.TryGetProperty(keyword, out var value) && value.ValueKind == JsonValueKind.String ? value.GetString()! : "";

    private static string[] Strings(JsonElement list) => [.. list.EnumerateArray().Select(e => e.GetString()!)];

    private static IEnumerable<KeyValuePair<string, string>> Pairs(JsonElement schema, string keyword) =>
        schema.TryGetProperty(keyword, out var pairs) ? pairs.EnumerateObject().Select(p => new KeyValuePair<string, string>(p.Name, p.Value.GetString()!)) : [];
}
