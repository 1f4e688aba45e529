using System.Globalization;
using Commission.Measurement.Decisions;
using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.PressureTest;

/// <summary>Every joint is answered for: few of them one by one, many that were searched alike together, a leak by itself (common practice of long test sheets, no source).</summary>
public sealed class JointLeakCheckTests
{
    [Fact]
    public void Few_joints_have_a_finding_each() => Assert.Equal(12, Findings(12).Count);

    [Fact]
    public void Many_joints_that_were_searched_alike_are_one_finding_that_names_each()
    {
        var finding = Assert.Single(Findings(13));
        Assert.Equal("13 joints", finding.Subject);
        Assert.Equal(Verdict.Pass, finding.Verdict);
        Assert.All(Enumerable.Range(1, 13), i => Assert.Contains(string.Create(CultureInfo.InvariantCulture, $"joint {i}"), finding.Statement, StringComparison.Ordinal));
        Assert.Equal(13, finding.Readings.Count(r => r.Name.EndsWith(": result", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_leak_among_many_is_told_by_itself()
    {
        var findings = Findings(13, "    - {place: riser, kind: brazed, method: bubble solution, result: leak}\n");
        Assert.Equal(2, findings.Count);
        var leak = Assert.Single(findings, f => f.Verdict == Verdict.Fail);
        Assert.Equal("riser", leak.Subject);
    }

    [Fact]
    public void What_was_searched_otherwise_is_another_finding()
    {
        var findings = Findings(13, "    - {place: riser, kind: flare, method: bubble solution, result: none}\n");
        Assert.Equal(["13 joints", "riser"], findings.Select(f => f.Subject));
    }

    private static List<Finding> Findings(int joints, string more = "")
    {
        var lines = string.Concat(Enumerable.Range(1, joints).Select(i => string.Create(CultureInfo.InvariantCulture, $"    - {{place: joint {i}, kind: brazed, method: bubble solution, result: none}}\n")));
        return [.. JobLines.Record(JobLines.Of($"pressure test:\n  gas: dry nitrogen\n  section: line set and indoor\n  joints:\n{lines}{more}")).Findings.Where(f => f.Check == "pressure-test.joint-leak-check")];
    }
}
