namespace Commission.Measurement.Regression;

/// <summary>Why a table gives no value.</summary>
public enum TableMiss
{
    /// <summary>It does give one.</summary>
    None,

    /// <summary>The first argument lies outside the table: nothing is extrapolated.</summary>
    OutsideFirst,

    /// <summary>The second argument lies outside the table.</summary>
    OutsideSecond,

    /// <summary>The table has a dash there.</summary>
    Blank,
}
