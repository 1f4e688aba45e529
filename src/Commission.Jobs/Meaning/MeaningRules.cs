using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Atmosphere;
using Commission.Measurement.Quantities;
using Commission.Messages;
using Commission.Source;

namespace Commission.Jobs.Meaning;

/// <summary>Every rule about what a job file means, in the order of the work. A rule finds files that are wrong; what is merely unwise is for the checks.</summary>
internal static class MeaningRules
{
    private static readonly Action<RuleContext>[] All =
    [
        SiteRules.Check,
        EquipmentRules.Check,
        LimitRules.Check,
        InstrumentRules.Check,
        NameRules.Check,
        PressureTestRules.Check,
        EvacuationRules.Check,
        ChargeRules.Check,
        ReadingRules.Check,
        TimeRules.Check,
        ElectricalRules.Check,
        AirRules.Check,
    ];

    public static void Check(RuleContext context)
    {
        foreach (var rule in All)
            rule(context);
    }
}

/// <summary>
/// What the rules look at. The job may have holes where a problem was already found: a rule looks before it reads,
/// even at what the model calls required.
/// </summary>
internal sealed class RuleContext(Job job, ProblemList problems)
{
    public Job Job { get; } = job;

    public ProblemList Problems { get; } = problems;

    /// <summary>Whether the file is in SI, so that no advice speaks of inches and pounds.</summary>
    public bool IsSi => Job.Units?.Preset?.Value == UnitPreset.Si;

    /// <summary>The atmosphere at the site; the standard one while the site says nothing.</summary>
    public Pressure Atmosphere { get; } = AtmosphereAt(job.Identity?.Site);

    public void Complain<T>(Given<T> given, Message found, Message? expected, Message advice, string code) =>
        Problems.Add(given.At, found, expected, advice, code, given.Text.Length);

    private static Pressure AtmosphereAt(Site? site)
    {
        if (site?.StationPressure is { } barometer)
            return barometer.Value;
        var elevation = site?.Elevation?.Value ?? Length.FromSi(0);
        return StandardAtmosphere.At(StandardAtmosphere.Covers(elevation) ? elevation : Length.FromSi(0));
    }
}
