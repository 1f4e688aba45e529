using Commission.Measurement.Quantities;

namespace Commission.Jobs.Model;

/// <summary>A tracer gas in the nitrogen.</summary>
public sealed record Tracer : JobPart
{
    /// <summary>The gas.</summary>
    public required Given<string> Gas { get; init; }

    /// <summary>Its share.</summary>
    public Given<Ratio>? Share { get; init; }
}
