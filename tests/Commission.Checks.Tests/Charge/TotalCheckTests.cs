using Commission.Checks.Charge;
using Commission.Checks.Circuit;
using Commission.Measurement.Decisions;
using Commission.Measurement.Quantities;
using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.Charge;

public sealed class TotalCheckTests
{
    private static Finding Judge(string yaml) => Assert.Single(JobText.Evaluate(yaml, "charge.total"));

    [Fact]
    public void A_unit_that_came_charged_holds_its_factory_charge_and_what_was_added()
    {
        // 6 lb 8 oz = 104 oz; 104 + 16.32 = 120.32 oz.
        var finding = Judge(ChargeJobs.TarnLane);
        Assert.Equal(120.32, Mass.FromSi(finding.Measured!.Value.Si).Ounces, 0.06);
        Assert.Equal(Verdict.Information, finding.Verdict);
    }

    [Fact]
    public void A_unit_that_came_empty_holds_what_the_scale_saw()
    {
        var total = JobText.Context(ChargeJobs.TarnLane.With("unit arrived: charged", "unit arrived: nitrogen holding charge")).Get<WeighedCharge>().Total!;
        Assert.Equal(16.32, Mass.FromSi(total.Value.Value).Ounces, 0.01);
    }

    [Theory]
    [InlineData("7 lb 8 oz", Verdict.Pass)]
    [InlineData("8 lb 4 oz", Verdict.Fail)]
    public void The_makers_total_is_a_limit(string maker, Verdict verdict) =>
        Assert.Equal(verdict, Judge(ChargeJobs.TarnLane.With("limits:\n", $"limits:\n  charge: {{target: {maker}, tolerance: 4 oz, from: unit plate}}\n")).Verdict);

    [Fact]
    public void A_makers_total_without_a_tolerance_takes_the_share()
    {
        // 2 % of 120 oz = 2.4 oz.
        var limit = Judge(ChargeJobs.TarnLane.With("limits:\n", "limits:\n  charge: {target: 7 lb 8 oz, from: unit plate}\n")).Limits[0];
        Assert.Equal(2.4, Mass.FromSi(limit.UpperSi!.Value - limit.TargetSi!.Value).Ounces, 1e-6);
    }

    [Fact]
    public void A_range_of_the_maker_stands_as_it_is()
    {
        // 120.3 oz between 7 lb 6 oz (118) and 7 lb 10 oz (122); above 7 lb 2 oz (114).
        var range = Judge(ChargeJobs.TarnLane.With("limits:\n", "limits:\n  charge: {minimum: 7 lb 4 oz, maximum: 7 lb 14 oz, from: unit plate}\n"));
        Assert.Equal((Verdict.Pass, "unit plate"), (range.Verdict, range.Limits[0].Source));
        var most = Judge(ChargeJobs.TarnLane.With("limits:\n", "limits:\n  charge: {maximum: 7 lb, from: unit plate}\n"));
        Assert.Equal((Verdict.Fail, null), (most.Verdict, most.Limits[0].LowerSi));
        Assert.StartsWith("Add or recover the difference", most.NextStep, StringComparison.Ordinal);
    }

    [Fact]
    public void A_charge_nobody_moved_is_said_to_be_that()
    {
        const string Nothing = "Nothing added or removed is recorded.";
        var untouched = Judge(ChargeJobs.TarnLane.With("  scale: {before: 24.86 lb, after: 23.84 lb}\n", ""));
        Assert.Equal(104, Mass.FromSi(untouched.Measured!.Value.Si).Ounces, 1e-6);
        Assert.EndsWith(Nothing, untouched.Statement, StringComparison.Ordinal);
        Assert.StartsWith("The nameplate's charge is 6 lb 8", untouched.Statement, StringComparison.Ordinal);
        Assert.StartsWith("The circuit holds 7 lb 8", Judge(ChargeJobs.TarnLane).Statement, StringComparison.Ordinal);
        Assert.DoesNotContain(Nothing, Judge(ChargeJobs.TarnLane).Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void A_total_is_asked_for_where_the_circuit_was_opened_or_the_unit_arrived()
    {
        var unwritten = ChargeJobs.TarnLane.With("  unit arrived: charged\n", "");
        Assert.Equal(Verdict.NotEvaluated, Judge(unwritten.With("work: new installation", "work: opened circuit")).Verdict);
        Assert.Empty(JobText.Evaluate(unwritten.With("work: new installation", "work: seasonal check"), "charge.total"));
        Assert.Empty(JobText.Evaluate(unwritten.With("work: new installation", "work: charge adjustment"), "charge.total"));
        Assert.Empty(JobText.Evaluate(ChargeJobs.TarnLane.With("work: new installation", "work: decommissioning"), "charge.total"));
        Assert.Equal(Verdict.NotEvaluated, Judge(ChargeJobs.TarnLane.With("unit arrived: charged", "unit arrived: unknown").With("work: new installation", "work: seasonal check")).Verdict);
    }

    [Fact]
    public void What_the_unit_held_must_be_known()
    {
        var finding = Judge(ChargeJobs.TarnLane.With("unit arrived: charged", "unit arrived: unknown"));
        Assert.Equal(Verdict.NotEvaluated, finding.Verdict);
        Assert.Contains("recover", finding.NextStep, StringComparison.Ordinal);
    }

    [Fact]
    public void Removed_refrigerant_is_taken_off()
    {
        var total = JobText.Context(ChargeJobs.TarnLane.With("method: subcooling", "removed: 4 oz\n  method: subcooling")).Get<WeighedCharge>().Total!;
        Assert.Equal(116.32, Mass.FromSi(total.Value.Value).Ounces, 0.01);
    }

    // The other circuits' plates are the crew's: 9 lb 2 oz and 11 lb 4 oz are 20 lb 6 oz.
    [Fact]
    public void Circuits_of_one_unit_are_summed_beside_the_circuit_of_the_record()
    {
        var finding = JobLines.Finding(JobLines.Of("charging: {unit arrived: charged, scale: {before: 20 lb, after: 20 lb}, left in hoses: 0 oz}", equipment: ", nameplate: {factory charge: 9 lb 2 oz}, other circuits: [{id: B, charge: 11 lb 4 oz}]"), "charge.total");
        Assert.Contains("20 lb 6.0 oz", finding.Statement, StringComparison.Ordinal);
        Assert.Contains(finding.Readings, r => r.Text == "11 lb 4 oz");
    }
}
