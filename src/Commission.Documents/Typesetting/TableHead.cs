namespace Commission.Documents.Typesetting;

/// <summary>The head of a table, to be drawn again on the pages it runs over to.</summary>
internal sealed class TableHead
{
    /// <summary>Its rows.</summary>
    public List<RowSlab> Rows { get; } = [];

    /// <summary>Their height together.</summary>
    public double Height => Rows.Sum(row => row.Height);

    /// <summary>Draws the head as something that was already told.</summary>
    public void DrawAgain(Ink ink, double x, double y)
    {
        ink.BeginArtifact();
        foreach (var row in Rows)
        {
            row.DrawUntagged(ink, x, y);
            y += row.Height;
        }

        ink.EndArtifact();
    }
}
