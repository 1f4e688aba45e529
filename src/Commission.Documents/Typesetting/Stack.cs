namespace Commission.Documents.Typesetting;

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
