using Commission.Checks.Charge;
using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Decisions;
using Commission.Measurement.Quantities;
using Xunit;

namespace Commission.Checks.Tests.Charge;

/// <summary>
/// The readings of Tarn Lane worked out by hand. Sources: atmosphere at 1609.344 m, 83 427.6 Pa = 12.1001 psia (US Standard Atmosphere 1976,
/// from memory); saturation of R-454B in psig over 14.69595 psia, computed from the equations of state by a program of its own (dew 40 °F
/// 107.49, 45 °F 118.34; bubble 105 °F 325.37, 110 °F 348.61), between two rows ln p linear in 1/T (Clausius–Clapeyron).
/// </summary>
public sealed class TarnLaneTests
{
    private const double Tolerance = 0.05;
    private const double SeaLevel = 14.69595;
    private const double Site = 12.1001;

    private static readonly (double Fahrenheit, double Psig)[] Dew = [(40, 107.49), (45, 118.34)];
    private static readonly (double Fahrenheit, double Psig)[] Bubble = [(105, 325.37), (110, 348.61)];

    private static ChargeRow At(string time) => JobText.Context(ChargeJobs.TarnLane).Get<ChargeAnalysis>().Rows.Single(r => r.Time == time);

    private static double Saturation((double Fahrenheit, double Psig)[] rows, double psia)
    {
        double t0 = rows[0].Fahrenheit + 459.67, t1 = rows[1].Fahrenheit + 459.67;
        double p0 = rows[0].Psig + SeaLevel, p1 = rows[1].Psig + SeaLevel;
        var share = Math.Log(psia / p0) / Math.Log(p1 / p0);
        return 1 / ((1 / t0) + (share * ((1 / t1) - (1 / t0)))) - 459.67;
    }

    [Theory]
    [InlineData("11:35", 118.9, 57.2, 44.00, 13.10)]
    [InlineData("11:20", 119.8, 57.9, 44.40, 13.40)]
    public void Superheat_after_zero_and_residual(string time, double psig, double line, double dew, double superheat)
    {
        // The gauge showed 0.2 psig open to air, the clamp 32.1 °F in ice after it was adjusted.
        var byHand = Saturation(Dew, psig - 0.2 + Site);
        Assert.Equal(dew, byHand, Tolerance);
        var row = At(time);
        Assert.Equal(dew, Temperature.FromSi(row.VaporDew!.AfterZero).Fahrenheit, Tolerance);
        Assert.Equal(line - 0.1 - byHand, row.Superheat.AfterZero * 1.8, Tolerance);
        Assert.Equal(superheat, row.Superheat.AfterZero * 1.8, Tolerance);
    }

    [Theory]
    [InlineData("11:35", 340.8, 97.0, 107.86, 10.86)]
    [InlineData("11:20", 341.5, 97.4, 108.01, 10.61)]
    public void Subcooling_after_zero_and_residual(string time, double psig, double line, double bubble, double subcooling)
    {
        // The gauge showed −0.3 psig open to air; the clamp stood at 32.0 °F in ice after it was adjusted.
        var byHand = Saturation(Bubble, psig + 0.3 + Site);
        Assert.Equal(bubble, byHand, Tolerance);
        var row = At(time);
        Assert.Equal(bubble, Temperature.FromSi(row.LiquidBubble!.AfterZero).Fahrenheit, Tolerance);
        Assert.Equal(byHand - line, row.Subcooling.AfterZero * 1.8, Tolerance);
        Assert.Equal(subcooling, row.Subcooling.AfterZero * 1.8, Tolerance);
    }

    [Fact]
    public void Superheat_after_all_corrections()
    {
        // An insulated clamp reads toward the air by a share between 0 and 1 %: the mean, 0.005 · (91.7 − 57.1) = 0.173 °F, is taken off.
        var line = 57.1 - (0.005 * (91.7 - 57.1));
        var byHand = line - Saturation(Dew, 118.7 + Site);
        Assert.Equal(12.93, byHand, Tolerance);
        Assert.Equal(byHand, At("11:35").Superheat.Value!.Value * 1.8, Tolerance);
    }

