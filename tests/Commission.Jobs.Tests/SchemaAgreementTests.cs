using System.Collections.Immutable;
using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text;
using System.Text.Json;
using Commission.Jobs.Binding;
using Commission.Jobs.Model;
using Commission.Jobs.Schema;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Source;
using Commission.Source.Problems;
using Commission.Source.Yaml;
using Json.Schema;
using Xunit;

namespace Commission.Jobs.Tests;

/// <summary>The schema, the model and the binder name the same things. To add a key: the schema and the model.</summary>
public sealed class SchemaAgreementTests
{
    private static readonly JobSchema Schema = JobSchema.Instance;

    // Properties of the model that are not keys.
    private static readonly string[] NotKeys = [nameof(JobPart.Origin), nameof(LogFile.Data), "EqualityContract"];

    [Fact]
    public void Every_key_has_a_property_and_every_property_a_key()
    {
        var faults = new List<string>();
        foreach (var (type, schema, path) in Walk())
        {
            var keys = Keys(schema).Where(k => !k.Value.TryGetProperty("x-alias-of", out _)).ToDictionary(k => Member(k), k => k.Name, StringComparer.Ordinal);
            var members = type.GetProperties().Select(p => p.Name).Except(NotKeys, StringComparer.Ordinal).ToArray();
            faults.AddRange(keys.Keys.Except(members, StringComparer.Ordinal).Select(k => $"{path}: \"{keys[k]}\" has no property in {type.Name}"));
            faults.AddRange(members.Except(keys.Keys, StringComparer.Ordinal).Select(m => $"{path}: {type.Name}.{m} has no key"));
        }

        Assert.Empty(faults);
    }

    [Fact]
    public void The_whole_model_was_walked() =>
        Assert.Empty(typeof(JobPart).Assembly.GetTypes()
            .Where(t => typeof(JobPart).IsAssignableFrom(t) && !t.IsAbstract && !t.IsGenericTypeDefinition)
            .Except(Walk().Select(p => p.Type)));

    [Fact]
    public void Every_definition_of_the_schema_is_used()
    {
        var text = Schema.Root.GetRawText();
        string[] entries = ["Kit"];
        string[] unused = [.. Schema.Definitions.EnumerateObject().Select(d => d.Name).Except(entries, StringComparer.Ordinal)
            .Where(name => !text.Contains($"\"#/$defs/{name}\"", StringComparison.Ordinal))];
        Assert.Empty(unused);
    }

    [Fact]
    public void Required_keys_are_required_properties()
    {
        var faults = new List<string>();
        foreach (var (type, schema, path) in Walk())
        {
            var required = schema.TryGetProperty("required", out var list) ? list.EnumerateArray().Select(r => r.GetString()!).ToArray() : [];
            foreach (var key in Keys(schema).Where(k => !k.Value.TryGetProperty("x-alias-of", out _)))
            {
                var property = type.GetProperty(Member(key))!;

                // A list that must be written is still never null.
                if (IsList(property.PropertyType)) continue;
                if (required.Contains(key.Name) != (property.GetCustomAttribute<RequiredMemberAttribute>() is not null)) faults.Add($"{path}: {key.Name}");
            }
        }

        Assert.Empty(faults);
    }

    [Fact]
    public void Single_values_can_be_read_and_quantities_are_of_the_right_kind()
    {
        var faults = new List<string>();
        foreach (var (type, key, field, path) in Fields())
        {
            if (JobSchema.Text(field, "x-kind") is "chart") continue;
            var value = Element(type.GetProperty(Member(key))!.PropertyType);
            if (typeof(JobPart).IsAssignableFrom(value)) continue;
            var end = Schema.ForScalar(field) ?? field;
            if (!ScalarBinder.Knows(value)) faults.Add($"{path}: nothing reads {value}");
            var inner = value.GetGenericArguments()[0];
            if (JobSchema.Text(end, "x-quantity") is not { } quantity)
            {
                if (DimensionOf(inner) is not null) faults.Add($"{path}: {inner.Name} without x-quantity");
                continue;
            }

            var dimension = Enum.Parse<Dimension>(quantity);
            var expected = dimension is Dimension.VacuumLevel or Dimension.AtmosphericPressure ? nameof(Pressure) : dimension.ToString();
            if (DimensionOf(inner) != expected) faults.Add($"{path}: {quantity} is bound to {inner}");
            if (end.TryGetProperty("x-range", out _) != (inner.Name.StartsWith("QuantityRange", StringComparison.Ordinal))) faults.Add($"{path}: range");
            var units = end.GetProperty("x-default-unit");
            foreach (var preset in new[] { "us", "si" })
            {
                if (UnitTable.Find(units.GetProperty(preset).GetString()!, dimension) is null) faults.Add($"{path}: {preset} unit");
            }

            if (JobSchema.Text(units, "override") is { } group && !UnitSystem.Keys.Contains(group, StringComparer.Ordinal)) faults.Add($"{path}: override {group}");
        }

        Assert.Empty(faults);
    }

