using Commission.Measurement.Atmosphere;
using Commission.Measurement.Quantities;

namespace Commission.Jobs.Meaning;

/// <summary>The site must give the atmosphere, and a barometer read there fits the height.</summary>
internal static class SiteRules
{
    // The Dead Sea's shore and the highest town.
    private const double LowestSite = -440;
    private const double HighestSite = 5_500;

    // Weather moves a barometer by less; correcting it to sea level moves it by more from about 1,100 ft on.
    private const double MostByWeather = 0.04;

    public static void Check(RuleContext context)
    {
        if (context.Job.Identity?.Site is not { } site) return;
        if (site.Elevation is null && site.StationPressure is null)
        {
            context.Problems.Add(site.Origin, "The site has neither an elevation nor a station pressure.", "One of them is needed to turn gauge pressure into absolute pressure.",
                "Write elevation: and the height of the town, such as elevation: 5280 ft.", "no-atmosphere");
            return;
        }

        if (site.Elevation is { } height && height.Value.Si is < LowestSite or > HighestSite)
        {
            context.Complain(height, $"No site is {height.Text} above the sea.", "", "Check the number and the unit.", "impossible");
            return;
        }

        if (site.StationPressure is not { } barometer) return;
        if (barometer.Value.Si is < 48_000 or > 110_000)
        {
            context.Complain(barometer, $"No barometer on the ground shows {barometer.Text}.", "", "Check the number and the unit.", "impossible");
            return;
        }

        if (site.Elevation is not { } elevation) return;
        var standard = StandardAtmosphere.At(elevation.Value).Si;
        if (Math.Abs(barometer.Value.Si - standard) <= MostByWeather * standard) return;
        var expected = $"At {elevation.Text} a barometer shows about {Shown(barometer.Text, standard)}.";
        if (Math.Abs(barometer.Value.Si - 101_325) <= MostByWeather * 101_325)
        {
            context.Complain(barometer, $"{barometer.Text} looks corrected to sea level.", expected,
                "Write what a barometer on site shows, not the weather report; or delete the line.", "sea-level-pressure");
        }
        else
        {
            context.Complain(barometer, $"{barometer.Text} does not fit the elevation.", expected, "Check both; or delete one of them.", "sea-level-pressure");
        }
    }

    // In the unit that was written, so that the two can be compared at a glance.
    private static string Shown(string written, double pascals)
    {
        var symbol = written[(written.IndexOf(' ', StringComparison.Ordinal) + 1)..];
        var unit = Measurement.Units.UnitTable.Find(symbol, Dimension.AtmosphericPressure);
        var value = unit is null ? pascals / 100 : (pascals / unit.Factor) - unit.Offset;
        var decimals = value < 50 ? 2 : value < 200 ? 1 : 0;
        return value.ToString("F" + decimals.ToString(System.Globalization.CultureInfo.InvariantCulture), System.Globalization.CultureInfo.InvariantCulture)
            + " " + (unit?.Symbol ?? "hPa");
    }
}
