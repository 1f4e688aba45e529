using System.Globalization;
using System.Text;
using System.Text.Json;
using Commission.Jobs.Model;
using Commission.Jobs.Schema;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Xunit;

namespace Commission.Jobs.Tests;

/// <summary>What nobody writes into a job file is not asked for.</summary>
public sealed class FileTests
{
    private const double Psi = 6894.757293168361;

    private const string Head = "commission: 1\njob: {id: T, work: opened circuit, date: 2026-06-18, site: {elevation: 100 m}}\n";

    private const string Equipment = "equipment: {system: split, refrigerant: R-410A}\n";

    // Directive 2014/68/EU article 2 point 7: "pressure" is pressure relative to the atmosphere, that is gauge pressure.
    [Theory]
    [InlineData("28 bar", "28 bar(g)", 28e5)]
    [InlineData("2.8 MPa", "2.8 MPa(g)", 2.8e6)]
    [InlineData("2800 kPa", "2800 kPag", 2.8e6)]
    [InlineData("450 psi", "450 psig", 450 * Psi)]
    [InlineData("28 ± 0.5 bar", "28 ± 0.5 bar(g)", 28e5)]
    [InlineData("28 bar(g)", "28 bar(g)", 28e5)]
    public void A_nameplate_pressure_is_gauge(string written, string canonical, double pascals)
    {
        var job = Job($"equipment: {{system: split, refrigerant: R-410A, nameplate: {{PS: {{low: {written}, high: {written}}}}}}}\npressure test: {{gas: dry nitrogen, weakest part: {{what: coil, rated: {written}}}}}\n");
        var plate = job.Equipment.Nameplate!.DesignPressure!;
        foreach (var pressure in new[] { plate.Low!, plate.High!, job.PressureTest!.WeakestPart!.Rated })
            Assert.Equal((canonical, PressureReference.Gauge, Math.Round(pascals, 3)), (pressure.Text, pressure.Value.Reference, Math.Round(pressure.Value.Pascals, 3)));
    }

    [Fact]
    public void A_nameplate_that_says_absolute_is_believed() =>
        Assert.Equal(PressureReference.Absolute, Job("equipment: {system: split, refrigerant: R-410A, nameplate: {PS: {high: 29 bar(a)}}}\n").Equipment.Nameplate!.DesignPressure!.High!.Value.Reference);

    [Fact]
    public void A_reading_still_says_what_it_counts_from()
    {
        Assert.Equal(["job.yaml:4:53: \"28 bar\" does not say gauge or absolute. Write 28 bar(g) (what a service gauge shows) or bar(a)."], Problems(Equipment + "charging: {readings: [{at: \"11:00\", vapor pressure: 28 bar}]}\n"));
    }

    // Every key of the schema with what it does not take: nothing that a file in SI is told speaks of inch and pound.
    [Fact]
    public void A_file_in_SI_is_told_of_no_unit_of_inch_and_pound()
    {
        var customary = UnitTable.All.Where(u => u.IsCustomary).Select(u => u.Symbol).Distinct().ToArray();
        string[] slips = ["a", "7", "7 psgi", "7 kg", "7 °C", "7 bar", "7 x", "± 7", "7 to 8", "[]", "{a: 1}", "\"\""];
        var faults = new List<string>();
        var told = 0;
        foreach (var problem in slips.SelectMany(slip => Reading.Of(Everything(slip)).Problems))
        {
            told++;
            var words = problem.Split([' ', ',', '"', '?', ':'], StringSplitOptions.RemoveEmptyEntries).Select(w => w.TrimEnd('.'));

            // "in" is a word of the language.
            if (words.Intersect(customary.Except(["in"]), StringComparer.Ordinal).FirstOrDefault() is { } unit)
                faults.Add($"{unit}: {problem}");
        }

        Assert.Equal("", string.Join('\n', faults.Distinct().Take(10)));
        Assert.True(told > 1000, $"{told} problems");
    }