    [Fact]
    public void Bare_numbers_mean_what_the_record_prints()
    {
        var faults = new List<string>();
        foreach (var (_, key, field, path) in Fields())
        {
            if (Schema.ForScalar(field) is not { } end || !end.TryGetProperty("x-default-unit", out var units) || JobSchema.Text(units, "override") is not { } group) continue;
            var kind = Enum.GetValues<DisplayKind>().First(k => UnitSystem.KeyOf(k) == group);
            if (UnitSystem.Us[kind].Unit.Symbol != units.GetProperty("us").GetString() || UnitSystem.Si[kind].Unit.Symbol != units.GetProperty("si").GetString()) faults.Add(path + ": " + key.Name);
        }

        Assert.Empty(faults);
    }

    [Fact]
    public void Words_and_enumerations_agree()
    {
        var faults = new List<string>();
        var seen = new HashSet<Type>();
        foreach (var (type, key, field, path) in Fields())
        {
            var value = Element(type.GetProperty(Member(key))!.PropertyType);
            if (!value.IsGenericType || value.GetGenericTypeDefinition() != typeof(Given<>) || value.GetGenericArguments()[0] is not { IsEnum: true } words || !seen.Add(words)) continue;
            var end = Schema.ForScalar(field)!.Value;
            var names = end.GetProperty("x-words").EnumerateObject().Select(w => KeyName.Of(w.Name)).ToArray();
            if (!names.SequenceEqual(Enum.GetNames(words), StringComparer.Ordinal)) faults.Add($"{path}: {words.Name}");
            var allowed = end.GetProperty("enum").EnumerateArray().Select(w => w.GetString()!).ToArray();
            faults.AddRange(allowed.Where(w => !Enum.TryParse(words, WordBinder.Word(end, w).Member, out _)).Select(w => $"{path}: {w}"));
        }

        Assert.Empty(faults);
        Assert.Equal(typeof(Model.Words.WorkKind).Assembly.GetTypes().Where(t => t.IsEnum && t.Namespace == typeof(Model.Words.WorkKind).Namespace).OrderBy(t => t.Name, StringComparer.Ordinal),
            seen.OrderBy(t => t.Name, StringComparer.Ordinal));
    }

    [Fact]
    public void Everything_is_explained_and_every_value_has_an_example()
    {
        var faults = new List<string>();
        foreach (var (_, key, field, path) in Fields())
        {
            if (JobSchema.Text(field, "description") is not { Length: > 3 } description || !description.EndsWith('.')) faults.Add($"{path}: {key.Name} is not explained");
            var limit = path.Contains("LimitOf", StringComparison.Ordinal) || JobSchema.Text(field, "$ref") is { } target && Schema.Definitions.GetProperty(target["#/$defs/".Length..]).TryGetProperty("enum", out _);
            if (Schema.ForScalar(field) is { } end && !limit && JobSchema.Text(end, "type") is null && !field.TryGetProperty("examples", out _) && !end.TryGetProperty("enum", out _)) faults.Add($"{path}: {key.Name} has no example");
        }

        Assert.Empty(faults);
    }

    [Fact]
    public void Nothing_unknown_is_allowed_and_no_alternative_hides_its_reason()
    {
        var faults = new List<string>();
        void Look(JsonElement element, string path)
        {
            if (element.ValueKind == JsonValueKind.Object)
            {
                if (element.TryGetProperty("properties", out var properties) && properties.ValueKind == JsonValueKind.Object && element.TryGetProperty("type", out _)
                    && !(element.TryGetProperty("additionalProperties", out var more) && more.ValueKind == JsonValueKind.False))
                {
                    faults.Add(path);
                }

                foreach (var property in element.EnumerateObject())
                {
                    if (property.Name is "oneOf" or "anyOf" or "allOf" or "not") faults.Add(path + "/" + property.Name);
                    if (property.Name is not ("examples" or "x-words" or "x-aliases" or "enum")) Look(property.Value, path + "/" + property.Name);
                }
            }
            else if (element.ValueKind == JsonValueKind.Array)
            {
                foreach (var item in element.EnumerateArray()) Look(item, path);
            }
        }

        Look(Schema.Root, "#");
        Assert.Empty(faults);
    }

    [Fact]
    public void The_schema_is_a_schema() => Assert.True(MetaSchemas.Draft202012.Evaluate(Schema.Root).IsValid);

