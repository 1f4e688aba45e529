namespace Commission.Records;

/// <summary>A column of a table.</summary>
/// <param name="Label">Heading.</param>
/// <param name="Unit">Unit of the numbers below; empty for none.</param>
/// <param name="Align">How the cells stand.</param>
public sealed record TableColumn(string Label, string Unit = "", ColumnAlign Align = ColumnAlign.Left);
