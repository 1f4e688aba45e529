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
        foreach (var tag in Opens)
            ink.Open(tag);
        Draw(ink, x, y);
        for (var i = 0; i < Closes; i++)
            ink.Close();
    }

    /// <summary>Draws the slab with its upper left corner at a place of the page.</summary>
    public abstract void Draw(Ink ink, double x, double y);

    /// <summary>Slabs inside that carry anchors of their own, with their place within this one.</summary>
    public virtual IEnumerable<(Slab Inner, double Y)> Inside => [];
}

/// <summary>The beginning of a structure element (ISO 32000-1, 14.8.4).</summary>
/// <param name="Name">Structure type, for example <c>P</c> or <c>TH</c>.</param>
/// <param name="Scope">Scope of a header cell: <c>Row</c> or <c>Column</c>; null otherwise.</param>
/// <param name="ColumnSpan">Columns a cell spans.</param>
internal sealed record TagStart(string Name, string? Scope = null, int ColumnSpan = 1);

/// <summary>A heading for the outline.</summary>
/// <param name="Level">1 to 3.</param>
/// <param name="Title">Its text.</param>
internal sealed record OutlineEntry(int Level, string Title);

/// <summary>Takes no room: carries a page break or an anchor where nothing is drawn.</summary>
internal sealed class EmptySlab : Slab
{
    public override void Draw(Ink ink, double x, double y)
    {
    }
}

/// <summary>Slabs one below the other, without page ends.</summary>
internal static class Stack
{
    /// <summary>Space between two slabs: the larger of their wishes.</summary>
    public static double Gap(Slab? above, Slab below) => above is null ? 0 : Math.Max(above.SpaceAfter, below.SpaceBefore);

    /// <summary>Height of all together.</summary>
    public static double Height(IReadOnlyList<Slab> slabs)
    {
        var height = 0.0;
        Slab? above = null;
        foreach (var slab in slabs)
        {
            height += Gap(above, slab) + slab.Height;
            above = slab;
        }

        return height;
    }

    /// <summary>Each slab with the place of its upper edge.</summary>
    public static IEnumerable<(Slab Slab, double Y)> Places(IReadOnlyList<Slab> slabs, double top)
    {
        Slab? above = null;
        foreach (var slab in slabs)
        {
            top += Gap(above, slab);
            yield return (slab, top);
            top += slab.Height;
            above = slab;
        }
    }
}
