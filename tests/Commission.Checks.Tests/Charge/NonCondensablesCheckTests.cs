using Commission.Measurement.Decisions;
using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.Charge;

/// <summary>The standing test. R-410A at sea level: bubble 201.76 psig at 70 °F (equation of state, computed by a program of its own), slope about 3.3 psi/°F.</summary>
public sealed class NonCondensablesCheckTests
{
    private static Finding Judge(string test) => Assert.Single(JobText.Evaluate(ChargeJobs.FenRow.With("running: full", $"running: full\n  standing test: {{{test}}}"), "charge.non-condensables"));

    [Fact]
    public void Saturation_passes()
    {
        var finding = Judge("off for: 20 min, condenser fan on: yes, liquid pressure: 201.8, liquid line: 70.0, outdoor dry bulb: 70.2");
        Assert.Equal(Verdict.Pass, finding.Verdict);
        Assert.Equal(0.0, finding.Measured!.Value.Si * 1.8, 0.05);
    }

    [Fact]
    public void More_than_2_degrees_is_suspect()
    {
        // 10 psi over 201.76 psig are about 3 °F.
        var finding = Judge("off for: 20 min, condenser fan on: yes, liquid pressure: 211.8, liquid line: 70.0, outdoor dry bulb: 70.2");
        Assert.Equal(Verdict.Fail, finding.Verdict);
        Assert.Equal(10.04 / 3.3, finding.Measured!.Value.Si * 1.8, 0.15);
        Assert.Contains("suspect", finding.Statement, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("off for: 5 min, condenser fan on: yes, liquid pressure: 201.8, liquid line: 70.0, outdoor dry bulb: 70.2", "had been off for 5 min")]
    [InlineData("off for: 20 min, condenser fan on: no, liquid pressure: 201.8, liquid line: 70.0, outdoor dry bulb: 70.2", "fan did not run")]
    [InlineData("off for: 20 min, condenser fan on: yes, liquid pressure: 201.8, liquid line: 72.0, outdoor dry bulb: 70.2", "1.8 °F apart")]
    [InlineData("off for: 20 min, condenser fan on: yes, liquid pressure: 150.0, liquid line: 70.0, outdoor dry bulb: 70.2", "below saturation")]
    [InlineData("condenser fan on: yes, liquid pressure: 201.8, liquid line: 70.0", "how long the compressor had been off")]
    [InlineData("off for: 20 min, liquid pressure: 201.8", "neither the liquid line nor the outdoor air")]
    public void What_has_not_settled_is_not_judged(string test, string why)
    {
        var finding = Judge(test);
        Assert.Equal(Verdict.NotEvaluated, finding.Verdict);
        Assert.Contains(why, finding.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void The_share_of_the_pressure_is_shown_beside_the_temperature()
    {
        // 211.8 psig are 226.5 psia, 201.76 psig 216.46 psia: 4.6 % more.
        var finding = Judge("off for: 20 min, condenser fan on: yes, liquid pressure: 211.8, liquid line: 70.0, outdoor dry bulb: 70.2");
        Assert.Equal(2, finding.Limits.Length);
        Assert.StartsWith("4.6 ", finding.Trace.Single(s => s.Symbol == "Δp/p").Result, StringComparison.Ordinal);
    }
}
