using Commission.Measurement.Decisions;
using Xunit;

namespace Commission.Checks.Tests.Evidence;

public sealed class ResolutionCheckTests
{
    private const string Check = "evidence.resolution";
    private const string Gauge = "instruments: [{id: low, kind: pressure gauge, accuracy: 1 psi, resolution: 0.1 psi, reads: [vapor pressure, pressure test]}]\n";

    [Fact]
    public void Finer_than_the_display()
    {
        var finding = JobLines.Finding(JobLines.Of(Gauge + "charging: {unit arrived: charged, readings: [{at: \"11:20\", vapor pressure: 118.94 psig}, {at: \"11:35\", vapor pressure: 118.9 psig}]}"), Check);
        Assert.Equal(Verdict.Information, finding.Verdict);
        Assert.Equal("Written finer than the instrument shows: vapor pressure, 11:20 118.94 psig on low, which shows 0.1 psi.", finding.Statement);
    }

    [Fact]
    public void As_the_display_shows_it()
    {
        Assert.Equal(Verdict.Pass, JobLines.Finding(JobLines.Of(Gauge + "charging: {unit arrived: charged, readings: [{at: \"11:20\", vapor pressure: 118.9 psig}, {at: \"11:35\", vapor pressure: 119 psig}]}"), Check).Verdict);
        // Another unit says nothing about digits.
        Assert.Empty(JobLines.Findings(JobLines.Of(Gauge + "charging: {unit arrived: charged, readings: [{at: \"11:20\", vapor pressure: 819.81 kPag}]}"), Check));
        Assert.Empty(JobLines.Findings(JobLines.Of(), Check));
    }

    [Theory]
    [InlineData("90.1 psig", Verdict.Pass)]
    [InlineData("118.9 psig", Verdict.Information)]
    [InlineData("119 psig", Verdict.Pass)]
    public void A_display_that_changes_its_step_is_held_to_the_step_of_the_reading(string pressure, Verdict verdict)
    {
        var ranges = Gauge.Replace("resolution: 0.1 psi", "resolution: [{up to: 100 psig, step: 0.1 psi}, {above: 100 psig, step: 1 psi}]", StringComparison.Ordinal);
        Assert.Equal(verdict, JobLines.Finding(JobLines.Of($"{ranges}charging: {{unit arrived: charged, readings: [{{at: \"11:20\", vapor pressure: {pressure}}}]}}"), Check).Verdict);
    }

    [Fact]
    public void A_display_with_steps_of_a_half_shows_a_half()
    {
        var half = Gauge.Replace("0.1 psi", "0.5 psi", StringComparison.Ordinal);
        string Of(string pressure) => JobLines.Of($"{half}charging: {{unit arrived: charged, readings: [{{at: \"11:20\", vapor pressure: {pressure}}}]}}");
        Assert.Equal(Verdict.Pass, JobLines.Finding(Of("118.5 psig"), Check).Verdict);
        Assert.Equal(Verdict.Information, JobLines.Finding(Of("118.3 psig"), Check).Verdict);
    }

