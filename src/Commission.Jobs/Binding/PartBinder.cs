using System.Collections.Immutable;
using System.Reflection;
using System.Text.Json;
using Commission.Jobs.Model;
using Commission.Jobs.Problems;
using Commission.Jobs.Schema;
using Commission.Source.Yaml;

namespace Commission.Jobs.Binding;

/// <summary>
/// Fills the parts of the model from the source tree. Keys and properties have the same names, so there is no table to keep:
/// a test holds the model against the schema.
/// </summary>
internal sealed class PartBinder(BindingContext context)
{
    private static readonly PropertyInfo Origin = typeof(JobPart).GetProperty(nameof(JobPart.Origin))!;
    private static readonly MethodInfo ListMaker = typeof(PartBinder).GetMethod(nameof(MakeList), BindingFlags.NonPublic | BindingFlags.Static)!;

    /// <summary>A part from a mapping, or from the one value that stands for it; null when the schema has refused the node.</summary>
    public JobPart? Bind(Type type, SourceNode node, JsonElement field)
    {
        if (context.Rejected.Contains(node)) return null;
        var part = (JobPart)Activator.CreateInstance(type)!;
        Origin.SetValue(part, node.Location);
        if (node is SourceScalar scalar)
        {
            if (context.Schema.ForMapping(field) is not { } whole || JobSchema.Text(whole, "x-short") is not { } shortKey) return null;
            SetProperty(part, type, shortKey, whole.GetProperty("properties").GetProperty(shortKey), scalar);
            return part;
        }

        if (node is not SourceMapping mapping || context.Schema.ForMapping(field) is not { } schema) return null;
        if (EnterAny(type, mapping) is not { } any)
        {
            BindEntries(part, type, mapping, schema);
            return part;
        }

        context.Enter(any);
        BindEntries(part, type, mapping, schema);
        context.Leave();
        return part;
    }

    /// <summary>Reads the value of one key of a part, as it stands alone.</summary>
    public void BindKey(Type type, string key, JsonElement field, SourceNode node)
    {
        var part = (JobPart)Activator.CreateInstance(type)!;
        SetProperty(part, type, JobSchema.Text(field, "x-alias-of") ?? key, field, node);
    }

    private static AnyDimensions? EnterAny(Type type, SourceMapping mapping)
    {
        string? Word(string key) => (mapping.Find(key)?.Value as SourceScalar)?.Text;

        if (type == typeof(Instrument)) return AnyDimensions.ForInstrument(Word("kind"));
        if (type == typeof(SafetyDevice)) return AnyDimensions.ForSafetyDevice(Word("kind"));
        if (type == typeof(MakerChart)) return AnyDimensions.ForChart(Word("for"));
        if (type == typeof(ChartAxis)) return AnyDimensions.ForChart(Word("reading"));
        return null;
    }

    private void BindEntries(JobPart part, Type type, SourceMapping mapping, JsonElement schema)
    {
        Dictionary<string, SourceScalar>? seen = null;
        foreach (var entry in mapping.Entries)
        {
            if (!JobSchema.TryProperty(schema, entry.Key.Text, out var property)) continue;
            var key = JobSchema.Text(property, "x-alias-of") ?? entry.Key.Text;
            seen ??= new Dictionary<string, SourceScalar>(StringComparer.Ordinal);
            if (!seen.TryAdd(key, entry.Key))
            {
                context.Problems.Add(KeyText.TwoNames(entry.Key, seen[key].Text, seen[key].Location.Line));
                continue;
            }

            if (!context.Rejected.Contains(entry.Value)) SetProperty(part, type, key, property, entry.Value);
        }
    }

    private void SetProperty(JobPart part, Type type, string key, JsonElement field, SourceNode node)
    {
        var property = type.GetProperty(JobSchema.Text(field, "x-member") ?? KeyName.Of(key))
            ?? throw new InvalidOperationException($"{type.Name} has no property for \"{key}\".");
        if (Value(property.PropertyType, node, field, key, type) is { } value) property.SetValue(part, value);
    }

    private object? Value(Type type, SourceNode node, JsonElement field, string key, Type owner)
    {
        if (JobSchema.Text(field, "x-kind") == "chart") return ChartBinder.Rows(context, node);
        if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(ImmutableArray<>)) return List(type, node, field, key, owner);
        if (typeof(JobPart).IsAssignableFrom(type)) return Bind(type, node, field);
        return node is SourceScalar scalar && context.Schema.ForScalar(field) is { } end ? ScalarBinder.Bind(context, type, scalar, end, key, owner) : null;
    }

    private object? List(Type type, SourceNode node, JsonElement field, string key, Type owner)
    {
        var element = type.GetGenericArguments()[0];
        var values = new List<object>();
        if (JobSchema.Text(field, "x-kind") == "chart-axis")
        {
            values.AddRange(ChartBinder.Axis(context, node));
        }
        else if (node is SourceSequence sequence)
        {
            var items = context.Schema.For(field, node).GetProperty("items");
            foreach (var item in sequence.Items)
            {
                if (!context.Rejected.Contains(item) && Value(element, item, items, key, owner) is { } value) values.Add(value);
            }
        }
        else if (Value(element, node, field, key, owner) is { } value)
        {
            values.Add(value);
        }

        return ListMaker.MakeGenericMethod(element).Invoke(null, [values]);
    }

    private static ImmutableArray<T> MakeList<T>(List<object> values) => [.. values.Cast<T>()];
}
