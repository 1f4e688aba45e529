using System.Collections;
using System.Collections.Immutable;
using System.Reflection;
using System.Text.Json.Nodes;
using Commission.Records.Findings;
using Commission.Records.Json;
using Commission.Records.Series;
using Commission.Records.Tests.Samples;
using Xunit;

namespace Commission.Records.Tests;

/// <summary>Lists of a record: what was put in is there and in the file; what was not is an empty list, never none.</summary>
public sealed class ListsTests
{
    private static readonly Type[] Holders =
    [
        .. typeof(CommissioningRecord).Assembly.GetTypes().Where(t => t.IsPublic && t.IsClass && Lists(t).Length > 0).OrderBy(t => t.Name, StringComparer.Ordinal),
    ];

    [Fact]
    public void The_records_with_lists_are_these() =>
        Assert.Equal(
            [
                nameof(Certificate), nameof(CommissioningRecord), nameof(Diagnosis), nameof(FigureCurve), nameof(FigureData), nameof(Finding), nameof(FindingMessages),
                nameof(HeaderGroup), nameof(InputNode), nameof(InstrumentRow), nameof(JobHeader), nameof(MissingPart), nameof(RecordTable),
            ],
            Holders.Select(t => t.Name));

    [Fact]
    public void A_list_that_was_not_given_is_empty() => Assert.All(Holders, type =>
    {
        var made = type.GetConstructors().Single(c => c.GetParameters() is not [var only] || only.ParameterType != type);
        var instance = made.Invoke([.. made.GetParameters().Select(p => p.ParameterType.IsValueType ? Activator.CreateInstance(p.ParameterType) : null)]);
        Assert.All(Lists(type), list => Assert.Empty((IEnumerable)list.GetValue(instance)!));
    });

    // The sample fills each of them somewhere; what a record's list holds is what the file holds, item by item.
    [Fact]
    public void A_list_reaches_the_file_with_every_item()
    {
        var filled = new HashSet<string>(StringComparer.Ordinal);
        Compare(SampleRecord.Full, JsonNode.Parse(RecordJson.Write(SampleRecord.Full))!, filled);
        Assert.Equal(
            Holders.Where(t => t != typeof(FindingMessages)).SelectMany(t => Lists(t).Where(InFile).Select(l => $"{t.Name}.{l.Name}")).Order(StringComparer.Ordinal),
            filled.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_list_that_no_file_carries_is_kept_all_the_same()
    {
        var use = new ReadingUse("vapor line", "31 °F", SampleRecord.At(97), null);
        Assert.Equal([use], (SampleRecord.Full.Findings[0] with { Impeached = [use] }).Impeached);
    }

    private static void Compare(object record, JsonNode json, HashSet<string> filled)
    {
        foreach (var list in Lists(record.GetType()).Where(InFile))
        {
            var items = ((IEnumerable)list.GetValue(record)!).Cast<object?>().ToList();
            var written = json[char.ToLowerInvariant(list.Name[0]) + list.Name[1..]]!.AsArray();
            Assert.Equal(items.Count, written.Count);
            if (items.Count > 0)
                filled.Add($"{record.GetType().Name}.{list.Name}");
            foreach (var (item, node) in items.Zip(written))
            {
                if (item is not null && Array.IndexOf(Holders, item.GetType()) >= 0)
                    Compare(item, node!, filled);
            }
        }

        if (record is CommissioningRecord { Header: { } header, Certificate: { } certificate, Diagnosis: { } diagnosis })
        {
            Compare(certificate, json["certificate"]!, filled);
            Compare(header, json["header"]!, filled);
            Compare(diagnosis, json["diagnosis"]!, filled);
        }
    }

    private static PropertyInfo[] Lists(Type type) =>
        [.. type.GetProperties().Where(p => p.PropertyType.IsGenericType && p.PropertyType.GetGenericTypeDefinition() == typeof(ImmutableArray<>))];

    private static bool InFile(PropertyInfo list) => list.GetCustomAttribute<System.Text.Json.Serialization.JsonIgnoreAttribute>() is not { Condition: System.Text.Json.Serialization.JsonIgnoreCondition.Always };
}
