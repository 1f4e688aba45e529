namespace Commission.Records.Series;

/// <summary>A straight reference line across a figure.</summary>
/// <param name="Label">Direct label.</param>
/// <param name="At">Position in the unit of the axis.</param>
/// <param name="Axis">The axis the position is on.</param>
/// <param name="Role">What the line means.</param>
public sealed record FigureLine(string Label, double At, AxisName Axis, LineRole Role);
