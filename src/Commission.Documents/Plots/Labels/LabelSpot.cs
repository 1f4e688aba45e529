using Commission.Documents.Plots.Drawing;

namespace Commission.Documents.Plots.Labels;

/// <summary>A place where a label may stand.</summary>
/// <param name="X">Position of the anchor, pt.</param>
/// <param name="Y">Baseline, pt.</param>
/// <param name="Anchor">Which point of the text stands at <paramref name="X"/>.</param>
/// <param name="Penalty">How much less this place is liked than the best, in the units of <see cref="InkMap"/>.</param>
internal readonly record struct LabelSpot(double X, double Y, TextAnchor Anchor, double Penalty = 0);
