namespace Commission.Documents.Plots.Drawing;

/// <summary>A place in a figure, pt from its top left corner.</summary>
/// <param name="X">Distance from the left edge.</param>
/// <param name="Y">Distance from the top edge.</param>
internal readonly record struct Point(double X, double Y);
