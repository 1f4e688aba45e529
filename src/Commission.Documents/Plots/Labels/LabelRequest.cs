using Commission.Documents.Plots.Drawing;

namespace Commission.Documents.Plots.Labels;

/// <summary>A label that wants a place.</summary>
/// <param name="Text">The text.</param>
/// <param name="Style">How it is set.</param>
/// <param name="Spots">Where it may stand, in order of liking.</param>
/// <param name="Within">The area it must not leave.</param>
internal sealed record LabelRequest(string Text, TextStyle Style, IReadOnlyList<LabelSpot> Spots, Box Within)
{
    /// <summary>A point of the thing named; when no listed spot is free the label goes to the nearest free place and a thin line leads here.</summary>
    public Point? Target { get; init; }

    /// <summary>True when the figure reads well without it: it is left out before it crowds another label or hides a curve.</summary>
    public bool Optional { get; init; }

    /// <summary>Lower goes first.</summary>
    public int Order { get; init; } = 10;
}
