using System.Reflection;
using System.Text;
using System.Text.Json;
using Commission.Jobs.Binding;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Jobs.Schema;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Source;
using Commission.Source.Yaml;
using Json.Schema;
using Xunit;

namespace Commission.Jobs.Tests;

/// <summary>Model and binder are made from the schema, so they cannot differ from it. Here is what the schema itself must keep.</summary>
public sealed class SchemaTests
{
    private static readonly JobSchema Schema = JobSchema.Instance;

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
    public void Units_of_bare_numbers_and_the_ends_of_ranges_are_of_the_right_kind()
    {
        var faults = new List<string>();
        var count = 0;
        foreach (var (_, key, end, path) in Ends())
        {
            if (JobSchema.Text(end, "x-quantity") is not { } quantity || !end.TryGetProperty("x-default-unit", out var units))
                continue;
            count++;
            var dimension = Enum.Parse<Dimension>(quantity);
            foreach (var preset in new[] { "us", "si" })
            {
                if (UnitTable.Find(units.GetProperty(preset).GetString()!, dimension) is null)
                    faults.Add($"{path}: {preset} unit");
            }

            if (JobSchema.Text(units, "override") is { } group && !UnitSystem.Keys.Contains(group, StringComparer.Ordinal))
                faults.Add($"{path}: override {group}");
            faults.AddRange(RangeFaults(end.GetProperty("x-within"), dimension).Select(f => $"{path}: {key.Name}: {f}"));
        }

        foreach (var row in Schema.Root.GetProperty("x-ranges").EnumerateObject())
            faults.AddRange(row.Value.EnumerateObject().SelectMany(r => RangeFaults(r.Value, Enum.Parse<Dimension>(r.Name)).Select(f => $"x-ranges: {row.Name}: {f}")));
        Assert.Empty(faults);
        Assert.True(count > 250, $"{count} quantities");
    }

    [Fact]
    public void Bare_numbers_mean_what_the_record_prints()
    {
        var faults = new List<string>();
        foreach (var (_, key, end, path) in Ends())
        {
            if (!end.TryGetProperty("x-default-unit", out var units) || JobSchema.Text(units, "override") is not { } group)
                continue;
            var kind = Enum.GetValues<DisplayKind>().First(k => UnitSystem.KeyOf(k) == group);
            if (UnitSystem.Us[kind].Unit.Symbol != units.GetProperty("us").GetString() || UnitSystem.Si[kind].Unit.Symbol != units.GetProperty("si").GetString())
                faults.Add(path + ": " + key.Name);
        }

        Assert.Empty(faults);
    }

    [Fact]
    public void Another_name_of_a_key_takes_the_same_values()
    {
        var faults = new List<string>();
        foreach (var (part, key, path) in Keys())
        {
            if (JobSchema.Text(key.Value, "x-alias-of") is not { } canonical)
                continue;
            var meant = part.GetProperty("properties").GetProperty(canonical);
            string[] free = ["description", "examples", "x-alias-of", "x-shown"];
            if (!Keywords(key.Value).SequenceEqual(Keywords(meant), StringComparer.Ordinal))
                faults.Add(path);
            IEnumerable<string> Keywords(JsonElement field) =>
                field.EnumerateObject().Where(k => !free.Contains(k.Name)).Select(k => k.Name + k.Value.GetRawText()).Order(StringComparer.Ordinal);
        }

        Assert.Empty(faults);
    }

