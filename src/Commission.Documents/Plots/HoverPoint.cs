namespace Commission.Documents.Plots;

/// <summary>A place in a figure that can say its values when pointed at; the text is made of record fields, never read back from pixels.</summary>
/// <param name="X">Distance from the left edge, pt.</param>
/// <param name="Y">Distance from the top edge, pt.</param>
/// <param name="Text">What is shown there.</param>
public readonly record struct HoverPoint(double X, double Y, string Text);
