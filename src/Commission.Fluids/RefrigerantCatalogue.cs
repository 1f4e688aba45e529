using Commission.Fluids.Data;

namespace Commission.Fluids;

/// <summary>Every refrigerant the program knows, from a small index; the equations are read only by <see cref="Refrigerant.Load"/>.</summary>
public static class RefrigerantCatalogue
{
    private static readonly Lazy<RefrigerantIndex> Index = new(RefrigerantIndex.Read);

    /// <summary>All refrigerants, pure ones first, in the order of their numbers.</summary>
    public static IReadOnlyList<RefrigerantInfo> All => Index.Value.All;

    /// <summary>
    /// The refrigerant of a designation or another of its names: "R-410A", "r410a", "410A", "HFC-32", "propane", "CO2". Null when there
    /// is none.
    /// </summary>
    /// <param name="nameOrAlias">A name as people write it.</param>
    public static RefrigerantInfo? Find(string nameOrAlias)
    {
        ArgumentNullException.ThrowIfNull(nameOrAlias);
        return Index.Value.Find(nameOrAlias);
    }
}
