using System.Text.Json.Serialization;
using Commission.Measurement.Corrections;

namespace Commission.Records.Findings;

/// <summary>One step on the way from readings to a number.</summary>
/// <param name="Symbol">Symbol of the result, for example <c>T_dew</c>.</param>
/// <param name="Name">What the symbol stands for.</param>
/// <param name="Formula">The formula in symbols or words.</param>
/// <param name="Substitution">The formula with the values put in.</param>
/// <param name="Result">The result with its unit.</param>
/// <param name="Source">Paper, standard or maker's page the formula comes from; empty for plain arithmetic.</param>
public sealed record TraceStep(string Symbol, string Name, string Formula, string Substitution, string Result, string Source)
{
    /// <summary>What the step takes off a reading; null where it is no correction.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public CorrectionKind? Correction { get; init; }

    /// <summary>Identifier of the instrument that is corrected; null where the step is no correction.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Instrument { get; init; }

    /// <summary>Number of the earlier finding that shows this very step; null where it stands for the first time. Pages print it once.</summary>
    public int? ShownIn { get; init; }

    /// <summary>Whether an earlier finding shows it.</summary>
    public bool WasShown => ShownIn is not null;
}
