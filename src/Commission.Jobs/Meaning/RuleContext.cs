using Commission.Jobs.Model;
using Commission.Measurement.Atmosphere;
using Commission.Measurement.Quantities;
using Commission.Source.Problems;

namespace Commission.Jobs.Meaning;

/// <summary>
/// What the rules look at. The job may have holes where a problem was already found: a rule looks before it reads,
/// even at what the model calls required.
/// </summary>
internal sealed class RuleContext(Job job, ProblemList problems)
{
    public Job Job { get; } = job;

    public ProblemList Problems { get; } = problems;

    /// <summary>The atmosphere at the site; the standard one while the site says nothing.</summary>
    public Pressure Atmosphere { get; } = AtmosphereAt(job.Identity?.Site);

    public void Complain<T>(Given<T> given, string found, string expected, string advice, string code) =>
        Problems.Add(given.At, found, expected, advice, code, given.Text.Length);

    private static Pressure AtmosphereAt(Site? site)
    {
        if (site?.StationPressure is { } barometer) return barometer.Value;
        var elevation = site?.Elevation?.Value ?? Length.FromSi(0);
        return StandardAtmosphere.At(StandardAtmosphere.Covers(elevation) ? elevation : Length.FromSi(0));
    }
}
