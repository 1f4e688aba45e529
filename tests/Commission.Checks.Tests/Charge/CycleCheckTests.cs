using Commission.Checks.Charge;
using Commission.Checks.Circuit;
using Commission.Measurement.Decisions;
using Commission.Records.Findings;
using Xunit;

namespace Commission.Checks.Tests.Charge;

/// <summary>
/// The cycle through measured states. Textbook cycle (from memory): R-134a between 0.14 and 0.8 MPa with superheated vapor at −10 °C and subcooled
/// liquid at 26 °C and 0.72 MPa has h₁ = 246.36, h₃ = 87.83 kJ/kg on the book's datum: 158.5 kJ/kg taken up; its compression starts at
/// s = 0.9724 kJ/kg K and would end at 284.21 kJ/kg, 37.85 above h₁.
/// </summary>
public sealed class CycleCheckTests
{
    private const string Textbook = """
        commission: 1
        units: si
        job: {id: K-1, work: seasonal check, date: 2026-06-01, site: {name: "Plant room", station pressure: 1013.25 hPa}}
        equipment: {system: split, compressor: fixed, refrigerant: R-134a, metering: TXV}
        charging:
          compressor started: "08:00"
          running: full
          readings:
            - {at: "08:30", vapor pressure: 140 kPaa, vapor line: -10.0, liquid pressure: 720 kPaa, liquid line: 26.0, discharge pressure: 800 kPaa}
        """;

    private static Finding Judge(string yaml) => Assert.Single(JobText.Evaluate(yaml, "charge.cycle"));

    [Fact]
    public void Heat_taken_up_of_the_textbook_cycle()
    {
        var finding = Judge(Textbook);
        Assert.Equal(Verdict.Information, finding.Verdict);
        Assert.Equal(158.5, finding.Measured!.Value.Si / 1000, 0.5);
    }

    // 800/140 = 5.714 to the discharge, 720/140 = 5.143 to the liquid valve: two ratios of one machine, told apart.
    [Theory]
    [InlineData(", discharge pressure: 800 kPaa", "The ratio is 5.71", "to the one at the compressor's discharge")]
    [InlineData("", "The ratio is 5.14", "to the one at the liquid service valve")]
    public void The_ratio_says_between_which_pressures(string discharge, string ratio, string between)
    {
        var said = Judge(Textbook.With(", discharge pressure: 800 kPaa", discharge)).Statement;
        Assert.Contains(ratio, said, StringComparison.Ordinal);
        Assert.Contains($"from the pressure at the vapor service valve {between}", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Ideal_work_and_ratio_of_the_textbook_cycle()
    {
        var context = JobText.Context(Textbook);
        var cycle = ChargeCycle.Of(context, context.Get<ChargeAnalysis>().Rows[0]);
        Assert.Equal(37.85, (cycle.Isentropic.Enthalpy - cycle.Suction.Enthalpy) / 1000, 0.3);
        Assert.Equal(800.0 / 140.0, cycle.Ratio.Value, 1e-9);
    }

    [Fact]
    public void A_ratio_from_gauges_is_of_absolute_pressures()
    {
        // 341.9 and 118.35 psig: 356.6 psia over 133.05 psia, 2.68 (worked number).
        var context = JobText.Context(ChargeJobs.FenRow.With("liquid pressure: 341.88", "liquid pressure: 341.90"));
        Assert.Equal(2.68, ChargeCycle.Of(context, context.Get<ChargeAnalysis>().Rows[0]).Ratio.Value, 0.005);
    }

    [Theory]
    [InlineData("vapor line: -10.0", "vapor line: -25.0", "not superheated")]
    [InlineData("liquid line: 26.0", "liquid line: 35.0", "not subcooled")]
    public void A_state_in_the_dome_is_not_known(string from, string to, string why)
    {
        var finding = Judge(Textbook.With(from, to));
        Assert.Equal(Verdict.NotEvaluated, finding.Verdict);
        Assert.Contains(why, finding.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void One_side_alone_makes_no_cycle() => Assert.Empty(JobText.Evaluate(Textbook.With(", liquid line: 26.0", ""), "charge.cycle"));

    [Fact]
    public void A_measured_discharge_line_shows_an_apparent_efficiency()
    {
        // 50 °C at 0.8 MPa: h₂ = 286.69 kJ/kg (the same textbook, from memory); 37.85 / (286.69 − 246.36) = 94 %.
        var finding = Judge(Textbook.With("discharge pressure: 800 kPaa", "discharge pressure: 800 kPaa, discharge line: 50.0"));
        Assert.Contains("isentropic efficiency of 94 %", finding.Statement, StringComparison.Ordinal);
    }
}
