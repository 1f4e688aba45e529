using Commission.Checks.Kernel;
using Xunit;

namespace Commission.Checks.Tests.Kernel;

/// <summary>
/// The atmosphere at the site. US Standard Atmosphere 1976 (from memory): 101 325 Pa at sea level, 84 307 Pa at 5000 ft,
/// 89 875 Pa at 1000 m. A bound of ± a without a distribution has u = a/√3 (JCGM 100, 4.3.7); a stated U = 2u, k as written.
/// </summary>
public sealed class SiteAtmosphereTests
{
    [Theory]
    [InlineData("elevation: 0 ft", 101_325)]
    [InlineData("elevation: 5000 ft", 84_307)]
    [InlineData("elevation: 1000 m", 89_875)]
    public void Without_a_barometer_the_standard_atmosphere_and_the_weather_count(string site, double pascals)
    {
        var atmosphere = Of(site);
        Assert.Equal(pascals, atmosphere.Value.Value, 2.0);
        // 1 kPa is the standard deviation of the weather here (default of the program): it is no bound that would be divided by √3.
        Assert.Equal(1000, atmosphere.Value.StandardUncertainty, 1e-9);
        Assert.Equal("weather", Assert.Single(atmosphere.Value.Budget).Cause.ToString());
        Assert.True(atmosphere.IsStated);
        Assert.Equal(["elevation"], atmosphere.Uses.Select(u => u.Name));
        Assert.Equal(atmosphere.Value.Value, atmosphere.Pressure.Si);
    }

    // Of unknown make: half the weather's 1 kPa either way, 500/√3 = 288.7 Pa. Stated: 0.2 kPa/2 = 100 Pa. On an instrument of ± 0.3 kPa: 300/√3 = 173.2 Pa.
    [Theory]
    [InlineData("99.5 kPa", "", 288.675)]
    [InlineData("99.5 kPa +/- 0.2 kPa", "", 100)]
    [InlineData("99.5 kPa +/- 0.2 kPa", "0.3 kPa", 100)]
    [InlineData("99.5 kPa", "0.3 kPa", 173.205)]
    public void A_barometer_has_the_doubt_that_is_known_of_it(string read, string accuracy, double u)
    {
        var atmosphere = Of($"elevation: 150 m, station pressure: {read}", accuracy.Length == 0 ? "" : $"instruments:\n  - {{id: barometer, kind: barometer, accuracy: {accuracy}, reads: [station pressure]}}");
        Assert.Equal(99_500, atmosphere.Value.Value, 1e-6);
        Assert.Equal(u, atmosphere.Value.StandardUncertainty, 1e-3);
        Assert.True(atmosphere.IsStated);
        var use = Assert.Single(atmosphere.Uses);
        Assert.Equal("station pressure", use.Name);
        Assert.Equal(accuracy.Length == 0 ? null : "barometer", use.Instrument);
    }

    [Fact]
    public void The_way_to_it_is_a_step_of_the_trace()
    {
        Assert.Equal("h = 1000 m", Of("elevation: 1000 m").Step.Substitution);
        Assert.Equal("99.5 kPa", Of("elevation: 150 m, station pressure: 99.5 kPa").Step.Substitution);

        // The job reader asks for an elevation; a job made another way may lack it. Then sea level is taken, and said.
        var job = JobText.Read(JobLines.Of());
        job = job with { Identity = job.Identity with { Site = job.Identity.Site with { Elevation = null } } };
        var unknown = new CheckContext(job, new CheckSettings(job.Identity.Date.Value)).Get<SiteAtmosphere>();
        Assert.Equal(("no elevation stated: sea level", false), (unknown.Step.Substitution, unknown.IsStated));
        Assert.Equal(101_325, unknown.Value.Value, 1e-6);
        Assert.Empty(unknown.Uses);
    }

    private static SiteAtmosphere Of(string site, string lines = "") => JobText.Context(JobLines.Of(lines, site: ", " + site, units: "si")).Get<SiteAtmosphere>();
}