    [Fact]
    public void Everything_is_explained_and_every_value_has_an_example()
    {
        var faults = new List<string>();
        foreach (var (_, key, path) in Keys())
        {
            var field = key.Value;
            if (JobSchema.Text(field, "description") is not { Length: > 3 } description || !description.EndsWith('.'))
                faults.Add($"{path}: {key.Name} is not explained");
            var limit = path.Contains("LimitOf", StringComparison.Ordinal) || (JobSchema.Text(field, "$ref") is { } target && Schema.Definitions.GetProperty(target["#/$defs/".Length..]).TryGetProperty("enum", out _));
            if (Schema.ForScalar(field) is { } end && !limit && JobSchema.Text(end, "type") is null && !field.TryGetProperty("examples", out _) && !end.TryGetProperty("enum", out _))
                faults.Add($"{path}: {key.Name} has no example");
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
                    if (property.Name is "oneOf" or "anyOf" or "allOf" or "not")
                        faults.Add(path + "/" + property.Name);
                    if (property.Name is not ("examples" or "enum") && !property.Name.StartsWith("x-", StringComparison.Ordinal))
                        Look(property.Value, path + "/" + property.Name);
                }
            }
            else if (element.ValueKind == JsonValueKind.Array)
            {
                foreach (var item in element.EnumerateArray())
                    Look(item, path);
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
        foreach (var (_, key, path) in Keys())
        {
            if (!key.Value.TryGetProperty("examples", out var examples) || JobSchema.Text(key.Value, "x-kind") is "photo" or "kit")
                continue;
            var single = JsonSchema.Build(WithReferences(key.Value), registry);
            foreach (var example in examples.EnumerateArray())
            {
                count++;
                if (!single.Evaluate(example).IsValid)
                    faults.Add($"{path}: {example} does not fit");
                faults.AddRange(ReadExample(path.Split('/')[0], key.Name, example).Select(p => $"{path}: {example}: {p}"));
            }
        }

        Assert.Equal("", string.Join('\n', faults));
        Assert.True(count > 700, $"{count} examples");
    }

    private static IEnumerable<string> ReadExample(string part, string key, JsonElement example)
    {
        if (typeof(PartBinder).GetMethod("Bind" + part, BindingFlags.Instance | BindingFlags.NonPublic) is not { } bind)
            return part is "Kit" or "KitUse" ? [] : [$"nothing binds {part}"];
        var problems = new ProblemList();

        // What a chart's numbers are follows from its other keys.
        var beside = (part, key) switch
        {
            ("MakerChart", "values") => "\"for\": \"superheat\", ",
            ("ChartAxis", "at") => "\"reading\": \"outdoor dry bulb\", ",
            _ => "",
        };
        var text = SourceText.Decode("example", Encoding.UTF8.GetBytes($"{{{beside}\"{key}\": {example.GetRawText()}}}"), problems)!;
        var context = new BindingContext(problems, [], Reading.Refrigerants, _ => null);
        context.Units["example"] = UnitDefaults.Of(new UnitChoice { Preset = new Given<UnitPreset>(UnitPreset.Us, default, "us") });
        bind.Invoke(new PartBinder(context), [YamlReader.Read(text, problems)!]);
        return problems.Sorted().Select(p => p.Text(Language.English));
    }

    private static IEnumerable<string> RangeFaults(JsonElement within, Dimension dimension)
    {
        var (low, high) = (QuantityParser.Parse(within[0].GetString()!, dimension), QuantityParser.Parse(within[1].GetString()!, dimension));
        if (!low.Ok)
            yield return low.Fault.Text(Language.English);
        if (!high.Ok)
            yield return high.Fault.Text(Language.English);
        if (low.Ok && high.Ok && low.Value.Si >= high.Value.Si)
            yield return $"{within} is turned round";
    }

    // A field's schema refers to definitions of the whole: give it their address.
    private static JsonElement WithReferences(JsonElement field) =>
        JsonDocument.Parse("{\"$schema\":\"https://json-schema.org/draft/2020-12/schema\"," + field.GetRawText().TrimStart()[1..].Replace("\"#/$defs/", $"\"{JobSchema.Text(Schema.Root, "$id")}#/$defs/", StringComparison.Ordinal)).RootElement;

    private static IEnumerable<(JsonElement Part, JsonProperty Key, string Path)> Keys() =>
        Schema.Definitions.EnumerateObject().Select(d => (d.Name, d.Value)).Prepend(("Job", Schema.Root))
            .Where(p => p.Item2.TryGetProperty("properties", out _))
            .SelectMany(p => p.Item2.GetProperty("properties").EnumerateObject().Select(k => (p.Item2, k, $"{p.Item1}/{k.Name}")));

    private static IEnumerable<(JsonElement Part, JsonProperty Key, JsonElement End, string Path)> Ends() =>
        from k in Keys()
        let end = Schema.ForScalar(k.Key.Value)
        where end is not null
        select (k.Part, k.Key, end.Value, k.Path);
}
