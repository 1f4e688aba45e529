using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Evidence;

public sealed class InstrumentsIdentifiedCheckTests
{
    private const string Check = "evidence.instruments-identified";
    private const string Meter = "instruments: [{id: meter, kind: clamp meter, accuracy: 1.5 % of reading, reads: [electrical]}]\n";
    private const string Judged = "electrical: {line to line: [236 V], compressor: 14.9 A}";
    private const string Plate = ", compressor: fixed, nameplate: {voltage: 208 to 230 V, compressor RLA: 16.7 A}";

    [Fact]
    public void All_named()
    {
        var finding = JobLines.Finding(JobLines.Of(Meter + Judged, equipment: Plate), Check);
        Assert.Equal(Verdict.Pass, finding.Verdict);
        Assert.Equal("All 2 judged readings name their instrument.", finding.Statement);
    }

    [Fact]
    public void One_without_is_told_with_its_name()
    {
        var finding = JobLines.Finding(JobLines.Of(Meter.Replace("electrical", "current", StringComparison.Ordinal) + Judged, equipment: Plate), Check);
        Assert.Equal(Verdict.Conditional, finding.Verdict);
        Assert.Equal("1 of 2 judged readings name no instrument: line to line 1.", finding.Statement);
        Assert.Equal("no instrument is named for line to line 1", finding.Reservation);
    }

    [Fact]
    public void What_is_not_judged_does_not_count()
    {
        Assert.Empty(JobLines.Findings(JobLines.Of(Judged), Check));
        Assert.Empty(JobLines.Findings(JobLines.Of(), Check));
    }

    [Fact]
    public void It_leaves_the_outcome_alone()
    {
        var record = JobLines.Record(JobLines.Of(Judged, equipment: Plate));
        Assert.Contains(record.Findings, f => f.Check == Check && f.Verdict == Verdict.Conditional);
        Assert.DoesNotContain(record.Missing, m => m.Checks.Contains("evidence.instruments-identified"));
        Assert.Empty(record.Conditions);
    }
}
