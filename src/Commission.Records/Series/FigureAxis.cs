namespace Commission.Records.Series;

/// <summary>One axis of a figure.</summary>
/// <param name="Label">What is drawn along it.</param>
/// <param name="Unit">Unit of its numbers; empty for none.</param>
/// <param name="Scale">Division.</param>
/// <param name="Min">Lower end; null lets the plot choose from the data.</param>
/// <param name="Max">Upper end; null lets the plot choose from the data.</param>
public sealed record FigureAxis(string Label, string Unit, AxisScale Scale, double? Min = null, double? Max = null);
