namespace Commission.Documents.Typesetting;

/// <summary>
/// A piece of a page that is never cut: a line, a table row, a figure. A document is a list of slabs from top to bottom; the
/// paginator decides where pages end, then each slab draws itself.
/// </summary>
internal abstract class Slab
{
    /// <summary>Height in points, without the space around.</summary>
    public double Height { get; init; }

    /// <summary>Least space above; the larger of the neighbours' wishes counts, and none at the top of a page.</summary>
    public double SpaceBefore { get; set; }

    /// <summary>Least space below.</summary>
    public double SpaceAfter { get; set; }

    /// <summary>True when no page may end after this slab.</summary>
    public bool KeepWithNext { get; set; }

    /// <summary>True when the slab begins a new page.</summary>
    public bool BreakBefore { get; set; }

    /// <summary>The rows to repeat when a page begins with this slab; null outside tables and for the head itself.</summary>
    public TableHead? Head { get; init; }

    /// <summary>Structure elements that begin with this slab, outermost first.</summary>
    public List<TagStart> Opens { get; } = [];

    /// <summary>How many structure elements end with this slab.</summary>
    public int Closes { get; set; }

    /// <summary>Ids that lead here.</summary>
    public List<string> Anchors { get; } = [];

    /// <summary>Entry of the outline; null for none.</summary>
    public OutlineEntry? Outline { get; set; }

    /// <summary>Draws the slab with the structure elements that begin and end with it.</summary>
    public void DrawTagged(Ink ink, double x, double y)
    {
        foreach (var tag in Opens) ink.Open(tag);
        Draw(ink, x, y);
        for (var i = 0; i < Closes; i++) ink.Close();
    }

    /// <summary>Draws the slab with its upper left corner at a place of the page.</summary>
    public abstract void Draw(Ink ink, double x, double y);

    /// <summary>Slabs inside that carry anchors of their own, with their place within this one.</summary>
    public virtual IEnumerable<(Slab Inner, double Y)> Inside => [];
}
