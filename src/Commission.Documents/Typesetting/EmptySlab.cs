namespace Commission.Documents.Typesetting;

/// <summary>Takes no room: carries a page break or an anchor where nothing is drawn.</summary>
internal sealed class EmptySlab : Slab
{
    public override void Draw(Ink ink, double x, double y)
    {
    }
}
