using Commission.Measurement.Decisions;
using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.Charge;

/// <summary>A winter start-up of a heat pump: heating readings, the maker's heating chart, the return visit.</summary>
public sealed class HeatingAndReturnVisitTests
{
    // R-410A in heating: the large line is the hot side. Bubble point 100 °F at 318.54 psig (equation of state, computed by a program of its own).
    private const string Winter = """
        commission: 1
        units: us
        job: {id: H-1, work: new installation, date: 2026-01-14, site: {name: "Coppice House", station pressure: 14.696 psia +/- 0.005}}
        equipment:
          system: heat pump
          compressor: fixed
          refrigerant: R-410A
          metering: TXV
          nameplate: {factory charge: 5 lb}
          piping: {liquid: {od: 3/8 in, length: 25 ft}, covered by factory charge: 15 ft}
        instruments:
          - {id: gauge, kind: pressure gauge, accuracy: 1 psi, resolution: 0.1 psi, reads: [vapor pressure, liquid pressure]}
          - {id: probe, kind: thermometer, accuracy: 0.5 °F, resolution: 0.1 °F, reads: [indoor coil outlet, discharge line, vapor line]}
          - {id: scale, kind: scale, accuracy: 0.5 oz, resolution: 0.1 oz, reads: [charge]}
          - {id: air, kind: psychrometer, accuracy: 0.5 °F, resolution: 0.1 °F, reads: [outdoor air, return air]}
        charging:
          unit arrived: charged
          as: liquid
          added: 6 oz
          line adjustment: {figure: 0.60 oz/ft, from: plate}
          mode: heating
          compressor started: "09:00"
          readings:
            - {at: "09:30", vapor pressure: 318.5, indoor coil outlet: 90.0, discharge line: 150.0, outdoor dry bulb: 45.0, since defrost: 20 min, coil clear of frost: yes, auxiliary heat: off}
        """;

    private const string Chart = """
        limits:
          charts:
            - {for: vapor pressure, mode: heating, across: {reading: outdoor dry bulb, at: [35, 45, 55]}, values: [[280, 315, 350]], tolerance: 10 psi, from: "heating chart, door"}
        """;

    private static Finding One(string yaml, string check) => Assert.Single(JobText.Evaluate(yaml, check));

    [Fact]
    public void Without_a_chart_heating_readings_are_information()
    {
        var finding = One(Winter, "charge.heating-mode");
        Assert.Equal(Verdict.Information, finding.Verdict);
        Assert.Equal(10.0, finding.Measured!.Value.Si * 1.8, 0.05);
        Assert.Contains("subcooling at the indoor coil", finding.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void A_sealed_unit_in_one_housing_without_a_gauge_on_it_is_asked_for_neither()
    {
        var packaged = Winter
            .With("system: heat pump", "system: packaged")
            .With("vapor pressure: 318.5, indoor coil outlet: 90.0, discharge line: 150.0, ", "")
            .With("  added: 6 oz\n", "");
        Assert.Empty(JobText.Evaluate(packaged, "charge.heating-mode"));
        Assert.Empty(JobText.Evaluate(packaged, "charge.return-visit"));

        // Once refrigerant was added the circuit was opened, and the readings are missed again.
        Assert.Equal(Verdict.NotEvaluated, One(packaged.With("  as: liquid\n", "  as: liquid\n  added: 6 oz\n"), "charge.return-visit").Verdict);
    }

    [Theory]
    [InlineData("318.5", Verdict.Pass)]
    [InlineData("330.0", Verdict.Fail)]
    public void The_makers_heating_chart_judges(string pressure, Verdict verdict)
    {
        var finding = One(Winter.With("vapor pressure: 318.5", $"vapor pressure: {pressure}").With("instruments:", Chart + "\ninstruments:"), "charge.maker-chart");
        Assert.Equal(verdict, finding.Verdict);
        Assert.Equal("315.0 psig ± 10 psi", finding.Limits[0].Text);
        Assert.Equal("heating chart, door", finding.Limits[0].Source);
    }

    [Theory]
    [InlineData("since defrost: 20 min", "since defrost: 5 min", "last defrost ended 5 min")]
    [InlineData("coil clear of frost: yes", "coil clear of frost: no", "not clear of frost")]
    [InlineData("auxiliary heat: off", "auxiliary heat: on", "auxiliary heat was on")]
    [InlineData("compressor started: \"09:00\"", "compressor started: \"09:20\"", "10 min after the start")]
    [InlineData("outdoor dry bulb: 45.0", "outdoor dry bulb: 60.0", "outside the maker's chart")]
    public void Heating_that_is_not_steady_is_not_judged(string from, string to, string why)
    {
        var finding = One(Winter.With(from, to).With("instruments:", Chart + "\ninstruments:"), "charge.maker-chart");
        Assert.Equal(Verdict.NotEvaluated, finding.Verdict);
        Assert.Contains(why, finding.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_not_written_of_the_defrost_makes_a_pass_conditional() =>
        Assert.Equal(Verdict.Conditional, One(Winter.With(", since defrost: 20 min", "").With("instruments:", Chart + "\ninstruments:"), "charge.maker-chart").Verdict);

    [Fact]
    public void Heating_says_nothing_of_superheat_and_subcooling()
    {
        Assert.Empty(JobText.Evaluate(Winter, "charge.subcooling"));
        Assert.Empty(JobText.Evaluate(Winter, "charge.superheat-floor"));
        Assert.Equal(Verdict.Pass, One(Winter, "charge.by-weight").Verdict);
    }

    [Fact]
    public void Heating_alone_asks_for_a_return_visit()
    {
        var finding = One(Winter, "charge.return-visit");
        Assert.Equal(Verdict.NotEvaluated, finding.Verdict);
        Assert.Contains("heating alone", finding.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_return_visit_arranged_is_told()
    {
        var finding = One(Winter.With("  mode: heating", "  mode: heating\n  return visit: {what: cooling check, outdoor at least: 65 °F}"), "charge.return-visit");
        Assert.Equal(Verdict.Information, finding.Verdict);
        Assert.Contains("when it is at least 65 °F outdoors", finding.Statement, StringComparison.Ordinal);
        Assert.Equal("at least 65 °F", finding.Limits[0].Text);
    }

    [Fact]
    public void A_return_visit_in_the_cold_is_remarked_upon() =>
        Assert.Contains("cannot be judged by readings yet", One(Winter.With("  mode: heating", "  mode: heating\n  return visit: {what: cooling check, outdoor at least: 50 °F}"), "charge.return-visit").Statement, StringComparison.Ordinal);

    [Fact]
    public void A_cold_day_in_cooling_asks_for_it_too() =>
        Assert.Contains("no return visit", One(ChargeJobs.FenRow.With("outdoor dry bulb: 95.0", "outdoor dry bulb: 48.0"), "charge.return-visit").Reason, StringComparison.Ordinal);

    [Fact]
    public void A_warm_day_does_not() => Assert.Empty(JobText.Evaluate(ChargeJobs.FenRow, "charge.return-visit"));
}
