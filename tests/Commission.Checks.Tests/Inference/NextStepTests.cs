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

    [Fact]
    public void Air_alone_says_nothing_of_a_charge()
    {
        var yaml = JobLines.Of("charging: {compressor started: \"08:00\", running: full, mode: heating, readings: [{at: \"10:00\", outdoor dry bulb: 45.0, return dry bulb: 68.0, supply dry bulb: 92.0}]}", work: "seasonal check", system: "packaged", equipment: ", compressor: variable speed");
        Assert.Contains("no gauge was put on the circuit", JobText.Context(yaml).Get<CircuitDiagnosis>().Result!.Sentence, StringComparison.Ordinal);
    }
}
