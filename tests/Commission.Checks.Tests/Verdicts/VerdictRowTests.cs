using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Verdicts;

/// <summary>Every row of the tables; apart from VerdictTableTests so that one table can be run without the others.</summary>
public sealed class VerdictRowTests
{
    public static TheoryData<string, string, string> Rows() => new(VerdictTable.Rows.Select(r => (r.Place, r.Limit ?? r.Check, r.Value)));

    [Theory]
    [MemberData(nameof(Rows))]
    public void The_check_says_what_the_table_says(string place, string what, string value)
    {
        var row = VerdictTable.Rows.Single(r => r.Place == place);
        Assert.Equal((row.Limit ?? row.Check, row.Value), (what, value));
        var findings = JobLines.Findings(row.Job, row.Check);
        var finding = findings is [var only] && row.Subject is null ? only : findings.SingleOrDefault(f => f.Subject == row.Subject);
        Assert.True(finding is not null, $"{place}: {row.Check} says {(findings.IsEmpty ? "nothing" : string.Join(", ", findings.Select(f => $"\"{f.Subject}\"")))}.\n{row.Job}");
        Assert.True(
            finding.Verdict == row.Expected && (finding.Reservation is not null) == (row.IsReserved || (row.Expected != Verdict.Conditional && finding.Reservation is not null)),
            $"{place}: {row.Check} with {value}: {finding.Verdict}{(finding.Reservation is { } why ? $" (reserved: {why})" : "")}, and not {row.Expected}. {finding.Statement} {finding.Reason}");
        if (row.Limit is { } limit && finding.Verdict is Verdict.Pass or Verdict.Fail && finding.Limits is [var first, ..])
            Assert.False(string.IsNullOrEmpty(first.Source), $"{place}: {limit} has no source.");
    }
}
