namespace Commission.Records;

/// <summary>A warning that belongs to the work or the refrigerant.</summary>
/// <param name="Hazard">The hazard in a word or two, for example <c>pressure</c>.</param>
/// <param name="Text">The warning in plain sentences.</param>
public sealed record Caution(string Hazard, string Text);
