namespace Commission.Checks.Refrigerants;

/// <summary>What a substance is in the eyes of the laws on refrigerants.</summary>
internal enum GasFamily
{
    /// <summary>A saturated hydrofluorocarbon or a perfluorocarbon: Annex I of the European regulation.</summary>
    AnnexOne,

    /// <summary>An unsaturated hydrofluorocarbon or hydrochlorofluorocarbon: Annex II, section 1.</summary>
    AnnexTwo,

    /// <summary>A class I or II substance: it depletes ozone.</summary>
    OzoneDepleting,

    /// <summary>None of these: hydrocarbons, ammonia, carbon dioxide, water.</summary>
    Other,
}
