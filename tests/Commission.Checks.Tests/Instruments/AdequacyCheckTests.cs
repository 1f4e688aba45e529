using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Instruments;

/// <summary>
/// Tolerance over U: 4 good, 2 to 4 usable, 1 to 2 weak (the old four-to-one rule of calibration). The judged number here is a control voltage,
/// limit 20 to 28 V: half of it is 4 V.
/// </summary>
public sealed class AdequacyCheckTests
{
    private static string Job(string accuracy, string electrical = "{control voltage: 24.0 V}") => $$$"""
        commission: 1
        units: us
        job: {id: IN-2, work: seasonal check, date: 2026-07-02, site: {name: "Fen Row 7", elevation: 0 ft}}
        equipment: {system: split, refrigerant: R-410A}
        instruments: [{id: meter, kind: multimeter, accuracy: {{{accuracy}}}, resolution: 0.1 V, calibrated: 2026-01-10, reads: [electrical]}]
        electrical: {{{electrical}}}
        """;

    private static IEnumerable<Records.Findings.Finding> Of(string yaml) => JobText.Evaluate(yaml).Where(f => f.Check == "instrument.adequacy");

    [Fact]
    public void A_fine_meter_is_information()
    {
        // ± 0.2 V rectangular: U = 0.24 V, 4/0.24 = 16.
        var f = Assert.Single(Of(Job("0.2 V")));
        Assert.Equal(Verdict.Information, f.Verdict);
        Assert.Null(f.NextStep);
    }

    [Fact]
    public void A_coarse_meter_is_named_with_what_would_do()
    {
        // ± 3 V rectangular: U = 2·3/√3 = 3.46 V, 4/3.46 = 1.15, weak.
        var f = Assert.Single(Of(Job("3 V")));
        Assert.Contains("1.2", f.Statement, StringComparison.Ordinal);
        Assert.Contains("weak", f.Statement, StringComparison.Ordinal);
        Assert.Contains("meter: accuracy", f.NextStep, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_judged_gives_no_finding() => Assert.Empty(Of(Job("0.2 V", "{notes: nothing read}")));
}
