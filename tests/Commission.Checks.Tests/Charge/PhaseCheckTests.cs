using Commission.Measurement.Decisions;
using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.Charge;

public sealed class PhaseCheckTests
{
    private static Finding Judge(string yaml, string subject) => JobText.Evaluate(yaml, "charge.phase").Single(f => f.Subject == subject);

    [Fact]
    public void A_zeotrope_drawn_as_liquid_passes() => Assert.Equal(Verdict.Pass, Judge(ChargeJobs.TarnLane, "from the cylinder").Verdict);

    [Fact]
    public void A_zeotrope_drawn_as_vapor_fails()
    {
        var finding = Judge(ChargeJobs.TarnLane.With("as: liquid", "as: vapor"), "from the cylinder");
        Assert.Equal(Verdict.Fail, finding.Verdict);
        Assert.Contains("composition has shifted", finding.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void R_410A_is_of_the_400_series_and_leaves_its_cylinder_as_liquid_although_it_hardly_glides() =>
        Assert.Equal(Verdict.Fail, Judge(ChargeJobs.TarnLane.With("refrigerant: R-454B", "refrigerant: R-410A").With("as: liquid", "as: vapor"), "from the cylinder").Verdict);

    [Fact]
    public void A_pure_refrigerant_may_leave_as_vapor() =>
        Assert.Equal(Verdict.Pass, Judge(ChargeJobs.TarnLane.With("refrigerant: R-454B", "refrigerant: R-32").With("as: liquid", "as: vapor"), "from the cylinder").Verdict);

    [Fact]
    public void Not_written_is_not_judged() =>
        Assert.Equal(Verdict.NotEvaluated, Judge(ChargeJobs.TarnLane.With("  as: liquid\n", ""), "from the cylinder").Verdict);

    [Fact]
    public void The_glide_in_the_cylinder_is_worked_out()
    {
        // R-454B at 20 °C: bubble 1384.59 kPa; dew 1327.98 kPa at 20 °C; at 1384.59 kPa the dew point lies about 1.5 K higher (slope of
        // 36 kPa/K between 10 and 40 °C): 2.7 °F.
        var step = Judge(ChargeJobs.TarnLane, "from the cylinder").Trace.Single(s => s.Symbol == "glide");
        Assert.Equal("2.7 °F", step.Result);
    }

    [Theory]
    [InlineData("30 psig", Verdict.Pass)]
    [InlineData("10 inHg vac", Verdict.Fail)]
    public void The_vacuum_is_broken_before_the_compressor_runs(string level, Verdict verdict) =>
        Assert.Equal(verdict, Judge(ChargeJobs.TarnLane.With("  as: liquid", $"  first charge: {{into: liquid side, as: liquid, vacuum broken to: {level}}}"), "vacuum broken").Verdict);

    [Theory]
    [InlineData("vapor", "6 bar(a)", Verdict.Pass)]
    [InlineData("vapor", "4 bar(a)", Verdict.Fail)]
    [InlineData("liquid", "6 bar(a)", Verdict.Fail)]
    public void Carbon_dioxide_goes_in_as_vapor_above_its_triple_point(string phase, string level, Verdict verdict) =>
        // Triple point of carbon dioxide 5.18 bar absolute.
        Assert.Equal(verdict, Judge(ChargeJobs.TarnLane.With("refrigerant: R-454B", "refrigerant: R-744").With("  as: liquid", $"  first charge: {{as: {phase}, vacuum broken to: {level}}}"), "vacuum broken").Verdict);

    [Theory]
    [InlineData(", throttled: yes", Verdict.Pass)]
    [InlineData(", throttled: no", Verdict.Fail)]
    [InlineData("", Verdict.NotEvaluated)]
    public void Liquid_into_the_vapor_side_is_throttled(string throttled, Verdict verdict) =>
        Assert.Equal(verdict, Judge(ChargeJobs.TarnLane.With("  as: liquid", $"  first charge: {{into: vapor side, as: liquid{throttled}}}"), "liquid into the vapor side").Verdict);

    [Fact]
    public void Topping_up_a_blend_with_glide_after_a_leak_is_remarked_upon()
    {
        var finding = Judge(ChargeJobs.TarnLane.With("work: new installation", "work: leak repair"), "from the cylinder");
        Assert.Contains("topped up", finding.Statement, StringComparison.Ordinal);
        Assert.DoesNotContain("topped up", Judge(ChargeJobs.TarnLane.With("work: new installation", "work: leak repair").With("unit arrived: charged", "unit arrived: recovered and evacuated"), "from the cylinder").Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_charged_has_nothing_to_say() => Assert.Empty(JobText.Evaluate(ChargeJobs.FenRow, "charge.phase"));
}
