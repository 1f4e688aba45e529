using System.Collections.Immutable;
using Commission.Measurement.Decisions;
using Commission.Measurement.Quantities;

namespace Commission.Checks.Limits;

/// <summary>What a limit of a given id means, whatever its figure.</summary>
/// <param name="Id">The id, such as <c>evacuation.decay</c>.</param>
/// <param name="Means">What is limited, as a phrase.</param>
/// <param name="Quantity">What it is measured in; null for a statement and for a calendar span.</param>
/// <param name="IsMonths">Whether it is a calendar span in months.</param>
/// <param name="Shapes">Forms a pack may use.</param>
/// <param name="Rule">Decision rule where no pack says one.</param>
/// <param name="Companions">Further quantities, all required where the limit is stated.</param>
internal sealed record LimitDefinition(
    string Id,
    string Means,
    Dimension? Quantity,
    bool IsMonths,
    ImmutableArray<LimitShape> Shapes,
    DecisionRule Rule,
    ImmutableArray<LimitCompanion> Companions)
{
    /// <summary>The first part of the id, which groups limits: <c>evacuation</c>.</summary>
    public string Group => Id[..Id.IndexOf('.', StringComparison.Ordinal)];
}
