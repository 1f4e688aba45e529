using Commission.Checks.Kernel;
using Commission.Checks.Wording;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Xunit;

namespace Commission.Checks.Tests.Wording;

/// <summary>How numbers are printed. 1 psi = 6894.757 Pa, 1 bar = 100 kPa, t/°F = 1.8·(T/K − 273.15) + 32 (definitions).</summary>
public sealed class PresentationTests
{
    [Theory]
    [InlineData("us", "50.0 °F", "100.0 psig", "9.0 °F", "3.3 ft")]
    [InlineData("si", "10.0 °C", "6.89 bar(g)", "5.0 K", "1.0 m")]
    public void The_job_chooses_its_units(string units, string temperature, string pressure, string difference, string length)
    {
        var present = Of(units);
        Assert.Equal(units, present.Preset);
        Assert.Equal(temperature, present.Text(283.15, DisplayKind.Temperature));
        Assert.Equal(pressure, present.Text(689_475.7293, DisplayKind.Pressure));
        Assert.Equal(difference, present.Text(5, DisplayKind.TemperatureDifference));
        Assert.Equal(length, present.Text(1, DisplayKind.Length));
    }

    [Fact]
    public void One_kind_may_have_a_unit_of_its_own()
    {
        var present = Of("{preset: us, pressure: kPag}");
        Assert.Equal("us", present.Preset);
        Assert.StartsWith("689", present.Text(689_475.7293, DisplayKind.Pressure), StringComparison.Ordinal);
        Assert.Equal("50.0 °F", present.Text(283.15, DisplayKind.Temperature));
    }

    // Without a choice the readings tell: more than half of the numbers that are looked at are metric.
    [Theory]
    [InlineData("5280 ft", "6 lb", "us")]
    [InlineData("1600 m", "3 kg", "si")]
    [InlineData("1600 m", "6 lb", "us")]
    public void A_job_without_units_is_printed_in_what_it_is_written_in(string elevation, string charge, string preset) => Assert.Equal(
        preset,
        Presentation.For(JobText.Read(JobLines.Of(equipment: $", nameplate: {{factory charge: {charge}}}", site: $", elevation: {elevation}").Replace("units: us\n", "", StringComparison.Ordinal)), Language.English).Preset);

    [Fact]
    public void A_temperatures_uncertainty_is_a_difference()
    {
        // 283.15 ± 1.0 K: 50.0 ± 1.8 °F, and not 1.8 + 32.
        var measured = Of("us").Measured(Uncertain.From(283.15, new RootCause("probe".Plain(), "sheet".Plain(), 0.5)), DisplayKind.Temperature);
        Assert.Equal("1.8 °F", measured.ExpandedText);
        Assert.Equal("50.0 ± 1.8 °F", measured.Text);
        Assert.Equal(1.0, measured.ExpandedSi!.Value, 1e-9);
        Assert.Equal(2.0, measured.CoverageFactor!.Value, 1e-3);
        Assert.Null(measured.DegreesOfFreedom);
        Assert.Equal(("temperature", "°F", 50.0, 1), (measured.Value.Dimension, measured.Value.Unit, measured.Value.Value, measured.Value.Decimals));
    }

    // A number that somebody wrote down is printed as it was; as soon as anything else stands behind it, so does its U. The record keeps U in both cases.
    [Fact]
    public void A_number_as_written_has_no_doubt_beside_it()
    {
        var digit = RootCause.FromResolution("length: last digit".Plain(), "as written".Plain(), 0.3048, CauseKind.LastDigit);
        var written = Of("us").Measured(Uncertain.From(25 * 0.3048, digit), DisplayKind.Length);
        Assert.Equal(("25.0 ft", "25.0 ft"), (written.Text, Of("us").Text(Uncertain.From(25 * 0.3048, digit), DisplayKind.Length)));
        Assert.True(written.ExpandedSi > 0);
        var taped = Uncertain.From(25 * 0.3048, digit, new RootCause("tape".Plain(), "sheet".Plain(), 0.03));
        Assert.Contains("±", Of("us").Measured(taped, DisplayKind.Length).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_number_without_doubt_has_no_uncertainty()
    {
        var measured = Of("us").Measured(Uncertain.Exact(283.15), DisplayKind.Temperature);
        Assert.Equal(("50.0 °F", null, null), (measured.Text, measured.ExpandedText, measured.CoverageFactor));
    }

    [Fact]
    public void A_cell_has_the_number_alone()
    {
        var present = Of("us");
        Assert.Equal("50.0", present.Number(283.15, DisplayKind.Temperature));
        Assert.Equal("°F", present.Unit(DisplayKind.Temperature));
        Assert.Equal("", present.Unit(DisplayKind.Number));
        Assert.Equal(50.0, present.Value(283.15, DisplayKind.Temperature), 1e-9);
        Assert.Equal("50.00 °F", present.Text(283.15, DisplayKind.Temperature, 2));
        Assert.Equal("temperature difference", present.Quantity(5, DisplayKind.TemperatureDifference).Dimension);
    }

    private static Presentation Of(string units) => JobText.Context(JobLines.Of(units: units)).Present;
}
