using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Messages;

namespace Commission.Measurement.Tests.Units;

public sealed class UnitSystemTests
{
    [Fact]
    public void Every_kind_has_a_unit_in_both_presets()
    {
        foreach (var kind in Enum.GetValues<DisplayKind>())
        {
            Assert.NotNull(UnitSystem.Us[kind].Unit);
            Assert.NotNull(UnitSystem.Si[kind].Unit);
            Assert.Equal(UnitSystem.Us[kind].Unit.Reference, UnitSystem.Si[kind].Unit.Reference);
        }
    }

    [Fact]
    public void One_kind_can_be_overridden()
    {
        var result = UnitSystem.Us.With("vacuum", "Pa");
        Assert.True(result.Ok, result.Fault?.Text(Language.English));
        Assert.Equal("Pa", result.Value[DisplayKind.Vacuum].Unit.Symbol);
        Assert.Equal(1, result.Value[DisplayKind.Vacuum].Decimals);
        Assert.Equal("micron", UnitSystem.Us[DisplayKind.Vacuum].Unit.Symbol);
        Assert.Equal("°F", result.Value[DisplayKind.Temperature].Unit.Symbol);
        Assert.Equal("66.7 Pa", QuantityFormat.Format(66.66, result.Value[DisplayKind.Vacuum]));
        Assert.Equal("kPag", UnitSystem.Si.With("pressure", "kPag").Value![DisplayKind.Pressure].Unit.Symbol);
        Assert.Equal("°C", UnitSystem.Us.With("temperature", "C").Value![DisplayKind.Temperature].Unit.Symbol);
    }

    [Theory]
    [InlineData("vacum", "Pa", "\"vacum\" is nothing that has a unit of its own.")]
    [InlineData("vacuum", "psig", "\"psig\" cannot be the unit of vacuum.")]
    [InlineData("pressure", "psia", "\"psia\" cannot be the unit of pressure.")]
    [InlineData("torque", "psi", "\"psi\" cannot be the unit of torque.")]
    public void Refuses_what_does_not_fit(string key, string unit, string found) =>
        Assert.Equal(found, UnitSystem.Us.With(key, unit).Fault?.Found.Said());

    [Fact]
    public void Keys_are_written_in_words() => Assert.Contains("static pressure", UnitSystem.Keys);

    [Theory]
    [InlineData("us", "psig")]
    [InlineData("SI", "bar(g)")]
    public void Presets_by_name(string name, string pressure) => Assert.Equal(pressure, UnitSystem.Find(name)![DisplayKind.Pressure].Unit.Symbol);

    // As crews write them: grams below a tenth of a kilogram, hours beyond two, ohms for an earth and megohms for an insulation (common practice, no source).
    [Theory]
    [InlineData(DisplayKind.Mass, 0.005, "5 g")]
    [InlineData(DisplayKind.Mass, -0.04, "−40 g")]
    [InlineData(DisplayKind.Mass, 0.0994, "99 g")]
    [InlineData(DisplayKind.Mass, 0.0996, "0.100 kg")]
    [InlineData(DisplayKind.Mass, 5.48, "5.480 kg")]
    [InlineData(DisplayKind.Duration, 7200, "120 min")]
    [InlineData(DisplayKind.Duration, 7260, "2.0 h")]
    [InlineData(DisplayKind.Resistance, 0.12, "0.12 Ω")]
    [InlineData(DisplayKind.Resistance, 2e6, "2.0 MΩ")]
    public void A_number_takes_the_unit_of_its_size(DisplayKind kind, double si, string text)
    {
        Assert.Equal(text, QuantityFormat.Format(si, UnitSystem.Si[kind]));
        Assert.Equal(text, QuantityWriter.Instance.Write(QuantityWriter.Of(si, UnitSystem.Si[kind]), Messages.Language.English));
    }

    [Fact]
    public void With_its_uncertainty_it_takes_it_too()
    {
        Assert.Equal("5.0 ± 2.9 g", QuantityFormat.Format(0.005, 0.0029, UnitSystem.Si[DisplayKind.Mass]));
        Assert.Equal("0.211 ± 0.013 kg", QuantityFormat.Format(0.211, 0.013, UnitSystem.Si[DisplayKind.Mass]));
    }

    [Fact]
    public void A_unit_that_a_job_chooses_is_kept_whatever_the_size() =>
        Assert.Equal("0.011 lb", QuantityFormat.Format(0.005, UnitSystem.Si.With("mass", "lb").Value![DisplayKind.Mass]));
}
