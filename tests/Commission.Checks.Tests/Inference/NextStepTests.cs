using Commission.Checks.Inference;
using Xunit;

namespace Commission.Checks.Tests.Inference;

/// <summary>What a technician does next (common practice, no source): what went in on this visit comes out again first, and without a gauge nobody judges a charge.</summary>
public sealed class NextStepTests
{
    private static string Overfull(string events) => JobLines.Of($$"""
        limits: {subcooling: {target: 10 °F, tolerance: 3 °F, from: plate} }
        charging: {compressor started: "08:00", running: full, {{events}}readings: [{at: "10:00", vapor pressure: 120.0, liquid pressure: 400.0, vapor line: 52.0, liquid line: 92.0, outdoor dry bulb: 90.0, return dry bulb: 76.0, return wet bulb: 63.0, supply dry bulb: 57.0}]}
        air: {filter: clean, coil: clean, panels on: yes, blower at cooling speed: yes}
        """, work: "charge adjustment", equipment: ", compressor: fixed, metering: TXV");

    [Theory]
    [InlineData("events: [{at: \"09:00\", added: 8 oz}, {at: \"09:20\", added: 4 oz}], ", "diagnosis.recover-added-next(added 12.0 oz)")]
    [InlineData("", null)]
    public void What_was_added_on_this_visit_is_named(string events, string? next)
    {
        var diagnosis = JobText.Context(Overfull(events)).Get<CircuitDiagnosis>();
        Assert.Equal("overcharge", diagnosis.Result!.Ranked[0].Cause);
        Assert.Equal("recover", diagnosis.Result.Advice);
        Assert.Equal(next is not null, diagnosis.Said?.Next?.Id == "diagnosis.recover-added-next");
        Assert.Equal(next is not null, diagnosis.Result.NextStep.StartsWith("12.0 oz was added", StringComparison.Ordinal));
    }

    // R-407C at 4.3 bar(g) boils from -2 °C to 4.4 °C (tables of the refrigerant's makers, from memory): 6.4 K of superheat are between 12 and 13 K on the scale of its liquid.
    // R-410A has next to no glide, and nothing is said of scales.
    [Theory]
    [InlineData("R-407C", "4.30", "10.8", "4.64", "7.2", "18.6", "33.1", true)]
    [InlineData("R-410A", "8.30", "10.9", "9.05", "7.2", "28.0", "33.1", false)]
    public void A_blend_filled_up_by_the_wrong_scale_is_told_so(string gas, string foundLow, string foundLine, string low, string line, string high, string liquid, bool told)
    {
        var yaml = JobLines.Of($$"""
            limits: {charts: [{for: superheat, across: {reading: outdoor dry bulb, at: [20, 30, 40]}, values: [[11, 7, 4]], tolerance: 3 K, from: manual}]}
            as found: {readings: [{at: "09:10", vapor pressure: {{foundLow}}, liquid pressure: 16.4, vapor line: {{foundLine}}, liquid line: 35.2, outdoor dry bulb: 30.2, return dry bulb: 25.1, return wet bulb: 17.9, supply dry bulb: 14.1}]}
            charging: {compressor started: "08:00", running: full, events: [{at: "09:35", added: 0.40 kg}], readings: [{at: "10:20", vapor pressure: {{low}}, liquid pressure: {{high}}, vapor line: {{line}}, liquid line: {{liquid}}, outdoor dry bulb: 31.0, return dry bulb: 24.9, return wet bulb: 17.7, supply dry bulb: 13.8}]}
            air: {filter: clean, coil: clean, outdoor coil: clean, panels on: yes, blower at cooling speed: yes}
            """, work: "charge adjustment", refrigerant: gas, equipment: ", compressor: fixed, metering: fixed orifice", units: "si");
        var diagnosis = JobText.Context(yaml).Get<CircuitDiagnosis>();
        Assert.Equal(told ? "diagnosis.recover-added-as-found-blend-next" : "diagnosis.recover-added-as-found-next", diagnosis.Said?.Next?.Id);
        Assert.Equal(told, diagnosis.Result!.NextStep.Contains(" 12.", StringComparison.Ordinal));
    }

    // A refrigerant by another of its names is the same refrigerant (ASHRAE 34: R-290 is propane): plate and circuit agree, and nothing is foreign.
    [Theory]
    [InlineData("propane", "R-290", false)]
    [InlineData("R-290", "n-propane", false)]
    [InlineData("propane", "R-600a", true)]
    public void A_refrigerant_has_one_name_whatever_the_crew_calls_it(string gas, string plate, bool foreign)
    {
        var yaml = JobLines.Of("charging: {compressor started: \"08:00\", running: full, readings: [{at: \"10:00\", vapor pressure: 60.0, liquid pressure: 180.0, vapor line: 45.0, liquid line: 85.0, outdoor dry bulb: 80.0}]}", work: "seasonal check", refrigerant: gas, equipment: $", compressor: fixed, metering: TXV, nameplate: {{refrigerant: {plate}}}");
        Assert.Equal(foreign, JobText.Context(yaml).Get<CircuitDiagnosis>().Result!.Ranked.Any(r => r.Cause == "wrong refrigerant"));
    }

    [Fact]
    public void Air_alone_says_nothing_of_a_charge()
    {
        var yaml = JobLines.Of("charging: {compressor started: \"08:00\", running: full, mode: heating, readings: [{at: \"10:00\", outdoor dry bulb: 45.0, return dry bulb: 68.0, supply dry bulb: 92.0}]}", work: "seasonal check", system: "packaged", equipment: ", compressor: variable speed");
        Assert.Contains("no gauge was put on the circuit", JobText.Context(yaml).Get<CircuitDiagnosis>().Result!.Sentence, StringComparison.Ordinal);
    }
}