    [Theory]
    [InlineData("us", "32.4", "32.4 °F")]
    [InlineData("si", "0.2", "0.2 °C")]
    [InlineData("si", "32.4 °F", "32.4 °F")]
    [InlineData("us", "{read: 32.4, adjusted: 32.1}", "32.4 °F")]
    public void The_ice_point_is_a_plain_value(string units, string written, string meant)
    {
        var job = Job($"units: {units}\n{Equipment}instruments: [{{id: c, kind: pipe clamp, checks: {{ice point: {written}}}}}]\n");
        Assert.Equal(meant, job.Instruments[0].Checks!.IcePoint!.Read.Text);
    }

    [Theory]
    [InlineData("us", "pressure gauge", "0.1 psig")]
    [InlineData("si", "pressure gauge", "0.1 bar(g)")]
    [InlineData("{preset: si, pressure: kPag}", "pressure gauge", "0.1 kPag")]
    [InlineData("us", "scale", "0.1 lb")]
    [InlineData("us", "vacuum gauge", "0.1 micron")]
    [InlineData("us", "manometer", "0.1 inwc")]
    [InlineData("si", "manometer", "0.1 Pa")]
    [InlineData("si", "psychrometer", "0.1 °C")]
    public void Checks_of_today_follow_units(string units, string kind, string meant)
    {
        var job = Job($"units: {units}\n{Equipment}instruments: [{{id: g, kind: {kind}, checks: {{zero: 0.1}}}}]\n");
        Assert.Equal(meant, job.Instruments[0].Checks!.Zero!.Read.Text);
    }

    [Theory]
    [InlineData("us", "pressure gauge", "0.1 psi")]
    [InlineData("si", "pressure gauge", "0.1 bar")]
    [InlineData("us", "vacuum gauge", "0.1 micron")]
    [InlineData("si", "pipe clamp", "0.1 K")]
    public void A_bare_step_is_in_the_unit_of_its_readings(string units, string kind, string meant) =>
        Assert.Equal(meant, Job($"units: {units}\n{Equipment}instruments: [{{id: g, kind: {kind}, resolution: 0.1}}]\n").Instruments[0].Resolution[0].Step.Text);

    // 600 on a clamp meter may be amperes or volts.
    [Fact]
    public void A_bare_number_that_may_be_several_things_is_asked_back() =>
        Assert.Contains("has no unit", Assert.Single(Problems($"units: us\n{Equipment}instruments: [{{id: m, kind: clamp meter, full scale: 600}}]\n")), StringComparison.Ordinal);

    [Theory]
    [InlineData("2:15 PM", "14:15")]
    [InlineData("2:15pm", "14:15")]
    [InlineData("2:15 p.m.", "14:15")]
    [InlineData("2:15:30 PM", "14:15:30")]
    [InlineData("12:30 AM", "00:30")]
    [InlineData("12:00 PM", "12:00")]
    [InlineData("2 PM", "14:00")]
    [InlineData("2026-06-18 7:05 am", "2026-06-18 07:05")]
    public void A_time_may_say_AM_or_PM(string written, string meant) =>
        Assert.Equal(meant, Job($"{Equipment}charging: {{readings: [{{at: {written}, vapor pressure: 118 psig}}]}}\n").Charging!.Readings[0].At.Text);

    [Theory]
    [InlineData("14:15 PM")]
    [InlineData("0:15 AM")]
    [InlineData("2:75 PM")]
    public void A_time_of_no_clock_is_refused(string written) =>
        Assert.StartsWith("job.yaml:4:28: ", Assert.Single(Problems($"{Equipment}charging: {{readings: [{{at: {written}, vapor pressure: 118 psig}}]}}\n")), StringComparison.Ordinal);

    [Fact]
    public void A_step_may_change_along_the_range()
    {
        var steps = Job($"{Equipment}instruments: [{{id: g, kind: pressure gauge, resolution: [{{up to: 100 psig, step: 0.1 psi}}, {{above: 100 psig, step: 1 psi}}]}}]\n").Instruments[0].Resolution;
        Assert.Equal(["0.1 psi", "1 psi"], steps.Select(s => s.Step.Text));
        Assert.All([steps[0].UpTo!, steps[1].Above!], end => Assert.Equal(100 * Psi, end.Value.Si, 6));
    }

