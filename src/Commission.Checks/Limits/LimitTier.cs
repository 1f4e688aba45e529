namespace Commission.Checks.Limits;

/// <summary>Whose limit it is.</summary>
internal enum LimitTier
{
    /// <summary>A figure of the maker, from the job or from a maker's pack.</summary>
    Maker,

    /// <summary>A named pack.</summary>
    Pack,

    /// <summary>Common practice.</summary>
    CommonPractice,
}
