using Xunit;

namespace Commission.Jobs.Tests;

/// <summary>Files whose every value is fine by itself and which cannot be true as a whole.</summary>
public sealed class MeaningTests
{
    private const string Head = "commission: 1\nunits: us\njob: {id: T, work: opened circuit, date: 2026-06-18, site: {elevation: 100}}\n";
    private const string Equipment = "equipment: {system: split, refrigerant: R-410A}\n";

    [Theory]
    [InlineData("nameplate: {phases: ^2}", "A unit does not have 2 phases. Write 1 or 3.")]
    [InlineData("nameplate: {design pressure: {low: ^600, high: 450}}", "The low side's design pressure 600 psig is above the high side's 450 psig. Check whether they are swapped.")]
    [InlineData("nameplate: {PS: {low: ^600, high: 450}}", "The low side's design pressure 600 psig is above the high side's 450 psig. Check whether they are swapped.")]
    [InlineData("piping: {liquid: {od: ^3 ft, length: 20}}", "\"od\" cannot be 3 ft. It lies between 0.00656 ft and 0.82 ft. Check the number and the unit.")]
    [InlineData("piping: {liquid: {od: 3/8 in, length: 20, rise: ^30}}", "The line rises 30 ft and is only 20 ft long. Check both.")]
    [InlineData("indoor: [{id: A}, {id: B}], piping: [{to: ^C}]", "\"C\" is not an indoor unit or branch box of this job. Under equipment there are A, B or outdoor.")]
    [InlineData("indoor: [{id: A}, {id: ^A}]", "Two indoor units are called \"A\"; the first is in line 4. Give one of them another name.")]
    public void Equipment_that_cannot_be(string part, string expected) =>
        Same(Head + "equipment: {system: split, refrigerant: R-410A, " + part + "}\n", expected);

    [Theory]
    [InlineData("charging: {added: ^1 lb, scale: {before: 20, after: 19}}", "The mass added is written twice: as added and as scale readings. Keep the scale readings.")]
    [InlineData("charging: {events: [^{at: \"11:00\"}]}", "This event says nothing. Write added, removed or note.")]
    [InlineData("charging: {removed: ^-1 lb}", "\"removed\" cannot be −1 lb. It lies between 0 lb and 22000 lb. Check the number and the unit.")]
    [InlineData("charging: {crankcase heater on since: ^\"12:00\", compressor started: \"11:00\"}", "The crankcase heater was on since 12:00, after the compressor was started at 11:00. Write the date with it, such as 2026-06-17 18:00.")]
    [InlineData("recovery: {to: 10 inHg vac, scale: {before: 20, after: ^19}}", "The recovery cylinder became lighter: 20 lb before, 19 lb after. Check whether they are swapped.")]
    [InlineData("cylinders: [{id: C, tare: 13.5, before: ^10}]", "The cylinder weighs 10 lb, less than its tare 13.5 lb. Write gross masses: cylinder and refrigerant together.")]
    [InlineData("cylinders: [{id: C-88}]\nrecovery: {to: 0 psig, cylinder: ^C-89}", "\"C-89\" is not a cylinder of this job. Did you mean \"C-88\"?")]
    public void Masses_that_cannot_be(string part, string expected) => Same(Head + Equipment + part + "\n", expected);

    [Theory]
    [InlineData("pressure test: {gas: dry nitrogen, tightness: ^{from: {at: \"08:00\", pressure: 400}}}", "The hold has a start and no end. Write to: with its time, pressure and temperature.")]
    [InlineData("pressure test: {gas: dry nitrogen, tightness: ^{shaded: yes}}", "The hold has no readings. Write from: and to:, or a series.")]
    [InlineData("pressure test: {gas: dry nitrogen, tightness: {from: {at: \"08:00\", pressure: 400, temperature: ^400}, to: {at: \"09:00\", pressure: 400}}}", "\"temperature\" cannot be 400 °F. It lies between -76 °F and 194 °F. Check the number and the unit.")]
    [InlineData("pressure test: {gas: dry nitrogen, tightness: {from: {at: \"08:00\", pressure: 400}, to: {at: ^\"08:00\", pressure: 400}}}", "The hold ends at 08:00, when it starts. Correct the times; if the hold ended on another day, write its date, such as 2026-06-19 08:10.")]
    [InlineData("pressure test: {gas: dry nitrogen, stages: [{pressure: 150, at: \"08:10\"}, {pressure: 300, at: ^\"08:05\"}]}", "08:05 comes after 08:10 in the list and is earlier. Put the entries in the order of time, or correct the time.")]
    public void Pressure_tests_that_cannot_be(string part, string expected) => Same(Head + Equipment + part + "\n", expected);