    [Theory]
    [InlineData("[{step: 0.1 psi}, {step: 1 psi}]", "The step 0.1 psi does not say for which readings, and 1 psi stands beside it. All but the last of several steps say up to where they hold. Write it like {up to: 100 psig, step: 0.1 psi}.")]
    [InlineData("[{up to: 100 psig, step: 0.1 psi}, {above: 200 psig, step: 1 psi}]", "The step 1 psi begins above 200 psig, and the one before it holds up to 100 psig. One range begins where the other ends. Write above: 100 psig.")]
    [InlineData("[{up to: 100 psig, step: 0.1 psi}, {up to: 50 psig, step: 1 psi}, {step: 2 psi}]", "The step 1 psi holds from 100 psig up to 50 psig, which is no range. Steps stand in the order of their ranges, the lowest first. Put them in order.")]
    [InlineData("[{up to: 100 psig}]", "\"resolution\" does not say \"step\". The step. Write it like step: 0.1 psi.")]
    public void Steps_leave_no_gap(string steps, string told) =>
        Assert.EndsWith(told, Assert.Single(Problems($"{Equipment}instruments: [{{id: g, kind: pressure gauge, resolution: {steps}}}]\n")), StringComparison.Ordinal);

    [Theory]
    [InlineData("charging: {readings: [{at: \"11:00\", vapor pressure: &p 118 psig, liquid pressure: *p}]}")]
    [InlineData("charging: {readings: [{at: &t \"11:00\", vapor pressure: 118 psig}, {at: *t, liquid pressure: 118 psig}]}")]
    [InlineData("charging: {readings: [&r {at: \"11:00\", vapor pressure: 118 psig}, *r]}")]
    [InlineData("pressure test: {gas: dry nitrogen, regulator set: &p 460 psig, relief set: *p, weakest part: {what: coil, rated: *p}}")]
    public void Anchors_and_aliases_stand_in_braces(string part) => Assert.Empty(Problems($"{Equipment}{part}\n"));

    private static Job Job(string yaml)
    {
        var (reading, problems) = Reading.Of(Head + yaml);
        Assert.Equal("", string.Join('\n', problems));
        return reading.Job!;
    }

    private static string[] Problems(string yaml) => Reading.Of(Head + yaml).Problems;

    // A file in which every key of the upper two levels has the same slip.
    private static string Everything(string slip)
    {
        var schema = JobSchema.Instance;
        var file = new StringBuilder("commission: 1\nunits: {preset: si, pressure: SLIP, vacuum: SLIP, length: SLIP, temperature: SLIP, mass: SLIP}\n".Replace("SLIP", slip, StringComparison.Ordinal));
        foreach (var part in schema.Root.GetProperty("properties").EnumerateObject())
        {
            if (part.Name is "units" or "instruments" || schema.ForMapping(part.Value) is not { } mapping)
                continue;
            file.Append(CultureInfo.InvariantCulture, $"{part.Name}:\n");
            foreach (var key in Keys(mapping))
            {
                if (schema.ForMapping(key.Value) is not { } inner || Keys(inner).Length == 0)
                    file.Append(CultureInfo.InvariantCulture, $"  {key.Name}: {slip}\n");
                else
                    file.Append(CultureInfo.InvariantCulture, $"  {key.Name}:\n").AppendJoin("", Keys(inner).Select(k => $"    {k.Name}: {slip}\n"));
            }
        }

        file.Append("instruments:\n");
        foreach (var key in new[] { "accuracy", "full scale", "resolution", "kind", "checks" })
            file.Append(CultureInfo.InvariantCulture, $"  - id: {key}\n{(key == "kind" ? "" : "    kind: pressure gauge\n")}    {key}: {slip}\n");
        return file.ToString();
    }

    private static JsonProperty[] Keys(JsonElement mapping) =>
        mapping.TryGetProperty("properties", out var keys) ? [.. keys.EnumerateObject().Where(k => !k.Value.TryGetProperty("x-alias-of", out _))] : [];
}
