using Commission.Checks.Recording;
using Commission.Measurement.Decisions;
using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.Recording;

/// <summary>The figures that stand before any other at the tailgate (common practice: tightness, vacuum, charge, then what the unit delivers).</summary>
public sealed class KeyFiguresTests
{
    [Fact]
    public void They_are_the_proofs_of_the_work_with_a_limit_or_what_the_water_carries()
    {
        var job = JobLines.Of("limits: {water: {flow: {minimum: 17 L/min, from: manual}}}\nwater: {flow: 21.5 L/min, volume: 80 L, in: 30.2 °C, out: 35.4 °C}", "new installation", "air-to-water heat pump");
        var findings = JobLines.Record(job).Findings;
        var told = KeyFigures.Of(findings).Select(n => findings[n - 1]).Select(f => (f.Check, f.Subject)).ToList();
        Assert.Equal([("functional.water", "flow"), ("functional.water-capacity", null)], told);
    }

    [Fact]
    public void One_that_fails_is_one_of_them_too()
    {
        var job = JobLines.Of("limits: {water: {flow: {minimum: 17 L/min, from: manual}}}\nwater: {flow: 11.5 L/min}", "new installation", "air-to-water heat pump");
        var findings = JobLines.Record(job).Findings;
        Assert.Equal(Verdict.Fail, findings[Assert.Single(KeyFigures.Of(findings)) - 1].Verdict);
    }
}
