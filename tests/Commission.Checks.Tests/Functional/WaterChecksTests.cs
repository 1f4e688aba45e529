using Commission.Checks.Formulas;
using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Functional;

/// <summary>The water side: figures of an invented maker; heat of water from handbook tables (from memory); 500 Btu/h for each gpm and °F is a rule of the trade.</summary>
public sealed class WaterChecksTests
{
    [Theory]
    [InlineData("flow", "flow: {minimum: 17 L/min", "flow: 16 L/min", "flow: 18 L/min")]
    [InlineData("difference", "difference: {minimum: 4 K, maximum: 8 K", "in: 30.0 °C, out: 39.6 °C", "in: 30.0 °C, out: 35.6 °C")]
    [InlineData("difference", "difference: {minimum: 4 K, maximum: 8 K", "in: 12.0 °C, out: 11.0 °C", "in: 12.0 °C, out: 7.0 °C")] // cooling
    [InlineData("volume", "volume: {minimum: 50 L", "volume: 40 L", "volume: 60 L")]
    [InlineData("pressure", "pressure: {minimum: 1.0 bar(g), maximum: 2.5 bar(g)", "pressure: 0.6 bar(g)", "pressure: 1.5 bar(g)")]
    [InlineData("strainer drop", "strainer drop: {maximum: 15 kPa", "strainer drop: 22 kPa", "strainer drop: 4 kPa")]
    [InlineData("freezing point", "freezes at: {maximum: -15 °C", "glycol: {kind: propylene glycol, freezes at: -11 °C}", "glycol: {kind: propylene glycol, freezes at: -18 °C}")]
    public void Each_reading_has_its_figure(string subject, string figure, string wrong, string right)
    {
        Assert.Equal(Verdict.Fail, Of(subject, $"{figure}, from: manual}}", wrong));
        Assert.Contains(Of(subject, $"{figure}, from: manual}}", right), new[] { Verdict.Pass, Verdict.PassWithinUncertainty });
        Assert.Equal(Verdict.Information, Of(subject, null, wrong));
    }

    // Water pressure is gauge, as its figure is: the number of the record is the one that the crew read, and the atmosphere is in neither.
    [Fact]
    public void Water_pressure_is_printed_as_it_was_read()
    {
        var finding = JobLines.Findings(Job("limits: {water: {pressure: {minimum: 1.0 bar(g), maximum: 2.5 bar(g), from: manual}}}\n", "pressure: 1.5 bar(g)"), "functional.water").Single();
        Assert.Equal(150_000, finding.Measured!.Value.Si, 1e-6);
        Assert.Equal((100_000, 250_000), (finding.Limits[0].LowerSi!.Value, finding.Limits[0].UpperSi!.Value));
    }

    [Theory]
    [InlineData("in: 3.0 °C, out: -1.0 °C", true)]
    [InlineData("in: 6.0 °C, out: 1.0 °C", false)]
    [InlineData("in: 3.0 °C, out: -1.0 °C, glycol: {kind: none}", true)]
    [InlineData("in: 3.0 °C, out: -1.0 °C, glycol: {kind: ethylene glycol}", false)] // nobody read where it freezes
    [InlineData("in: -2.0 °C, out: -6.0 °C, glycol: {kind: ethylene glycol, freezes at: -4 °C}", true)]
    [InlineData("in: -2.0 °C, out: -6.0 °C, glycol: {kind: ethylene glycol, freezes at: -14 °C}", false)]
    public void Water_below_its_freezing_point_is_refused(string side, bool freezes) =>
        Assert.Equal(freezes, JobLines.Findings(Job("", side), "functional.water").Any(f => f is { Verdict: Verdict.Fail, Subject: "freezing" }));

    [Fact]
    public void The_heat_of_water_is_500_Btu_per_hour_for_each_gpm_and_degree()
    {
        const double Gpm = 231 * 0.0254 * 0.0254 * 0.0254 / 60, Fahrenheit = 5.0 / 9, BtuPerHour = 1055.05585262 / 3600;
        Assert.Equal(500, WaterHeat.PerVolume(283.15) * Gpm * Fahrenheit / BtuPerHour, 2.0);
        Assert.Equal(4.151e6, WaterHeat.PerVolume(308.15), 0.01e6); // 994.0 kg/m³ · 4178 J/(kg·K) at 35 °C
        var finding = JobLines.Finding(Job("", "flow: 21.5 L/min, in: 30.2 °C, out: 35.4 °C"), "functional.water-capacity");
        Assert.Equal(7.74e3, finding.Measured!.Value.Si, 0.01e3); // 3.583e-4 m³/s · 4.154e6 · 5.2 K
        Assert.NotNull(finding.Measured.ExpandedSi);
    }

    [Fact]
    public void Of_several_sides_each_speaks_under_its_name()
    {
        var job = JobLines.Of("water: [{name: evaporator, flow: 46 gpm, flow switch: ok}, {name: condenser, flow: 58 gpm, flow switch: failed}]", "seasonal check", "chiller");
        Assert.Equal(["evaporator, flow", "condenser, flow"], JobLines.Findings(job, "functional.water").Select(f => f.Subject));
        Assert.Equal([Verdict.Pass, Verdict.Fail], JobLines.Findings(job, "functional.water-controls").Select(f => f.Verdict));
    }

    [Theory]
    [InlineData("clean", Verdict.Pass)]
    [InlineData("dirty", Verdict.Fail)]
    [InlineData("none", Verdict.Information)]
    [InlineData("not seen", Verdict.NotEvaluated)]
    public void A_strainer_is_looked_at(string strainer, Verdict verdict) =>
        Assert.Equal(verdict, JobLines.Finding(Job("", $"strainer: {strainer}"), "functional.water-controls", "strainer").Verdict);

    [Theory]
    [InlineData("air-to-water heat pump", "", Verdict.Pass)] // nothing of the site is in the circuit: the plate's charge
    [InlineData("air-to-water heat pump", ", piping: {liquid: {od: 6.35 mm, length: 8 m}}", Verdict.NotEvaluated)]
    [InlineData("split", "", Verdict.NotEvaluated)]
    public void A_water_machine_without_lines_comes_whole(string system, string piping, Verdict verdict) =>
        Assert.Equal(verdict, JobLines.Finding(JobLines.Of("", "new installation", system, "R-290", $", nameplate: {{factory charge: 0.10 kg}}{piping}", units: "si"), "safety.flammable-charge").Verdict);

    private static Verdict Of(string subject, string? figure, string side) => JobLines.Finding(Job(figure is null ? "" : $"limits: {{water: {{{figure}}}}}\n", side), "functional.water", subject).Verdict;

    private static string Job(string limits, string side) => JobLines.Of($"{limits}water: {{{side}}}", "seasonal check", "air-to-water heat pump", "R-32", units: "si");
}