    [Fact]
    public void Every_example_fits_its_own_schema_and_is_read_without_a_problem()
    {
        var registry = new BuildOptions { SchemaRegistry = new SchemaRegistry() };
        JsonSchema.Build(Schema.Root, registry);
        var faults = new List<string>();
        var count = 0;
        foreach (var (type, key, field, path) in Fields())
        {
            if (!field.TryGetProperty("examples", out var examples) || JobSchema.Text(field, "x-kind") is "photo" or "kit") continue;
            var single = JsonSchema.Build(WithReferences(field), registry);
            foreach (var example in examples.EnumerateArray())
            {
                count++;
                if (!single.Evaluate(example).IsValid) faults.Add($"{path}: {example} does not fit");
                faults.AddRange(ReadExample(type, key, example).Select(p => $"{path}: {example}: {p}"));
            }
        }

        Assert.Equal("", string.Join('\n', faults));
        Assert.True(count > 700, $"{count} examples");
    }

    private static IEnumerable<string> ReadExample(Type type, JsonProperty key, JsonElement example)
    {
        var problems = new ProblemList();
        var text = SourceText.Decode("example", Encoding.UTF8.GetBytes("{\"" + key.Name + "\": " + example.GetRawText() + "}"), problems)!;
        var mapping = (SourceMapping)YamlReader.Read(text, problems)!;
        var context = new BindingContext(problems, [], Reading.Refrigerants);
        context.Units["example"] = UnitDefaults.Of(new UnitChoice { Preset = new Given<Model.Words.UnitPreset>(Model.Words.UnitPreset.Us, default, "us") });

        // What a chart's numbers are follows from its other keys.
        if (JobSchema.Text(key.Value, "x-kind") == "chart") context.Enter(AnyDimensions.ForChart("superheat"));
        if (JobSchema.Text(key.Value, "x-kind") == "chart-axis") context.Enter(AnyDimensions.ForChart("outdoor dry bulb"));
        new PartBinder(context).BindKey(type, key.Name, key.Value, mapping.Entries[0].Value);
        return problems.Sorted().Select(p => p.Message);
    }

    // A field's schema refers to definitions of the whole: give it their address.
    private static JsonElement WithReferences(JsonElement field) =>
        JsonDocument.Parse("{\"$schema\":\"https://json-schema.org/draft/2020-12/schema\"," + field.GetRawText().TrimStart()[1..].Replace("\"#/$defs/", $"\"{JobSchema.Text(Schema.Root, "$id")}#/$defs/", StringComparison.Ordinal)).RootElement;

    private static IEnumerable<(Type Type, JsonProperty Key, JsonElement Field, string Path)> Fields() =>
        Walk().SelectMany(p => Keys(p.Schema).Select(k => (p.Type, k, k.Value, $"{p.Path}/{k.Name}")));

    private static JsonElement.ObjectEnumerator Keys(JsonElement schema) => schema.GetProperty("properties").EnumerateObject();

    private static string Member(JsonProperty key) => JobSchema.Text(key.Value, "x-member") ?? KeyName.Of(JobSchema.Text(key.Value, "x-alias-of") ?? key.Name);

    private static List<(Type Type, JsonElement Schema, string Path)> Walk()
    {
        var found = new List<(Type, JsonElement, string)>();
        var seen = new HashSet<Type>();
        void Visit(Type type, JsonElement field, string path)
        {
            if (Schema.ForMapping(field) is not { } schema || !seen.Add(type)) return;
            found.Add((type, schema, path));
            foreach (var key in Keys(schema))
            {
                if (type.GetProperty(Member(key)) is not { } property) continue;
                var inner = Element(property.PropertyType);
                if (typeof(JobPart).IsAssignableFrom(inner)) Visit(inner, ItemsOf(key.Value), JobSchema.Text(key.Value, "$ref") ?? path + "/" + key.Name);
            }
        }

        Visit(typeof(Job), Schema.Root, "#");
        return found;
    }

    // The schema of the items where a list of mappings is allowed.
    private static JsonElement ItemsOf(JsonElement field)
    {
        if (field.TryGetProperty("items", out var items)) return items;
        if (!field.TryGetProperty("if", out var condition)) return field;
        return JobSchema.Text(condition, "type") == "array" ? field.GetProperty("else") : JobSchema.Text(field.GetProperty("else"), "type") == "array" ? ItemsOf(field.GetProperty("else")) : field;
    }

    private static bool IsList(Type type) => type.IsGenericType && type.GetGenericTypeDefinition() == typeof(ImmutableArray<>);

    private static Type Element(Type type) => IsList(type) ? type.GetGenericArguments()[0] : type;

    private static string? DimensionOf(Type type)
    {
        if (type == typeof(StatedPressure)) return nameof(Dimension.Pressure);
        if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(Model.QuantityRange<>)) return DimensionOf(type.GetGenericArguments()[0]);
        return type.GetInterfaces().Any(i => i.IsGenericType && i.GetGenericTypeDefinition() == typeof(IQuantity<>)) ? type.Name : null;
    }
}