    [Fact]
    public void Subcooling_after_all_corrections()
    {
        // 300.0 psig was applied and 301.1 + 0.3 read after the zero: the gauge reads 1.4 psi high there, so 341.1 psig is 341.1 · 300/301.4.
        var pressure = 341.1 * 300 / 301.4;
        Assert.Equal(341.1 - 1.59, pressure, 0.02);
        var line = 97.0 - (0.005 * (91.7 - 97.0));
        var byHand = Saturation(Bubble, pressure + Site) - line;
        Assert.Equal(10.49, byHand, Tolerance);
        Assert.Equal(byHand, At("11:35").Subcooling.Value!.Value * 1.8, Tolerance);
    }

    [Fact]
    public void The_last_settled_reading_is_judged_and_the_one_before_is_drawn()
    {
        var analysis = JobText.Context(ChargeJobs.TarnLane).Get<ChargeAnalysis>();
        Assert.Equal("11:35", analysis.Judged(OperatingMode.Cooling, _ => true)!.Time);
        Assert.Equal([RowStanding.Settled, RowStanding.Settled], analysis.Rows.Select(r => r.Settling.Standing));
    }

    [Fact]
    public void Both_stages_stand_in_the_trace_of_the_finding()
    {
        var superheat = Assert.Single(JobText.Evaluate(ChargeJobs.TarnLane, "charge.metering-superheat"));
        Assert.Equal("13.10 °F", superheat.Trace.Single(s => s.Symbol == "SH₀").Result);
        Assert.StartsWith("12.9 ±", superheat.Trace.Single(s => s.Symbol == "SH").Result, StringComparison.Ordinal);
        var subcooling = Assert.Single(JobText.Evaluate(ChargeJobs.TarnLane, "charge.subcooling"));
        Assert.Equal("10.86 °F", subcooling.Trace.Single(s => s.Symbol == "SC₀").Result);
        Assert.StartsWith("10.5 ±", subcooling.Trace.Single(s => s.Symbol == "SC").Result, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_judged_check_of_the_charge_passes_without_reservation()
    {
        var findings = JobText.Evaluate(ChargeJobs.TarnLane).Where(f => f.Phase == Phases.Charge).ToList();
        Assert.All(findings, f => Assert.True(f.Verdict is Verdict.Pass or Verdict.PassWithinUncertainty or Verdict.Information && f.Reservation is null, $"{f.Check} {f.Subject}: {f.Statement}"));
        Assert.Equal(
            ["charge.prerequisites", "charge.running-condition", "charge.stabilised", "charge.method-validity", "charge.by-weight", "charge.phase", "charge.superheat-floor", "charge.metering-superheat", "charge.subcooling", "charge.diagnosis"],
            findings.Where(f => f.Verdict is Verdict.Pass or Verdict.PassWithinUncertainty).Select(f => f.Check).Distinct());
    }

    [Fact]
    public void Charge_from_the_scale_against_the_line_adjustment()
    {
        // 24.86 − 23.84 lb = 1.02 lb = 16.32 oz; 0.60 oz/ft · (42 − 15) ft = 16.2 oz.
        var finding = Assert.Single(JobText.Evaluate(ChargeJobs.TarnLane, "charge.by-weight"));
        Assert.Equal(16.3, Mass.FromSi(finding.Measured!.Value.Si).Ounces, 0.1);
        Assert.Equal(16.2, Mass.FromSi(finding.Limits[0].TargetSi!.Value).Ounces, 0.01);
        Assert.Equal(Verdict.Pass, finding.Verdict);
    }

    [Fact]
    public void The_dew_point_is_used_for_superheat_and_the_bubble_point_for_subcooling()
    {
        // At 118.34 psig at sea level the bubble point is about 42.3 and the dew point 45.0 °F: a glide of about 2.7 °F (same computation).
        var vapor = JobText.Evaluate(ChargeJobs.TarnLane, "charge.saturation").Single(f => f.Subject == "vapor side, 11:35");
        Assert.Contains("2.7 °F too high", vapor.Statement, StringComparison.Ordinal);
        Assert.Contains("dew point of 44.0 °F", vapor.Statement, StringComparison.Ordinal);
    }
}
