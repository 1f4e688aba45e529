namespace Commission.Documents.Plots.Axes;

/// <summary>A mark on an axis.</summary>
/// <param name="Value">Where, in the unit of the axis.</param>
/// <param name="Label">What is written there; empty for a mark without a number.</param>
internal readonly record struct Tick(double Value, string Label);
