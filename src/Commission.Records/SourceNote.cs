namespace Commission.Records;

/// <summary>A constant, formula or equation of state that was used, with its paper.</summary>
/// <param name="Kind"><c>constant</c>, <c>equation of state</c>, <c>formula</c> or <c>standard</c>.</param>
/// <param name="Subject">What it is for, for example <c>R-32</c>.</param>
/// <param name="Text">Value, name or range as printed; empty for none.</param>
/// <param name="Citation">Authors, year, title, place.</param>
/// <param name="Mark"><c>published</c>, <c>from memory</c> or <c>common practice</c>.</param>
public sealed record SourceNote(string Kind, string Subject, string Text, string Citation, string Mark);
