using System.Collections.Immutable;
using Commission.Checks.Findings;
using Commission.Checks.Readings;
using Commission.Measurement.Uncertainty;
using Commission.Records.Findings;

namespace Commission.Checks.Charge;

/// <summary>A mass of refrigerant with where it comes from.</summary>
/// <param name="Value">kg.</param>
/// <param name="Readings">Readings it rests on.</param>
/// <param name="Uses">What else of the job it rests on.</param>
/// <param name="Steps">How it came about.</param>
internal sealed record MassNumber(Uncertain Value, ImmutableArray<CorrectedReading> Readings, ImmutableArray<ReadingUse> Uses, ImmutableArray<TraceStep> Steps)
{
    /// <summary>Names in a finding what the mass rests on, and adds how it came about.</summary>
    /// <param name="finding">The finding.</param>
    public void UseIn(FindingBuilder finding)
    {
        foreach (var reading in Readings)
            finding.Use(reading);
        foreach (var use in Uses)
            finding.Use(use);
        finding.Add(Steps);
    }
}
