using Commission.Checks.Charge;
using Commission.Checks.Circuit;
using Commission.Measurement.Quantities;
using Xunit;

namespace Commission.Checks.Tests.Charge;

/// <summary>
/// What the site's pressure does to saturation temperatures. Worked number: at 1609.344 m the atmosphere is 12.100 psia, 2.596 psi less than at
/// sea level; R-410A at 118.35 psig is then at 130.45 psia, dew about 38.9 instead of 40.0 °F; on the high side 2.6 psi are about 0.53 °F at 105 °F
/// (equation of state, computed by a program of its own).
/// </summary>
public sealed class AltitudeTests
{
    private static ChargeRow Row(string site) => JobText.Context(ChargeJobs.FenRow.With("station pressure: 14.696 psia +/- 0.005", site)).Get<ChargeAnalysis>().Rows[0];

    [Fact]
    public void At_sea_level_the_table_in_psig_holds()
    {
        var row = Row("elevation: 0 ft");
        Assert.Equal(40.0, Temperature.FromSi(row.VaporDew!.Value!.Value).Fahrenheit, 0.02);
        Assert.Equal(105.0, Temperature.FromSi(row.LiquidBubble!.Value!.Value).Fahrenheit, 0.02);
        Assert.Equal(12.0, row.Superheat.Value!.Value * 1.8, 0.05);
    }

    [Fact]
    public void At_5280_feet_the_same_gauge_reading_is_colder()
    {
        var row = Row("elevation: 5280 ft");
        Assert.Equal(130.45, Pressure.FromSi(row.VaporPressure!.Value.Value).Psia, 0.01);
        Assert.Equal(38.9, Temperature.FromSi(row.VaporDew!.Value!.Value).Fahrenheit, 0.05);
        Assert.Equal(105.0 - 0.53, Temperature.FromSi(row.LiquidBubble!.Value!.Value).Fahrenheit, 0.03);
        Assert.Equal(13.1, row.Superheat.Value!.Value * 1.8, 0.05);
    }
}
