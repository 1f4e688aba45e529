using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Evidence;

public sealed class SignatureCheckTests
{
    private const string Check = "evidence.signature";

    [Fact]
    public void Somebody_stands_for_it()
    {
        var finding = JobLines.Finding(JobLines.Of("signatures: [{name: Mira Solend, role: technician, licence: L-7, date: 2026-06-18}, {name: P. Okwell, role: owner, date: 2026-06-19}]"), Check);
        Assert.Equal(Verdict.Pass, finding.Verdict);
        Assert.Equal("Signed by Mira Solend, technician, licence L-7, 2026-06-18; P. Okwell, owner, 2026-06-19.", finding.Statement);
    }

    [Fact]
    public void Nobody_leaves_the_record_incomplete()
    {
        Assert.Equal(Verdict.NotEvaluated, JobLines.Finding(JobLines.Of(), Check).Verdict);
        Assert.Contains(JobLines.Record(JobLines.Of()).Missing, m => m.Checks.Contains("evidence.signature"));
    }

    [Fact]
    public void Nobody_signs_before_the_work()
    {
        var finding = JobLines.Finding(JobLines.Of("signatures: [{name: Mira Solend, date: 2026-06-17}]"), Check);
        Assert.Equal(Verdict.Fail, finding.Verdict);
        Assert.Contains("Mira Solend on 2026-06-17", finding.Statement, StringComparison.Ordinal);
    }
}
