namespace Commission.Documents.Typesetting;

/// <summary>Columns side by side, read one after the other.</summary>
internal sealed class ColumnsSlab : Slab
{
    private readonly IReadOnlyList<(double X, IReadOnlyList<Slab> Slabs)> _columns;

    public ColumnsSlab(IReadOnlyList<(double X, IReadOnlyList<Slab> Slabs)> columns)
    {
        _columns = columns;
        Height = columns.Max(column => Stack.Height(column.Slabs));
        SpaceBefore = columns.Max(column => column.Slabs.Count == 0 ? 0 : column.Slabs[0].SpaceBefore);
        SpaceAfter = columns.Max(column => column.Slabs.Count == 0 ? 0 : column.Slabs[^1].SpaceAfter);
    }

    public override IEnumerable<(Slab Inner, double Y)> Inside => _columns.SelectMany(column => Stack.Places(column.Slabs, 0));

    public override void Draw(Ink ink, double x, double y)
    {
        foreach (var (left, slabs) in _columns)
        {
            foreach (var (slab, top) in Stack.Places(slabs, y)) slab.DrawTagged(ink, x + left, top);
        }
    }
}
