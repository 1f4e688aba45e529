using System.Collections.Immutable;
using Commission.Checks.Charge;
using Commission.Checks.Findings;
using Commission.Checks.Readings;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Records.Findings;

namespace Commission.Checks.Air;

/// <summary>One way to the airflow, or why it leads nowhere.</summary>
internal sealed record AirflowRoute
{
    /// <summary>The method.</summary>
    public required AirflowMethod Method { get; init; }

    /// <summary>The method in a sentence: <c>by the maker's fan table</c>.</summary>
    public required string Words { get; init; }

    /// <summary>Volume flow where it was found, m³/s; null when there is none.</summary>
    public Uncertain? Value { get; init; }

    /// <summary>Why there is none, without a full stop; null when there is one.</summary>
    public string? WhyNot { get; init; }

    /// <summary>What would help; null when there is one.</summary>
    public string? Todo { get; init; }

    /// <summary>What makes a pass conditional, without a full stop; null when nothing does.</summary>
    public string? Reservation { get; init; }

    /// <summary>Readings it rests on.</summary>
    public ImmutableArray<CorrectedReading> Readings { get; init; } = [];

    /// <summary>What else of the job it rests on.</summary>
    public ImmutableArray<ReadingUse> Uses { get; init; } = [];

    /// <summary>How it came about.</summary>
    public ImmutableArray<TraceStep> Steps { get; init; } = [];

    /// <summary>Names in a finding what the airflow rests on, and adds how it came about.</summary>
    /// <param name="finding">The finding.</param>
    public FindingBuilder UseIn(FindingBuilder finding)
    {
        finding.UseAll(Readings);
        foreach (var use in Uses)
            finding.Use(use);
        return finding.Add(Steps);
    }
}
