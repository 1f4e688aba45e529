using Commission.Source;

namespace Commission.Records;

/// <summary>A line of the header: a label and what was written for it.</summary>
/// <param name="Label">Label in the trade's words.</param>
/// <param name="Value">Value as printed.</param>
/// <param name="At">Where it was written; null when it was worked out.</param>
public sealed record LabelValue(string Label, string Value, SourceLocation? At = null);
