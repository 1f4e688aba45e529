namespace Commission.Checks.EvacuationAnalysis;

/// <summary>How much of the pressure at the system is spent on one part of the way.</summary>
/// <param name="Name">The part: an element's name, or "pump".</param>
/// <param name="Kind">Its kind; null for the pump.</param>
/// <param name="Share">Its pressure drop over the pressure at the system, 0 to 1; the pump's share is its inlet pressure. They sum to 1.</param>
public sealed record FlowShare(string Name, FlowElementKind? Kind, double Share);
