using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Commission.Jobs.Schema;
using Xunit;

namespace Commission.Jobs.Tests;

/// <summary>Slips of the pen in every key of the schema, each in the smallest job that may hold it: a job or a problem at its line, nothing thrown.</summary>
public sealed partial class SlipTests
{
    private static readonly JobSchema Schema = JobSchema.Instance;

    // What no key of a number takes, however generous its range.
    private static readonly string[] NeverRead = ["1e300", "1e-300", "-1e30", "440e300", "٤٤٠", "４４０", "12345678901234567890123456"];

    private static readonly string[] AnyValue = ["-1", "0", "1e12", "1e-12", "yes", "3 kg", "3 °C", "0 min", "9999-12-31 23:59", "0001-01-01 00:00", "9999999999 min", "1e300 min", "٠٩:٢٥", "2026-06-18", "9999-12-31", "0001-01-01", "100 %", "a"];

    [Fact]
    public void No_slip_in_any_key_throws_and_what_cannot_be_is_refused_at_its_line()
    {
        var faults = new List<string>();
        var count = 0;
        foreach (var (path, end, make) in Fields())
        {
            var quantity = end.TryGetProperty("x-default-unit", out var units);
            var number = quantity || JobSchema.Text(end, "type") is "number" or "integer";
            var unit = quantity ? " " + units.GetProperty("si").GetString() : "";
            foreach (var slip in NeverRead.Select(n => n + unit).Concat(AnyValue))
            {
                count++;
                var text = make(number && !quantity && !slip.Any(c => c > '\u00FF') && double.TryParse(slip, System.Globalization.CultureInfo.InvariantCulture, out _)
                    ? JsonNode.Parse(slip)!
                    : JsonValue.Create(slip)!);
                var (reading, problems) = Reading.Of(Encoding.UTF8.GetBytes(text), Reading.TarnLaneFolder());
                var told = string.Join('\n', problems);
                if (reading.Job is null != problems.Length > 0)
                    faults.Add($"{path}: {slip}: neither job nor problems");
                if (Unreadable().IsMatch(told.Replace(slip, "", StringComparison.Ordinal)))
                    faults.Add($"{path}: {slip}: {told}");

                // The slip stands alone on the second line.
                if (number && Array.Exists(NeverRead, n => slip.StartsWith(n, StringComparison.Ordinal)) && !Array.Exists(problems, p => p.StartsWith("job.yaml:2:", StringComparison.Ordinal)))
                    faults.Add($"{path}: {slip}: not refused at its line: {told}");
            }
        }

        Assert.Equal("", string.Join('\n', faults.Take(20)));
        Assert.True(count > 10_000, $"{count} slips");
    }

    // Hand-picked ends of the schema's ranges, at the end and just beyond it.
    [Theory]
    [InlineData("evacuation: {started: \"09:00\", hoses: [{length: 0.02 m, bore: 3 mm}]}", true)]
    [InlineData("evacuation: {started: \"09:00\", hoses: [{length: 0.0199 m, bore: 3 mm}]}", false)]
    [InlineData("evacuation: {started: \"09:00\", hoses: [{length: -6 ft, bore: 3 mm}]}", false)]
    [InlineData("evacuation: {started: \"09:00\", hoses: [{length: 1 m, bore: 0 in}]}", false)]
    [InlineData("pressure test: {gas: dry nitrogen, joints: [{place: valves, result: none, count: 0}]}", true)]
    [InlineData("pressure test: {gas: dry nitrogen, joints: [{place: valves, result: none, count: -1}]}", false)]
    [InlineData("charging: {left in hoses: 0 g}", true)]
    [InlineData("charging: {left in hoses: 20.1 kg}", false)]
    [InlineData("safety: {room: {area: 0.1 m2}}", true)]
    [InlineData("safety: {room: {area: 0 m2}}", false)]
    [InlineData("electrical: {line to line: -230 V}", false)]
    [InlineData("instruments: [{id: g, kind: pressure gauge, resolution: -0.1 psi}]", false)]
    [InlineData("instruments: [{id: g, kind: pressure gauge, full scale: 0 psig}]", false)]
    [InlineData("instruments: [{id: g, kind: pressure gauge, checks: {zero: 0.0 psig}}]", true)]
    [InlineData("instruments: [{id: g, kind: pressure gauge, accuracy: 0 psi}]", false)]
    [InlineData("instruments: [{id: g, kind: pressure gauge, accuracy: 0 % of reading}]", false)]
    [InlineData("instruments: [{id: g, kind: pressure gauge, accuracy: 0.5 psi (k=1e-9)}]", false)]
    [InlineData("charging: {readings: [{at: \"11:00\", vapor pressure: 118 psig ± 0 psi}]}", false)]
    [InlineData("cylinders: [{id: C1, refrigerant: R-410A, water capacity: 0.05 L}]", true)]
    [InlineData("cylinders: [{id: C1, refrigerant: R-410A, water capacity: 0.049 L}]", false)]
    [InlineData("cylinders: [{id: C1, refrigerant: R-410A, water capacity: 2000 L}]", true)]
    [InlineData("cylinders: [{id: C1, refrigerant: R-410A, water capacity: 2001 kg}]", false)]
    [InlineData("charging: {readings: [{at: \"11:00\", reversing valve: {suction in: -60 °C, suction out: 100 °C}}]}", true)]
    [InlineData("charging: {readings: [{at: \"11:00\", reversing valve: {suction in: 61 °C, suction out: 100 °C}}]}", false)]
    [InlineData("charging: {readings: [{at: \"11:00\", reversing valve: {suction in: 20 °C, suction out: 101 °C}}]}", false)]
    [InlineData("charging: {readings: [{at: \"11:00\", frost: everywhere}]}", false)]
    [InlineData("equipment: {system: split, refrigerant: R-410A, nameplate: {safety class: A2}}", true)]
    [InlineData("equipment: {system: split, refrigerant: R-410A, nameplate: {safety class: A4}}", false)]
    [InlineData("equipment: {system: split, refrigerant: R-410A, nameplate: {refrigerant: water}}", false)]
    public void Ranges_hold_at_their_ends(string part, bool taken)
    {
        var equipment = part.StartsWith("equipment", StringComparison.Ordinal) ? "" : "equipment: {system: split, refrigerant: R-410A}\n";
        var (_, problems) = Reading.Of($"commission: 1\njob: {{id: T, work: opened circuit, date: 2026-06-18, site: {{elevation: 100 m}}}}\n{equipment}{part}\n");
        Assert.Equal(taken, problems.Length == 0);
    }