    [Theory]
    [InlineData("440.0 psig", "71.0 F", "440.0 psig", "85.0 F", Verdict.Information)] // 14 °F would move 454.7 psia by 12 psi
    [InlineData("440.0 psig", "71.0 F", "451.2 psig", "85.0 F", Verdict.Pass)]
    public void A_pressure_that_stands_still_while_the_temperature_moves_it(string from, string cold, string to, string warm, Verdict verdict)
    {
        var finding = JobLines.Finding(Hold(Gauge, from, cold, to, warm), Check, "nitrogen hold");
        Assert.Equal(verdict, finding.Verdict);
        if (verdict == Verdict.Information)
            Assert.Contains("440.0 psig at both ends", finding.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void A_gauge_of_1_psi_that_does_not_move_at_constant_temperature_is_a_good_test()
    {
        var coarse = Gauge.Replace("0.1 psi", "1 psi", StringComparison.Ordinal);
        Assert.DoesNotContain(JobLines.Findings(Hold(coarse, "440 psig", "71.0 F", "440 psig", "71.6 F"), Check), f => f.Subject == "nitrogen hold");
    }

    [Fact]
    public void Readings_and_the_step_of_their_instrument_are_named()
    {
        foreach (var pressure in new[] { "118.94 psig", "118.9 psig" })
        {
            var yaml = JobLines.Of(Gauge + $"charging: {{unit arrived: charged, readings: [{{at: \"11:20\", vapor pressure: {pressure}}}]}}");
            var finding = JobLines.Finding(yaml, Check);
            Assert.Equal(["vapor pressure", "resolution"], JobLines.Keys(yaml, finding));
            Assert.Equal(["low"], finding.Instruments);
            Assert.Equal(pressure == "118.94 psig", finding.IsToLookAt);
        }
    }

    // Without a step of its own a display says nothing, and a reading of another instrument neither.
    [Fact]
    public void An_instrument_without_a_step_is_not_held_to_one()
    {
        Assert.Empty(JobLines.Findings(JobLines.Of(Gauge.Replace(", resolution: 0.1 psi", "", StringComparison.Ordinal) + "charging: {unit arrived: charged, readings: [{at: \"11:20\", vapor pressure: 118.94 psig}]}"), Check));
        Assert.Empty(JobLines.Findings(JobLines.Of(Gauge + "charging: {unit arrived: charged, readings: [{at: \"11:20\", liquid pressure: 318.94 psig}]}"), Check));
    }

    [Fact]
    public void Several_that_are_too_fine_are_each_told()
    {
        var finding = JobLines.Finding(JobLines.Of(Gauge + "charging: {unit arrived: charged, readings: [{at: \"11:20\", vapor pressure: 118.94 psig}, {at: \"11:35\", vapor pressure: 118.97 psig}, {at: \"11:40\", vapor pressure: 118.9 psig}]}"), Check);
        Assert.Contains("118.94", finding.Statement, StringComparison.Ordinal);
        Assert.Contains("118.97", finding.Statement, StringComparison.Ordinal);
        Assert.Equal(4, finding.Readings.Length);
    }

    [Fact]
    public void A_pressure_that_stood_still_names_both_ends()
    {
        // 454.7 psia · 14 °F / 530.67 °R = 12.0 psi.
        var yaml = Hold(Gauge, "440.0 psig", "71.0 F", "440.0 psig", "85.0 F");
        var finding = JobLines.Finding(yaml, Check, "nitrogen hold");
        Assert.Equal(["pressure", "temperature"], JobLines.Keys(yaml, finding));
        Assert.Equal(4, finding.Readings.Length);
        Assert.Equal((true, true), (finding.IsToLookAt, finding.NextStep is not null));
        Assert.StartsWith("12.0 ", finding.Trace.Single(s => s.Symbol == "Δp").Result, StringComparison.Ordinal);
        Assert.DoesNotContain(JobLines.Findings(yaml.Replace(", temperature: 85.0 F", "", StringComparison.Ordinal), Check), f => f.Subject == "nitrogen hold");
        Assert.DoesNotContain(JobLines.Findings(yaml.Replace(", temperature: 71.0 F", "", StringComparison.Ordinal), Check), f => f.Subject == "nitrogen hold");
    }

    // Colder or warmer: the pressure moves either way. Half a step of 0.1 psi is what rounding leaves.
    [Theory]
    [InlineData("85.0 F", "71.0 F", "440.0 psig", Verdict.Information)]
    [InlineData("85.0 F", "71.0 F", "428.3 psig", Verdict.Pass)]
    [InlineData("71.0 F", "85.0 F", "440.04 psig", Verdict.Information)]
    [InlineData("71.0 F", "85.0 F", "440.06 psig", Verdict.Pass)]
    [InlineData("71.0 F", "85.0 F", "439.9 psig", Verdict.Pass)]
    public void Standing_still_is_less_than_half_a_step(string from, string to, string pressure, Verdict verdict) =>
        Assert.Equal(verdict, JobLines.Finding(Hold(Gauge, "440.0 psig", from, pressure, to), Check, "nitrogen hold").Verdict);

    // 454.7 psia over 14 °F of 530.67 °R: 12.0 psi. The gas beside the clamp: half a kelvin at either end and 30 % of 7.78 K between (defaults of this program), as rectangles:
    // 2 · 454.7 / 294.82 K · √((0.5² + 0.5² + 2.333²)/3) = 4.34 psi. What is left has to exceed two steps of the gauge.
    [Fact]
    public void The_change_to_be_seen_has_its_doubt()
    {
        var step = JobLines.Finding(Hold(Gauge, "440.0 psig", "[70.0 F, 72.0 F]", "440.0 psig", "[84.0 F, 86.0 F]"), Check, "nitrogen hold").Trace.Single(s => s.Symbol == "Δp");
        Assert.Equal(("71.0 °F to 85.0 °F", "12.0 psi ± 4.3 psi"), (step.Substitution, step.Result));
    }

    [Theory]
    [InlineData("0.1 psi", "440.0 psig", "85.0 F", true)]
    [InlineData("0.1 psi", "440.0 psig", "71.5 F", false)] // 0.43 psi, less than its doubt of 1.3
    [InlineData("3 psi", "440 psig", "85.0 F", true)] // 12.0 − 4.3 = 7.7 psi against 6
    [InlineData("5 psi", "440 psig", "85.0 F", false)] // against 10
    public void A_change_that_the_gauge_cannot_show_is_no_news(string resolution, string pressure, string warm, bool told) => Assert.Equal(
        told, JobLines.Findings(Hold(Gauge.Replace("0.1 psi", resolution, StringComparison.Ordinal), pressure, "71.0 F", pressure, warm), Check).Any(f => f.Subject == "nitrogen hold"));

    // Without a gauge the digits written are its steps: tenths of a psi show 12, hundreds of psi do not.
    [Theory]
    [InlineData("440.0 psig", true)]
    [InlineData("30 bar(g)", false)] // a step of 1 bar, 14.5 psi
    public void Without_a_gauge_the_digits_written_are_the_step(string pressure, bool told) =>
        Assert.Equal(told, JobLines.Findings(Hold("", pressure, "71.0 F", pressure, "85.0 F"), Check).Any(f => f.Subject == "nitrogen hold"));

    private static string Hold(string instruments, string from, string cold, string to, string warm) => JobLines.Of(
        $"{instruments}pressure test: {{gas: dry nitrogen, tightness: {{from: {{at: \"08:10\", pressure: {from}, temperature: {cold}}}, to: {{at: \"09:15\", pressure: {to}, temperature: {warm}}}}}}}");
}
