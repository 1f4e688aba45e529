using Commission.Checks.Circuit;
using Commission.Measurement.Decisions;
using Commission.Messages;
using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.Circuit;

/// <summary>
/// What current and compression ratio the conditions make likely. Saturation of R-134a as a textbook of thermodynamics tabulates it (from memory): −4 °C
/// 252.85 kPa, 6 °C 362.23, 8 °C 387.88, so 377.6 at 7.2 °C; 42 °C 1072.8, 44 °C 1130.7, so 1101.5 at 43 °C; 46 °C 1191.0 kPa.
/// </summary>
public sealed class LikelyTests
{
    private const string Pressures = "vapor pressure: 4.00 bar(a), liquid pressure: 11.00 bar(a)";

    // Three quarters of RLA at 33 °C outdoors and 1.1 hundredths a kelvin (common practice, no source): 0.75 + 2 · 0.011, 0.75 − 13 · 0.011.
    [Theory]
    [InlineData(33.0, 0.750)]
    [InlineData(35.0, 0.772)]
    [InlineData(20.0, 0.607)]
    [InlineData(null, 0.750)]
    public void Share_of_the_rated_current(double? celsius, double share) => Assert.Equal(share, LikelyCurrent.At(celsius + 273.15), 1e-9);

    // At 35 °C 0.772 of 16.7 A are likely; 13 % less is far below: 0.6716, 11.22 A. The meter reads within 0.10 A.
    [Theory]
    [InlineData("11.0", Verdict.Information)]
    [InlineData("11.2", Verdict.Pass)]
    [InlineData("11.4", Verdict.Pass)]
    public void A_current_far_below_what_the_weather_makes_likely_is_no_pass(string amperes, Verdict verdict)
    {
        var finding = Current(amperes, "outdoor dry bulb: 35.0 °C");
        Assert.Equal(verdict, finding.Verdict);
        Assert.Equal(verdict == Verdict.Information, Says(finding, "compressor.current-low"));
    }

    // In cool weather the same current is what is to be expected: 0.607 · 0.87 · 16.7 A = 8.82 A at 20 °C.
    [Theory]
    [InlineData("9.0", Verdict.Pass)]
    [InlineData("8.6", Verdict.Information)]
    public void Cool_air_outdoors_makes_a_low_current_likely(string amperes, Verdict verdict) => Assert.Equal(verdict, Current(amperes, "outdoor dry bulb: 20.0 °C").Verdict);

    [Theory]
    [InlineData("", "", "full")]
    [InlineData(", outdoor dry bulb: 35.0 °C", ", application: medium temperature", "full")]
    [InlineData(", outdoor dry bulb: 35.0 °C", ", compressor: two-stage", "part")]
    public void Where_nothing_is_likely_a_low_current_says_nothing(string air, string equipment, string running) =>
        Assert.Equal(Verdict.Pass, Single("compressor.current", Job(Pressures + air, equipment, running, "compressor: [6.0 A]")).Verdict);

    // Condensing 11 K over the air, or at 43 °C where it was not read; boiling at 7.2 °C, or 7 K under a cold room (common practice, no source).
    [Theory]
    [InlineData(", outdoor dry bulb: 35.0 °C", "", 1191.0 / 377.6)]
    [InlineData("", "", 1101.5 / 377.6)]
    [InlineData(", outdoor dry bulb: 35.0 °C, box temperature: 3.0 °C", ", application: medium temperature", 1191.0 / 252.85)]
    [InlineData(", outdoor dry bulb: 20.0 °C, box temperature: 3.0 °C", ", application: medium temperature, receiver: yes", 793.1 / 252.85)]
    public void Ratio_of_the_conditions(string readings, string equipment, double ratio)
    {
        var context = JobText.Context(Job(Pressures + readings, equipment));
        Assert.Equal(ratio, LikelyRatio.Of(context, Assert.Single(context.Get<ChargeAnalysis>().Rows))!.Value, 0.005 * ratio);
    }

    [Theory]
    [InlineData(", outdoor dry bulb: 35.0 °C", ", application: medium temperature")]
    [InlineData(", outdoor dry bulb: 35.0 °C, mode: heating", "")]
    [InlineData(", outdoor dry bulb: 35.0 °C, box temperature: 3.0 °C", ", application: medium temperature, receiver: yes, head pressure control: fan cycling")]
    public void Where_nobody_knows_boiling_or_condensing_no_ratio_is_likely(string readings, string equipment)
    {
        var context = JobText.Context(Job(Pressures + readings, equipment));
        Assert.Null(LikelyRatio.Of(context, Assert.Single(context.Get<ChargeAnalysis>().Rows)));
    }

    // 82 % of 1191.0/377.6 = 3.154 are 2.586. The gauges read within 0.01 bar, which moves the ratio by 0.007.
    [Theory]
    [InlineData("4.30", Verdict.Fail)]
    [InlineData("4.20", Verdict.Pass)]
    public void A_ratio_far_below_what_the_conditions_make_likely_fails(string suction, Verdict verdict)
    {
        var finding = Single("compressor.ratio", Job($"vapor pressure: {suction} bar(a), liquid pressure: 11.00 bar(a), outdoor dry bulb: 35.0 °C"));
        Assert.Equal(verdict, finding.Verdict);
        Assert.Equal(verdict == Verdict.Fail, Says(finding, "compressor.ratio-passes-gas"));
    }

    private static bool Says(Finding finding, string message) => finding.Messages!.Statement.Any(m => m.Id == message);

    private static Finding Current(string amperes, string air) => Single("compressor.current", Job($"{Pressures}, {air}", electrical: $"compressor: [{amperes} A]"));

    private static Finding Single(string check, string yaml) => Assert.Single(JobText.Evaluate(yaml, check));

    private static string Job(string readings, string equipment = "", string running = "full", string electrical = "compressor: [12.0 A]") => $$$"""
        commission: 1
        units: si
        job: {id: LK-1, work: seasonal check, date: 2026-07-02, site: {name: "Fen Row 7", station pressure: 101.325 kPa +/- 0.02}}
        equipment: {system: {{{(equipment.Contains("application", StringComparison.Ordinal) ? "refrigeration" : "heat pump")}}}, refrigerant: R-134a, metering: TXV, {{{(equipment.Contains("compressor", StringComparison.Ordinal) ? "" : "compressor: fixed, ")}}}nameplate: {compressor RLA: 16.7 A}{{{equipment}}} }
        instruments:
          - {id: gauges, kind: pressure gauge, accuracy: 0.01 bar, resolution: 0.001 bar, reads: [vapor pressure, liquid pressure]}
          - {id: probe, kind: thermometer, accuracy: 0.2 K, resolution: 0.1 K, reads: [outdoor air, box temperature]}
          - {id: meter, kind: clamp meter, accuracy: 0.1 A, resolution: 0.01 A, reads: [electrical]}
        charging: {compressor started: "10:00", running: {{{running}}}, readings: [{at: "10:30", {{{readings}}} }] }
        electrical: {{{{electrical}}}}
        """;
}