    [Fact]
    public void A_refusal_names_key_value_range_and_what_to_do()
    {
        var (_, problems) = Reading.Of("commission: 1\njob: {id: T, work: opened circuit, date: 2026-06-18, site: {elevation: 100 m}}\nequipment: {system: split, refrigerant: R-410A}\nsafety: {room: {area: 12 m2, ceiling height: -2.6 m}}\n");
        Assert.Equal(["job.yaml:4:46: \"ceiling height\" cannot be −2.6 m. It lies between 0.5 m and 200 m. Check the number and the unit."], problems);
    }

    /// <summary>Every scalar key of the schema, with what makes the smallest job that holds it, the key's value alone on the second line.</summary>
    private static IEnumerable<(string Path, JsonElement End, Func<JsonNode, string> Make)> Fields()
    {
        foreach (var (part, path) in Parts())
        {
            foreach (var key in part.GetProperty("properties").EnumerateObject())
            {
                if (Schema.ForScalar(key.Value) is not { } end || JobSchema.Text(end, "$ref") is not null)
                    continue;
                yield return (string.Join(": ", path.Select(p => p.Key).Append(key.Name)), end, value =>
                {
                    const string Mark = "@@@";
                    var job = Job(path, key.Name, JsonValue.Create(Mark)!).ToJsonString();
                    return job.Replace($"\"{Mark}\"", "\n" + value.ToJsonString() + "\n", StringComparison.Ordinal);
                }
                );
            }
        }
    }

    private static List<(JsonElement Part, (string Key, bool IsList, JsonElement Part)[] Path)> Parts()
    {
        var found = new List<(JsonElement, (string, bool, JsonElement)[])>();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var open = new Queue<(JsonElement Part, (string, bool, JsonElement)[] Path)>([(Schema.Root, [])]);
        while (open.TryDequeue(out var now))
        {
            found.Add(now);
            foreach (var key in now.Part.GetProperty("properties").EnumerateObject())
            {
                var field = key.Value;
                if (field.TryGetProperty("if", out var condition) && JobSchema.Text(condition, "type") == "array")
                    field = field.GetProperty("else");
                else if (key.Name == "instruments")
                    field = field.TryGetProperty("else", out var list) ? list : field;
                var isList = field.TryGetProperty("items", out var items);
                if (isList)
                    field = items;
                if (Schema.ForMapping(field) is { } part && part.TryGetProperty("properties", out _) && seen.Add(part.GetRawText()))
                    open.Enqueue((part, [.. now.Path, (key.Name, isList, part)]));
            }
        }

        return found;
    }

    private static JsonObject Job((string Key, bool IsList, JsonElement Part)[] path, string key, JsonNode value)
    {
        var job = (JsonObject)JsonNode.Parse("""
            {"commission": 1, "job": {"id": "T", "work": "opened circuit", "date": "2026-06-18", "site": {"elevation": "100 m"}}, "equipment": {"system": "split", "refrigerant": "R-410A"}}
            """)!;
        var at = job;
        foreach (var step in path)
        {
            if (at[step.Key] is JsonObject there)
            {
                at = there;
                continue;
            }

            var made = Least(step.Part);
            at[step.Key] = step.IsList ? new JsonArray(made) : made;
            at = made;
        }

        at[key] = value;
        return job;
    }

    // The keys that a part must have, as their examples write them.
    private static JsonObject Least(JsonElement part)
    {
        var made = new JsonObject();
        foreach (var key in part.TryGetProperty("required", out var required) ? required.EnumerateArray().Select(r => r.GetString()!) : [])
        {
            var field = part.GetProperty("properties").GetProperty(key);
            made[key] = field.TryGetProperty("examples", out var examples) ? JsonNode.Parse(examples[0].GetRawText())
                : field.TryGetProperty("items", out var items) && Schema.ForMapping(items) is { } item ? new JsonArray(Least(item))
                : Least(Schema.ForMapping(field)!.Value);
        }

        return made;
    }

    [GeneratedRegex("Infinity|NaN|∞|[0-9]{25}", RegexOptions.None, 10_000)]
    private static partial Regex Unreadable();
}