    [Theory]
    [InlineData("evacuation: {started: \"09:00\", events: [{at: \"10:00\", what: heat applied, to: ^2 psig}]}", "\"to\" is the pressure of a nitrogen break, and this is \"heat applied\". Delete it, or write what: nitrogen break.")]
    [InlineData("evacuation: {started: \"09:00\", events: [{at: \"10:00\", what: isolated}, {at: \"11:00\", what: ^isolated}]}", "The circuit is isolated twice, and the pump was not started again in between. Keep one, or write the event pump on between them.")]
    [InlineData("evacuation: {started: \"09:00\", levels: [{at: ^\"08:50\", pressure: 500}]}", "This level was read at 08:50, before the pump was started at 09:00. Correct the times; write the date with a time of another day.")]
    public void Evacuations_that_cannot_be(string part, string expected) => Same(Head + Equipment + part + "\n", expected);

    [Theory]
    [InlineData("electrical: {line to line: [230, ^231]}", "\"line to line\" has 2 values. One is expected for a single phase, three for three phases. Write one or three.")]
    [InlineData("electrical: {voltage drop at start: {before: 230, lowest: ^240}}", "The lowest voltage at start, 240 V, is above the 230 V before it. Check whether they are swapped.")]
    [InlineData("air: {airflow: {method: ^traverse}}", "The air flow by \"traverse\" has no readings. Write traverse: with its area and velocities.")]
    [InlineData("air: {airflow: {method: ^fan table}}", "The air flow by \"fan table\" has no readings. Write fan table: under air, with its points.")]
    [InlineData("air: {airflow: {method: heat rise, heat rise: ^{return: 70, supply: 100, volts: 240}}}", "The heat of the heat-rise test is not known. Write input, or volts and amps, or output.")]
    [InlineData("air: {fan table: {from: p, points: [{static: 0.5, airflow: 1100}, {static: ^0.4, airflow: 1180}]}}", "0.4 inwc does not come after 0.5 inwc. The static pressures of a fan table rise. Sort the points.")]
    [InlineData("limits: {flare torque: [{od: 3/8 in, minimum: ^31, maximum: 25, from: p}]}", "The minimum 31 lbf·ft is above the maximum 25 lbf·ft. Check whether they are swapped.")]
    [InlineData("limits: {valid outdoor: ^105 to 65 °F}", "\"105 to 65 °F\" runs from the higher to the lower end. Write 65 °F to 105 °F.")]
    [InlineData("limits: {charts: [{for: superheat, across: {reading: return wet bulb, at: [62, ^60]}, values: [1, 2], from: p}]}", "60 °F does not come after 62 °F. The values of an axis rise. Sort them, with their rows or columns.")]
    [InlineData("instruments: [{id: s, kind: scale, checks: {check weight: {applied: ^0 lb, read: 0 lb}}}]", "A check weight of 0 lb weighs nothing. Write its mass.")]
    [InlineData("safety: {devices: [{kind: high-pressure switch, set: ^640 °F}]}", "\"640 °F\" is a temperature. Expected here: a pressure. Write it in psig, psia, kPag, kPaa, bar(g) or bar(a).")]
    [InlineData("piping checks: {flares: [{od: 3/8 in, torque: 28, with: ^wrench}]}", "\"wrench\" is not an instrument of this job. List it under instruments.")]
    public void Other_things_that_cannot_be(string part, string expected) => Same(Head + Equipment + part + "\n", expected);

    [Theory]
    [InlineData("charging: {mode: heating, readings: [{at: \"11:00\", vapor pressure: 350, liquid pressure: 330, true suction pressure: 60}]}")]
    [InlineData("charging: {readings: [{at: \"11:00\", supply dry bulb: 55.0, supply wet bulb: 55.2}]}")]
    [InlineData("recovery: {to: 10 inHg vac, mass: 6 lb 3 oz}")]
    [InlineData("evacuation: {started: \"09:00\", events: [{at: \"09:30\", what: isolated}, {at: \"09:40\", what: nitrogen break, to: 2 psig}, {at: \"10:30\", what: isolated}, {at: \"10:40\", what: end}]}")]
    [InlineData("electrical: {line to line: [460, 467, 450], compressor: [10, 10.2, 9.9]}")]
    [InlineData("safety: {devices: [{kind: discharge thermostat, set: 225 °F}, {kind: relief valve, set: 600 psig, date: 2025-11-01}]}")]
    public void What_is_merely_unusual_is_left_alone(string part) => Assert.Equal("", string.Join('\n', Reading.Of(Head + Equipment + part + "\n").Problems));

    // The caret in a text stands before what the problem must point at; it is taken out.
    private static void Same(string marked, string expected)
    {
        var mark = marked.IndexOf('^', StringComparison.Ordinal);
        var before = marked[..mark].Split('\n');
        var yaml = marked.Remove(mark, 1);
        Assert.Equal($"job.yaml:{before.Length}:{before[^1].Length + 1}: {expected}", string.Join('\n', Reading.Of(yaml).Problems));
    }
}
