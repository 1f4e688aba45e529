using System.Text.Json;
using Commission.Source.Yaml;

namespace Commission.Jobs.Schema;

/// <summary>The published schema, read once: what each key may hold, what it means, and the unit of a bare number.</summary>
internal sealed class JobSchema
{
    private static readonly Lazy<JobSchema> Loaded = new(() => new JobSchema());

    private static readonly Lazy<JobSchema> LoadedForSi = new(() => new JobSchema(Loaded.Value));

    private JobSchema(JobSchema same)
    {
        (Root, Definitions, KitFile) = (same.Root, same.Definitions, same.KitFile);
        IsSi = true;
    }

    private JobSchema()
    {
        using var stream = typeof(JobSchema).Assembly.GetManifestResourceStream("job.schema.json")
            ?? throw new InvalidOperationException("job.schema.json is not embedded.");
        Root = JsonDocument.Parse(stream).RootElement;
        Definitions = Root.GetProperty("$defs");
        KitFile = Definitions.GetProperty("Kit");
    }

    public static JobSchema Instance => Loaded.Value;

    /// <summary>The same for a file in SI, whose examples are told without inches and pounds.</summary>
    public static JobSchema ForSi => LoadedForSi.Value;

    public bool IsSi { get; }

    public JsonElement Root { get; }

    public JsonElement KitFile { get; }

    public JsonElement Definitions { get; }

    /// <summary>The schema that holds for a node of this shape: references followed, <c>if</c> decided by the shape.</summary>
    public JsonElement For(JsonElement schema, SourceNode node)
    {
        while (true)
        {
            if (schema.TryGetProperty("$ref", out var reference))
                schema = Follow(reference.GetString()!);
            else if (schema.TryGetProperty("if", out var condition))
                schema = schema.GetProperty(Holds(condition, node) ? "then" : "else");
            else
                return schema;
        }
    }

    /// <summary>The schema of a scalar under this field, whatever lists or mappings are allowed besides; null when none is.</summary>
    public JsonElement? ForScalar(JsonElement schema) => Ending(schema, "else") is { } end && !IsContainer(end) ? end : null;

    /// <summary>The schema of a mapping under this field; null when none is allowed.</summary>
    public JsonElement? ForMapping(JsonElement schema)
    {
        while (true)
        {
            if (schema.TryGetProperty("$ref", out var reference))
                schema = Follow(reference.GetString()!);
            else if (schema.TryGetProperty("if", out var condition))
                schema = schema.GetProperty(TypeOf(condition) == "object" ? "then" : "else");
            else if (schema.TryGetProperty("properties", out _))
                return schema;
            else
                return null;
        }
    }

    /// <summary>Whether a list is allowed under this field.</summary>
    public bool TakesList(JsonElement schema)
    {
        while (true)
        {
            if (schema.TryGetProperty("$ref", out var reference))
                schema = Follow(reference.GetString()!);
            else if (schema.TryGetProperty("if", out var condition) && TypeOf(condition) == "array")
                return true;
            else if (schema.TryGetProperty("if", out _))
                schema = schema.GetProperty("else");
            else
                return TypeOf(schema) == "array";
        }
    }

    public static bool TryProperty(JsonElement mapping, string key, out JsonElement property)
    {
        property = default;
        return mapping.TryGetProperty("properties", out var properties) && properties.TryGetProperty(key, out property);
    }

    public static string? Text(JsonElement schema, string keyword) =>
        schema.TryGetProperty(keyword, out var value) && value.ValueKind == JsonValueKind.String ? value.GetString() : null;

    private JsonElement? Ending(JsonElement schema, string branch)
    {
        while (true)
        {
            if (schema.TryGetProperty("$ref", out var reference))
                schema = Follow(reference.GetString()!);
            else if (schema.TryGetProperty("if", out _))
                schema = schema.GetProperty(branch);
            else
                return schema;
        }
    }

    private static bool IsContainer(JsonElement schema) => TypeOf(schema) is "object" or "array";

    private static string? TypeOf(JsonElement schema) => Text(schema, "type");

    private JsonElement Follow(string reference) => Definitions.GetProperty(reference["#/$defs/".Length..]);

    private static bool Holds(JsonElement condition, SourceNode node) => TypeOf(condition) switch
    {
        "array" => node is SourceSequence,
        "object" => node is SourceMapping,
        _ => false,
    };
}
