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
        Assert.StartsWith("Named: Mira Solend, technician and P. Okwell, owner. Names in a file are no signatures", finding.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void Nobody_leaves_the_record_incomplete()
    {
        Assert.Equal(Verdict.NotEvaluated, JobLines.Finding(JobLines.Of(), Check).Verdict);
        Assert.Contains(JobLines.Record(JobLines.Of()).Missing, m => m.Checks.Contains("evidence.signature"));
    }

    // A line for the hand of each who stands for a record, named or not; what each attests is the practice of start-up and log-book forms (common practice, no source).
    [Fact]
    public void Technician_witness_owner_and_inspector_have_a_line_whether_named_or_not()
    {
        var none = JobLines.Record(JobLines.Of()).Signatures;
        Assert.Equal(["technician", "witness", "owner", "inspector"], none.Select(s => s.Role));
        Assert.All(none, s => Assert.NotEmpty(s.Statement));
        var some = JobLines.Record(JobLines.Of("signatures: [{role: Inspector, licence: I-4}, {name: Odd Rekstad, role: caretaker, statement: I was shown how to run it}]")).Signatures;
        Assert.Equal(["technician", "witness", "owner", "inspector", "caretaker"], some.Select(s => s.Role));
        Assert.Equal(("I-4", "Reviewed."), (some[3].Licence, some[3].Statement));
        Assert.Equal(("Odd Rekstad", "I was shown how to run it"), (some[4].Name, some[4].Statement));
    }

    [Fact]
    public void Roles_without_a_name_stand_for_nothing() =>
        Assert.Equal(Verdict.NotEvaluated, JobLines.Finding(JobLines.Of("signatures: [{role: inspector}]"), Check).Verdict);

    [Fact]
    public void Nobody_signs_before_the_work()
    {
        var finding = JobLines.Finding(JobLines.Of("signatures: [{name: Mira Solend, date: 2026-06-17}]"), Check);
        Assert.Equal(Verdict.Fail, finding.Verdict);
        Assert.Contains("Mira Solend, 2026-06-17", finding.Statement, StringComparison.Ordinal);
    }
}
