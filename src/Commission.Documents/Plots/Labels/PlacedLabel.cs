using Commission.Documents.Plots.Drawing;

namespace Commission.Documents.Plots.Labels;

/// <summary>A label with its place.</summary>
/// <param name="Request">What was asked for.</param>
/// <param name="Text">The text that is written: shortened where the room is smaller than the text.</param>
/// <param name="Spot">Where it stands.</param>
/// <param name="Box">What it covers.</param>
/// <param name="Leads">True when a thin line to the target is needed.</param>
internal sealed record PlacedLabel(LabelRequest Request, string Text, LabelSpot Spot, Box Box, bool Leads);
