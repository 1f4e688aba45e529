namespace Commission.Records.Series;

/// <summary>Something that happened, marked on the horizontal axis.</summary>
/// <param name="X">Position in the unit of the horizontal axis.</param>
/// <param name="Label">What happened.</param>
public sealed record FigureEvent(double X, string Label);
