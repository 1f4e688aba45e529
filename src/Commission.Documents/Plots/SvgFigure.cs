using System.Collections.Immutable;

namespace Commission.Documents.Plots;

/// <summary>
/// A drawn figure. The picture uses svg, g with clip-path, clipPath, rect, ellipse, path (M L C Z), line, polyline and text only, in
/// points, so that the same text goes inline into a web page and, element by element, onto a PDF page.
/// </summary>
/// <param name="Svg">A complete svg element. Identifiers inside begin with <c>clip-</c> and count from 1: renumber them when several figures share a page.</param>
/// <param name="Width">Width, pt.</param>
/// <param name="Height">Height, pt.</param>
public sealed record SvgFigure(string Svg, double Width, double Height)
{
    /// <summary>Places that say their values when pointed at, ordered from left to right within each curve.</summary>
    public ImmutableArray<HoverPoint> Hover { get; init; } = [];
}
