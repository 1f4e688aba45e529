using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Instruments;

/// <summary>Regulation (EC) 1516/2007, article 6(2): gas detection devices are checked every 12 months [published].</summary>
public sealed class LeakDetectorCheckTests
{
    private const string Check = "instrument.leak-detector";

    [Theory]
    [InlineData("2025-06-18", Verdict.Pass)]
    [InlineData("2025-06-17", Verdict.Fail)]
    [InlineData("2026-06-19", Verdict.Fail)]
    public void The_detector_was_checked_within_a_year(string day, Verdict verdict) => Assert.Equal(
        verdict,
        JobLines.Finding(JobLines.Of($"limits: {{packs: [eu-f-gas]}}\nleak check: {{date: 2026-06-18, result: none, method: electronic, sensitivity: 3 g/yr, detector checked: {day}}}"), Check).Verdict);

    [Fact]
    public void The_described_detector_says_it_too()
    {
        const string kit = "instruments: [{id: sniffer, kind: leak detector, sensitivity: 3 g/yr, calibrated: 2025-01-10}]\n";
        Assert.Equal(Verdict.Fail, JobLines.Finding(kit + JobLines.Of("limits: {packs: [eu-f-gas]}\nleak check: {date: 2026-06-18, result: none, method: electronic, with: sniffer}"), Check).Verdict);
        Assert.Empty(JobLines.Findings(JobLines.Of("leak check: {date: 2026-06-18, result: none, detector checked: 2020-01-01}"), Check));
    }
}
