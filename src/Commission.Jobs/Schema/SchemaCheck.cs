using System.Text.Json;
using Commission.Source;
using Commission.Source.Yaml;
using Json.Schema;

namespace Commission.Jobs.Schema;

/// <summary>Holds a source tree against the schema and tells each complaint once, in words of the trade.</summary>
internal sealed class SchemaCheck
{
    private static readonly Lazy<BuildOptions> Registry = new(() => new BuildOptions { SchemaRegistry = new SchemaRegistry() });

    private static readonly Lazy<JsonSchema> JobFile = new(() => JsonSchema.Build(JobSchema.Instance.Root, Registry.Value));

    private static readonly Lazy<JsonSchema> KitFile = new(() =>
    {
        _ = JobFile.Value;
        using var reference = JsonDocument.Parse($$"""{"$ref":"{{JobFile.Value.BaseUri}}#/$defs/Kit"}""");
        return JsonSchema.Build(reference.RootElement.Clone(), Registry.Value);
    });

    // Nobody reads the two-hundredth guess, and guessing costs more than everything else.
    private const int MostGuesses = 200;

    private static readonly EvaluationOptions Listing = MakeOptions();

    private readonly JobSchema _schema;
    private readonly ProblemList _problems;
    private readonly HashSet<SourceNode> _rejected;
    private int _strangers;

    private SchemaCheck(SourceNode root, ProblemList problems, HashSet<SourceNode> rejected)
    {
        _schema = IsSi(root) ? JobSchema.ForSi : JobSchema.Instance;
        _problems = problems;
        _rejected = rejected;
    }

    /// <summary>Checks a job file. Nodes that the binder has to leave alone are put into <paramref name="rejected"/>.</summary>
    public static void Job(SourceNode root, ProblemList problems, HashSet<SourceNode> rejected) =>
        new SchemaCheck(root, problems, rejected).Run(root, JobFile.Value, JobSchema.Instance.Root);

    /// <summary>Checks a kit file.</summary>
    public static void Kit(SourceNode root, ProblemList problems, HashSet<SourceNode> rejected) =>
        new SchemaCheck(root, problems, rejected).Run(root, KitFile.Value, JobSchema.Instance.KitFile);

    /// <summary>Builds the evaluator ahead of time, beside other work.</summary>
    public static void Prepare() => _ = JobFile.Value;

    private static bool IsSi(SourceNode root)
    {
        var units = (root as SourceMapping)?.Find("units")?.Value;
        return ((units as SourceMapping)?.Find("preset")?.Value ?? units) is SourceScalar { Text: "si" };
    }

    private static EvaluationOptions MakeOptions()
    {
        var options = new EvaluationOptions { OutputFormat = OutputFormat.List };
        options.IgnoreAllAnnotations();
        return options;
    }

    private void Run(SourceNode root, JsonSchema evaluator, JsonElement rootSchema)
    {
        var instance = JsonInstance.Of(root);
        var results = evaluator.Evaluate(instance.Root, Listing);
        if (results.IsValid)
            return;
        var complaints = new Dictionary<string, Complaint>(StringComparer.Ordinal);
        foreach (var detail in results.Details ?? [])
        {
            if (detail.Errors is null || detail.Errors.Count == 0 || BelongsToCondition(detail.EvaluationPath.ToString()))
                continue;
            var pointer = detail.InstanceLocation.ToString();
            if (!complaints.TryGetValue(pointer, out var complaint))
                complaints.Add(pointer, complaint = new Complaint(pointer));
            foreach (var keyword in detail.Errors.Keys)
                complaint.Keywords.Add(keyword);
        }

        foreach (var complaint in complaints.Values.OrderBy(c => c.Pointer, StringComparer.Ordinal))
        {
            if (instance.At(complaint.Pointer) is { } place)
                Tell(place, complaint.Keywords, rootSchema);
        }
    }

    // "if" is a question, not a demand: its failures are listed all the same.
    private static bool BelongsToCondition(string path) =>
        path.EndsWith("/if", StringComparison.Ordinal) || path.Contains("/if/", StringComparison.Ordinal);

    private void Tell(JsonInstance.Place place, HashSet<string> keywords, JsonElement rootSchema)
    {
        if (place.Parent is { Value: SourceMapping siblings } parent && place.Key is { } key
            && MappingSchema(parent, rootSchema) is { } parentSchema && !Allows(parentSchema, key.Text))
        {
            _rejected.Add(place.Value);
            _problems.Add(KeyText.Unknown(_schema, parentSchema, siblings, key, parent.NameOfKey, guess: ++_strangers <= MostGuesses));
            return;
        }

        if (FieldSchema(place, rootSchema) is not { } field)
            return;
        if (place.Value is SourceMapping mapping && keywords.Contains("required") && _schema.ForMapping(field) is { } schema)
        {
            foreach (var missing in MissingKeys(schema, mapping))
                _problems.Add(KeyText.Missing(_schema, schema, mapping, place, missing));
            if (!keywords.Overlaps(["type", "enum", "const", "minItems"]))
                return;
        }

        if (!keywords.Overlaps(["type", "enum", "const", "minItems"]))
            return;
        _rejected.Add(place.Value);
        _problems.Add(UnfitText.Unfit(_schema, field, place));
    }

    private static bool Allows(JsonElement mapping, string key) =>
        JobSchema.TryProperty(mapping, key, out _)
        || (mapping.TryGetProperty("additionalProperties", out var more) && more.ValueKind == JsonValueKind.Object);

    // A misspelt key that will be corrected to the missing one is one mistake, not two.
    private static IEnumerable<string> MissingKeys(JsonElement schema, SourceMapping mapping)
    {
        var strangers = mapping.Entries.Select(e => e.Key.Text).Where(k => !Allows(schema, k)).Take(MostGuesses).ToArray();
        foreach (var required in schema.GetProperty("required").EnumerateArray())
        {
            var name = required.GetString()!;
            if (mapping.Find(name) is not null)
                continue;
            if (strangers.Any(k => KeyText.NearestKey(schema, mapping, k) == name))
                continue;
            yield return name;
        }
    }

    // The field a node stands in, before list and mapping alternatives are told apart.
    private JsonElement? FieldSchema(JsonInstance.Place place, JsonElement rootSchema)
    {
        if (place.Parent is not { } parent)
            return rootSchema;
        if (place.Key is { } key)
        {
            if (MappingSchema(parent, rootSchema) is not { } mapping)
                return null;
            if (JobSchema.TryProperty(mapping, key.Text, out var property))
                return property;
            return mapping.TryGetProperty("additionalProperties", out var more) && more.ValueKind == JsonValueKind.Object ? more : null;
        }

        return FieldSchema(parent, rootSchema) is { } field && _schema.For(field, parent.Value).TryGetProperty("items", out var items) ? items : null;
    }

    private JsonElement? MappingSchema(JsonInstance.Place place, JsonElement rootSchema) =>
        FieldSchema(place, rootSchema) is { } field && _schema.For(field, place.Value) is var schema
        && (schema.TryGetProperty("properties", out _) || schema.TryGetProperty("additionalProperties", out _)) ? schema : null;

    private sealed record Complaint(string Pointer)
    {
        public HashSet<string> Keywords { get; } = new(StringComparer.Ordinal);
    }
}
