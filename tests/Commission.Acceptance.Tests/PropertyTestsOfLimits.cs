using Commission.Checks.Kernel;
using Commission.Checks.Recording;
using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Acceptance.Tests;

/// <summary>A verdict follows its reading: where a named reading is moved across its limit, in the text of the job file, the verdict turns. A sample over all phases.</summary>
public sealed class PropertyTestsOfLimits
{
    public static TheoryData<string, string, string, string, string, Verdict, Verdict> Moves => new()
    {
        { "winter-start", "zero: -0.02 bar(g)", "zero: -0.90 bar(g)", "instrument.zero-pressure", "gauge", Verdict.Pass, Verdict.Fail },
        { "leak-repair", "ice point: {read: 0.0 °C", "ice point: {read: 1.9 °C", "instrument.ice-point", "clamp two", Verdict.Pass, Verdict.Fail },
        { "compressor-replacement", "read: 206.6 psig", "read: 230.0 psig", "instrument.cylinder", "high", Verdict.PassWithinUncertainty, Verdict.Fail },
        { "tarn-lane", "pressure: 445.8 psig", "pressure: 430.0 psig", "pressure-test.hold", "", Verdict.Pass, Verdict.Fail },
        { "tarn-lane", "pressure: 445.8 psig", "pressure: 462.0 psig", "pressure-test.level", "maximum", Verdict.Pass, Verdict.Fail },
        { "cold-room", "strength: {pressure: 31.2 bar(g)", "strength: {pressure: 20.1 bar(g)", "pressure-test.strength", "", Verdict.Pass, Verdict.Fail },
        { "cold-room", "pump alone: 5 Pa", "pump alone: 15 Pa", "evacuation.rig", "pump alone", Verdict.Pass, Verdict.Fail },
        { "leak-repair", "{at: \"14:30\", pressure: 43 Pa}", "{at: \"14:30\", pressure: 243 Pa}", "evacuation.hold", "", Verdict.Pass, Verdict.Fail },
        { "tarn-lane", "liquid line: 97.0", "liquid line: 103.0", "charge.subcooling", "11:35", Verdict.PassWithinUncertainty, Verdict.Fail },
        { "tarn-lane", "vapor line: 57.2", "vapor line: 46.0", "charge.superheat-floor", "11:35", Verdict.Pass, Verdict.Fail },
        { "wrong-curve", "vapor line: 7.2", "vapor line: 13.2", "charge.superheat", "10:20", Verdict.Fail, Verdict.Pass },
        { "tarn-lane", "after: 23.84 lb", "after: 23.40 lb", "charge.by-weight", "", Verdict.Pass, Verdict.Fail },
        { "multi-split-by-weight", "length: 12 m, rise", "length: 22 m, rise", "charge.by-weight", "", Verdict.Pass, Verdict.Fail },
        { "cold-room", "evaporator outlet: -1.0", "evaporator outlet: 2.4", "charge.receiver", "evaporator superheat, 11:00", Verdict.Pass, Verdict.Fail },
        { "compressor-replacement", "liquid pressure: 241.6 psig", "liquid pressure: 265.0 psig", "charge.non-condensables", "", Verdict.Pass, Verdict.Fail },
        { "compressor-replacement", "filter drop: 0.14 inwc", "filter drop: 0.34 inwc", "air.filter-drop", "", Verdict.Pass, Verdict.Fail },
        { "tarn-lane", "supply: 0.19 inwc", "supply: 0.45 inwc", "air.static", "", Verdict.Pass, Verdict.Fail },
        { "compressor-replacement", "discharge line: 168.4", "discharge line: 244.0", "compressor.discharge-temperature", "09:20", Verdict.Pass, Verdict.Fail },
        { "tarn-lane", "compressor: 14.9 A", "compressor: 25.0 A", "compressor.current", "", Verdict.Pass, Verdict.Fail },
        { "tarn-lane", "breaker: 30 A", "breaker: 40 A", "electrical.overcurrent", "", Verdict.Pass, Verdict.Fail },
        { "tarn-lane", "ampacity: 30 A", "ampacity: 20 A", "electrical.conductor", "", Verdict.Pass, Verdict.Fail },
        { "tarn-lane", "read: 44.1 uF", "read: 38.0 uF", "electrical.run-capacitor", "", Verdict.Pass, Verdict.Fail },
        { "compressor-replacement", "lowest: 216 V", "lowest: 190 V", "electrical.voltage-drop-at-start", "", Verdict.Pass, Verdict.Fail },
        { "cold-room", "tripped at: 24.7 bar(g)", "tripped at: 28.6 bar(g)", "safety.devices", "high-pressure switch HP1", Verdict.Pass, Verdict.Fail },
        { "multi-split-by-weight", "area: 14 m2", "area: 4 m2", "safety.flammable-charge", "", Verdict.Pass, Verdict.Fail },
        { "leak-repair", "  to: 0.4 bar(a)", "  to: 1.6 bar(a)", "refrigerant.recovery-level", "", Verdict.Pass, Verdict.Fail },
        { "leak-repair", "total: 3.24 kg", "total: 3.44 kg", "refrigerant.label", "", Verdict.Pass, Verdict.Fail },
    };

    [Theory]
    [MemberData(nameof(Moves))]
    public void A_reading_moved_across_its_limit_turns_the_verdict(string example, string written, string moved, string check, string subject, Verdict before, Verdict after)
    {
        var text = ExamplesLibrary.Text(example);
        var at = text.LastIndexOf(written, StringComparison.Ordinal);
        Assert.True(at >= 0, $"{example} does not say {written}.");
        var named = Line(text, at);
        var finding = Assert.Single(ExamplesLibrary.Findings(example), f => f.Check == check && (f.Subject ?? "") == subject);
        Assert.Equal(before, finding.Verdict);
        Assert.Contains(finding.Readings, r => r.At.Line == named);

        var reading = ExamplesLibrary.Read(example, string.Concat(text.AsSpan(0, at), moved, text.AsSpan(at + written.Length)));
        Assert.NotNull(reading.Job);
        Assert.Equal(after, Assert.Single(RecordBuilder.Evaluate(ExamplesLibrary.Context(reading)), f => f.Check == check && (f.Subject ?? "") == subject).Verdict);
    }

    private static int Line(string text, int at) => 1 + text.AsSpan(0, at).Count('\n');
}
