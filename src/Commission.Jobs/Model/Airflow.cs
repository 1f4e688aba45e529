using System.Collections.Immutable;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>How much air was found and how.</summary>
public sealed record Airflow : JobPart
{
    /// <summary>The method.</summary>
    public required Given<AirflowMethod> Method { get; init; }

    /// <summary>The air flow, when the method gives it directly.</summary>
    public Given<VolumeFlow>? Value { get; init; }

    /// <summary>The heat-rise test.</summary>
    public HeatRise? HeatRise { get; init; }

    /// <summary>A traverse across a duct.</summary>
    public Traverse? Traverse { get; init; }

    /// <summary>The hood's readings, one for each grille. Empty when not written.</summary>
    public ImmutableArray<Given<VolumeFlow>> Hood { get; init; } = [];

    /// <summary>The instrument. Empty when not written.</summary>
    public ImmutableArray<Given<string>> With { get; init; } = [];

    /// <summary>When.</summary>
    public Given<JobTime>? At { get; init; }
}
