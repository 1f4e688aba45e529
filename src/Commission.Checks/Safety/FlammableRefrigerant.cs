using Commission.Checks.Readings;
using Commission.Fluids;

namespace Commission.Checks.Safety;

/// <summary>Whether the refrigerant burns, and how easily.</summary>
internal sealed class FlammableRefrigerant : IAnalysis<FlammableRefrigerant>
{
    private FlammableRefrigerant(CircuitRefrigerant circuit)
    {
        Designation = circuit.Designation;
        Group = circuit.Info?.SafetyGroup;
        LowerFlammabilityLimit = circuit.Info?.LowerFlammabilityLimit;
        Components = circuit.Info is { } info ? [.. info.Composition.Select(c => c.Designation)] : [];
    }

    /// <summary>The designation.</summary>
    public string Designation { get; }

    /// <summary>Safety group with its mark; null when it is not known here.</summary>
    public SourcedText? Group { get; }

    /// <summary>Lower flammability limit, kg/m³; null when it is not known here.</summary>
    public SourcedValue? LowerFlammabilityLimit { get; }

    /// <summary>Designations of what it is mixed from.</summary>
    public IReadOnlyList<string> Components { get; }

    /// <summary>Whether it burns: group 2L, 2 or 3.</summary>
    public bool Burns => Group is { Value: [_, '2' or '3', ..] };

    /// <summary>Whether it burns slowly only.</summary>
    public bool IsA2L => Group?.Value == "A2L";

    /// <inheritdoc/>
    public static FlammableRefrigerant Create(CheckContext context) => new(context.Get<CircuitRefrigerant>());
}
