namespace Commission.Documents.Plots.Labels;

/// <summary>The label of one event, hanging on a vertical line.</summary>
/// <param name="X">Position of the line, pt.</param>
/// <param name="Text">The label.</param>
/// <param name="Width">Width of the label and its gap to the line, pt.</param>
/// <param name="TurnsLeft">True when the label stands to the left of the line.</param>
/// <param name="Tier">Row counted upwards from the panel, from 0.</param>
internal readonly record struct Flag(double X, string Text, double Width, bool TurnsLeft, int Tier)
{
    /// <summary>Left end, pt.</summary>
    public double Left => TurnsLeft ? X - Width : X;

    /// <summary>Right end, pt.</summary>
    public double Right => TurnsLeft ? X : X + Width;
}
