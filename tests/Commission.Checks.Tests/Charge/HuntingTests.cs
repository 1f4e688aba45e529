using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Checks.Recording;
using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Charge;

/// <summary>A valve breathes by a few degrees; a swing of more than 8 °F between settled readings is hunting (common practice, no source).</summary>
public sealed class HuntingTests
{
    // R-410A at 118.35 psig boils at 40.0 °F: the vapor line is the superheat plus 40.
    [Theory]
    [InlineData("TXV", "10:30: 52.0, 10:36: 60.5", true)]
    [InlineData("TXV", "10:30: 52.0, 10:36: 59.5", false)]
    [InlineData("TXV", "10:30: 52.0, 10:36: 61.0, 10:42: 53.0", true)]
    [InlineData("TXV", "10:30: 52.0, 10:36: 57.0, 10:42: 62.0", false)]
    [InlineData("TXV", "10:30: 62.0, 10:36: 57.0, 10:42: 52.0", false)]
    [InlineData("fixed orifice", "10:30: 52.0, 10:36: 61.0, 10:42: 53.0", false)]
    [InlineData("TXV", "10:05: 70.0, 10:30: 52.0, 10:36: 53.0", false)]
    [InlineData("TXV", "10:30: 70.0", false)]
    [InlineData("TXV", "10:30: 52.0, 10:36: 52.0, 10:42: 62.0", false)]
    [InlineData("TXV", "10:30: 62.0, 10:36: 52.0, 10:42: 52.0", false)]
    [InlineData("TXV", "10:30: 52.0, 10:36: 62.0, 10:42: 52.0", true)]
    public void A_swing_and_not_a_drift(string metering, string lines, bool hunts) => Assert.Equal(hunts, Hunting.In(Context(metering, lines)) is not null);

    // 52.0 − 40.0 = 12.0 °F and 61.0 − 40.0 = 21.0 °F.
    [Fact]
    public void The_swing_has_its_ends_and_its_readings_are_named()
    {
        var context = Context("TXV", "10:05: 75.0, 10:30: 52.0, 10:36: 61.0, 10:42: 53.0");
        var swing = Hunting.In(context)!;
        Assert.Equal((12.0, 21.0), (Math.Round(swing.Low * 1.8, 1), Math.Round(swing.High * 1.8, 1)));
        var finding = swing.Unsettled(context, context.Finding(CheckCatalogue.Find("charge.diagnosis")!));
        Assert.Equal((Verdict.NotEvaluated, true), (finding.Verdict, finding.NextStep is not null));
        Assert.Contains("12.0", finding.Reason, StringComparison.Ordinal);
        Assert.Contains("21.0", finding.Reason, StringComparison.Ordinal);
        Assert.Equal(4, finding.Readings.Count(r => r.Name.StartsWith("vapor line", StringComparison.Ordinal)));
        Assert.Equal(4, finding.Readings.Count(r => r.Name.StartsWith("vapor pressure", StringComparison.Ordinal)));
        Assert.Contains(finding.Readings, r => r.Text == "10:00");
        // What heats tells nothing of a valve that cools.
        Assert.Null(Hunting.In(Context("TXV", "10:30: 52.0, 10:36: 61.0, 10:42: 53.0", ", mode: heating")));
    }

    private static CheckContext Context(string metering, string lines, string more = "")
    {
        var rows = lines.Split(", ").Select(l => l.Split(": ")).Select(l => $"{{at: \"{l[0]}\", vapor pressure: 118.35, vapor line: {l[1]}, outdoor dry bulb: 95.0{more}}}");
        return JobText.Context($$$"""
            commission: 1
            units: us
            job: {id: H-1, work: seasonal check, date: 2026-07-02, site: {name: "Fen Row 7", station pressure: 14.696 psia +/- 0.005}}
            equipment: {system: split, compressor: fixed, refrigerant: R-410A, metering: {{{metering}}} }
            instruments:
              - {id: low, kind: pressure gauge, accuracy: 0.05 psi, reads: [vapor pressure]}
              - {id: line, kind: thermometer, accuracy: 0.1 °F, reads: [vapor line]}
            charging: {compressor started: "10:00", running: full, readings: [{{{string.Join(", ", rows)}}}] }
            """);
    }
}
