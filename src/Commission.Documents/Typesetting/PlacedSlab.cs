namespace Commission.Documents.Typesetting;

/// <summary>A slab and where it goes.</summary>
/// <param name="Slab">The slab.</param>
/// <param name="Page">Page, from 0.</param>
/// <param name="Y">Upper edge, from the upper edge of the paper.</param>
/// <param name="RepeatsHead">True when the table's head is drawn again above it.</param>
internal readonly record struct PlacedSlab(Slab Slab, int Page, double Y, bool RepeatsHead);
